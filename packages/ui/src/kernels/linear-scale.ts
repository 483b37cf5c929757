import { ticks } from "d3";

/** A straight scale: a value in its domain to a place on the drawing. */
export interface LinearScale {
  (value: number): number;
  readonly domain: readonly [number, number];
  readonly range: readonly [number, number];
}

/**
 * Puts `domain` onto `range`, straight. (The ready-made scale would bring colours, number formats and interpolators
 * along: 10 kB of the 100 that may stand between a phone and its first verdict.)
 */
export function linearScale(
  domain: readonly [number, number],
  range: readonly [number, number],
): LinearScale {
  const [low, high] = domain;
  const perUnit = high === low ? 0 : (range[1] - range[0]) / (high - low);
  return Object.assign((value: number) => range[0] + (value - low) * perUnit, { domain, range });
}

/** A mark on an axis: where it is, and the round value in the axis's own unit. */
export interface Tick {
  readonly at: number;
  readonly value: number;
}

/**
 * Marks at round values of `unit` (1 for metres, 0.3048 for feet): steps of 1, 2 or 5 times a power of ten, the
 * finest that gives no more than one mark above `most`.
 */
export function ticksOf(scale: LinearScale, unit: number, most: number): Tick[] {
  const [low, high] = scale.domain.map((end) => end / unit) as [number, number];
  let values: number[] = [];
  // Asked for a number of marks, the library gives about as many.
  for (let count = most + 1; count >= 1; count -= 1) {
    values = ticks(low, high, count);
    if (values.length <= most + 1) break;
  }
  return values.map((value) => ({ value, at: scale(value * unit) }));
}
