import {
  DEFAULTS,
  findVessel,
  kindFound,
  type Plan,
  type PlanRun,
  type PlanSource,
  runEnds,
  sourceNames,
} from "@headfall/hydraulics";
import { metresOf } from "../kernels/typed-metres.js";

/** What gives a joint its height: itself, or the run that leads to it from a joint of known height. */
export type HeightOrigin =
  | { readonly kind: "source"; readonly source: number }
  | { readonly kind: "point"; readonly point: number }
  /** `isStart`: the joint is where that run starts, so that its height is counted backwards from the end. */
  | { readonly kind: "run"; readonly run: number; readonly isStart: boolean };

export interface JointHeight {
  /** Of the pipe, above the datum [m]. */
  readonly height: number;
  readonly by: HeightOrigin;
}

/** Heights of all joints that any source or stated point leads to. */
export interface PlanHeights {
  readonly joints: ReadonlyMap<string, JointHeight>;
  /** What the falls of each run are counted from [m above datum]: its start, or the ground under a source. */
  readonly reference: readonly number[];
}

/** How near a survey's last reading must be to the end of its run to tell its fall [m]. */
export const AT_END = 1e-6;

/** Position of the reading that stands at the end of its run; -1 when there is none. */
export function endReading({ survey, length }: PlanRun): number {
  const last = (survey?.length ?? 0) - 1;
  return last >= 0 && Math.abs(metresOf(survey![last]!.along) - metresOf(length)) < AT_END ? last : -1;
}

/** The fall a run tells from end to end [m]; undefined when it tells none. */
export function toldFall(run: PlanRun): number | undefined {
  if (run.fall !== undefined) return metresOf(run.fall);
  const end = endReading(run);
  return end < 0 ? undefined : metresOf(run.survey![end]!.fall);
}

/** Height of a source's outlet above the datum [m]. */
export function outletHeight(source: PlanSource): number {
  return metresOf(source.ground) + metresOf(source.stand) + outletInVessel(source);
}

/** Height of the outlet above the bottom of its vessel [m]. */
export function outletInVessel({ vessel, outlet }: PlanSource): number {
  if (outlet !== undefined) return metresOf(outlet);
  const kind = kindFound(typeof vessel === "string" ? findVessel(vessel) : undefined);
  return kind?.outletHeight ?? metresOf(DEFAULTS.outlet.typed);
}

/** What heights are spread over: the runs, how they meet, and the heights known so far. */
interface Spreading {
  readonly plan: Plan;
  readonly ends: ReturnType<typeof runEnds>;
  readonly grounds: ReadonlyMap<string, number>;
  readonly falls: readonly (number | undefined)[];
  readonly meeting: ReadonlyMap<string, readonly number[]>;
  readonly joints: Map<string, JointHeight>;
}

/**
 * Heights of the joints as the library spreads them, each with what gave it: stated heights first, then along told
 * falls, and only where neither says anything level. Contradictions are not looked for.
 */
export function heightsOf(plan: Plan): PlanHeights {
  const ends = runEnds(plan);
  const falls = plan.runs.map(toldFall);
  const meeting = meetingInOrder(plan, ends);
  const joints = new Map<string, JointHeight>(statedHeights(plan));
  const spreading = { plan, ends, grounds: groundsUnderSources(plan), falls, meeting, joints };
  const known = [...joints.keys()];
  followFalls(spreading, known, 0);
  for (let at = 0; at < known.length; at++) {
    for (const run of meeting.get(known[at]!) ?? []) {
      if (falls[run] !== undefined) continue;
      const other = passOn(spreading, run, known[at]!);
      if (other !== undefined) followFalls(spreading, known, known.push(other) - 1);
    }
  }
  const reference = ends.map(({ from }, run) => referenceAt(spreading, run, joints.get(from)?.height ?? 0));
  return { joints, reference };
}

/** Along told falls, from the joints of a queue that grows by those they lead to. */
function followFalls(spreading: Spreading, queue: string[], start: number): void {
  for (let at = start; at < queue.length; at++) {
    for (const run of spreading.meeting.get(queue[at]!) ?? []) {
      if (spreading.falls[run] === undefined) continue;
      const other = passOn(spreading, run, queue[at]!);
      if (other !== undefined) queue.push(other);
    }
  }
}

/** Gives the joint at the other end of a run its height, and says which; undefined where it has one already. */
function passOn(spreading: Spreading, run: number, here: string): string | undefined {
  const { ends, falls, joints } = spreading;
  const { from, to } = ends[run]!;
  const isStart = from !== here;
  const other = isStart ? from : to;
  if (joints.has(other)) return undefined;
  const known = joints.get(here)!.height;
  const height = isStart ? known + (falls[run] ?? 0) : endHeight(spreading, run, known);
  joints.set(other, { height, by: { kind: "run", run, isStart } });
  return other;
}

/** Where a run ends that starts at a height; one that tells no fall lies level as far as its pipe reaches. */
function endHeight(spreading: Spreading, run: number, start: number): number {
  const reference = referenceAt(spreading, run, start);
  const fall = spreading.falls[run];
  if (fall !== undefined) return reference - fall;
  return Math.abs(start - reference) <= metresOf(spreading.plan.runs[run]!.length) ? reference : start;
}

const referenceAt = ({ grounds, ends }: Spreading, run: number, start: number): number =>
  grounds.get(ends[run]!.from) ?? start;

/** Ground under each source, by its name [m above datum]. */
function groundsUnderSources(plan: Plan): Map<string, number> {
  return new Map(sourceNames(plan).map((name, i) => [name, metresOf(plan.sources[i]!.ground)]));
}

/** Sources first, then points of which a height is stated. */
function statedHeights(plan: Plan): [string, JointHeight][] {
  const names = sourceNames(plan);
  const sources = plan.sources.map((source, i): [string, JointHeight] => [
    names[i]!,
    { height: outletHeight(source), by: { kind: "source", source: i } },
  ]);
  const points = (plan.points ?? []).flatMap(({ id, ground, above }, i): [string, JointHeight][] =>
    ground === undefined && above === undefined
      ? []
      : [[id, { height: metresOf(ground) + metresOf(above), by: { kind: "point", point: i } }]],
  );
  return [...sources, ...points];
}

function meetingInOrder(plan: Plan, ends: ReturnType<typeof runEnds>): Map<string, number[]> {
  const meeting = new Map<string, number[]>();
  const add = (name: string, run: number) => {
    const list = meeting.get(name);
    if (list === undefined) meeting.set(name, [run]);
    else list.push(run);
  };
  plan.runs.forEach((_, run) => {
    const { from, to } = ends[run]!;
    add(from, run);
    if (to !== from) add(to, run);
  });
  return meeting;
}
