import { busiestHour, type DayCurve, dayCurve, shareBetween } from "../birds/day-curve.js";
import type { Batch, Pen, Weather } from "../model/flock.js";
import { type BatchIntake, intakeOfBatch } from "../model/flock-intake.js";
import type { Line } from "../model/line.js";
import { type BatchWant, groupOf, isOpen } from "./crowd-want.js";

const HOUR = 3600;

/** What the birds of a pen want at the hour in which they drink most. */
export interface PenWant {
  /** In the order of the pen's batches; those that have not come are of no birds. */
  readonly batches: readonly BatchWant[];
  readonly intakes: readonly BatchIntake[];
  readonly birds: number;
  /** Start [s after midnight] and share of the day's drinking; undefined when no bird is there. */
  readonly busiestHour: { readonly from: number; readonly share: number } | undefined;
  /** Mean share of an hour of light over that of the busiest hour. */
  readonly ordinaryShare: number;
}

/** The pen's wants on a day of such weather. Birds drink in bouts, fewer of them at open water. */
export function wantOfPen(line: Line, pen: Pen, weather: Weather): PenWant {
  const intakes = pen.batches.map((batch) => intakeOfBatch(batch, weather));
  const there = pen.batches.map((batch) => (batch.ageDays < 0 ? 0 : batch.count));
  const hour = hourOfPen(pen, weather, there, intakes);
  const open = pen.drinkers.filter((d) => isOpen(groupOf(line, d))).length;
  const isMostlyOpen = 2 * open > pen.drinkers.length;
  return {
    batches: pen.batches.map(({ kind }, k) => {
      const drunk = intakes[k].size;
      return {
        count: there[k],
        demand: there[k] === 0 ? 0 : (drunk * hour.shares[k]) / HOUR,
        fastest: kind.fastest,
        boutVolume: there[k] === 0 ? 0 : drunk / (isMostlyOpen ? kind.boutsOpen : kind.boutsClosed),
      };
    }),
    intakes,
    birds: there.reduce((sum, count) => sum + count, 0),
    busiestHour: hour.busiest,
    ordinaryShare: hour.busiest === undefined ? 0 : Math.min(1, HOUR / weather.light / hour.busiest.share),
  };
}

interface PenHour {
  readonly busiest: PenWant["busiestHour"];
  /** By batch: share of its day's drinking that falls into that hour. */
  readonly shares: readonly number[];
}

/** The hour in which the pen as a whole drinks most, among the busiest hours of its batches. */
function hourOfPen(
  pen: Pen,
  weather: Weather,
  there: readonly number[],
  intakes: readonly BatchIntake[],
): PenHour {
  const curves = pen.batches.map((batch) => curveOf(batch, weather));
  const daily = pen.batches.map((_, k) => there[k] * intakes[k].size);
  const total = daily.reduce((sum, volume) => sum + volume, 0);
  let best: PenHour = { busiest: undefined, shares: pen.batches.map(() => 0) };
  if (total === 0) return best;
  curves.forEach((curve, k) => {
    if (daily[k] === 0) return;
    const { from } = busiestHour(curve);
    const shares = curves.map((other) => shareBetween(other, from, from + HOUR));
    const share = shares.reduce((sum, one, j) => sum + one * daily[j], 0) / total;
    if (share > (best.busiest?.share ?? 0)) best = { busiest: { from, share }, shares };
  });
  return best;
}

const curveOf = ({ kind }: Batch, { dawn, light, high }: Weather): DayCurve =>
  dayCurve({ shape: kind.dayShape, dawn, light, temperature: high });
