import type { VerdictName } from "../check-result.js";
import type { DoubtedInput } from "./doubted-inputs.js";

/** One measurement taken again, and how good it must be. Doubts are two standard deviations either way. */
export interface Better extends DoubtedInput {
  /** How far it may then be off: a length [m] or a share [-]; 0 where it must be in no doubt. */
  readonly needed: number;
}

/** How one thing in doubt moves a drinker's head to spare. */
export interface Sway extends DoubtedInput {
  /** By how much, when it is off by its whole doubt [m]; undefined where water then does not come at all. */
  readonly head: number | undefined;
}

/** What would make a close call sure. */
export type Remedy =
  /** One measurement; the others that do it too stand behind it, the weightiest first. */
  | { readonly kind: "one"; readonly better: Better; readonly or: readonly Better[] }
  /** None does it alone, these together do. */
  | { readonly kind: "two"; readonly better: readonly [Better, Better] }
  /** No measurement, however good: the plan stands too near the edge. */
  | { readonly kind: "none" };

/** A verdict that measurements do not settle, and what would. */
export interface CloseCall {
  readonly drinker: string;
  /** Position in `line.drinkers`. */
  readonly index: number;
  readonly verdict: VerdictName;
  readonly otherwise: VerdictName;
  readonly share: number;
  readonly samples: number;
  readonly remedy: Remedy;
  /** What moves it most, the weightiest first. */
  readonly sways: readonly Sway[];
  /**
   * Head by which the source must come up for it to be good and sure as things are in doubt [m], or down where it
   * holds too little; both where its range is too narrow; undefined where no height of the water would do.
   */
  readonly moreHead: number | undefined;
  readonly lessHead: number | undefined;
}

/** A measurement worth taking again, and the drinkers that are sure with it. */
export interface Worthwhile extends Better {
  readonly drinkers: readonly string[];
  /** Whether another one must be taken with it, for one or more of these drinkers. */
  readonly with: readonly DoubtedInput[];
}

/** Which measurements of a plan to take again. */
export interface Measuring {
  /** Drinkers whose verdict is sure as it is. */
  readonly sure: number;
  readonly close: readonly CloseCall[];
  /** Those that decide most drinkers first. */
  readonly measurements: readonly Worthwhile[];
  /** Plans tried for each, at most. */
  readonly samples: number;
}
