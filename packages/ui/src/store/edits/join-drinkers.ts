import type { Plan, PlanDrinkerGroup } from "@headfall/hydraulics";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import { placesOf, rowOf, withRow } from "../drinker-places.js";
import { haveOnePen } from "./keep-pens.js";
import { tidyGroup } from "./part-keys.js";
import { groupsOf, withGroups, withRun } from "./plan-parts.js";
import { atWorkOf } from "./split-drinkers.js";

/** Spacings that differ less than this are one [m]. */
const SAME_SPACING = 1e-5;

/**
 * The plan with those groups of a run made one that go on one from another as a single row would, where that leaves
 * the same drinkers at work in the busiest minutes.
 *
 * @param run     a run that has just been made of two
 * @param before  how many of its groups come from the first of them
 */
export function withRowsJoined(plan: Plan, run: number, before: number, system: UnitSystem): Plan {
  const joined = plan.runs[run]!;
  const length = metresOf(joined.length);
  const groups = groupsOf(joined);
  const left = groups.slice(before);
  const rows = groups.slice(0, before).map((group) => {
    const next = left.findIndex(
      (other) => haveOnePen(plan, group.id, other.id) && goesOn(group, other, length),
    );
    const [other] = next < 0 ? [] : left.splice(next, 1);
    return other === undefined ? group : madeOne(group, other, length, system);
  });
  if (left.length + before === groups.length) return plan;
  const fewer = withRun(plan, run, withGroups(joined, [...rows, ...left]));
  return isSameWork(plan, fewer, run) ? fewer : plan;
}

function isSameWork(one: Plan, other: Plan, run: number): boolean {
  const [a, b] = [one, other].map((plan) => placesAtWork(plan, run)) as [number[], number[]];
  return a.length === b.length && a.every((place, i) => Math.abs(place - b[i]!) < 1e-4);
}

/** Where on a run the drinkers hang that are at work in the busiest minutes [m]. */
function placesAtWork(plan: Plan, run: number): number[] {
  const length = metresOf(plan.runs[run]!.length);
  return groupsOf(plan.runs[run])
    .flatMap((group, g) => {
      const { busiest } = atWorkOf(plan, run, g);
      return placesOf(group, length).filter((_, k) => busiest[k]);
    })
    .sort((a, b) => a - b);
}

function goesOn(one: PlanDrinkerGroup, other: PlanDrinkerGroup, length: number): boolean {
  const isAlike = one.kind === other.kind && one.drop === other.drop && one.need === other.need;
  if (!isAlike || !areCounts(one) || !areCounts(other)) return false;
  const [a, b] = [rowOf(one, length), rowOf(other, length)];
  const gap = b.first - (a.first + (a.count - 1) * a.every);
  const spacings = [...(a.count > 1 ? [a.every] : []), ...(b.count > 1 ? [b.every] : [])];
  return spacings.every((every) => Math.abs(every - gap) < SAME_SPACING);
}

const areCounts = ({ busiest, ordinary }: PlanDrinkerGroup) =>
  typeof busiest === "number" && typeof ordinary === "number";

function madeOne(
  one: PlanDrinkerGroup,
  other: PlanDrinkerGroup,
  length: number,
  system: UnitSystem,
): PlanDrinkerGroup {
  const [a, b] = [rowOf(one, length), rowOf(other, length)];
  const last = b.first + (b.count - 1) * b.every;
  const count = a.count + b.count;
  const row = { count, first: a.first, every: (last - a.first) / (count - 1) };
  const sum = (key: "busiest" | "ordinary") => Number(one[key]) + Number(other[key]);
  const group = tidyGroup({ ...one, count, busiest: sum("busiest"), ordinary: sum("ordinary") });
  return withRow(group, row, length, system);
}
