import type { PlanChange } from "../store/plan-change.js";
import type { FieldKind } from "./text-kinds.js";

/** What a text field is for: one key of the plan. */
export interface TypedEntry {
  /** One text for each field of a view; it stays the same while the plan changes around it. */
  readonly key: string;
  /** Over the field, or at the head of its column: "Length". */
  readonly title: string;
  /** Spoken where the title stands elsewhere: "Length of feed". */
  readonly name: string;
  readonly kind: FieldKind;
  /** What the plan holds. */
  readonly typed: string | undefined;
  /** What is taken while nothing is typed: a quantity, or a few words. */
  readonly standIn?: string | undefined;
  /** Where that comes from, as it stands behind it: "from the birds"; else it is taken for granted. */
  readonly standInFrom?: string | undefined;
  /** Whether something must be typed. */
  readonly isNeeded?: boolean;
  /** A few words more, under the field. */
  readonly note?: string | undefined;
  /** The edit that writes a value into the plan, or takes the key out. */
  change(value: string | number | undefined): PlanChange;
}

export interface ChoiceOption {
  readonly value: string;
  readonly words: string;
}

/** What a choice is for: one key of the plan that takes one of several values. */
export interface ChoiceEntry {
  readonly key: string;
  readonly title: string;
  readonly name: string;
  readonly value: string;
  readonly note?: string | undefined;
  /** Options in groups; a group without a label stands for itself. Asked for only when they are to be shown. */
  groups(): readonly { readonly label?: string; readonly options: readonly ChoiceOption[] }[];
  /** Whether its words are long ones, as of pipes. */
  readonly isLong?: boolean;
  /** Whether its options may be so many that they are laid out only once the hand or the keyboard comes to it. */
  readonly isLazy?: boolean;
  /** Words of the value as it is, for while the options are not asked for. */
  readonly words: string;
  /** The edit, or undefined when the choice changes nothing. */
  change(value: string): PlanChange | undefined;
}

/** What a tick box is for: one key of the plan that holds or does not. */
export interface TickEntry {
  readonly key: string;
  readonly title: string;
  readonly name: string;
  readonly value: boolean;
  readonly note?: string | undefined;
  change(value: boolean): PlanChange;
}

/** What the browser's own field for a day or a time of day is for. */
export interface PickedEntry {
  readonly key: string;
  readonly title: string;
  readonly name: string;
  /** "date" gives "2026-07-04", "time" gives "06:30". */
  readonly picks: "date" | "time";
  readonly value: string | undefined;
  readonly note?: string | undefined;
  change(value: string | undefined): PlanChange;
}

export type Entry =
  | ({ readonly form: "typed" } & TypedEntry)
  | ({ readonly form: "choice" } & ChoiceEntry)
  | ({ readonly form: "tick" } & TickEntry)
  | ({ readonly form: "picked" } & PickedEntry);
