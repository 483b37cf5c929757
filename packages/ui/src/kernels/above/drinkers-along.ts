import type { PlanDrinkerGroup } from "@headfall/hydraulics";
import { readMetres } from "../typed-metres.js";

/**
 * Distances of a group's drinkers from the start of their run [m], by the plan alone, so that a drawing follows the
 * hand before the plan is checked: the first one spacing in, the spacing even to the end, unless the plan says.
 */
export function drinkersAlong(group: PlanDrinkerGroup, runLength: number): readonly number[] {
  const count = group.count ?? 1;
  const first = readMetres(group.first);
  const every = readMetres(group.every) ?? evenSpacing(count, first, runLength);
  const start = first ?? every;
  return Array.from({ length: count }, (_, i) => Math.min(runLength, start + i * every));
}

function evenSpacing(count: number, first: number | undefined, runLength: number): number {
  if (first === undefined) return runLength / count;
  return count === 1 ? 0 : Math.max(0, runLength - first) / (count - 1);
}
