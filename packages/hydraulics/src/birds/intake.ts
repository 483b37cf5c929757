import { requirePositive } from "../numerics/require-number.js";
import { valueBetween } from "../numerics/value-between.js";

/** Water one bird drinks in a mild day at an age; `lay` (0 to 1) where it hangs on how many eggs are laid. */
export interface IntakeAt {
  readonly ageDays: number;
  readonly lay: number | undefined;
  /** [m³/day] */
  readonly intake: number;
}

/**
 * What one bird drinks in a mild day: straight between the ages of the table, level beyond the first and the last.
 * Where the rows differ by lay and not by age, straight between those.
 *
 * @param points   rows, by age or by lay
 * @param ageDays  age [days]; below 0 the bird has not hatched, and drinks nothing
 * @param lay      eggs a day per bird, 0 to 1
 * @returns intake [m³/day]
 * @valid any age; the last row stands for all that are older
 * @throws RangeError when there is no row
 * @source cautious-defaults, defaults: linear between rows, derived
 * @example intakeOf([{ ageDays: 21, lay: undefined, intake: 180e-6 }, { ageDays: 28, lay: undefined, intake: 245e-6 }], 24, 0)   // 0.00020785714285714286
 */
export function intakeOf(points: readonly IntakeAt[], ageDays: number, lay: number): number {
  requirePositive("intakeOf", { rows: points.length });
  if (ageDays < 0) return 0;
  const byLay = points.every((point) => point.lay !== undefined);
  const at = byLay ? lay : ageDays;
  const xOf = (point: IntakeAt) => (byLay ? (point.lay ?? 0) : point.ageDays);
  return valueBetween(
    points.map(xOf),
    points.map(({ intake }) => intake),
    at,
  );
}

/**
 * The rule for heat: compounded for each degree above the mild temperature the tables are for, and no more than the
 * most that is asked of it. Extreme heat is said to quadruple intake; that is a stated reserve, not the rule.
 *
 * @source cautious-defaults, default curve, derived
 */
export const HEAT_RULE = { above: 21, perDegree: 1.065, most: 3, emergency: 4 } as const;

/**
 * How many times as much birds drink in warm air.
 *
 *   f = min(1.065^(T − 21), 3) above 21 °C, 1 below                                                       (1)
 *
 * @param temperature  T, of the air where the birds are [°C]
 * @returns f [-]
 * @valid up to 40 °C; cooler air is not relied on to save water
 * @source cautious-defaults, default curve, derived
 * @example heatFactor(32)   // 1.9991514018020298
 */
export function heatFactor(temperature: number): number {
  if (temperature <= HEAT_RULE.above) return 1;
  return Math.min(HEAT_RULE.perDegree ** (temperature - HEAT_RULE.above), HEAT_RULE.most);
}
