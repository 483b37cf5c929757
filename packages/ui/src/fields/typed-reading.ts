import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What typing into a field came to: the text to keep with its value in SI, or what is wrong with it. */
export type TypedReading =
  | { readonly ok: true; readonly typed: string; readonly value: number }
  | { readonly ok: false; readonly problem: string };

/** How one kind of field reads what was typed, and shows what the plan holds. */
export interface KindRules {
  /** What the field shows: what was typed if that is in the user's units, else the value in them. */
  shown(typed: string, value: number, system: UnitSystem): string;
  /** The text to keep with its value in SI, or what is wrong with it. */
  read(text: string, system: UnitSystem): TypedReading;
  /** Unit of a bare number; a kind without one takes no sums. */
  bareUnit?(system: UnitSystem): string;
  /** A value in SI as the text to keep. */
  write(value: number, system: UnitSystem): string;
}
