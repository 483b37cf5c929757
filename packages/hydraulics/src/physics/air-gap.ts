import { requirePositive } from "../numerics/require-number.js";

/** Whose rule of air gaps: of towns in the United States, or of the United Kingdom's water fittings. */
export type AirGapRule = "us" | "uk";

/**
 * Least air gap under either rule [m].
 *
 * @source hillsborough-backflow, at least one inch, seen
 * @source waterregs-air-gap, at least 20 mm, seen
 */
export const LEAST_AIR_GAP = { us: 0.0254, uk: 0.02 } as const;

/**
 * Air to keep between the mouth of a hose or valve and the highest water it can meet, so that nothing is drawn back.
 *
 *   gap = max(2 d, least)                                                   (1)
 *
 * @param bore  d, inside diameter of the mouth [m], > 0
 * @param rule  whose least gap counts
 * @returns gap [m]
 * @valid a free mouth; near walls codes want more
 * @throws RangeError when bore is not finite and positive
 * @source hillsborough-backflow, twice the supply's diameter, seen
 * @source waterregs-air-gap, twice the inlet's bore, seen
 * @example airGapFor(0.015, "us")   // 0.03
 */
export function airGapFor(bore: number, rule: AirGapRule): number {
  requirePositive("airGapFor", { bore });
  return Math.max(2 * bore, LEAST_AIR_GAP[rule]);
}
