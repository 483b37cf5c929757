import { requireNotNegative } from "../numerics/require-number.js";

/** Least flow of a worked drinker by age [m³/s]. */
export interface FlowNeed {
  readonly atHatching: number;
  /** More of it with each week of age. */
  readonly perWeek: number;
  readonly most: number;
}

/**
 * Least flow a drinker should give while worked. The rule was published as a least flow; some of the trade read it as
 * the most. It is taken as the least.
 *
 *   q = min(a + b w, most),  for meat chickens a = 20 mL/min, b = 7 mL/min a week                         (1)
 *
 * @param need     the rule of the kind of bird
 * @param ageDays  age, w in (1) counted in weeks [days], ≥ 0
 * @returns q [m³/s]
 * @valid chickens to eight weeks; taken for others where nothing is published
 * @throws RangeError when the age is below 0
 * @source tabler-2013, static flow rule after Lott 2003, seen
 * @example needOfFlow({ atHatching: 20, perWeek: 7, most: 90 }, 56)   // 76
 */
export function needOfFlow(need: FlowNeed, ageDays: number): number {
  requireNotNegative("needOfFlow", { ageDays });
  return Math.min(need.atHatching + (need.perWeek * ageDays) / 7, need.most);
}
