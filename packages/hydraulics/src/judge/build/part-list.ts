import type { Cutting } from "../../numerics/cutting/cutting.js";
import type { Hole, Thread } from "../../tables/building-types.js";

/** What kind of thing a part is. */
export const PART_KINDS = [
  "vessel",
  "bulkhead",
  "vent",
  "screen",
  "tap",
  "oneWay",
  "regulator",
  "floatValve",
  "fitting",
  "tee",
  "joiner",
  "endCap",
  "bleed",
  "drinker",
  "waterer",
] as const;
/** What sort of thing a part is. */
export type PartKind = (typeof PART_KINDS)[number];

/** Typed: the plan names it. Implied: the line cannot be put together without it. Advised: it would be better for it. */
export type PartBasis = "typed" | "implied" | "advised";

/** A kind of part, how many of it, where, and why it is in the list. */
export interface Part {
  /** What `prices.parts` calls it. */
  readonly id: string;
  readonly kind: PartKind;
  /** As its table or the plan names it; undefined where its kind says it all. */
  readonly name: string | undefined;
  /** Of the pipe it sits on, as sold. */
  readonly size: string | undefined;
  readonly count: number;
  /** Runs, sources, points or pens it is for, each once. */
  readonly where: readonly string[];
  readonly basis: PartBasis;
  /** Of one, in the plan's own money. */
  readonly price: number | undefined;
}

/** A piece of one run. */
export interface RunPiece {
  readonly run: string;
  /** Which of how many, from the run's start. */
  readonly part: number;
  readonly parts: number;
  readonly length: number;
}

/** One stick, coil or leftover, and the pieces cut from it in order. */
export interface BarToCut {
  readonly from: "sold" | "leftover";
  readonly length: number;
  readonly pieces: readonly RunPiece[];
  readonly rest: number;
}

/** All pipe of one kind. Lengths [m]. */
export interface PipeToCut {
  readonly pipe: string;
  readonly name: string;
  readonly form: "stick" | "coil" | undefined;
  /** Lengths it is sold in; none where nobody says. */
  readonly sold: readonly number[];
  readonly soldFrom: "plan" | "usual" | undefined;
  readonly needed: number;
  readonly bars: readonly BarToCut[];
  /** Pieces that nothing is long enough for. */
  readonly uncut: readonly RunPiece[];
  readonly cutting: Omit<Cutting, "bars" | "uncut">;
  /** What goes as chips, and what is left over of all that is cut into. */
  readonly chips: number;
  readonly rests: number;
  /** On hand, but in pieces that nobody told: not counted on. */
  readonly untold: number;
  /** Of what is bought, in the plan's own money. */
  readonly price: number | undefined;
}

/** A kind of hole, how many of it, and where. */
export interface HoleToDrill {
  readonly hole: Hole;
  readonly thread: Thread | undefined;
  readonly count: number;
  readonly where: readonly string[];
}
