import type { Plan } from "../../document/plan-schema.js";
import type { Problem } from "../../document/problem.js";
import { flockInDays, flockInHeat } from "../../model/flock-on.js";
import { type Drawdown, drawDown, type LevelPoint } from "../../simulate/drawdown.js";
import type { DrawnPool, Refill } from "../../simulate/drawn-pool.js";
import type { IntakeFigure } from "../../simulate/pen-draw.js";
import { drawnAt } from "../../simulate/pool.js";
import { type AskedPlan, askPlan, DRIP, MORNING } from "../asked-plan.js";
import { poolsOf } from "./give-out.js";

const DAY = 86_400;
/** How far it is looked ahead: with nobody filling, and with somebody [s]. */
const HORIZON = { alone: 400 * DAY, filled: 60 * DAY } as const;

/** What a case is reckoned with. */
export const LASTING_CASES = {
  low: { figure: "low", hot: false, drips: 0 },
  expect: { figure: "expect", hot: false, drips: 0 },
  size: { figure: "size", hot: false, drips: DRIP.expect },
  hot: { figure: "size", hot: true, drips: DRIP.expect },
  high: { figure: "high", hot: true, drips: DRIP.worst },
} as const satisfies Record<string, { figure: IntakeFigure; hot: boolean; drips: number }>;
/** A case of how long water lasts: what the birds drink, in what weather, who refills. */
export type LastingCaseName = keyof typeof LASTING_CASES;

/** How long the water lasts in one case; times are seconds from the beginning, undefined where it does not come to it. */
export interface LastingCase {
  readonly name: LastingCaseName;
  /** The first drinker that gives nothing, and which. */
  readonly firstDry: { readonly after: number; readonly drinker: string } | undefined;
  /** The first pen whose drinkers cannot keep up with it in its busiest hour: some bird then goes without. */
  readonly firstWithout: { readonly after: number; readonly pen: string } | undefined;
  readonly halfDry: number | undefined;
  /** Nothing more can be drawn of any source: its water is at its outlet, or below its last drinker. */
  readonly empty: number | undefined;
  /** Drawn on the first whole day [m³]. */
  readonly firstDay: number;
  readonly levels: readonly LevelPoint[];
  readonly refilled: readonly { readonly after: number; readonly source: string; readonly volume: number }[];
  readonly balance: Drawdown["balance"];
  /** How far it was followed [s]. */
  readonly followed: number;
}

/** A source as it stands when the count begins. Volumes [m³], level [m]. */
export interface LastingSource {
  readonly source: string;
  readonly index: number;
  readonly full: number;
  /** What the line can draw of it [m³]. */
  readonly usable: number;
  readonly refill: Refill;
  /** Inside height of its full level [m], and what it holds at each tenth of that [m³], for a drawing. */
  readonly fullLevel: number;
}

/** How long the water lasts, by case. Times [s after it begins], volumes [m³]. */
export interface Lasting {
  readonly day: number | undefined;
  /** When it begins: full, at this time of day [s after midnight]. */
  readonly begins: number;
  readonly sources: readonly LastingSource[];
  /** As the plan has it filled. */
  readonly cases: Readonly<Record<LastingCaseName, LastingCase>>;
  /** Nobody comes any more: no refill, the hose off. The same as `cases` where the plan has none. */
  readonly alone: Readonly<Record<LastingCaseName, LastingCase>>;
  /** What the answer leaves out, as codes. */
  readonly leavesOut: readonly ("rain" | "headerTank" | "nobodyDrinks")[];
}

/** How long the water lasts, or what in the plan contradicts itself. */
export type LastingAnswer =
  | { readonly ok: true; readonly lasting: Lasting }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * How long the water of a plan lasts: to the first drinker that is dry, the first bird that goes without, half of the
 * drinkers, the last litre that can be drawn. Every vessel is full when it begins.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  `day`: the day asked about, "2026-07-04"; counts where the plan names none
 * @returns five cases from the least to the most that may be drawn, or what in the plan does not fit
 * @example howLongItLasts(plan).lasting.cases.expect.empty / 86400   // 17.4
 */
export function howLongItLasts(
  plan: Plan,
  options: { readonly day?: string | undefined } = {},
): LastingAnswer {
  const asking = askPlan(plan, options.day);
  if (!asking.ok) return asking;
  const { asked } = asking;
  const none = asked.refills.map((): Refill => ({ kind: "none" }));
  const isFilled = asked.refills.some(({ kind }) => kind !== "none");
  const alone = allCases(asked, none, HORIZON.alone);
  const { sources } = asked.judged.line;
  return {
    ok: true,
    lasting: {
      day: asked.flock.day,
      begins: MORNING,
      sources: sources.map((source, index) => ({
        source: source.id,
        index,
        full: asked.fullVolumes[index],
        usable: usableOf(asked, index),
        refill: asked.refills[index],
        fullLevel: source.levels.full,
      })),
      cases: isFilled ? allCases(asked, asked.refills, HORIZON.filled) : alone,
      alone,
      leavesOut: [
        ...(plan.sources.some(({ roof }) => roof !== undefined) ? (["rain"] as const) : []),
        ...(sources.some(({ feed }) => feed !== undefined) ? (["headerTank"] as const) : []),
        ...(asked.flock.pens.length === 0 ? (["nobodyDrinks"] as const) : []),
      ],
    },
  };
}

function allCases(asked: AskedPlan, refills: readonly Refill[], horizon: number): Lasting["cases"] {
  const names = Object.keys(LASTING_CASES) as LastingCaseName[];
  return Object.fromEntries(names.map((name) => [name, oneCase(asked, name, refills, horizon)])) as Record<
    LastingCaseName,
    LastingCase
  >;
}

function oneCase(
  asked: AskedPlan,
  name: LastingCaseName,
  refills: readonly Refill[],
  horizon: number,
): LastingCase {
  const { judged } = asked;
  const { figure, hot, drips } = LASTING_CASES[name];
  const flock = hot ? flockInHeat(asked.flock) : asked.flock;
  const supply = { refills, start: asked.fullVolumes, failed: new Set<number>(), dripRate: drips };
  const pools = poolsOf(judged, flock, supply);
  const flockOn = (day: number) => flockInDays(flock, day);
  const follow = (lasts: number) =>
    drawDown(judged.line, flock, pools, { figure, from: MORNING, lasts, flockOn });
  const drawdown = follow(horizon);
  return {
    name,
    ...readEvents(asked, drawdown, pools),
    firstDay: follow(DAY).balance.drawn,
    levels: drawdown.levels,
    balance: drawdown.balance,
  };
}

function readEvents(asked: AskedPlan, { events, until }: Drawdown, pools: readonly DrawnPool[]) {
  const { line } = asked.judged;
  const after = (time: number) => time - MORNING;
  const dry = events.filter((event) => event.kind === "drinkerDry");
  const short = events.find((event) => event.kind === "penShort");
  const emptied = new Set<number>();
  let empty: number | undefined;
  for (const event of events) {
    if (event.kind !== "empty") continue;
    emptied.add(event.pool);
    if (emptied.size === pools.length) empty ??= after(event.time);
  }
  const half = Math.ceil(line.drinkers.count / 2);
  const halfDry = dryTogether(events, pools, half);
  return {
    firstDry:
      dry[0] === undefined
        ? undefined
        : { after: after(dry[0].time), drinker: line.drinkers.id[dry[0].drinker] },
    firstWithout:
      short === undefined ? undefined : { after: after(short.time), pen: asked.flock.pens[short.pen].id },
    halfDry: halfDry === undefined ? undefined : after(halfDry),
    empty,
    refilled: events.flatMap((event) =>
      event.kind === "refilled"
        ? [{ after: after(event.time), source: line.sources[event.source].id, volume: event.volume }]
        : [],
    ),
    followed: after(until),
  };
}

/** When first so many drinkers are dry together; a refill makes those that its water stands above give again. */
function dryTogether(
  events: Drawdown["events"],
  pools: readonly DrawnPool[],
  count: number,
): number | undefined {
  if (count === 0) return undefined;
  const dry = new Set<number>();
  for (const event of events) {
    if (event.kind === "refilled") for (const drinker of reachedBy(event.source, pools)) dry.delete(drinker);
    if (event.kind !== "drinkerDry") continue;
    dry.add(event.drinker);
    if (dry.size >= count) return event.time;
  }
  return undefined;
}

/** Drinkers that give when this source is full. */
function reachedBy(source: number, pools: readonly DrawnPool[]): number[] {
  const pool = pools.find(({ stores }) => stores.some((store) => store.source === source));
  const top = pool?.stores.find((store) => store.source === source)?.top ?? Number.NEGATIVE_INFINITY;
  return (pool?.dryBelow ?? []).filter(({ surface }) => surface < top).map(({ drinker }) => drinker);
}

function usableOf(asked: AskedPlan, index: number): number {
  const supply = { refills: asked.refills, start: asked.fullVolumes, failed: new Set<number>(), dripRate: 0 };
  const pool = poolsOf(asked.judged, asked.flock, supply).find(({ stores }) =>
    stores.some(({ source }) => source === index),
  );
  const store = pool?.stores.find(({ source }) => source === index);
  if (store === undefined || pool === undefined) return 0;
  const lowest = pool.dryBelow.reduce(
    (least, { surface }) => Math.min(least, surface),
    Number.POSITIVE_INFINITY,
  );
  return drawnAt({ stores: [store], start: [asked.fullVolumes[index]] }, lowest);
}
