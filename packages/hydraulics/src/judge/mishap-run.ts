import type { Batch, Flock } from "../model/flock.js";
import { flockInDays } from "../model/flock-on.js";
import { type Line, STUCK } from "../model/line.js";
import type { Mishap } from "../model/mishap.js";
import { flockWithMishap, withMishap } from "../model/with-mishap.js";
import { volumeAtLevel } from "../physics/vessel.js";
import { type Drawdown, drawDown } from "../simulate/drawdown.js";
import type { DrawnPool, Refill } from "../simulate/drawn-pool.js";
import { storeOf } from "../simulate/store.js";
import { type AskedPlan, DRIP, MORNING } from "./asked-plan.js";
import { poolsOf } from "./give-out.js";
import { type JudgedLine, judgeLine } from "./judge-line.js";
import { manLine } from "./man-line.js";
import type { Balance, MishapEnd } from "./mishap-result.js";
import { isLeaky, withoutLeaks } from "./pool-leaks.js";

const DAY = 86_400;
/** How far a mishap is followed when nobody looks [s]. */
export const FOLLOWED = 60 * DAY;

/** A plan after a mishap: its line as it pours, and as it would stand if what pours were stopped. */
export interface Struck {
  readonly mishap: Mishap | undefined;
  readonly flock: Flock;
  /** Verdicts are those of the line as it pours. */
  readonly judged: JudgedLine;
  readonly still: JudgedLine;
  /** Set where it pours. */
  readonly leaking: Line | undefined;
  readonly refills: readonly Refill[];
  /** How far it is followed [s]. */
  readonly lasts: number;
}

/** Makes a mishap happen to a plan; without one, the plan as nobody looks after it. */
export function strike(asked: AskedPlan, mishap: Mishap | undefined): Struck {
  const { plan, judged } = asked;
  const flock = mishap === undefined ? asked.flock : flockWithMishap(asked.flock, mishap);
  const isOtherFlock = flock !== asked.flock && flock.pens.length > 0;
  const base = isOtherFlock ? manLine(plan, judged.line, flock).line : judged.line;
  const line = mishap === undefined ? base : withMishap(base, mishap);
  const dry = withoutLeaks(line);
  const still = isSameAs(line, mishap, judged, isOtherFlock) ? judged : judgeLine(dry);
  return {
    mishap,
    flock,
    judged: isLeaky(line) ? judgeLine(line) : still,
    still,
    leaking: isLeaky(line) ? line : undefined,
    refills: asked.refills.map((refill, i) => refillAfter(refill, i, mishap)),
    lasts: lastsUntil(asked, mishap),
  };
}

/** Whether the line without what pours is the plan's own: then it is judged already. */
function isSameAs(
  line: Line,
  mishap: Mishap | undefined,
  judged: JudgedLine,
  isOtherFlock: boolean,
): boolean {
  if (isOtherFlock) return false;
  if (line === judged.line) return true;
  return (
    mishap?.kind === "drinkerStuckOpen" ||
    mishap?.kind === "floatStuckDown" ||
    mishap?.kind === "cupTipped" ||
    mishap?.kind === "feedStuckDown"
  );
}

/** Hoses run on and nobody fills by hand, but where a round is missed: then all others are made. */
function refillAfter(refill: Refill, source: number, mishap: Mishap | undefined): Refill {
  if (mishap?.kind === "hoseOff" && mishap.source === source) return { kind: "none" };
  if (refill.kind !== "byHand") return refill;
  if (mishap?.kind !== "refillMissed") return { kind: "none" };
  return mishap.source === source ? { ...refill, first: refill.first + refill.every } : refill;
}

/** Up to the round after the one that was missed; else as far as any mishap. */
function lastsUntil({ refills }: AskedPlan, mishap: Mishap | undefined): number {
  if (mishap?.kind !== "refillMissed") return FOLLOWED;
  const refill = refills[mishap.source];
  return refill.kind === "byHand" ? refill.first + refill.every - MORNING : FOLLOWED;
}

/** Where a run of time begins: how full, when, for how long. */
export interface Beginning {
  readonly start: readonly number[];
  readonly from: number;
  readonly lasts: number;
}

/** A plan drawn down after a mishap. */
export interface MishapRun {
  /** As they were at the beginning. */
  readonly pools: readonly DrawnPool[];
  readonly drawdown: Drawdown;
}

/**
 * The water of a plan after a mishap drawn down, birds and what pours together; on the figure to size on. Birds of a
 * pen that one vessel no longer keeps up with go to the drinkers they have on another, as long as there is one.
 */
export function runDown(struck: Struck, { start, from, lasts }: Beginning): MishapRun {
  let failed = cutOff(struck.still);
  let at = { start, from };
  let before: Drawdown | undefined;
  let pools: readonly DrawnPool[] | undefined;
  for (;;) {
    const until = from + lasts;
    const run = stageOf(struck, failed, { ...at, lasts: until - at.from });
    pools ??= run.pools;
    const move = firstMove(run, struck.flock);
    if (move === undefined) return { pools, drawdown: joined(before, run.drawdown) };
    if (move.time > at.from) {
      const stage = stageOf(struck, failed, { ...at, lasts: move.time - at.from }).drawdown;
      before = joined(before, withoutMoves(stage, move));
      at = { start: stage.levels[stage.levels.length - 1].volumes, from: move.time };
    }
    failed = new Set([...failed, ...move.drinkers]);
  }
}

function stageOf(struck: Struck, failed: ReadonlySet<number>, { start, from, lasts }: Beginning): MishapRun {
  const { still, flock, leaking, refills } = struck;
  const pools = poolsOf(still, flock, { refills, start, failed, dripRate: DRIP.expect, leaking });
  const flockOn = (day: number) => flockInDays(flock, day);
  return {
    pools,
    drawdown: drawDown(still.line, flock, pools, { figure: "size", from, lasts, flockOn }),
  };
}

/** Drinkers that a pen leaves for others of its own, and when. */
interface Move {
  readonly time: number;
  readonly pen: number;
  readonly pool: number;
  readonly drinkers: readonly number[];
}

function firstMove({ pools, drawdown }: MishapRun, { pens }: Flock): Move | undefined {
  for (const event of drawdown.events) {
    if (event.kind !== "penShort") continue;
    const { time, pen, pool } = event;
    const hasOther = pools.some((one, k) => k !== pool && one.pens.some((shared) => shared.pen === pen));
    if (!hasOther) continue;
    const mine = new Set(pens[pen].drinkers);
    const drinkers = pools[pool].dryBelow
      .map(({ drinker }) => drinker)
      .filter((drinker) => mine.has(drinker));
    if (drinkers.length > 0) return { time, pen, pool, drinkers };
  }
  return undefined;
}

const withoutMoves = (stage: Drawdown, { pen, pool }: Move): Drawdown => ({
  ...stage,
  events: stage.events.filter(
    (event) => !(event.kind === "penShort" && event.pen === pen && event.pool === pool),
  ),
});

/** One after the other, as if it had been one. */
function joined(before: Drawdown | undefined, after: Drawdown): Drawdown {
  if (before === undefined) return after;
  return {
    events: [...before.events, ...after.events],
    levels: [...before.levels, ...after.levels.slice(1)],
    balance: {
      start: before.balance.start,
      poured: before.balance.poured + after.balance.poured,
      drawn: before.balance.drawn + after.balance.drawn,
      left: after.balance.left,
    },
    lost: before.lost + after.lost,
    until: after.until,
  };
}

/** Drinkers that nothing can come to, or that let nothing through. */
export function cutOff({ line, solved }: JudgedLine): ReadonlySet<number> {
  const { reached } = solved.darcyWeisbach.lowestBusiest.idle;
  const failed = new Set<number>();
  line.drinkers.point.forEach((point, d) => {
    if (reached[point] === 0 || line.drinkers.stuck?.[d] === STUCK.shut) failed.add(d);
  });
  return failed;
}

const isThere = ({ ageDays, count }: Batch) => ageDays >= 0 && count > 0;

/** When it comes to what, from the beginning of the run [s]; undefined where it does not within that time. */
export function endsOf(struck: Struck, { pools, drawdown }: MishapRun, from: number): MishapEnd {
  const { flock, still } = struck;
  const after = (time: number | undefined) => (time === undefined ? undefined : Math.max(0, time - from));
  const first = <K extends Drawdown["events"][number]["kind"]>(kind: K) =>
    drawdown.events.find((event): event is Extract<typeof event, { kind: K }> => event.kind === kind);
  const served = new Set(pools.flatMap(({ pens }) => pens.map(({ pen }) => pen)));
  const stranded = flock.pens.findIndex(({ batches }, p) => !served.has(p) && batches.some(isThere));
  const short = first("penShort");
  const dry = first("drinkerDry");
  const cuts = cutOff(still);
  const [cut] = cuts;
  const emptied = new Map<number, number>();
  for (const event of drawdown.events)
    if (event.kind === "empty" && !emptied.has(event.pool)) emptied.set(event.pool, event.time);
  const last = emptied.size < pools.length ? undefined : Math.max(...emptied.values());
  return {
    hasBirds: flock.pens.some(({ batches }) => batches.some(isThere)),
    firstWithout:
      stranded >= 0
        ? { after: 0, pen: flock.pens[stranded].id }
        : short === undefined
          ? undefined
          : { after: after(short.time) ?? 0, pen: flock.pens[short.pen].id },
    firstDry:
      cut !== undefined
        ? { after: 0, drinker: still.line.drinkers.id[cut] }
        : dry === undefined
          ? undefined
          : { after: after(dry.time) ?? 0, drinker: still.line.drinkers.id[dry.drinker] },
    halfDry: after(halfDry(still.line.drinkers.count, cuts, drawdown.events, from)),
    empty: after(last),
  };
}

/** When first half of the drinkers are out together, those cut off among them. */
function halfDry(
  count: number,
  cuts: ReadonlySet<number>,
  events: Drawdown["events"],
  from: number,
): number | undefined {
  const out = new Set(cuts);
  const half = Math.ceil(count / 2);
  if (count === 0) return undefined;
  if (out.size >= half) return from;
  for (const event of events) {
    if (event.kind !== "drinkerDry") continue;
    out.add(event.drinker);
    if (out.size >= half) return event.time;
  }
  return undefined;
}

/** Each its own sum [m³]: start + poured = drunk + lost + left. */
export function balanceOf({ balance, lost }: Drawdown): Balance {
  const { start, poured, drawn, left } = balance;
  return { start, poured, drunk: drawn - lost, lost, left };
}

/** What a night loses and how far each level falls by morning, from full at dusk and with nothing filled. */
export function nightOf(
  asked: AskedPlan,
  { still, flock }: Struck,
  pools: readonly DrawnPool[],
): { lost: number; falls: readonly number[] } {
  const { dawn, light } = asked.flock.weather;
  const unfilled = pools.map((pool) => ({
    ...pool,
    refills: pool.refills.map((): Refill => ({ kind: "none" })),
  }));
  const drawdown = drawDown(still.line, flock, unfilled, {
    figure: "size",
    from: dawn + light,
    lasts: Math.max(0, DAY - light),
  });
  const { line } = still;
  const end = drawdown.levels[drawdown.levels.length - 1].volumes;
  return {
    lost: drawdown.lost,
    falls: line.sources.map((source, i) => {
      // A header tank's own water is not followed.
      if (source.feed !== undefined) return 0;
      const { levelAt } = storeOf(line, source);
      return Math.max(
        0,
        source.levels.full - levelAt(Math.min(end[i], volumeAtLevel(source.shape, source.levels.full))),
      );
    }),
  };
}
