import { isThere } from "../../model/flock.js";
import { volumeAtLevel } from "../../physics/vessel.js";
import { type Drawdown, drawDown } from "../../simulate/drawdown.js";
import type { DrawnPool, Refill } from "../../simulate/drawn-pool.js";
import { storeOf } from "../../simulate/store.js";
import type { WeighedPlan } from "../asked-plan.js";
import { cutOff, type MishapRun } from "./draw-struck.js";
import type { Balance, MishapEnd } from "./mishap-result.js";
import type { Struck } from "./strike.js";

const DAY = 86_400;

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
  asked: WeighedPlan,
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
