import { DEFAULTS } from "../../document/defaults.js";
import type { Plan } from "../../document/plan-schema.js";
import { buildFlock } from "../../model/build-flock.js";
import { buildLine } from "../../model/build-line.js";
import { buildYard } from "../../model/build-yard.js";
import { type Flock, isThere, type Pen } from "../../model/flock.js";
import { HOT_DAY } from "../../model/flock-on.js";
import type { Line } from "../../model/line.js";
import { createTypedValues } from "../../model/typed-values.js";
import type { LooseWaterer, YardPen } from "../../model/yard.js";
import { groupOf, placesOf } from "../../simulate/crowd-want.js";
import { drinkersOfPens } from "../birds/drinkers-for-plan.js";
import type { Region } from "../birds/drinkers-needed.js";
import { manLine } from "../birds/man-line.js";
import { lostToAir, openAreaOf, weeksOf } from "./waterer-draw.js";
import { openingsOf, warmedOf } from "./waterer-openings.js";
import { reachOf } from "./waterer-reach.js";
import { changeOversOf, depthOf, depthOfKind, suitsOf } from "./waterer-suits.js";
import { staysIn, tiltOf, waterLeft } from "./waterer-tilt.js";
import { countOf, findingsOf } from "./yard-findings.js";
import type { PenYard, WatererReport, YardAnswer, YardOfPlan } from "./yard-result.js";

/** What every pen is judged with. */
interface Judging {
  readonly flock: Flock;
  readonly line: Line;
  readonly region: Region;
  readonly hotDay: YardOfPlan["hotDay"];
  readonly weeks: number;
  /** Carried in one trip [m³], and the most one should weigh [kg]. */
  readonly each: number;
  readonly most: number | undefined;
  /** By pen, what its drinkers of the line are of those it needs. */
  readonly coveredByLine: readonly number[];
}

/**
 * What the loose waterers of a plan come to: litres, slopes, birds served, refills, weights, whom they suit.
 *
 * @param plan           from `readPlan` or `checkDocument`
 * @param options.day    the day it is asked on, "2026-07-04"; counts where the plan names none
 * @param options.weeks  how many to look ahead; 8 if left out
 * @example yardForPlan(examplePlan("yard"), { weeks: 1 }).yard.pens[0].waterers[0].id   // "chick jars"
 */
export function yardForPlan(
  plan: Plan,
  { day, weeks = 8 }: { readonly day?: string | undefined; readonly weeks?: number } = {},
): YardAnswer {
  const built = buildLine(plan);
  if (!built.ok) return built;
  const flocking = buildFlock(plan, built.line, day);
  if (!flocking.ok) return flocking;
  const yarding = buildYard(plan);
  if (!yarding.ok) return yarding;
  const { flock } = flocking;
  const manned = manLine(plan, built.line, flock);
  const judging: Judging = {
    flock,
    line: built.line,
    region: manned.region,
    hotDay: hotDayOf(flock),
    weeks,
    ...loadOf(plan),
    coveredByLine: drinkersOfPens(manned).map(({ covered }, p) =>
      flock.pens[p].drinkers.length > 0 ? covered : 0,
    ),
  };
  return {
    ok: true,
    yard: {
      day: flock.day,
      region: judging.region,
      weather: flock.weather,
      hotDay: judging.hotDay,
      pens: yarding.yard.pens.map((pen, p) => judgePen(pen, flock.pens[p], judging)),
    },
  };
}

function hotDayOf({ weather: { high, low, hotSpell } }: Flock): YardOfPlan["hotDay"] {
  if (hotSpell !== undefined) return { high: hotSpell.high, low: hotSpell.low, isTaken: false };
  const hottest = Math.max(high, HOT_DAY);
  return { high: hottest, low: hottest - (high - low), isTaken: true };
}

function loadOf({ carry }: Plan): Pick<Judging, "each" | "most"> {
  const each = createTypedValues().si(carry?.each ?? DEFAULTS.carryEach.typed, "volume");
  return { each, most: carry?.most };
}

function judgePen(yardPen: YardPen, pen: Pen, judging: Judging): PenYard {
  const { flock, line, region, coveredByLine, most } = judging;
  const linePlaces = pen.drinkers.reduce((sum, d) => sum + placesOf(groupOf(line, d)), 0);
  const standing = yardPen.waterers.map((waterer) => {
    const tilt = tiltOf(waterer);
    return { waterer, tilt, reach: reachOf(waterer, tilt, pen, region) };
  });
  const loosePlaces = standing.reduce((sum, { waterer, reach }) => sum + waterer.count * reach.atOnce, 0);
  const places = linePlaces + loosePlaces;
  const waterers = standing.map((one) => reportOf(one, pen, judging, places));
  const byLine = coveredByLine[yardPen.index] ?? 0;
  const made = {
    pen: yardPen.id,
    index: yardPen.index,
    slope: yardPen.slope,
    birds: countOf(pen),
    batches: pen.batches
      .filter(({ count }) => count > 0)
      .map(({ kind, count, ageDays }) => ({ kind: kind.id, kindName: kind.name, count, ageDays })),
    linePlaces,
    loosePlaces,
    looseShare: places > 0 ? loosePlaces / places : 0,
    covered: coveredOf(pen, waterers, byLine),
    coveredByLine: byLine,
    waterers,
    changeOvers: changeOversOf(yardPen, pen, flock.day),
  };
  return { ...made, findings: findingsOf(made, { most }) };
}

/** Rules and advice for each kind of waterer add up; where none speaks, room for one bird at once is enough. */
function coveredOf(pen: Pen, waterers: readonly WatererReport[], byLine: number): number {
  if (!pen.batches.some(isThere)) return 1;
  return waterers.reduce(
    (sum, { reach, waterer }) => sum + (reach.covers ?? (reach.atOnce * waterer.count > 0 ? 1 : 0)),
    byLine,
  );
}

function reportOf(
  { waterer, tilt, reach }: Pick<WatererReport, "waterer" | "tilt" | "reach">,
  pen: Pen,
  { flock, line, hotDay, weeks, each, most }: Judging,
  places: number,
): WatererReport {
  const { kind, holds } = waterer;
  const { density } = line.water;
  const stays = staysIn(waterer, tilt);
  const gives = Math.max(0, stays - waterLeft(waterer, tilt));
  const perTrip = most === undefined ? each : Math.min(each, most / density);
  const isTurned = kind.fills === "turned over";
  return {
    id: waterer.id,
    index: waterer.index,
    waterer,
    tilt,
    holds,
    stays,
    gives,
    emptyMass: kind.empty,
    fullMass: kind.empty + holds * density,
    fill: isTurned
      ? { trips: 1, massPerTrip: kind.empty + holds * density }
      : { trips: Math.ceil(holds / perTrip - 1e-3), massPerTrip: Math.min(holds, perTrip) * density },
    reach,
    weeks: weeksOf(waterer, {
      flock,
      hotDay,
      pen: pen.index,
      share: places > 0 ? reach.atOnce / places : 0,
      gives,
      weeks,
    }),
    suits: suitsOf(waterer, pen),
    depth: depthOf(waterer, pen),
    ownHeight: ownHeightOf(waterer),
    open: {
      area: openAreaOf(waterer),
      now: lostToAir(waterer, flock.weather.high),
      hot: lostToAir(waterer, hotDay.high),
    },
    warming: warmedOf(waterer, hotDay, tilt),
    openings: openingsOf(waterer, density),
  };
}

/** Its lip over the ground where it stands on it [m]: its water, and the lip over that. */
function ownHeightOf({ kind }: LooseWaterer): number | undefined {
  if (kind.hangs) return undefined;
  return depthOfKind(kind) + (kind.works === "vacuum" || kind.works === "bell" ? kind.lipOverHole : 0);
}
