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
  const height: (number | undefined)[] = [...joints.height];
  const falls = plan.runs.map((_, i) => statedFall(plan, i, values));
  const meeting: number[][] = joints.id.map(() => []);
  plan.runs.forEach((_, i) => {
    meeting[joints.runFrom[i]].push(i);
    if (joints.runTo[i] !== joints.runFrom[i]) meeting[joints.runTo[i]].push(i);
  });
  const known = height.flatMap((h, j) => (h === undefined ? [] : [j]));
  /** Gives the joint at the other end of a run its height, if it has none, and tells which that is. */
  const pass = (run: number, here: number, fall: number): number | undefined => {
    const isStart = joints.runFrom[run] === here;
    const other = isStart ? joints.runTo[run] : joints.runFrom[run];
    if (height[other] !== undefined) return undefined;
    const known = height[here] as number;
    height[other] = isStart ? fallReference(joints, run, known) - fall : known + fall;
    return other;
  };
  /** Follows stated falls from the joints of `queue`, which grows by all that they reach. */
  const follow = (queue: number[], from = 0) => {
    for (let at = from; at < queue.length; at += 1) {
      for (const run of meeting[queue[at]]) {
        const fall = falls[run];
        const other = fall === undefined ? undefined : pass(run, queue[at], fall);
        if (other !== undefined) queue.push(other);
      }
    }
  };
  /** Where a run ends of which no fall is told: level, unless it is too short to come down from a source's outlet. */
  const levelEnd = (run: number, startHeight: number): number => {
    const level = fallReference(joints, run, startHeight);
    const canReach = Math.abs(startHeight - level) <= values.si(plan.runs[run].length, "length");
    return canReach ? level : startHeight;
  };
  /** The fall that says as much, counted like a stated one. */
  const levelFall = (run: number, here: number): number => {
    const start = height[here] as number;
    return joints.runFrom[run] === here ? fallReference(joints, run, start) - levelEnd(run, start) : 0;
  };
  follow(known);
  const firm = known.length;
  const level: number[] = [];
  for (let at = 0; at < known.length; at += 1) {
    for (const run of meeting[known[at]]) {
      const other = falls[run] === undefined ? pass(run, known[at], levelFall(run, known[at])) : undefined;
      if (other === undefined) continue;
      level.push(run);
      known.push(other);
      follow(known, known.length - 1);
    }
  }
  level.sort((a, b) => a - b);
  for (const run of level) values.note("fall", `runs[${run}].fall`);
  const problems = [
    ...disagreements(plan, joints, height, falls),
    ...leftOpen(joints, height, falls, new Set(known.slice(firm)), levelEnd),
    ...unconnected(plan, joints),
    ...regulatorsInRings(plan, joints),
  ];
  return { height: Float64Array.from(height, (h) => h ?? 0), problems };
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
