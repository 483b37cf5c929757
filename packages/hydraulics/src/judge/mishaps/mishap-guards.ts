import { drinkerGroupsOf } from "../../document/plan-lists.js";
import type { Plan } from "../../document/plan-schema.js";
import type { Line } from "../../model/line.js";
import type { Mishap } from "../../model/mishap.js";
import { withMishap } from "../../model/with-mishap.js";
import { storeOf } from "../../simulate/store.js";
import { askPlan, MORNING, type WeighedPlan } from "../asked-plan.js";
import { isLeaky, withoutLeaks } from "../time/pool-leaks.js";
import { weighLine } from "../weigh-line.js";
import { runDown } from "./draw-struck.js";
import { DAILY, GUARD_KINDS, type Guard, type GuardResult, TIME_TO_MEND } from "./guard.js";
import { findLimiter, type Limiter } from "./limiter.js";
import { endsOf } from "./mishap-ends.js";
import type { MishapEnd, MishapResult } from "./mishap-result.js";
import { runMishap, soonestHarm } from "./run-mishap.js";
import { withSecondBarrel } from "./second-barrel.js";
import { strike } from "./strike.js";

const HOUR = 3600;
/** Water a float rides on, and a fall that it can tell [m]; common practice, no source. */
const FLOAT_NEEDS = 0.03;

/** What guards are tried on: a plan, what becomes of it if nothing happens, and limiters found so far. */
export interface Guarding {
  readonly asked: WeighedPlan;
  readonly day: string | undefined;
  readonly nothing: MishapEnd;
  readonly limiters: Map<number, Limiter | undefined>;
  readonly doubled: Map<number, WeighedPlan>;
}

export const guardingOf = (asked: WeighedPlan, day: string | undefined, nothing: MishapEnd): Guarding => ({
  asked,
  day,
  nothing,
  limiters: new Map(),
  doubled: new Map(),
});

/**
 * Every guard that does something against a mishap, each with what it buys by running the mishap again with it; the
 * cheapest kind first. A look every so often is always among them where any is soon enough.
 */
export function guardsAgainst(guarding: Guarding, result: MishapResult): GuardResult[] {
  const found = [
    look(guarding, result),
    secondVent(guarding, result),
    ...taps(guarding, result),
    ...limiters(guarding, result),
    spareDrinker(guarding, result),
    alarm(guarding, result),
    ...secondBarrels(guarding, result),
    secondStation(guarding, result),
  ];
  return found
    .filter((one): one is GuardResult => one !== undefined && doesSomething(one, result.leakRate))
    .sort((a, b) => GUARD_KINDS.indexOf(a.guard.kind) - GUARD_KINDS.indexOf(b.guard.kind));
}

/** A look is always worth telling; any other guard where it gains time, a tenth of a litre, or a fifth of what pours. */
const doesSomething = ({ guard, buysTime, savesWater, leakRate }: GuardResult, pours: number): boolean =>
  guard.kind === "look" ||
  buysTime === undefined ||
  buysTime >= HOUR / 2 ||
  savesWater >= 1e-4 ||
  leakRate < 0.8 * pours;

const harmOf = (end: MishapEnd): number | undefined => {
  const harm = soonestHarm(end);
  return harm === Number.MAX_VALUE ? undefined : harm;
};

function resultWith(
  guard: Guard,
  before: MishapResult,
  after: { readonly harmAfter: number | undefined; readonly lost: number; readonly leakRate: number },
): GuardResult {
  const was = harmOf(before);
  const is = after.harmAfter;
  return {
    guard,
    ...after,
    buysTime: was === undefined ? 0 : is === undefined ? undefined : is - was,
    // What drips without the mishap too is not saved by a guard against it.
    savesWater: before.leakRate + before.dripRate > 0 ? before.balance.lost - after.lost : 0,
    isEnough: is === undefined || is >= DAILY + TIME_TO_MEND,
  };
}

const ofRun = (after: MishapResult) => ({
  harmAfter: harmOf(after),
  lost: after.balance.lost,
  leakRate: after.leakRate,
});

/** Whole hours, at most a day, that leave time to mend before harm; undefined where not even an hour does. */
export function lookEvery(harmAfter: number | undefined): number | undefined {
  const most = harmAfter === undefined ? DAILY : Math.min(DAILY, harmAfter - TIME_TO_MEND);
  return most < HOUR ? undefined : Math.floor(most / HOUR) * HOUR;
}

/** Found at the look, it is stopped: no more is lost than by then, and no bird goes without. */
function look({ asked }: Guarding, result: MishapResult): GuardResult | undefined {
  const every = lookEvery(harmOf(result));
  if (every === undefined) return undefined;
  const { drawdown } = runDown(strike(asked, result.mishap), fromFull(asked, every));
  return {
    ...resultWith({ kind: "look", every }, result, {
      harmAfter: undefined,
      lost: drawdown.lost,
      leakRate: result.leakRate,
    }),
    isEnough: every >= DAILY,
  };
}

const fromFull = (asked: WeighedPlan, lasts: number) => ({ start: asked.fullVolumes, from: MORNING, lasts });

/** Another opening keeps the air coming: the mishap changes nothing. */
function secondVent({ nothing }: Guarding, result: MishapResult): GuardResult | undefined {
  if (result.mishap.kind !== "ventBlocked") return undefined;
  const guard: Guard = { kind: "secondVent", source: result.mishap.source };
  return resultWith(guard, result, { harmAfter: harmOf(nothing), lost: 0, leakRate: 0 });
}

/** At each run on the way: found within a day, or sooner where harm comes sooner, it is shut; the rest goes on. */
function taps(guarding: Guarding, result: MishapResult): GuardResult[] {
  if (result.leakRate <= 0) return [];
  const { asked } = guarding;
  const within = lookEvery(harmOf(result)) ?? HOUR;
  const first = strike(asked, result.mishap);
  const before = runDown(first, fromFull(asked, within));
  const left = before.drawdown.levels[before.drawdown.levels.length - 1].volumes;
  const soon = harmOf(endsOf(first, before, MORNING));
  return runsAt(asked.judged.line, result.mishap).flatMap((run) => {
    const shut = withMishap(first.leaking ?? first.still.line, { kind: "runBlocked", run });
    const after = {
      ...first,
      still: weighLine(withoutLeaks(shut)),
      leaking: isLeaky(shut) ? shut : undefined,
    };
    const from = MORNING + within;
    const rest = runDown(after, { start: left, from, lasts: first.lasts - within });
    const later = harmOf(endsOf(after, rest, from));
    const harmAfter = soon ?? (later === undefined ? undefined : within + later);
    const lost = before.drawdown.lost + rest.drawdown.lost;
    const guard: Guard = { kind: "tap", run, within };
    const shutInTime = resultWith(guard, result, { harmAfter, lost, leakRate: result.leakRate });
    // It is no use before somebody comes to shut it.
    return [{ ...shutInTime, isEnough: shutInTime.isEnough && within >= DAILY }];
  });
}

/** Runs whose start a leak is behind: that of a drinker, those that end or start at a joint. */
function runsAt(line: Line, mishap: Mishap): number[] {
  if ("drinker" in mishap) return [line.drinkers.run[mishap.drinker]];
  if (mishap.kind !== "jointApart") return [];
  const ends = line.runs.flatMap(({ points }, run) =>
    points[points.length - 1] === mishap.point ? [run] : [],
  );
  return ends.slice(0, 1);
}

/** At the runs that leave a source. */
function limiters(guarding: Guarding, result: MishapResult): GuardResult[] {
  if (result.leakRate <= 0) return [];
  const { asked } = guarding;
  const { line } = asked.judged;
  return line.runs.flatMap(({ points }, run) => {
    if (!line.sources.some(({ point, feed }) => point === points[0] && feed === undefined)) return [];
    const limiter = guarding.limiters.has(run) ? guarding.limiters.get(run) : findLimiter(asked.judged, run);
    guarding.limiters.set(run, limiter);
    if (limiter === undefined) return [];
    const after = runMishap({ ...asked, judged: limiter.judged }, result.mishap);
    return [resultWith({ kind: "limiter", run, hole: limiter.hole }, result, ofRun(after))];
  });
}

/** One more of the group of a drinker that gives nothing. */
function spareDrinker({ asked, day, nothing }: Guarding, result: MishapResult): GuardResult | undefined {
  const { mishap } = result;
  if (mishap.kind !== "drinkerBlocked" && mishap.kind !== "floatStuckUp") return undefined;
  if (soonestHarm(result) >= soonestHarm(nothing)) return undefined;
  const group = asked.judged.line.drinkers.group[mishap.drinker];
  const asking = askPlan(withSpare(asked.plan, asked.judged.line, group), day);
  if (!asking.ok) return undefined;
  return resultWith({ kind: "spareDrinker", group }, result, ofRun(runMishap(asking.asked, mishap)));
}

function withSpare(plan: Plan, { drinkers, runs }: Line, group: number): Plan {
  const { run } = drinkers.groups[group];
  const first = drinkers.groups.findIndex((one) => one.run === run);
  const changed = drinkerGroupsOf(plan.runs[runs[run].index]).map((one, g) =>
    g === group - first ? { ...one, count: (one.count ?? 1) + 1 } : one,
  );
  return {
    ...plan,
    runs: plan.runs.map((one, r) => (r === runs[run].index ? { ...one, drinkers: changed } : one)),
  } as Plan;
}

/** At the level that leaves time to mend before harm comes. */
function alarm({ asked }: Guarding, result: MishapResult): GuardResult | undefined {
  const harm = harmOf(result);
  if (harm === undefined || harm < TIME_TO_MEND + HOUR) return undefined;
  const struck = strike(asked, result.mishap);
  const { drawdown } = runDown(struck, fromFull(asked, harm - TIME_TO_MEND));
  const { line } = struck.still;
  const end = drawdown.levels[drawdown.levels.length - 1].volumes;
  const falls = line.sources.map(({ feed }, i) => (feed === undefined ? asked.fullVolumes[i] - end[i] : 0));
  const source = falls.indexOf(Math.max(...falls));
  const { outlet, levels } = line.sources[source];
  const then = storeOf(line, line.sources[source]).levelAt(Math.min(end[source], asked.fullVolumes[source]));
  // A float needs some water over the outlet to ride on, and can tell a fall of a few centimetres, not less.
  const level = Math.max(then, outlet + FLOAT_NEEDS);
  if (levels.full - level < FLOAT_NEEDS) return undefined;
  const after = { harmAfter: undefined, lost: drawdown.lost, leakRate: result.leakRate };
  return resultWith({ kind: "alarm", source, level }, result, after);
}

function secondBarrels(guarding: Guarding, result: MishapResult): GuardResult[] {
  const { asked } = guarding;
  return asked.judged.line.sources.flatMap(({ feed }, source) => {
    if (feed !== undefined) return [];
    const twice = guarding.doubled.get(source) ?? withSecondBarrel(asked, source);
    guarding.doubled.set(source, twice);
    const after = runMishap(twice, result.mishap);
    return [resultWith({ kind: "secondBarrel", source }, result, ofRun(after))];
  });
}

/** Of two alike with nothing in common one is left: the plan as it stands. */
function secondStation({ nothing }: Guarding, result: MishapResult): GuardResult | undefined {
  if (!result.hasBirds || result.mishap.kind === "moreBirds" || result.mishap.kind === "hottestWeek")
    return undefined;
  if (soonestHarm(result) >= soonestHarm(nothing)) return undefined;
  const { leakRate, balance } = result;
  return resultWith({ kind: "secondStation" }, result, {
    harmAfter: harmOf(nothing),
    lost: balance.lost,
    leakRate,
  });
}
