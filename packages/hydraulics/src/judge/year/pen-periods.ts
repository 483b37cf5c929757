import type { Plan } from "../../document/plan-schema.js";
import { type Flock, isThere, type Pen } from "../../model/flock.js";
import { type FlockIntake, intakeOfBatch, intakeOfPen } from "../../model/flock-intake.js";
import { flockInAir, flockInDays } from "../../model/flock-on.js";
import type { Line } from "../../model/line.js";
import type { Yard, YardPen } from "../../model/yard.js";
import type { YearWeather } from "../../model/year-weather.js";
import { spilledShareOf } from "../../tables/spilled-share.js";
import { birdsAtOnce, drinkersOfPens } from "../birds/drinkers-for-plan.js";
import type { PenDrinkers } from "../birds/drinkers-needed.js";
import { hangAtForBirds } from "../birds/hang-range.js";
import { type MannedLine, manLine } from "../birds/man-line.js";
import { spilledAtPen } from "../birds/report-flock.js";
import { spillOf } from "../yard/waterer-draw.js";
import { suitOf } from "../yard/waterer-suits.js";
import { countOf } from "./count-of.js";
import { servedByWaterer } from "./waterer-serves.js";
import type { Span } from "./year-periods.js";
import type { PenPeriod, YearPeriod } from "./year-result.js";

/** What a year is reckoned from. */
export interface YearAsked {
  readonly plan: Plan;
  readonly line: Line;
  readonly flock: Flock;
  readonly yard: Yard;
  readonly weather: YearWeather;
}

/** A period as judged, and what the kit is given out by. */
export interface JudgedPeriod {
  readonly period: YearPeriod;
  /** On its first day, and on its last in the hottest air of that time, when the birds ask most. */
  readonly first: Flock;
  readonly manned: MannedLine;
}

/** One period: who is there, what they drink, and how far drinkers and waterers of the pens go. */
export function judgePeriod(asked: YearAsked, span: Span): JudgedPeriod {
  const { plan, line, flock, yard, weather } = asked;
  const start = flock.day ?? span.from;
  const lastDay = span.to - 1;
  const air = weather.on(lastDay);
  const hotAir = weather.hotOn(lastDay);
  const first = flockInAir(flockInDays(flock, span.from - start), weather.on(span.from));
  const last = flockInAir(flockInDays(flock, lastDay - start), air);
  const hot = hotAir === undefined ? undefined : flockInAir(last, hotAir);
  const manned = manLine(plan, line, hot ?? last);
  const drinkers = drinkersOfPens(manned);
  const pens = last.pens.map((pen, p): PenPeriod => {
    const spilled = spilledOf(line, pen, yard.pens[p]);
    const taken = 1 + spilled;
    return {
      birds: countOf(pen),
      batches: batchesOf(first.pens[p], pen, last.weather),
      spilled,
      draw: timesOf(taken, intakeOfPen(pen, last.weather)),
      hotDraw: hot === undefined ? undefined : timesOf(taken, intakeOfPen(pen, hot.weather)),
      drinkers: drinkers[p],
      byLine: pen.drinkers.length === 0 ? 0 : coveredBy(drinkers[p]),
      byWaterers: coveredByWaterers(yard.pens[p], first.pens[p], manned),
      heights: heightsFor(first.pens[p]),
    };
  });
  return { period: { ...span, air, hotAir, pens }, first, manned };
}

/** What is hung for a period is hung on its first day: as high as the last asks for, it would leave birds dry till then. */
const heightsFor = (pen: Pen): PenPeriod["heights"] => ({
  nipple: hangAtForBirds(pen, "nipple"),
  cup: hangAtForBirds(pen, "cup"),
});

function batchesOf(first: Pen, last: Pen, weather: Flock["weather"]): PenPeriod["batches"] {
  return last.batches.flatMap((batch, k) =>
    isThere(batch)
      ? [
          {
            kind: batch.kind.id,
            kindName: batch.kind.name,
            count: batch.count,
            ageFrom: Math.max(0, first.batches[k].ageDays),
            ageTo: batch.ageDays,
            each: intakeOfBatch(batch, weather).size,
          },
        ]
      : [],
  );
}

/** Spilled over drunk at what a pen has; of a pen with nothing yet, as at founts. */
function spilledOf(line: Line, pen: Pen, { waterers }: YardPen): number {
  if (pen.drinkers.length > 0) return spilledAtPen(line, pen);
  if (waterers.length === 0) return spilledShareOf("fount").spilled;
  return waterers.reduce((sum, waterer) => sum + spillOf(waterer), 0) / waterers.length;
}

const coveredBy = ({ devices }: PenDrinkers): number =>
  devices.reduce((sum, { has, needed }) => sum + (needed === 0 ? 1 : has / needed), 0);

/** Share of a pen's need that its own loose waterers meet: those that suit all of its birds the whole period. */
function coveredByWaterers({ waterers, index }: YardPen, first: Pen, manned: MannedLine): number {
  const pen = manned.flock.pens[index];
  const served = {
    pen,
    weather: manned.flock.weather,
    region: manned.region,
    atOnce: atOnceIn(manned, index),
  };
  const there = [...first.batches, ...pen.batches].filter(isThere);
  return waterers
    .filter(({ kind }) => there.every((batch) => suitOf(kind, batch).verdict === "suits"))
    .reduce((sum, waterer) => sum + waterer.count * (servedByWaterer(waterer, served)?.share ?? 0), 0);
}

/** Birds of a pen at drinkers at once in the busiest minutes. */
export const atOnceIn = ({ crowd }: MannedLine, p: number): number => birdsAtOnce(crowd.pens[p]);

const timesOf = (factor: number, { size, expect, low, high }: FlockIntake): FlockIntake => ({
  size: factor * size,
  expect: factor * expect,
  low: factor * low,
  high: factor * high,
});
