/** A straight scale: a value in its domain to a place on the drawing. */
export interface LinearScale {
  (value: number): number;
  readonly domain: readonly [number, number];
}

/**
 * Puts `domain` onto `range`, straight. (A ready-made scale would bring colours, number formats and interpolators
 * along: 12 kB of the 100 that may stand between a phone and its first verdict.)
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

/**
 * Marks at round values of `unit` (1 for metres, 0.3048 for feet): steps of 1, 2 or 5 times a power of ten, the
 * finest that gives no more than `most`.
 */
export function ticksOf(scale: LinearScale, unit: number, most: number): Tick[] {
  const [low, high] = scale.domain.map((end) => end / unit) as [number, number];
  const step = roundStep((high - low) / most);
  const ticks: Tick[] = [];
  // Counted in whole steps, so that 0.1 + 0.2 is not written on an axis.
  for (let k = Math.ceil(low / step - 1e-9); k * step <= high + 1e-9 * step; k++) {
    const value = Number((k * step).toPrecision(12));
    ticks.push({ value, at: scale(value * unit) });
  }
  return ticks;
}

/** The least of 1, 2, 5, 10 times a power of ten that is no less than `least`. */
function roundStep(least: number): number {
  if (!(least > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(least));
  const factor = [1, 2, 5, 10].find((candidate) => candidate * power >= least * (1 - 1e-9)) ?? 10;
  return factor * power;
}
