import { defaultRunId, defaultSourceId, endOfRun } from "../document/check-references.js";
import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import type { TypedValues } from "./typed-values.js";

/** The places where runs begin and end, by name, with what the plan says of their heights. */
export interface Joints {
  readonly id: string[];
  /** Stated height of the pipe [m above datum]; undefined where it follows from the falls. */
  readonly height: (number | undefined)[];
  /** Stated height of the ground [m above datum]. */
  readonly ground: (number | undefined)[];
  readonly bleed: boolean[];
  /** Position in the plan's sources, or -1. */
  readonly source: number[];
  /** Ends of each run, as positions in these lists. */
  readonly runFrom: number[];
  readonly runTo: number[];
  readonly runId: string[];
}

/**
 * Gathers the joints of a plan: sources first, then points, then ends that runs make.
 *
 * @param outletHeight  height of each source's outlet [m above datum], in the order of the plan
 */
export function gatherJoints(plan: Plan, outletHeight: readonly number[], values: TypedValues): Joints {
  const joints: Joints = {
    id: [],
    height: [],
    ground: [],
    bleed: [],
    source: [],
    runFrom: [],
    runTo: [],
    runId: [],
  };
  const place = new Map<string, number>();
  const add = (
    id: string,
    height: number | undefined,
    ground: number | undefined,
    bleed: boolean,
    source: number,
  ) => {
    place.set(id, joints.id.length);
    joints.id.push(id);
    joints.height.push(height);
    joints.ground.push(ground);
    joints.bleed.push(bleed);
    joints.source.push(source);
  };
  plan.sources.forEach((source, i) => {
    const ground = source.ground === undefined ? 0 : values.si(source.ground, "length");
    add(source.id ?? defaultSourceId(i), outletHeight[i], ground, false, i);
  });
  for (const point of plan.points ?? []) {
    const ground = point.ground === undefined ? undefined : values.si(point.ground, "length");
    const above = point.above === undefined ? undefined : values.si(point.above, "length");
    const isStated = ground !== undefined || above !== undefined;
    add(
      point.id,
      isStated ? (ground ?? 0) + (above ?? 0) : undefined,
      isStated ? (ground ?? 0) : undefined,
      point.bleed ?? false,
      -1,
    );
  }
  plan.runs.forEach((run, i) => {
    const end = run.to ?? endOfRun(run.id, i);
    if (!place.has(end)) add(end, undefined, undefined, false, -1);
  });
  plan.runs.forEach((run, i) => {
    const before = i === 0 ? 0 : joints.runTo[i - 1];
    joints.runFrom.push(run.from === undefined ? before : (place.get(run.from) ?? 0));
    joints.runTo.push(place.get(run.to ?? endOfRun(run.id, i)) ?? 0);
    joints.runId.push(run.id ?? defaultRunId(i));
  });
  return joints;
}

/**
 * The height falls along a run are counted from [m above datum]: that of its start, or for a run that starts at a
 * source the ground the source stands on. A slope is surveyed over the ground; a higher stand leaves it as it is.
 */
export function fallReference(joints: Joints, run: number, startHeight: number): number {
  const from = joints.runFrom[run];
  return joints.source[from] >= 0 ? (joints.ground[from] ?? 0) : startHeight;
}

/** A fall the plan gives for a whole run, from `fall` or from a survey that reaches its end; else undefined. */
export function statedFall(plan: Plan, run: number, values: TypedValues): number | undefined {
  const { fall, survey, length } = plan.runs[run];
  if (fall !== undefined) return values.si(fall, "length");
  const last = survey?.at(-1);
  if (last === undefined) return undefined;
  return Math.abs(values.si(last.along, "length") - values.si(length, "length")) < 1e-6
    ? values.si(last.fall, "length")
    : undefined;
}

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

/** Heights may differ by this much and still agree [m]. */
const HEIGHT_AGREES = 0.001;
/** A drop this much longer than its pipe is let pass as careless measuring [m]. */
const STRETCH = 0.02;

/**
 * Runs whose fall nobody states, in a ring whose other falls do not let all such runs lie level: which of them falls
 * is for the plan to say, not for the order of its runs.
 */
function leftOpen(
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

function disagreements(
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

function unconnected(plan: Plan, joints: Joints): Problem[] {
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
export function reachFromSources(
  joints: Joints,
  isOpen: (run: number) => boolean,
  start?: number,
): Uint8Array {
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
