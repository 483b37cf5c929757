import type { PlanDrinkerGroup } from "../../document/plan-schema.js";
import { siOf, typedLength, typedLengthWithin } from "../cure-space.js";

/** Where drinkers of a group hang, as it would be typed. */
export type TypedPlaces = Pick<PlanDrinkerGroup, "first" | "every">;

/**
 * The first of some drinkers and how far it is from one to the next, as they would be typed: to the nearest, or all a
 * hair short where the last would else lie beyond the end of its run.
 *
 * @param places.along  of each of them from the start of the run, ascending [m]
 * @param places.end    where the run ends [m]
 * @param places.kept   what the plan has typed and still holds
 */
export function typedPlaces(
  {
    along,
    end,
    kept = {},
  }: { readonly along: readonly number[]; readonly end: number; readonly kept?: TypedPlaces },
  system: "metric" | "us",
): TypedPlaces {
  const typed = (type: typeof typedLength): TypedPlaces => ({
    first: kept.first ?? type(along[0], system),
    ...(along.length === 1 ? {} : { every: kept.every ?? type(along[1] - along[0], system) }),
  });
  const nearest = typed(typedLength);
  const last = siOf(nearest.first) + (along.length - 1) * siOf(nearest.every);
  return last > end + 1e-9 ? typed(typedLengthWithin) : nearest;
}
