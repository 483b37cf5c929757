import type { Pen } from "../../model/flock.js";
import type { HangRange } from "../birds/hang-range.js";
import { lastsOf } from "./waterer-draw.js";
import type { YardFinding } from "./yard-finding.js";
import type { PenYard, Suit, Tilt, WatererReport } from "./yard-result.js";

/** Share of the slope that drains it from which on a waterer stands too near it. */
const NEARLY = 0.7;
/** Share that stays from which on down a pan's loss is told. */
const HOLDS_LESS = 0.75;
/** Refills a day from which on they are told. */
const OFTEN = 2;
/** How far below its range a lip may stand before it is told [m]: common practice, no source. */
const LOW_BY = 0.02;

/** What is amiss with the waterers of one pen. */
export function findingsOf(
  { pen, birds, covered, coveredByLine, linePlaces, loosePlaces, waterers }: Omit<PenYard, "findings">,
  { most }: { readonly most: number | undefined },
): YardFinding[] {
  if (birds === 0) return waterers.flatMap((report) => tiltFindings(report.id, report.tilt));
  const places: YardFinding[] =
    linePlaces + loosePlaces === 0
      ? [{ code: "noWater", pen, birds }]
      : covered < 1 - 1e-9
        ? [{ code: "tooFewPlaces", pen, covered, byLine: coveredByLine }]
        : [];
  const isSilent =
    waterers.length > 0 && coveredByLine === 0 && waterers.every(({ reach }) => reach.covers === undefined);
  return [
    ...places,
    ...(isSilent && loosePlaces > 0 ? [{ code: "noRule", pen } as const] : []),
    ...waterers.flatMap((report) => [
      ...tiltFindings(report.id, report.tilt),
      ...refillFindings(report),
      ...report.suits.flatMap((suit) =>
        suitFindings(report.id, suit, othersSuit(suit, report, waterers, linePlaces)),
      ),
      ...report.depth.mayDrown.map(
        (young): YardFinding => ({
          code: "mayDrown",
          waterer: report.id,
          depth: report.depth.depth,
          ...young,
        }),
      ),
      ...heightFindings(report),
      ...warmthFindings(report),
      ...(most !== undefined && report.fullMass > most && report.waterer.kind.fills === "turned over"
        ? [{ code: "tooHeavy", waterer: report.id, mass: report.fullMass, most } as const]
        : []),
    ]),
  ];
}

function tiltFindings(waterer: string, tilt: Tilt): YardFinding[] {
  if (tilt.works === "nipples") return [];
  const { slope, shims } = tilt;
  if ("share" in tilt) {
    const across = tilt.shareAcross;
    return tilt.share < HOLDS_LESS
      ? [{ code: "holdsLess", waterer, share: tilt.share, across, shimLevel: shims.level }]
      : [];
  }
  const { drainsAt } = tilt;
  if (tilt.isDraining && drainsAt !== undefined)
    return [
      {
        code: "drains",
        waterer,
        slope,
        drainsAt,
        turn: tilt.works === "vacuum" ? betterTurn(tilt.byHole, slope) : undefined,
        shimLevel: shims.level,
        shimEnough: shims.enough,
      },
    ];
  const near: YardFinding[] =
    drainsAt !== undefined && slope > NEARLY * drainsAt
      ? [{ code: "nearlyDrains", waterer, slope, drainsAt, shimEnough: shims.enough }]
      : [];
  const dry: YardFinding[] =
    tilt.works === "vacuum" && tilt.wetShare < 1 - 1e-9
      ? [{ code: "dryUphill", waterer, wetShare: tilt.wetShare }]
      : [];
  return [...near, ...dry];
}

/** The way to turn the hole that holds with some to spare, downhill only where sideways does not. */
function betterTurn(
  byHole: Extract<Tilt, { works: "vacuum" }>["byHole"],
  slope: number,
): "sideways" | "downhill" | undefined {
  const holds = (limit: number | undefined) => limit === undefined || slope < NEARLY * limit;
  if (holds(byHole.sideways)) return "sideways";
  return holds(byHole.downhill) ? "downhill" : undefined;
}

function refillFindings(report: WatererReport): YardFinding[] {
  const { weeks, waterer, id } = report;
  const [{ draw, hotDraw, refills, hotRefills }] = weeks;
  const every = waterer.refillEvery;
  const lasts = lastsOf(report, draw.size);
  const hotLasts = lastsOf(report, hotDraw.size);
  if (report.gives <= 0 || lasts === undefined || hotLasts === undefined) return [];
  if (every !== undefined)
    return hotLasts < every ? [{ code: "emptyBetween", waterer: id, every, lasts, hotLasts }] : [];
  if (refills === undefined || hotRefills === undefined || hotRefills < OFTEN) return [];
  return [{ code: "oftenEmpty", waterer: id, refills, hotRefills }];
}

/** Whether a batch has another waterer in its pen that suits it, or the line. */
function othersSuit(
  suit: Suit,
  own: WatererReport,
  all: readonly WatererReport[],
  linePlaces: number,
): boolean {
  const suitsHere = (report: WatererReport) =>
    report.suits.some(
      ({ kind, ageDays, verdict }) => kind === suit.kind && ageDays === suit.ageDays && verdict === "suits",
    ) && report.reach.atOnce > 0;
  return linePlaces > 0 || all.some((report) => report !== own && suitsHere(report));
}

function suitFindings(waterer: string, suit: Suit, isServedElse: boolean): YardFinding[] {
  const { verdict, kindName, ageDays, fromDays, toDays } = suit;
  const base = { waterer, kindName, othersSuit: isServedElse };
  if (verdict === "tooYoung") return [{ code: "tooYoung", ...base, ageDays, fromDays }];
  if (verdict === "tooOld") return [{ code: "tooOld", ...base, ageDays, toDays: toDays ?? 0 }];
  return verdict === "notForThem" ? [{ code: "notForThem", ...base }] : [];
}

function heightFindings({ id, waterer, weeks, ownHeight }: WatererReport): YardFinding[] {
  const { hang } = weeks[0];
  const height = waterer.hang ?? ownHeight;
  if (hang === undefined || height === undefined) return [];
  const isHung = waterer.hang !== undefined;
  const rest = { waterer: id, height, ...rangeOf(hang) };
  if (height > hang.high) return [{ code: isHung ? "hangsHigh" : "standsHigh", ...rest }];
  if (height < hang.low - LOW_BY) return [{ code: isHung ? "hangsLow" : "standsLow", ...rest }];
  return [];
}

const rangeOf = ({ low, height, high }: HangRange) => ({ low, best: height, high });

function warmthFindings({ id, warming, holds }: WatererReport): YardFinding[] {
  if (warming === undefined || warming.lost < 0.01 * holds) return [];
  return [{ code: "warmthSpills", waterer: id, lost: warming.lost, pushed: warming.pushed }];
}

/** Birds of a pen that are there. */
export const countOf = ({ batches }: Pen): number =>
  batches.reduce((sum, { count, ageDays }) => sum + (ageDays < 0 ? 0 : count), 0);
