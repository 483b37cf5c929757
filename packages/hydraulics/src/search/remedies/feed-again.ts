import { DEFAULTS } from "../../document/defaults.js";
import { drinkerGroupsOf } from "../../document/plan-lists.js";
import type { Plan, PlanDrinkerGroup, PlanRun } from "../../document/plan-schema.js";
import { runEnds, runNames, sourceNames } from "../../document/run-ends.js";
import { buildLine } from "../../model/build-line.js";
import { siOf, typedLength } from "../cure-space.js";
import { type Ailing, bought, freshName, type Remedy, waysToRuns, withJointAt } from "./remedy.js";
import { typedPlaces } from "./typed-places.js";

/** Groups that fail worst are fed again; so many of them are tried. */
const MOST_RUNS = 3;

/** A second run from the source to the far end of a run whose drinkers fail: the way closes to a ring. */
export function feedFarEnd(ailing: Ailing): Remedy[] {
  const { plan, line } = ailing;
  return failingRuns(ailing).flatMap((run): Remedy[] => {
    const points = line.runs[run].points;
    const end = runEnds(plan)[run].to;
    const there = { name: end, ...placeOf(ailing, points[points.length - 1]) };
    return layFeed(ailing, {
      kind: "secondFeed",
      plan,
      there,
      run,
      share: 1,
      into: undefined,
      along: undefined,
    });
  });
}

/** A second run from the source to the middle of a run whose drinkers fail. */
export const feedMiddle = (ailing: Ailing): Remedy[] => feedHalves(ailing, "feedMiddle");

/** A run whose drinkers fail cut in two at its middle, the far half fed by a run of its own from the source. */
export const splitLine = (ailing: Ailing): Remedy[] => feedHalves(ailing, "split");

function feedHalves(ailing: Ailing, kind: "feedMiddle" | "split"): Remedy[] {
  const { plan, line, system } = ailing;
  return failingRuns(ailing).flatMap((run): Remedy[] => {
    const halves = cutInHalf(ailing, run, kind === "split");
    if (halves === undefined) return [];
    const [a, b] = [line.runs[run].points[0], line.runs[run].points[line.runs[run].points.length - 1]].map(
      (p) => placeOf(ailing, p),
    );
    const height = (a.height + b.height) / 2;
    const middle = { height, ground: Math.min((a.ground + b.ground) / 2, height) };
    const told = withJointAt(halves.plan, { name: halves.joint, ...middle }, system);
    const there = { name: halves.beyond, ...middle };
    const into = runNames(plan)[run];
    const along = line.runs[run].length / 2;
    return layFeed(ailing, { kind, plan: told, there, run, share: 0.5, into, along });
  });
}

const placeOf = ({ line }: Ailing, point: number) => ({
  height: line.points.height[point],
  ground: line.points.ground[point],
});

function failingRuns({ plan, line, judged }: Ailing): number[] {
  const worst = new Map<number, number>();
  judged.drinkers.forEach(({ verdict, margin }, d) => {
    if (verdict !== "starves" && verdict !== "dry") return;
    const run = line.drinkers.run[d];
    worst.set(run, Math.min(worst.get(run) ?? 0, margin));
  });
  return [...worst]
    .sort((a, b) => a[1] - b[1])
    .map(([run]) => run)
    .filter((run) => plan.runs[run].oneWay === undefined && plan.runs[run].regulator === undefined)
    .slice(0, MOST_RUNS);
}

interface Feeding {
  readonly kind: "secondFeed" | "feedMiddle" | "split";
  readonly plan: Plan;
  readonly there: { readonly name: string; readonly height: number; readonly ground: number };
  readonly run: number;
  /** How much of the run itself the new one lies beside. */
  readonly share: number;
  readonly into: string | undefined;
  readonly along: number | undefined;
}

/** Lays a run of the same pipe beside those that lead there, as long as they are together. */
function layFeed({ plan: old, line, system }: Ailing, feeding: Feeding): Remedy[] {
  const { kind, there, run, share, into, along } = feeding;
  const way = waysToRuns(old)[run];
  if (way.length === 0) return [];
  const length = way.reduce((sum, r) => sum + line.runs[r].length * (r === run ? share : 1), 0);
  const source = sourceNames(old).find((name) => name === runEnds(old)[way[0]].from);
  if (source === undefined) return [];
  const pipe = old.runs[run].pipe ?? DEFAULTS.pipe.typed;
  const id = freshName(feeding.plan, "second feed");
  const feed = { id, from: source, to: there.name, length: typedLength(length, system), pipe };
  const told = withJointAt(feeding.plan, there, system);
  const ends = runEnds(told);
  const laid = { ...told, runs: [...told.runs.map((one, r) => ({ ...one, ...ends[r] })), feed] };
  const changed = withoutFallsTo(laid, there.name);
  if (!buildLine(changed).ok) return [];
  const pipeId = line.runs[run].pipeId;
  const isCut = kind === "split";
  return [
    {
      kind,
      plan: changed,
      changes: [
        { code: "newRun", run: id, from: source, to: there.name, length, pipe: pipeId, into, along, isCut },
      ],
      spent: bought(into === undefined ? 1 : 2, old.prices?.joint),
      fresh: changed.runs.length - 1,
    },
  ];
}

/** Falls of runs that end at a joint whose height is told now would say it twice. */
function withoutFallsTo(plan: Plan, joint: string): Plan {
  const ends = runEnds(plan);
  return {
    ...plan,
    runs: plan.runs.map((run, r) => {
      if (ends[r].to !== joint || run.fall === undefined) return run;
      const { fall: _, ...rest } = run;
      return rest;
    }),
  };
}

/**
 * The plan with a run cut in two at its middle, each half with its drinkers; undefined where that is not so simple.
 *
 * @param isApart  whether the far half starts at a joint of its own, `beyond`, and no water comes to it from the near one
 */
function cutInHalf(
  ailing: Ailing,
  index: number,
  isApart: boolean,
): { readonly plan: Plan; readonly joint: string; readonly beyond: string } | undefined {
  const { plan, line, system } = ailing;
  const sharing = shareDrinkers(ailing, index);
  if (sharing === undefined) return undefined;
  const { near, far } = sharing;
  const name = runNames(plan)[index];
  const joint = freshName(plan, `${name} middle`);
  const beyond = isApart ? freshName(plan, `${name} second half`) : joint;
  const ends = runEnds(plan);
  const { fall: _, ...run } = plan.runs[index];
  const half = { ...run, ...ends[index], length: typedLength(line.runs[index].length / 2, system) };
  const first: PlanRun = { ...half, to: joint, drinkers: near };
  const second: PlanRun = { ...half, id: freshName(plan, `${name} beyond`), from: beyond, drinkers: far };
  const runs = plan.runs.flatMap((one, r) => (r === index ? [first, second] : [{ ...one, ...ends[r] }]));
  const pens = plan.pens?.map((pen) => reachBoth(pen, near.id, far.id, name));
  const cut: Plan = { ...plan, runs, ...(pens === undefined ? {} : { pens }) };
  const { points } = line.runs[index];
  const end = { name: ends[index].to, ...placeOf(ailing, points[points.length - 1]) };
  return { plan: withJointAt(cut, end, system), joint, beyond };
}

type NamedGroup = PlanDrinkerGroup & { readonly id: string };

/** A run's drinkers as one group before its middle and one beyond it; undefined where that is not so simple. */
function shareDrinkers(
  ailing: Ailing,
  index: number,
): { readonly near: NamedGroup; readonly far: NamedGroup } | undefined {
  const { plan, line, system } = ailing;
  const run = plan.runs[index];
  const groups = drinkerGroupsOf(run);
  if (run.survey !== undefined || run.fittings !== undefined || groups.length !== 1) return undefined;
  const middle = line.runs[index].length / 2;
  const length = typedLength(middle, system);
  const { drinkers } = line;
  const members = Array.from(drinkers.run.keys()).filter((d) => drinkers.run[d] === index);
  const near = members.filter((d) => drinkers.along[d] <= middle);
  if (near.length === 0 || near.length === members.length) return undefined;
  const [group] = groups;
  const id = group.id ?? runNames(plan)[index];
  const beyond = freshName(plan, `${id} beyond`);
  const far = members.slice(near.length);
  return {
    near: partOf(ailing, group, near, { id, from: 0, length, rest: far.length, isFar: false }),
    far: partOf(ailing, group, far, { id: beyond, from: middle, length, rest: near.length, isFar: true }),
  };
}

/** Some of a group's drinkers as a group of their own, on a run that starts at `from` along the old one. */
function partOf(
  { line, system }: Ailing,
  group: PlanDrinkerGroup,
  members: readonly number[],
  half: {
    readonly id: string;
    readonly from: number;
    readonly length: string;
    readonly rest: number;
    readonly isFar: boolean;
  },
): NamedGroup {
  const count = members.length;
  const along = members.map((d) => line.drinkers.along[d] - half.from);
  const { busiest: _, ordinary: __, ...kept } = group;
  return {
    ...kept,
    id: half.id,
    count,
    ...typedPlaces({ along, end: siOf(half.length) }, system),
    ...atWorkOf(group, count, half),
  };
}

/** Those at work: as a share, of each half; as a number, the farthest first. */
function atWorkOf(
  group: PlanDrinkerGroup,
  count: number,
  { rest, isFar }: { readonly rest: number; readonly isFar: boolean },
) {
  const share = (typed: number | string | undefined) => {
    if (typeof typed !== "number") return typed;
    return isFar ? Math.min(count, typed) : Math.max(0, typed - rest);
  };
  const [busiest, ordinary] = [share(group.busiest), share(group.ordinary)];
  return {
    ...(busiest === undefined ? {} : { busiest }),
    ...(ordinary === undefined ? {} : { ordinary }),
  };
}

type PlanPens = NonNullable<Plan["pens"]>;

/** A pen that drank from the group, or from its whole run, drinks from both halves. */
function reachBoth(pen: PlanPens[number], near: string, far: string, run: string): PlanPens[number] {
  if (pen.drinkers === undefined) return pen;
  return {
    ...pen,
    drinkers: pen.drinkers.flatMap((name) => (name === near || name === run ? [name, far] : [name])),
  };
}
