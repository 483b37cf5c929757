import type { Flock } from "../../../model/flock.js";
import { flockInDays } from "../../../model/flock-on.js";
import type { Line } from "../../../model/line.js";
import type { WatererMishap } from "../../../model/waterer-mishap.js";
import type { LooseWaterer } from "../../../model/yard.js";
import { drawOfPen, type PenDraw } from "../../../simulate/pen-draw.js";
import { MORNING } from "../../asked-plan.js";
import type { Region } from "../../birds/drinkers-needed.js";
import { lostToAir, spillOf } from "../../yard/waterer-draw.js";
import { reachOf } from "../../yard/waterer-reach.js";
import type { PenYard, Reach } from "../../yard/yard-result.js";
import { FOLLOWED } from "../strike.js";
import { birdHoursOf, drawPen, type LoosePool, type PenDrawdown } from "./draw-pen.js";
import type { WatererEnd, WatererMishapResult } from "./waterer-mishap-result.js";
import { type WatererWater, waterAfter, waterOf } from "./waterer-water.js";

const DAY = 86_400;

/** One pen and all that its waterers are run with. */
export interface PenAsked {
  readonly yard: PenYard;
  readonly flock: Flock;
  readonly line: Line;
  readonly region: Region;
  /** Places of the line that give water. */
  readonly linePlaces: number;
  readonly drawOn: (day: number) => PenDraw;
}

/** What its birds drink of each day, spills not counted: reckoned once a day. */
export function drawsOfPen(flock: Flock, line: Line, pen: number): PenAsked["drawOn"] {
  const known = new Map<number, PenDraw>();
  return (day) => {
    const drawn = known.get(day) ?? drawOn(flockInDays(flock, day), line, pen);
    known.set(day, drawn);
    return drawn;
  };
}

/** Drinkers of the line spill their own share: here each waterer does. */
const drawOn = (flock: Flock, line: Line, pen: number): PenDraw =>
  drawOfPen(line, flock, { ...flock.pens[pen], drinkers: [] }, "size");

/** What is run besides the mishap: a waterer put in another's place, or another beside it. */
export interface WithGuard {
  /** In place of that to which it happens, before it happens. */
  readonly instead?: LooseWaterer;
  readonly beside?: LooseWaterer;
  /** How far it is followed [s], where not to its end. */
  readonly lasts?: number;
}

/** One mishap of one loose waterer, run from the morning round with everything full; or none, for what it is held against. */
export function runWaterer(
  asked: PenAsked,
  mishap: WatererMishap,
  { instead, beside, lasts }: WithGuard = {},
): WatererMishapResult {
  const { yard, line } = asked;
  const report = yard.waterers[mishap.waterer];
  const struck = instead ?? report.waterer;
  const before = waterOf(struck);
  const after = waterAfter(struck, mishap, line.water.density);
  const isMissed = mishap.kind === "refillMissed";
  const missed = isMissed ? { first: 2 * everyOf(struck), every: everyOf(struck) } : undefined;
  const others = othersIn(yard, mishap.waterer, beside);
  const pools = [
    poolOf(asked, after, { full: before.gives, count: 1, refill: missed }),
    ...others.map(({ waterer, count }) =>
      poolOf(asked, waterOf(waterer), { count, refill: isMissed ? roundsOf(waterer) : undefined }),
    ),
  ];
  const followed = lasts ?? missed?.first ?? FOLLOWED;
  const drawdown = drawPen(pools, { ...asked, from: MORNING, lasts: followed });
  const comesAfter = missed?.first ?? DAY;
  return {
    mishap,
    pen: yard.pen,
    waterer: report.id,
    count: report.waterer.count,
    birds: yard.birds,
    ...endOf(asked, drawdown, comesAfter),
    lost: before.stays - after.stays,
    gives: after.gives,
    gave: before.gives,
    slope: after.waterer.slope,
    drainsAt: "drainsAt" in after.tilt ? after.tilt.drainsAt : undefined,
    goesOnAtLine: asked.linePlaces > 0,
    covered: coveredOf(asked, before, after, RUNS_EMPTY.has(mishap.kind) || after.gives <= 0),
    balance: balanceOf({ before, after, others, pools, drawdown }),
    comesAfter,
    followed: drawdown.until,
  };
}

/** Waterers of one kind, and how many. */
interface Several {
  readonly waterer: LooseWaterer;
  readonly count: number;
}

/** All in the pen but the one to which it happens, and one more where a guard stands beside it. */
function othersIn(yard: PenYard, struck: number, beside: LooseWaterer | undefined): Several[] {
  const there = yard.waterers.map(({ waterer }, w) => ({
    waterer,
    count: waterer.count - (w === struck ? 1 : 0),
  }));
  const all = beside === undefined ? there : [...there, { waterer: beside, count: 1 }];
  return all.filter(({ count }) => count > 0);
}

/** What stood in the pen, and where it went; what no bird reaches stands as before, but for what the mishap lost of it. */
function balanceOf({
  before,
  after,
  others,
  pools,
  drawdown,
}: {
  readonly before: WatererWater;
  readonly after: WatererWater;
  readonly others: readonly Several[];
  readonly pools: readonly LoosePool[];
  readonly drawdown: PenDrawdown;
}): WatererMishapResult["balance"] {
  const standing = others.reduce((sum, { waterer, count }) => sum + count * waterOf(waterer).stays, 0);
  const drinkable = pools.reduce((sum, { start }) => sum + start, 0);
  const { poured, drunk, air, left } = drawdown;
  return {
    start: before.stays + standing,
    poured,
    drunk,
    air,
    lost: before.stays - after.stays,
    left: left + after.stays + standing - drinkable,
  };
}

/** What comes of the pen if nothing happens to it and nobody fills. */
export function runUntouched(asked: PenAsked): WatererEnd {
  const pools = asked.yard.waterers.map(({ waterer }) =>
    poolOf(asked, waterOf(waterer), { count: waterer.count }),
  );
  return endOf(asked, drawPen(pools, { ...asked, from: MORNING, lasts: FOLLOWED }), DAY);
}

/** Filled as the plan says; where it says nothing, once a day at the morning round. */
const everyOf = ({ refillEvery }: LooseWaterer): number => refillEvery ?? DAY;
const roundsOf = (waterer: LooseWaterer) => ({ first: everyOf(waterer), every: everyOf(waterer) });

function poolOf(
  asked: PenAsked,
  { waterer, gives, tilt }: WatererWater,
  {
    count,
    full = gives,
    refill,
  }: { readonly count: number; readonly full?: number; readonly refill?: LoosePool["refill"] },
): LoosePool {
  const { atOnce } = reachOf(waterer, tilt, asked.flock.pens[asked.yard.index], asked.region);
  return {
    full: full * count,
    start: gives * count,
    places: gives > 0 ? atOnce * count : 0,
    taken: 1 + spillOf(waterer),
    dry: (count * lostToAir(waterer, asked.flock.weather.high)) / DAY,
    refill,
  };
}

function endOf({ yard, flock }: PenAsked, drawdown: PenDrawdown, until: number): WatererEnd {
  if (yard.birds === 0) return { harmAfter: undefined, birdHours: 0 };
  return {
    harmAfter: drawdown.without[0]?.from,
    birdHours: birdHoursOf(drawdown, { birds: yard.birds, from: MORNING, until, weather: flock.weather }),
  };
}

/** Mishaps after which it gives little and then nothing. */
const RUNS_EMPTY: ReadonlySet<WatererMishap["kind"]> = new Set([
  "capOff",
  "lidLoose",
  "jarCracked",
  "ventShut",
  "kickedOver",
]);

/** Of what rules and advice ask, what is there; and what is left once the one gives nothing more. */
function coveredOf(
  { yard, flock, region }: PenAsked,
  before: WatererWater,
  after: WatererWater,
  isEmptied: boolean,
): WatererMishapResult["covered"] {
  const pen = flock.pens[yard.index];
  const reach = ({ waterer, tilt }: WatererWater, count: number) =>
    reachOf({ ...waterer, count }, tilt, pen, region);
  const { count } = before.waterer;
  const all = coversOf(reach(before, count));
  const rest = count > 1 ? coversOf(reach(before, count - 1)) : 0;
  const own = isEmptied ? 0 : coversOf(reach(after, 1));
  // Where no rule speaks of it, one that gives is as good as many.
  const left = reach(before, count).covers === undefined ? Math.max(rest, own) : rest + own;
  return { before: yard.covered, after: Math.max(0, yard.covered - all + left) };
}

/** Where no rule speaks of it, room for one bird is enough, as `headfall yard` has it. */
const coversOf = ({ covers, atOnce }: Reach): number => covers ?? (atOnce > 0 ? 1 : 0);
