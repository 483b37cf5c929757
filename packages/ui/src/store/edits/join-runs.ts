import {
  DEFAULTS,
  findPipe,
  kindFound,
  type Plan,
  type PlanDrinkerGroup,
  type PlanRun,
  runEnds,
  runNames,
  sourceNames,
} from "@headfall/hydraulics";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import { rowOf, withRow } from "../drinker-places.js";
import type { Edited } from "../plan-change.js";
import { AT_END, endReading, heightsOf, toldFall } from "../plan-heights.js";
import { isSameValue } from "../plan-values.js";
import { exactLength } from "../typed-length.js";
import { withRowsJoined } from "./join-drinkers.js";
import { keepHeights, movedJoints } from "./keep-heights.js";
import { withRunsToJoin } from "./keep-pens.js";
import { tidyRun } from "./part-keys.js";
import {
  groupsOf,
  meetingRuns,
  refuse,
  withEnds,
  withGroups,
  withoutPoints,
  withoutRuns,
  withRun,
} from "./plan-parts.js";
import { courseOf, heightAlong } from "./run-course.js";
import { contradictionsIn } from "./settle-edit.js";
import { fixedAtStart, turnRun } from "./turn-run.js";

/** Pipe this much off the straight line at the joint is told by a reading there [m]. */
const STRAIGHT = 1e-5;

/** Makes one run of the two that meet at a joint, whichever way round they are told. */
export function joinRuns(plan: Plan, joint: string, system: UnitSystem): Edited {
  const because = whyNotJoined(plan, joint);
  if (because !== undefined) return refuse(because);
  const order = orderAt(withEnds(plan), joint);
  if (typeof order === "string") return refuse(order);
  const open = withRunsToJoin(withEnds(plan), order[0]!.index, order[1]!.index);
  const [first, second] = order.map(({ index, isTurned }) =>
    isTurned ? turned(open, index, system) : open.runs[index]!,
  ) as [PlanRun, PlanRun];
  const [keptIndex, goneIndex] = [order[0]!.index, order[1]!.index];
  const heights = heightsOf(open);
  const course = { plan: open, first, second, joint, system };
  const build = (isFallTold: boolean) => {
    const joined = joinedRun(course, isFallTold);
    const whole = withoutRuns(withRun(open, keptIndex, joined), new Set([goneIndex]));
    return withoutPoints(whole, (id) => id === joint);
  };
  const untold = [first, second].every((run) => toldFall(run) === undefined) ? [build(false)] : [];
  const isKept = (each: Plan) =>
    movedJoints(heights, heightsOf(each)).length === 0 &&
    (contradictionsIn(plan).length > 0 || contradictionsIn(each).length === 0);
  const joined = untold.find(isKept) ?? keepHeights(heights, build(true), system);
  const run = keptIndex > goneIndex ? keptIndex - 1 : keptIndex;
  const whole = withRowsJoined(joined, run, groupsOf(first).length, system);
  const names = runNames(plan);
  const moved = second.fittings === undefined ? "" : "; its fittings now count at its start";
  const words = `${names[keptIndex]} and ${names[goneIndex]} made one${moved}`;
  return { ok: true, plan: whole, words, selected: { kind: "run", run } };
}

/** Why the runs at a joint cannot be made one; undefined when nothing stands against it but their direction. */
function whyNotJoined(plan: Plan, joint: string): string | undefined {
  const meeting = meetingRuns(plan).get(joint) ?? [];
  if (sourceNames(plan).includes(joint)) return `${joint} is a source: its runs start there.`;
  if (meeting.length !== 2) return `At ${joint} ${meeting.length} runs meet: only two can be made one.`;
  if (plan.sources.some(({ feed }) => feed?.from === joint)) return `A header tank is filled from ${joint}.`;
  const [one, other] = meeting.map((index) => plan.runs[index]!);
  if (!isSamePipe(one!, other!)) return "They are of different pipe: a run is of one pipe.";
  const ends = meeting.map((index) => runEnds(plan)[index]!);
  const far = ends.map(({ from, to }) => (from === joint ? to : from));
  if (far[0] === far[1]) return "Both lead to the same joint: one run would end where it starts.";
  return undefined;
}

function isSamePipe(one: PlanRun, other: PlanRun): boolean {
  const pipeOf = ({ pipe }: PlanRun) => {
    const kind = kindFound(typeof pipe === "object" ? undefined : findPipe(pipe ?? DEFAULTS.pipe.typed));
    return kind?.id ?? pipe;
  };
  return isSameValue(pipeOf(one), pipeOf(other));
}

interface Directed {
  readonly index: number;
  readonly isTurned: boolean;
}

/** Which run comes first and which must be turned, so that what sits at a start still does; or why none may. */
function orderAt(plan: Plan, joint: string): readonly Directed[] | string {
  const [one, other] = meetingRuns(plan).get(joint) as [number, number];
  const asFirst = (index: number) => ({ index, isTurned: plan.runs[index]!.from === joint });
  const asSecond = (index: number) => ({ index, isTurned: plan.runs[index]!.to === joint });
  const sources = new Set(sourceNames(plan));
  const faultOf = ([first, second]: readonly [Directed, Directed]) => {
    const [a, b] = [plan.runs[first.index]!, plan.runs[second.index]!];
    const stuck = fixedAtStart(b) ?? (first.isTurned ? fixedAtStart(a) : undefined);
    if (stuck !== undefined) return `There is a ${stuck} between them: it must stay at the start of a run.`;
    const leavesSource = (run: PlanRun, { isTurned }: Directed) => isTurned && sources.has(run.from!);
    return leavesSource(a, first) || leavesSource(b, second)
      ? "Both start at a source: a run starts at one only."
      : undefined;
  };
  const turns = (order: readonly Directed[]) => order.filter(({ isTurned }) => isTurned).length;
  const orders = [
    [asFirst(one), asSecond(other)],
    [asFirst(other), asSecond(one)],
  ] as [Directed, Directed][];
  orders.sort((a, b) => turns(a) - turns(b));
  return orders.find((order) => faultOf(order) === undefined) ?? faultOf(orders[0]!)!;
}

/** A run of the plan told from its other end. */
function turned(plan: Plan, index: number, system: UnitSystem): PlanRun {
  const run = plan.runs[index]!;
  const course = courseOf(plan, index);
  const fall = course.reference - course.knots.at(-1)!.height;
  return turnRun(run, fall, toldFall(run) !== undefined, system);
}

interface Joining {
  readonly plan: Plan;
  readonly first: PlanRun;
  readonly second: PlanRun;
  readonly joint: string;
  readonly system: UnitSystem;
}

function joinedRun({ plan, first, second, joint, system }: Joining, isFallTold: boolean): PlanRun {
  const { joints } = heightsOf(plan);
  const source = sourceNames(plan).indexOf(first.from!);
  const startHeight = joints.get(first.from!)?.height ?? 0;
  const reference = source < 0 ? startHeight : metresOf(plan.sources[source]!.ground);
  const here = joints.get(joint)?.height ?? reference - (toldFall(first) ?? 0);
  const end = joints.get(second.to!)?.height ?? here - (toldFall(second) ?? 0);
  const along = metresOf(first.length);
  const length = exactLength(along + metresOf(second.length), system);
  const survey = joinedSurvey({ plan, first, second, joint, system }, { reference, startHeight, here, end });
  const fittings = [...(first.fittings ?? []), ...(second.fittings ?? [])];
  const corners = [...(first.corners ?? []), ...cornerAt(plan, joint), ...(second.corners ?? [])];
  const joined = tidyRun({
    ...first,
    to: second.to,
    length,
    fall: isFallTold ? exactLength(reference - end, system) : undefined,
    survey: survey.length === 0 ? undefined : survey,
    corners: corners.length === 0 ? undefined : corners,
    fittings: fittings.length === 0 ? undefined : fittings,
  });
  return withGroups(joined, movedGroups(first, second, length, system));
}

/** The joint's place stays a corner of the drawing. */
function cornerAt(plan: Plan, joint: string) {
  const place = plan.points?.find(({ id }) => id === joint)?.place;
  return place === undefined ? [] : [place];
}

interface JoinHeights {
  readonly reference: number;
  readonly startHeight: number;
  readonly here: number;
  readonly end: number;
}

/** Readings of both runs, and one at the joint where its height is not on the straight line or air can leave there. */
function joinedSurvey({ plan, first, second, joint, system }: Joining, heights: JoinHeights) {
  const { reference, here } = heights;
  const along = metresOf(first.length);
  const isVented = plan.points?.find(({ id }) => id === joint)?.bleed;
  const before = innerReadings(first);
  const beyond = innerReadings(second).map((reading) => ({
    ...reading,
    along: exactLength(along + metresOf(reading.along), system),
    fall: exactLength(reference - here + metresOf(reading.fall), system),
  }));
  const straight = straightAt(along, [...before, ...beyond], heights, along + metresOf(second.length));
  const isNeeded = Math.abs(straight - here) > STRAIGHT || isVented === true;
  const at = {
    along: first.length,
    fall: exactLength(reference - here, system),
    ...(isVented === undefined ? {} : { bleed: isVented }),
  };
  return [...before, ...(isNeeded ? [at] : []), ...beyond];
}

type Reading = NonNullable<PlanRun["survey"]>[number];

const innerReadings = (run: PlanRun): readonly Reading[] =>
  (run.survey ?? []).filter((reading, i) => i !== endReading(run) && metresOf(reading.along) > AT_END);

/** Height of the joined run at a place if only its ends and these readings told it. */
function straightAt(
  along: number,
  readings: readonly Reading[],
  { reference, startHeight, end }: JoinHeights,
  length: number,
): number {
  const told = readings.map((reading) => ({
    along: metresOf(reading.along),
    height: reference - metresOf(reading.fall),
  }));
  const knots = [{ along: 0, height: startHeight }, ...told, { along: length, height: end }];
  return heightAlong({ knots }, along);
}

/** The groups of both runs, each where it hung, counted from the start of the first. */
function movedGroups(first: PlanRun, second: PlanRun, typed: string, system: UnitSystem) {
  const length = metresOf(typed);
  const shift = metresOf(first.length);
  const moved = (run: PlanRun, by: number) =>
    groupsOf(run).map((group): PlanDrinkerGroup => {
      const row = rowOf(group, metresOf(run.length));
      return withRow(group, { ...row, first: row.first + by }, length, system);
    });
  return [...moved(first, 0), ...moved(second, shift)];
}
