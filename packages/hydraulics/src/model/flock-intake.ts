import { meanHeatFactor } from "../birds/air.js";
import { dayCurve } from "../birds/day-curve.js";
import { intakeOf } from "../birds/intake.js";
import type { IntakePoint } from "../tables/bird-types.js";
import type { Citation } from "../tables/citation.js";
import type { Batch, Flock, Pen, Weather } from "./flock.js";

/**
 * How far a figure of intake may be off by how sure it is: two standard deviations, as a share; common practice, no
 * source.
 *
 * @source common-practice, not stated, from memory
 */
export const INTAKE_DOUBT = { high: 0.1, medium: 0.2, low: 0.4 } as const;

/** What one bird of a batch drinks in a day [m³/day], what is spilled not counted. */
export interface BatchIntake {
  /** The cautious figure, to size on. */
  readonly size: number;
  /** The figure to expect; never more than that to size on. */
  readonly expect: number;
  /** Least and most it may be: below what is expected, above what is sized on, by how sure each is. */
  readonly low: number;
  readonly high: number;
  /** Times a mild day. */
  readonly heat: number;
  /** How sure the less sure of the two figures is. */
  readonly confidence: keyof typeof INTAKE_DOUBT;
  readonly sizeFrom: readonly Citation[];
  readonly expectFrom: readonly Citation[];
}

/**
 * What one bird of a batch drinks on a day of such weather; nothing before it has come.
 *
 * @example intakeOfBatch(flock.pens[0].batches[0], flock.weather).expect   // 0.0002176
 */
export function intakeOfBatch({ kind, ageDays, lay }: Batch, weather: Weather): BatchIntake {
  const curve = dayCurve({ shape: kind.dayShape, dawn: weather.dawn, light: weather.light });
  const heat = meanHeatFactor(weather, curve);
  const size = heat * intakeOf(kind.size, ageDays, lay);
  const expect = Math.min(size, heat * intakeOf(kind.expect, ageDays, lay));
  const [sizeRows, expectRows] = [rowsAround(kind.size, ageDays, lay), rowsAround(kind.expect, ageDays, lay)];
  return {
    size,
    expect,
    low: expect * (1 - INTAKE_DOUBT[leastSure(expectRows)]),
    high: size * (1 + INTAKE_DOUBT[leastSure(sizeRows)]),
    heat,
    confidence: leastSure([...sizeRows, ...expectRows]),
    sizeFrom: citationsOf(sizeRows),
    expectFrom: citationsOf(expectRows),
  };
}

/** The rows a figure lies between. */
function rowsAround(points: readonly IntakePoint[], ageDays: number, lay: number): readonly IntakePoint[] {
  const byLay = points.every((point) => point.lay !== undefined);
  const at = byLay ? lay : ageDays;
  const next = points.findIndex((point) => (byLay ? (point.lay ?? 0) : point.ageDays) >= at);
  if (next < 0) return points.slice(-1);
  const isOn = (byLay ? points[next].lay : points[next].ageDays) === at;
  return next === 0 || isOn ? [points[next]] : [points[next - 1], points[next]];
}

function leastSure(rows: readonly IntakePoint[]): keyof typeof INTAKE_DOUBT {
  if (rows.some(({ confidence }) => confidence === "low")) return "low";
  return rows.some(({ confidence }) => confidence === "medium") ? "medium" : "high";
}

function citationsOf(rows: readonly IntakePoint[]): Citation[] {
  const seen = new Set<string>();
  return rows
    .map(({ citation }) => citation)
    .filter(({ source, where }) => !seen.has(`${source} ${where}`) && seen.add(`${source} ${where}`));
}

/** What all birds of a pen, or of all pens, drink in a day [m³/day], what is spilled not counted. */
export interface FlockIntake {
  readonly size: number;
  readonly expect: number;
  readonly low: number;
  readonly high: number;
}

export function intakeOfPen(pen: Pen, weather: Weather): FlockIntake {
  return sumOfIntakes(pen.batches.map((batch) => timesIntake(batch.count, intakeOfBatch(batch, weather))));
}

export function intakeOfFlock({ pens, weather }: Flock): FlockIntake {
  return sumOfIntakes(pens.map((pen) => intakeOfPen(pen, weather)));
}

/** So many times an intake [m³/day]. */
export const timesIntake = (count: number, { size, expect, low, high }: FlockIntake): FlockIntake => ({
  size: count * size,
  expect: count * expect,
  low: count * low,
  high: count * high,
});

/** Intakes added up [m³/day]. */
export const sumOfIntakes = (all: readonly FlockIntake[]): FlockIntake =>
  all.reduce(
    (sum, one) => ({
      size: sum.size + one.size,
      expect: sum.expect + one.expect,
      low: sum.low + one.low,
      high: sum.high + one.high,
    }),
    { size: 0, expect: 0, low: 0, high: 0 },
  );
