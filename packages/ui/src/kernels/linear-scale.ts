import { ticks } from "d3";

/** A straight scale: a value in its domain to a place on the drawing. */
export interface LinearScale {
  (value: number): number;
  readonly domain: readonly [number, number];
}

/**
 * Puts `domain` onto `range`, straight. (A ready-made scale of the drawing library would bring its colours, formats and
 * interpolators along: 12 kB of a budget of 100.)
 */
export function linearScale(
  domain: readonly [number, number],
  range: readonly [number, number],
): LinearScale {
  const [low, high] = domain;
  const perUnit = high === low ? 0 : (range[1] - range[0]) / (high - low);
  return Object.assign((value: number) => range[0] + (value - low) * perUnit, { domain });
}

/** A mark on an axis: where it is, and the round value in the axis's own unit. */
export interface Tick {
  readonly at: number;
  readonly value: number;
}

/** About so many marks at round values of `unit` (1 for metres, 0.3048 for feet). */
export function ticksOf(scale: LinearScale, unit: number, about: number): Tick[] {
  const [low, high] = scale.domain;
  return ticks(low / unit, high / unit, about).map((value) => ({ value, at: scale(value * unit) }));
}
