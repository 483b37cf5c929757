import type { CostMeasure, CureAnswer, Plan, Variant } from "@headfall/hydraulics";
import type { TypingController } from "../fields/typing-controller.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What a keeper says of the cure wanted; what is undefined is left to the library. */
export interface Wanted {
  readonly by: CostMeasure | undefined;
  /** Highest stand to think of [m]. */
  readonly standMost: number | undefined;
  /** Head to spare [m]. */
  readonly margin: number;
  /** Coming weeks in which it must hold. */
  readonly weeks: number | undefined;
}

/** What its user can do in this room besides editing the plan. */
export interface CureActs {
  readonly want: (wanted: Partial<Wanted>) => void;
  readonly look: () => void;
  readonly cancel: () => void;
  /** Makes the plan in hand what was found for it. */
  readonly take: (found: Plan, what: string) => void;
}

/** What every view of this room is made from. */
export interface CureRoom {
  readonly plan: Plan;
  readonly system: UnitSystem;
  readonly wanted: Wanted;
  readonly typing: TypingController;
  readonly isWide: boolean;
  readonly acts: CureActs;
}

/** The same with what was found. */
export interface CuredRoom extends CureRoom {
  readonly answer: CureAnswer;
  /** Whether the plan in hand is this one by now. */
  readonly isTaken: (found: Plan) => boolean;
}

/** A plan that is kept elsewhere, to be set beside the one in hand. */
export interface KeptPlan {
  readonly id: string;
  readonly name: string;
  readonly plan: Plan;
}

/** What is set beside the plan in hand. */
export interface BesideRoom {
  readonly plan: Plan;
  readonly system: UnitSystem;
  /** Plans to choose from; undefined until they are asked for. */
  readonly others: readonly KeptPlan[] | undefined;
  readonly chosen: ReadonlySet<string>;
  /** The plan in hand first; undefined until they are compared. */
  readonly variants: readonly Variant[] | undefined;
  readonly isOld: boolean;
  readonly problems: readonly string[];
  readonly acts: BesideActs;
}

export interface BesideActs {
  /** Undefined where no plans are kept. */
  readonly list: (() => void) | undefined;
  readonly choose: (id: string, isChosen: boolean) => void;
  readonly openFiles: (files: readonly File[]) => void;
}
