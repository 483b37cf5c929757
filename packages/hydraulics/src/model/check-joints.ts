import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { fallReference } from "./falls.js";
import type { Joints } from "./joints.js";
import type { TypedValues } from "./typed-values.js";

/** Heights may differ by this much and still agree [m]. */
const HEIGHT_AGREES = 0.001;
/** A drop this much longer than its pipe is let pass as careless measuring [m]. */
const STRETCH = 0.02;

/**
 * Runs whose fall nobody states, in a ring whose other falls do not let all such runs lie level: which of them falls
 * is for the plan to say, not for the order of its runs.
 */
export function leftOpen(
  joints: Joints,
  height: readonly (number | undefined)[],
  falls: readonly (number | undefined)[],
  assumed: ReadonlySet<number>,
  levelEnd: (run: number, startHeight: number) => number,
): Problem[] {
  return falls.flatMap((fall, i): Problem[] => {
    const ends = [joints.runFrom[i], joints.runTo[i]];
    const [start, to] = [height[ends[0]], height[ends[1]]];
    const from = start === undefined ? undefined : levelEnd(i, start);
    if (fall !== undefined || from === undefined || to === undefined) return [];
    if (Math.abs(from - to) <= HEIGHT_AGREES || !ends.some((end) => assumed.has(end))) return [];
    return [
      {
        code: "heightsDisagree",
        path: `runs[${i}]`,
        found: "no fall",
        allowed: `In its ring some other run has no fall either, and they cannot all be level: ${JSON.stringify(joints.id[ends[0]])} and ${JSON.stringify(joints.id[ends[1]])} would be ${(Math.abs(from - to) * 100).toFixed(1)} cm apart.`,
        mend: 'Write the fall of each run of the ring but one; "0 cm" where it is level.',
      },
    ];
  });
}

/** Falls that contradict the heights at their ends. */
export function disagreements(
  plan: Plan,
  joints: Joints,
  height: readonly (number | undefined)[],
  falls: readonly (number | undefined)[],
): Problem[] {
  return plan.runs.flatMap((run, i): Problem[] => {
    const [from, to] = [height[joints.runFrom[i]], height[joints.runTo[i]]];
    const fall = falls[i];
    if (fall === undefined || from === undefined || to === undefined) return [];
    const start = fallReference(joints, i, from);
    const off = start - fall - to;
    if (Math.abs(off) <= HEIGHT_AGREES) return [];
    const names = `"${joints.id[joints.runFrom[i]]}" and "${joints.id[joints.runTo[i]]}"`;
    return [
      {
        code: "heightsDisagree",
        path: run.fall === undefined ? `runs[${i}].survey` : `runs[${i}].fall`,
        found: run.fall === undefined ? "a survey" : JSON.stringify(run.fall),
        allowed: `By the other heights of ${names} it falls ${((start - to) * 100).toFixed(1)} cm.`,
        mend: "Correct one of them, or leave the fall out.",
      },
    ];
  });
}

/** Runs whose ends are farther apart in height than the pipe is long. */
export function tooSteep(plan: Plan, joints: Joints, height: Float64Array, values: TypedValues): Problem[] {
  return plan.runs.flatMap((run, i): Problem[] => {
    const apart = Math.abs(height[joints.runFrom[i]] - height[joints.runTo[i]]);
    if (apart <= values.si(run.length, "length") + STRETCH) return [];
    return [
      {
        code: "doesNotFit",
        path: `runs[${i}].length`,
        found: JSON.stringify(run.length),
        allowed: `Its ends are ${(apart * 100).toFixed(1)} cm apart in height: no pipe that short joins them.`,
        mend: "Lengthen it, or correct the heights.",
      },
    ];
  });
}

/** Runs that hang on nothing. */
export function unconnected(plan: Plan, joints: Joints): Problem[] {
  const reached = reachFromSources(joints, () => true);
  return plan.runs.flatMap((run, i): Problem[] => {
    if (reached[joints.runFrom[i]] === 1) return [];
    return [
      {
        code: "notConnected",
        path: run.from === undefined ? `runs[${i}]` : `runs[${i}].from`,
        found: JSON.stringify(joints.runId[i]),
        allowed: "Every run hangs on a source, by itself or through other runs.",
        mend: "Say where it starts, or connect it.",
      },
    ];
  });
}

/** 1 for each joint that runs for which `isOpen` join to a source, or to `start` where that is given. */
function reachFromSources(joints: Joints, isOpen: (run: number) => boolean, start?: number): Uint8Array {
  const meeting: number[][] = joints.id.map(() => []);
  joints.runFrom.forEach((from, run) => {
    if (!isOpen(run)) return;
    meeting[from].push(joints.runTo[run]);
    meeting[joints.runTo[run]].push(from);
  });
  const reached = new Uint8Array(joints.id.length);
  const queue =
    start === undefined ? joints.source.flatMap((source, j) => (source >= 0 ? [j] : [])) : [start];
  for (const joint of queue) reached[joint] = 1;
  for (let at = 0; at < queue.length; at += 1) {
    for (const other of meeting[queue[at]]) {
      if (reached[other] === 1) continue;
      reached[other] = 1;
      queue.push(other);
    }
  }
  return reached;
}

/** Regulators that water can get around: they could not hold their setting. */
export function regulatorsInRings(plan: Plan, joints: Joints): Problem[] {
  return plan.runs.flatMap((run, i): Problem[] => {
    if (run.regulator === undefined) return [];
    const around = reachFromSources(joints, (other) => other !== i, joints.runTo[i]);
    if (around[joints.runFrom[i]] === 0) return [];
    return [
      {
        code: "regulatorInRing",
        path: `runs[${i}].regulator`,
        found: `a regulator in the ring through ${JSON.stringify(joints.runId[i])}`,
        allowed: "Water reaches a regulator's outlet only through the regulator.",
        mend: "Put it before the ring, or take one run of the ring out.",
      },
    ];
  });
}
