import type { Flock } from "../../model/flock.js";
import { flockInDays } from "../../model/flock-on.js";
import { STUCK } from "../../model/line.js";
import { type Drawdown, drawDown } from "../../simulate/drawdown.js";
import type { DrawnPool } from "../../simulate/drawn-pool.js";
import { DRIP } from "../asked-plan.js";
import { poolsOf } from "../time/give-out.js";
import type { WeighedLine } from "../weigh-line.js";
import type { Struck } from "./strike.js";

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
export function cutOff({ line, solved }: WeighedLine): ReadonlySet<number> {
  const { reached } = solved.darcyWeisbach.lowestBusiest.idle;
  const failed = new Set<number>();
  line.drinkers.point.forEach((point, d) => {
    if (reached[point] === 0 || line.drinkers.stuck?.[d] === STUCK.shut) failed.add(d);
  });
  return failed;
}
