import type { Mishap } from "../../model/mishap.js";
import { DRIP, MORNING, type WeighedPlan } from "../asked-plan.js";
import type { WeighedLine } from "../weigh-line.js";
import { runDown } from "./draw-struck.js";
import { balanceOf, endsOf, nightOf } from "./mishap-ends.js";
import type { MishapEnd, MishapResult } from "./mishap-result.js";
import { type Struck, strike } from "./strike.js";

/** Until a bird goes without, or half of the drinkers where there are none [s]; endless where it never comes to that. */
export const soonestHarm = ({ firstWithout, halfDry, hasBirds }: MishapEnd): number =>
  (hasBirds ? firstWithout?.after : halfDry) ?? Number.MAX_VALUE;

/** One mishap, run from everything full until nothing is left or as far as it is followed. */
export function runMishap(asked: WeighedPlan, mishap: Mishap): MishapResult {
  const struck = strike(asked, mishap);
  return { mishap, ...resultOf(asked, struck) };
}

/** What comes of a plan that was struck; with a guard it may be another plan than was asked. */
export function resultOf(asked: WeighedPlan, struck: Struck): Omit<MishapResult, "mishap"> {
  const run = runDown(struck, { start: asked.fullVolumes, from: MORNING, lasts: struck.lasts });
  const changed = changedDrinkers(asked.judged, struck.judged);
  const leakRate = run.pools.reduce((sum, { leak, stores }) => {
    return sum + (leak === undefined ? 0 : leak.flowAt(Math.max(...stores.map(({ top }) => top))));
  }, 0);
  const isLosing = leakRate > 0 || changed.drip.length > 0;
  return {
    ...endsOf(struck, run, MORNING),
    leakRate,
    dripRate: changed.drip.length * DRIP.expect,
    balance: balanceOf(run.drawdown),
    ...changed,
    night: isLosing
      ? nightOf(asked, struck, run.pools)
      : { lost: 0, falls: asked.judged.line.sources.map(() => 0) },
    followed: run.drawdown.until - MORNING,
  };
}

/** Drinkers that fare worse than in the plan. */
function changedDrinkers(before: WeighedLine, after: WeighedLine) {
  const dry: number[] = [];
  const starve: number[] = [];
  const drip: number[] = [];
  const drips = ({ verdict, also }: WeighedLine["drinkers"][number]) =>
    verdict === "drips" || also.some((one) => one.verdict === "drips");
  before.drinkers.forEach((was, d) => {
    const is = after.drinkers[d];
    if (is.verdict === "dry" && was.verdict !== "dry") dry.push(d);
    if (is.verdict === "starves" && was.verdict !== "starves" && was.verdict !== "dry") starve.push(d);
    if (drips(is) && !drips(was) && is.verdict !== "dry" && is.verdict !== "starves") drip.push(d);
  });
  return { dry, starve, drip };
}
