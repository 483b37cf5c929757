import type { PlanDrinkerGroup } from "@headfall/hydraulics";
import { typedLength, type UnitSystem } from "../typed-quantity.js";
import { FOOT, INCH } from "../us-units.js";

const MOST = 10;
const EVERY: Readonly<Record<UnitSystem, { readonly typed: string; readonly length: number }>> = {
  metric: { typed: "30 cm", length: 0.3 },
  us: { typed: "12 in", length: FOOT },
};
/** Firsts are whole multiples of this [m]: what a tape shows at a glance. */
const WHOLE: Readonly<Record<UnitSystem, number>> = { metric: 0.05, us: INCH };

/**
 * Nipples around a press on a run: as many as fit, up to ten, at the usual spacing, the middle one under the finger
 * where the run is long enough on both sides.
 */
export function fitDrinkers(runLength: number, along: number, system: UnitSystem): PlanDrinkerGroup {
  const { typed, length } = EVERY[system];
  const count = Math.max(1, Math.min(MOST, Math.floor(runLength / length + 1e-9)));
  const span = (count - 1) * length;
  const whole = WHOLE[system];
  const wanted = Math.round((along - span / 2) / whole) * whole;
  const first = Math.min(Math.max(wanted, 0), Math.max(0, runLength - span));
  return { kind: "nipple-side-action", count, first: typedLength(first, system), every: typed };
}
