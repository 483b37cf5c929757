import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { disagreements, leftOpen, regulatorsInRings, unconnected } from "./check-joints.js";
import { fallReference, statedFall } from "./falls.js";
import type { Joints } from "./joints.js";
import type { TypedValues } from "./typed-values.js";

/**
 * Heights of all joints [m above datum]. What the plan states is spread along stated falls first; only where neither
 * says anything does a run lie level. Heights that contradict each other, that a ring leaves open, and runs that hang
 * on nothing, are problems.
 */
export function resolveHeights(
  plan: Plan,
  joints: Joints,
  values: TypedValues,
): { height: Float64Array; problems: Problem[] } {
  const falls = plan.runs.map((_, i) => statedFall(plan, i, values));
  const height = [...joints.height];
  const spreading: Spreading = { plan, joints, values, falls, height, meeting: runsMeeting(joints) };
  const known = height.flatMap((h, j) => (h === undefined ? [] : [j]));
  followFalls(spreading, known);
  const firm = known.length;
  const level = layLevel(spreading, known);
  for (const run of level.sort((a, b) => a - b)) values.note("fall", `runs[${run}].fall`);
  const assumed = new Set(known.slice(firm));
  const problems = [
    ...disagreements(plan, joints, height, falls),
    ...leftOpen(joints, height, falls, assumed, (run, start) => levelEnd(spreading, run, start)),
    ...unconnected(plan, joints),
    ...regulatorsInRings(plan, joints),
  ];
  return { height: Float64Array.from(height, (h) => h ?? 0), problems };
}

/** Heights while they spread from joint to joint. */
interface Spreading {
  readonly plan: Plan;
  readonly joints: Joints;
  readonly values: TypedValues;
  /** By run, as stated [m]. */
  readonly falls: readonly (number | undefined)[];
  /** By joint, [m above datum]; undefined where nothing has come yet. */
  readonly height: (number | undefined)[];
  /** By joint: the runs that meet there. */
  readonly meeting: readonly (readonly number[])[];
}

function runsMeeting({ id, runFrom, runTo }: Joints): number[][] {
  const meeting: number[][] = id.map(() => []);
  runFrom.forEach((from, run) => {
    meeting[from].push(run);
    if (runTo[run] !== from) meeting[runTo[run]].push(run);
  });
  return meeting;
}

/** Follows stated falls from the joints of `queue`, which grows by all that they reach. */
function followFalls(spreading: Spreading, queue: number[], from = 0): void {
  const { falls, meeting } = spreading;
  for (let at = from; at < queue.length; at += 1) {
    for (const run of meeting[queue[at]]) {
      const fall = falls[run];
      const other = fall === undefined ? undefined : passOn(spreading, { run, here: queue[at], fall });
      if (other !== undefined) queue.push(other);
    }
  }
}

/** Lays runs of no stated fall level from the known joints on, which grow by all that these reach; tells which runs. */
function layLevel(spreading: Spreading, known: number[]): number[] {
  const { falls, meeting } = spreading;
  const level: number[] = [];
  for (let at = 0; at < known.length; at += 1) {
    const here = known[at];
    for (const run of meeting[here]) {
      if (falls[run] !== undefined) continue;
      const other = passOn(spreading, { run, here, fall: levelFall(spreading, run, here) });
      if (other === undefined) continue;
      level.push(run);
      known.push(other);
      followFalls(spreading, known, known.length - 1);
    }
  }
  return level;
}

/** Gives the joint at the other end of a run its height, if it has none, and tells which that is. */
function passOn(
  { joints, height }: Spreading,
  { run, here, fall }: { readonly run: number; readonly here: number; readonly fall: number },
): number | undefined {
  const isStart = joints.runFrom[run] === here;
  const other = isStart ? joints.runTo[run] : joints.runFrom[run];
  if (height[other] !== undefined) return undefined;
  const known = height[here] as number;
  height[other] = isStart ? fallReference(joints, run, known) - fall : known + fall;
  return other;
}

/** The fall that a run without one has, counted like a stated one [m]. */
function levelFall(spreading: Spreading, run: number, here: number): number {
  const { joints, height } = spreading;
  const start = height[here] as number;
  return joints.runFrom[run] === here
    ? fallReference(joints, run, start) - levelEnd(spreading, run, start)
    : 0;
}

/** Where a run ends of which no fall is told: level, unless it is too short to come down from a source's outlet. */
function levelEnd({ plan, joints, values }: Spreading, run: number, startHeight: number): number {
  const level = fallReference(joints, run, startHeight);
  const canReach = Math.abs(startHeight - level) <= values.si(plan.runs[run].length, "length");
  return canReach ? level : startHeight;
}

/**
 * Heights of the ground [m above datum]: where the plan says nothing, as at the nearest joint along the runs of which
 * it does, or the pipe's own height where that is lower.
 */
export function resolveGround(joints: Joints, height: Float64Array): Float64Array {
  const ground = [...joints.ground];
  const meeting: number[][] = joints.id.map(() => []);
  joints.runFrom.forEach((from, run) => {
    meeting[from].push(joints.runTo[run]);
    meeting[joints.runTo[run]].push(from);
  });
  const queue = ground.flatMap((g, j) => (g === undefined ? [] : [j]));
  for (let at = 0; at < queue.length; at += 1) {
    for (const other of meeting[queue[at]]) {
      if (ground[other] !== undefined) continue;
      ground[other] = Math.min(height[other], ground[queue[at]] ?? 0);
      queue.push(other);
    }
  }
  return Float64Array.from(ground, (g, j) => g ?? Math.min(height[j], 0));
}
