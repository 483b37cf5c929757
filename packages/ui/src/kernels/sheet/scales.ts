import type { UnitSystem } from "../typed-quantity.js";

/** How many times smaller the drawing is than the thing, and how that is said. */
export interface SheetScale {
  readonly times: number;
  readonly words: string;
}

const ratio = (times: number): SheetScale => ({ times, words: `1:${times}` });
/** Feet that one inch of paper stands for. */
const inchTo = (feet: number, words: string): SheetScale => ({ times: 12 * feet, words });

const METRIC: readonly SheetScale[] = [
  ...[5, 10, 20, 25, 50, 100, 200, 500].map(ratio),
  ...[1000, 2000, 5000, 10_000, 20_000, 50_000].map(ratio),
];

const US: readonly SheetScale[] = [
  inchTo(1 / 3, "3 in = 1 ft"),
  inchTo(2 / 3, "1 1/2 in = 1 ft"),
  inchTo(1, "1 in = 1 ft"),
  inchTo(4 / 3, "3/4 in = 1 ft"),
  inchTo(2, "1/2 in = 1 ft"),
  inchTo(8 / 3, "3/8 in = 1 ft"),
  inchTo(4, "1/4 in = 1 ft"),
  inchTo(16 / 3, "3/16 in = 1 ft"),
  inchTo(8, "1/8 in = 1 ft"),
  inchTo(16, "1/16 in = 1 ft"),
  ...[20, 40, 50, 100, 200, 500, 1000, 2000, 4000].map((feet) => inchTo(feet, `1 in = ${feet} ft`)),
];

/** The steps drawings are made in, largest drawing first. */
export const scalesOf = (system: UnitSystem): readonly SheetScale[] => (system === "us" ? US : METRIC);

/** The largest drawing that fits; undefined when even the smallest does not. */
export function largestThatFits(
  scales: readonly SheetScale[],
  fits: (scale: SheetScale) => boolean,
): SheetScale | undefined {
  return scales.find(fits);
}

/** Millimetres on paper for a length [m]. */
export const onPaper = (length: number, scale: SheetScale): number => (1000 * length) / scale.times;
