import type { Plan } from "@headfall/hydraulics";
import { type AboveLayout, layAbove } from "../../kernels/above/lay-above.js";
import type { Ground } from "../../kernels/above/spot.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import { tidyPlan, tidyPoint, tidySource } from "./part-keys.js";
import { typedPlace, withEnds, withPoint, withSource } from "./plan-parts.js";

/**
 * The plan with the place of every joint written down as it is drawn, so that moving one leaves the others where they
 * are: what a plan does not place is drawn beside what it does.
 */
export function pinPlaces(plan: Plan, system: UnitSystem, layout: AboveLayout = layAbove(plan)): Plan {
  const loose = layout.joints.filter(({ isPlaced }) => !isPlaced);
  if (loose.length === 0) return plan;
  const places = new Map(loose.map((joint) => [joint.name, typedPlace(joint, system)]));
  const sources = plan.sources.map((source, index) => {
    const joint = layout.joints.find((each) => each.source === index);
    const place = joint === undefined ? undefined : places.get(joint.name);
    return place === undefined ? source : tidySource({ ...source, place });
  });
  const listed = (plan.points ?? []).map((point) => {
    const place = places.get(point.id);
    return place === undefined ? point : tidyPoint({ ...point, place });
  });
  const own = loose.filter(({ source, point }) => source < 0 && point < 0);
  const points = [...listed, ...own.map(({ name }) => ({ id: name, place: places.get(name)! }))];
  return tidyPlan({
    ...withEnds(plan),
    sources,
    points: points.length === 0 ? plan.points : points,
  });
}

/** Whether the plan says of any joint or corner where it is. */
export function saysPlaces(plan: Plan): boolean {
  return (
    plan.sources.some(({ place }) => place !== undefined) ||
    plan.points?.some(({ place }) => place !== undefined) === true ||
    plan.runs.some(({ corners }) => corners !== undefined && corners.length > 0)
  );
}

/** The plan with a joint put somewhere else; every other place must be written down already. */
export function placeJoint(
  plan: Plan,
  joint: { readonly name: string; readonly source: number },
  at: Ground,
  system: UnitSystem,
): Plan {
  const place = typedPlace(at, system);
  if (joint.source < 0) return withPoint(plan, joint.name, { place });
  return withSource(plan, joint.source, tidySource({ ...plan.sources[joint.source]!, place }));
}
