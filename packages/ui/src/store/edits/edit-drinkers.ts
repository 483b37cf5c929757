import { type Plan, type PlanDrinkerGroup, runNames } from "@headfall/hydraulics";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import { rowOf, withRow } from "../drinker-places.js";
import type { Edited } from "../plan-change.js";
import { exactLength, roundLength } from "../typed-length.js";
import { withGroupsNamed } from "./keep-pens.js";
import { tidyGroup } from "./part-keys.js";
import { GONE, groupsOf, refuse, withGroups, withRun } from "./plan-parts.js";

/** Hangs one more group of drinkers on a run; closer together than asked where the run is too short. */
export function addDrinkers(plan: Plan, run: number, drinkers: PlanDrinkerGroup, system: UnitSystem): Edited {
  const onto = plan.runs[run];
  if (onto === undefined) return refuse(GONE);
  const { group, isSqueezed } = fittingGroup(drinkers, metresOf(onto.length), system);
  const named = withGroupsNamed(plan, [run]);
  const groups = [...groupsOf(named.runs[run]), group];
  const count = group.count ?? 1;
  const added = `${count} ${count === 1 ? "drinker" : "drinkers"} added to ${runNames(plan)[run]}`;
  return {
    ok: true,
    plan: withRun(named, run, withGroups(onto, groups)),
    words: isSqueezed ? `${added}, closer together to fit` : added,
    selected: { kind: "drinkers", run, group: groups.length - 1 },
  };
}

function fittingGroup(drinkers: PlanDrinkerGroup, length: number, system: UnitSystem) {
  const group = tidyGroup(drinkers);
  const row = rowOf(group, length);
  const last = row.first + (row.count - 1) * row.every;
  if (last <= length + 1e-6) return { group, isSqueezed: false };
  const share = length / last;
  const squeezed = { ...row, first: row.first * share, every: row.every * share };
  return { group: withRow(group, squeezed, length, system), isSqueezed: true };
}

/**
 * Puts the first drinker of a group somewhere else on its run. A group with a spacing of its own moves whole, as far
 * as its last drinker lets it; one that is spread evenly stays spread to the end of the run.
 */
export function moveDrinkers(
  plan: Plan,
  run: number,
  group: number,
  first: number,
  system: UnitSystem,
): Edited {
  const onto = plan.runs[run];
  const moved = groupsOf(onto)[group];
  if (onto === undefined || moved === undefined) return refuse(GONE);
  const length = metresOf(onto.length);
  const steps = moved.every === undefined ? 0 : (moved.count ?? 1) - 1;
  const room = Math.max(0, length - steps * metresOf(moved.every));
  const at = typedWithin(first, room, system);
  const groups = groupsOf(onto).map((each, i) => (i === group ? tidyGroup({ ...each, first: at }) : each));
  return {
    ok: true,
    plan: withRun(plan, run, withGroups(onto, groups)),
    words: `drinkers of ${runNames(plan)[run]} from ${at} on`,
    selected: { kind: "drinkers", run, group },
  };
}

/** A distance from 0 to an end; its rounding does not take it past the end. */
export function typedWithin(distance: number, end: number, system: UnitSystem): string {
  const typed = roundLength(Math.min(end, Math.max(0, distance)), system);
  return metresOf(typed) > end ? exactLength(end, system) : typed;
}
