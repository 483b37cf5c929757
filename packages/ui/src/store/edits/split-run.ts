import { type Plan, type PlanRun, runEnds, runNames } from "@headfall/hydraulics";
import { type AboveLayout, layAbove, lengthOf, spotAt } from "../../kernels/above/lay-above.js";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import { placesOf } from "../drinker-places.js";
import type { Edited } from "../plan-change.js";
import { AT_END, endReading, heightsOf, toldFall } from "../plan-heights.js";
import { exactLength, roundLength } from "../typed-length.js";
import { movedJoints } from "./keep-heights.js";
import { splitRunInPens, withGroupsNamed } from "./keep-pens.js";
import { tidyRun } from "./part-keys.js";
import { pinPlaces, saysPlaces } from "./pin-places.js";
import {
  freePointName,
  freeRunName,
  GONE,
  groupsOf,
  refuse,
  typedPlace,
  withEnds,
  withGroups,
  withPoint,
  withRun,
} from "./plan-parts.js";
import { courseOf, heightAlong, type RunCourse } from "./run-course.js";
import { contradictionsIn } from "./settle-edit.js";
import { splitGroups } from "./split-drinkers.js";

/** A plan with a run cut in two, and the joint between its parts. */
export type SplitPlan =
  | { readonly ok: true; readonly plan: Plan; readonly joint: string }
  | { readonly ok: false; readonly because: string };

/** A piece shorter than this is not cut off [m]. */
const LEAST_PIECE = 0.002;
/** A drinker or reading this near is where the run is cut [m]. */
const NEAR = 0.003;

/**
 * Cuts a run in two. What sits at its start (fittings, tap, one-way valve, regulator) stays on the first part; heights,
 * heads and flows stay as they were. Only in the ordinary hour, where a plan says how many drinkers of a group are at
 * work but not which, may others of a group that was cut through be taken.
 */
export function splitRun(plan: Plan, index: number, along: number, system: UnitSystem): Edited {
  const split = splitAt(plan, index, along, system);
  if (!split.ok) return split;
  const words = `${runNames(plan)[index]} cut in two at ${split.joint}`;
  return { ok: true, plan: split.plan, words, selected: { kind: "joint", joint: split.joint } };
}

export function splitAt(before: Plan, index: number, along: number, system: UnitSystem): SplitPlan {
  const plan = withGroupsNamed(before, [index]);
  const run = plan.runs[index];
  if (run === undefined) return refuse(GONE);
  const length = metresOf(run.length);
  const at = typedCut(run, along, system);
  if (!(at.along >= LEAST_PIECE && at.along <= length - LEAST_PIECE))
    return refuse("A run is cut between its ends.");
  const joint = freePointName(plan);
  const course = courseOf(plan, index);
  const drawn = layAbove(plan);
  const open = withEnds(placedEnds(plan, index, drawn, system));
  const parts = partsOf(open, index, { ...at, joint, course, drawn, system, plan });
  const listed = withPoint(open, joint, pointAt(open, index, run, at.along, drawn, system));
  const cuts = parts.map(([first, second]) => {
    const cut = withRun(listed, index, first);
    return { ...cut, runs: [...cut.runs, second] };
  });
  const height = heightAlong(course, at.along);
  return {
    ok: true,
    joint,
    plan: splitRunInPens(
      plan,
      cuts.find((cut) => keepsHeights(plan, cut, joint, height)) ?? cuts.at(-1)!,
      index,
    ),
  };
}

/** Where exactly a run is cut, as it is written: in round figures, or at a drinker or reading that is very near. */
function typedCut(run: PlanRun, along: number, system: UnitSystem): { along: number; typed: string } {
  const length = metresOf(run.length);
  const places = [
    ...groupsOf(run).flatMap((group) => placesOf(group, length)),
    ...(run.survey ?? []).map((reading) => metresOf(reading.along)),
  ];
  const round = metresOf(roundLength(along, system));
  const near = places
    .filter((place) => Math.abs(place - round) <= NEAR && place > 0 && place < length)
    .sort((a, b) => Math.abs(a - round) - Math.abs(b - round))[0];
  const typed = near === undefined ? roundLength(along, system) : exactLength(near, system);
  return { along: metresOf(typed), typed };
}

/** Writes places down where the new joint needs one: in a plan that says where things are. */
function placedEnds(plan: Plan, index: number, drawn: AboveLayout, system: UnitSystem): Plan {
  if (!saysPlaces(plan)) return plan;
  const { from, to } = runEnds(plan)[index]!;
  const isPlaced = [from, to].every((name) => drawn.jointByName.get(name)?.isPlaced === true);
  return isPlaced ? plan : pinPlaces(plan, system, drawn);
}

function pointAt(
  plan: Plan,
  index: number,
  run: PlanRun,
  along: number,
  drawn: AboveLayout,
  system: UnitSystem,
) {
  const spot = spotAt(drawn.runs[index]!.spots, along / metresOf(run.length));
  const isVented = run.survey?.some((each) => Math.abs(metresOf(each.along) - along) < AT_END && each.bleed);
  return {
    ...(isVented === true ? { bleed: true } : {}),
    ...(saysPlaces(plan) ? { place: typedPlace(spot, system) } : {}),
  };
}

interface Cut {
  readonly along: number;
  readonly typed: string;
  readonly joint: string;
  readonly course: RunCourse;
  readonly drawn: AboveLayout;
  readonly system: UnitSystem;
  readonly plan: Plan;
}

/** The two parts, with falls told by none, by the first or by both: whichever is enough to keep the heights. */
function partsOf(plan: Plan, index: number, cut: Cut): [PlanRun, PlanRun][] {
  const { along, course, system, joint } = cut;
  const run = plan.runs[index]!;
  const restTyped = exactLength(course.length - along, system);
  const [corners, laterCorners] = cornersOf(cut, run, index);
  const groups = splitGroups(cut.plan, index, { along, rest: metresOf(restTyped) }, system);
  const [survey, laterSurvey] = surveysOf(run, cut, restTyped);
  const first = withGroups(
    tidyRun({ ...run, to: joint, length: cut.typed, fall: undefined, survey, corners }),
    groups.before,
  );
  const { from, to, ...rest } = run;
  const second = withGroups(
    tidyRun({
      id: freeRunName(plan),
      from: joint,
      to: to!,
      length: restTyped,
      survey: laterSurvey,
      corners: laterCorners,
      pipe: rest.pipe,
      drinkers: rest.drinkers,
    }),
    groups.beyond,
  );
  const here = heightAlong(course, along);
  const firstTold = endReading(first) >= 0 ? first : withFall(first, course.reference - here, system);
  const secondTold =
    endReading(second) >= 0 ? second : withFall(second, here - course.knots.at(-1)!.height, system);
  const told: [PlanRun, PlanRun] = [firstTold, secondTold];
  if (toldFall(run) !== undefined) return [told];
  return [[first, second], [firstTold, second], told];
}

const withFall = (run: PlanRun, fall: number, system: UnitSystem): PlanRun =>
  tidyRun({ ...run, fall: exactLength(fall, system) });

/** Corners by their share of the drawn way. */
function cornersOf({ drawn, along, course }: Cut, run: PlanRun, index: number) {
  const { spots, drawnLength } = drawn.runs[index]!;
  const corners = run.corners ?? [];
  const way = (drawnLength * along) / course.length;
  const before = corners.filter((_, i) => lengthOf(spots.slice(0, i + 2)) < way).length;
  const listOrNone = <T>(list: T[]) => (list.length === 0 ? undefined : list);
  return [listOrNone(corners.slice(0, before)), listOrNone(corners.slice(before))] as const;
}

/** Readings of each part; those beyond the cut are counted from the new joint. */
function surveysOf(run: PlanRun, { along, typed, course, system }: Cut, restTyped: string) {
  const readings = run.survey ?? [];
  const end = endReading(run);
  const here = course.reference - heightAlong(course, along);
  const first = readings.flatMap((reading) => {
    const at = metresOf(reading.along);
    if (Math.abs(at - along) < AT_END) return [{ ...reading, along: typed }];
    return at < along ? [reading] : [];
  });
  const second = readings.flatMap((reading, i) => {
    const at = metresOf(reading.along) - along;
    if (at < AT_END) return [];
    const fall = exactLength(metresOf(reading.fall) - here, system);
    return [{ ...reading, along: i === end ? restTyped : exactLength(at, system), fall }];
  });
  const listOrNone = <T>(list: T[]) => (list.length === 0 ? undefined : list);
  return [listOrNone(first), listOrNone(second)] as const;
}

function keepsHeights(before: Plan, after: Plan, joint: string, height: number): boolean {
  const now = heightsOf(after);
  const here = now.joints.get(joint)?.height;
  if (here === undefined || Math.abs(here - height) > 1e-6) return false;
  if (movedJoints(heightsOf(before), now).length > 0) return false;
  return contradictionsIn(before).length > 0 || contradictionsIn(after).length === 0;
}
