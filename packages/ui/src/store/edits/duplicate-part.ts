import { type Plan, runEnds, runNames, sourceNames } from "@headfall/hydraulics";
import { layAbove } from "../../kernels/above/lay-above.js";
import type { Ground } from "../../kernels/above/spot.js";
import { drinkerNames } from "../../kernels/group-names.js";
import type { Selected } from "../../kernels/selected.js";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import { rowOf } from "../drinker-places.js";
import type { Edited } from "../plan-change.js";
import { heightsOf } from "../plan-heights.js";
import { typedWithin } from "./edit-drinkers.js";
import { keepHeights } from "./keep-heights.js";
import { copiedInPens, withGroupsNamed } from "./keep-pens.js";
import { tidyGroup, tidyRun, tidySource } from "./part-keys.js";
import { pinPlaces } from "./pin-places.js";
import {
  freeName,
  freePointName,
  freeRunName,
  freeSourceName,
  GONE,
  groupsOf,
  meetingRuns,
  refuse,
  typedPlace,
  withGroups,
  withPoint,
  withRun,
} from "./plan-parts.js";
import { joinedToSources } from "./reach-parts.js";

/** How far beside the old one a copy is drawn [m]. */
const BESIDE = 1;

/** Makes one more of a source, a run or a group of drinkers, beside the old one. */
export function duplicatePart(plan: Plan, part: Selected, system: UnitSystem): Edited {
  switch (part.kind) {
    case "source":
      return duplicateSource(plan, part.source, system);
    case "run":
      return duplicateRun(plan, part.run, system);
    case "drinkers":
      return duplicateGroup(plan, part.run, part.group, system);
    case "joint":
      return refuse("A joint alone has no copy: duplicate one of its runs.");
  }
}

function duplicateSource(plan: Plan, index: number, system: UnitSystem): Edited {
  if (plan.sources[index] === undefined) return refuse(GONE);
  const spot = layAbove(plan).jointByName.get(sourceNames(plan)[index]!)!;
  const pinned = pinPlaces(plan, system);
  const id = freeSourceName(plan);
  const place = typedPlace({ x: spot.x, y: spot.y - BESIDE }, system);
  const sources = [...pinned.sources, tidySource({ ...pinned.sources[index]!, id, place })];
  return {
    ok: true,
    plan: { ...pinned, sources },
    words: `${id} added, like ${sourceNames(plan)[index]}`,
    selected: { kind: "source", source: sources.length - 1 },
  };
}

/** A run of the same kind from the same joint; its other end is free. */
function duplicateRun(plan: Plan, index: number, system: UnitSystem): Edited {
  if (plan.runs[index] === undefined) return refuse(GONE);
  const { from, to } = runEnds(plan)[index]!;
  const meeting = meetingRuns(plan);
  const reached = joinedToSources(plan);
  // It hangs where the old one does: at its start, unless that is the end that hangs free.
  const isFree = (name: string) => meeting.get(name)?.length === 1 && reached.get(name) !== -1;
  const keepsEnd = isFree(from) && !isFree(to);
  const spots = layAbove(plan).runs[index]!.spots.map(besideOf(layAbove(plan).runs[index]!.spots));
  const joint = freePointName(plan);
  const pinned = pinPlaces(plan, system);
  const place = typedPlace(keepsEnd ? spots[0]! : spots.at(-1)!, system);
  const listed = withPoint(pinned, joint, { place });
  const corners = spots.slice(1, -1).map((spot) => typedPlace(spot, system));
  const id = freeRunName(plan);
  const ends = keepsEnd ? { from: joint, to } : { from, to: joint };
  const copy = tidyRun({
    ...plan.runs[index]!,
    id,
    ...ends,
    corners: corners.length === 0 ? undefined : corners,
  });
  const copied = keepHeights(heightsOf(plan), { ...listed, runs: [...listed.runs, copy] }, system);
  return {
    ok: true,
    plan: copiedInPens(copied, runNames(plan)[index]!, id),
    words: `${id} added, like ${plan.runs[index]!.id ?? `run ${index + 1}`}`,
    selected: { kind: "run", run: copied.runs.length - 1 },
  };
}

/** Moves a spot square to the way from first to last. */
function besideOf(spots: readonly Ground[]): (spot: Ground) => Ground {
  const [first, last] = [spots[0]!, spots.at(-1)!];
  const [dx, dy] = [last.x - first.x, last.y - first.y];
  const across = Math.hypot(dx, dy);
  if (across === 0) return ({ x, y }) => ({ x, y: y - BESIDE });
  return ({ x, y }) => ({ x: x + (dy / across) * BESIDE, y: y - (dx / across) * BESIDE });
}

/** The same drinkers once more, half a spacing on where there is room. */
function duplicateGroup(before: Plan, run: number, group: number, system: UnitSystem): Edited {
  const plan = withGroupsNamed(before, [run]);
  const groups = groupsOf(plan.runs[run]);
  const old = groups[group];
  if (old === undefined) return refuse(GONE);
  const length = metresOf(plan.runs[run]!.length);
  const { count, first, every } = rowOf(old, length);
  const room = length - (old.every === undefined ? 0 : (count - 1) * every);
  const id = old.id === undefined ? undefined : freeName(old.id, 2, drinkerNames(plan));
  const copy = tidyGroup({
    ...old,
    id,
    first: typedWithin(first + every / 2, Math.max(0, room), system),
  });
  const more = [...groups.slice(0, group + 1), copy, ...groups.slice(group + 1)];
  const copied = withRun(plan, run, withGroups(plan.runs[run]!, more));
  return {
    ok: true,
    plan: old.id === undefined || id === undefined ? copied : copiedInPens(copied, old.id, id),
    words: `${count} more ${count === 1 ? "drinker" : "drinkers"}`,
    selected: { kind: "drinkers", run, group: group + 1 },
  };
}
