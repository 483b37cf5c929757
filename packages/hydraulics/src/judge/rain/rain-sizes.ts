import type { RainRecord } from "../../document/rain-record.js";
import { balanceRain, type RoofRun, runOff } from "../../simulate/rain.js";

const shortDaysWith = (inflow: ArrayLike<number>, demand: ArrayLike<number>, capacity: number) =>
  balanceRain({ inflow, demand, capacity, start: capacity }, "drawnFirst").shortDays;

/** Least size without a short day when each day is drawn before its rain comes in; to a hundredth of a litre. */
export function sizeWithoutShortDays(
  inflow: Float64Array,
  demand: Float64Array,
  rainFirst: number,
): number | undefined {
  const most = demand.reduce((one, other) => Math.max(one, other), 0);
  const fails = (size: number) => shortDaysWith(inflow, demand, size) > 0;
  const high = 2 * (rainFirst + most) + 1e-3;
  return fails(high) ? undefined : leastThatServes(fails, high, () => 1e-5);
}

/** Between 0 and what serves, halved again and again: what serves, with something that fails within a tolerance below. */
function leastThatServes(
  fails: (size: number) => boolean,
  serves: number,
  tolerance: (size: number) => number,
): number {
  let [low, high] = [0, serves];
  while (high - low > tolerance(high)) {
    const middle = (low + high) / 2;
    if (fails(middle)) low = middle;
    else high = middle;
  }
  return high;
}

/** Least roof with which this vessel has no short day; to a thousandth. */
export function roofWithoutShortDays(
  roof: RoofRun,
  record: RainRecord,
  demand: Float64Array,
  usable: number,
): number | undefined {
  const fails = (area: number) => shortDaysWith(runOff({ ...roof, area }, record.rain), demand, usable) > 0;
  let high = Math.max(roof.area, 1);
  while (fails(high)) {
    high *= 2;
    // No roof brings rain in a dry spell that is longer than the vessel lasts.
    if (high > 1e5) return undefined;
  }
  return leastThatServes(fails, high, (area) => 1e-3 * area);
}

/** Days short with vessels around the one there is and the one that never fails. */
export function sizesAround(
  inflow: Float64Array,
  demand: Float64Array,
  usable: number,
  neverFails: number | undefined,
) {
  const top = 1.1 * Math.max(usable, neverFails ?? 4 * usable);
  return Array.from({ length: 24 }, (_, k) => {
    const size = (top * (k + 1)) / 24;
    return { usable: size, shortDays: shortDaysWith(inflow, demand, size) };
  });
}
