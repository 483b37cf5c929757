import { type DayCurve, drunkUpTo } from "../birds/day-curve.js";
import type { Random } from "../numerics/random.js";
import { valueBetween } from "../numerics/value-between.js";
import type { DayBatch, DaySetting, Habits } from "./day-setting.js";
import { BEHAVIOUR } from "./day-setting.js";

/** All birds of a day as parallel arrays; volumes [m³], times [s]. */
export interface DayBirds {
  readonly count: number;
  readonly batch: Int32Array;
  readonly pen: Int32Array;
  readonly wanted: Float64Array;
  readonly drunk: Float64Array;
  readonly bouts: Int32Array;
  readonly gaveUp: Int32Array;
  readonly foundDry: Int32Array;
  readonly waited: Float64Array;
  readonly longestWait: Float64Array;
  /** When it comes next; infinite when it comes no more today. */
  readonly comes: Float64Array;
  /** Of the bout it is at, or waits for. */
  readonly left: Float64Array;
  readonly rate: Float64Array;
  /** Where it drinks; −1 when it does not. */
  readonly drinker: Int32Array;
  readonly waitsSince: Float64Array;
}

export function createBirds({ batches }: DaySetting, habits: Habits, random: Random): DayBirds {
  const count = batches.reduce((sum, batch) => sum + batch.count, 0);
  const floats = () => new Float64Array(count);
  const whole = () => new Int32Array(count);
  const birds: DayBirds = {
    count,
    batch: whole(),
    pen: whole(),
    wanted: floats(),
    drunk: floats(),
    bouts: whole(),
    gaveUp: whole(),
    foundDry: whole(),
    waited: floats(),
    longestWait: floats(),
    comes: floats(),
    left: floats(),
    rate: floats(),
    drinker: whole().fill(-1),
    waitsSince: floats(),
  };
  let bird = 0;
  batches.forEach((batch, b) => {
    for (let k = 0; k < batch.count; k += 1, bird += 1) {
      birds.batch[bird] = b;
      birds.pen[bird] = batch.pen;
      const factor = Math.min(2, Math.max(0.4, 1 + habits.spread * random.normal()));
      birds.wanted[bird] = batch.wanted * factor;
      birds.comes[bird] = nextCome(batch, 0, random);
    }
  });
  return birds;
}

/** When a bird comes next: as many times a day as it has bouts, at random along its day's curve. */
export function nextCome(batch: DayBatch, time: number, random: Random): number {
  const share = drunkUpTo(batch.curve, time) - Math.log(1 - random.uniform()) / batch.bouts;
  return share >= 1 ? Number.POSITIVE_INFINITY : timeAtShare(batch.curve, share);
}

/** The inverse of the day's curve. */
function timeAtShare({ edges, drunk }: DayCurve, share: number): number {
  return valueBetween(drunk, edges, share);
}

/** What a bird means to drink now: what it is behind, and a bout ahead. */
export function boutOf(
  birds: DayBirds,
  bird: number,
  batch: DayBatch,
  time: number,
  habits: Habits,
  random: Random,
): number {
  const usual = birds.wanted[bird] / batch.bouts;
  if (habits.bouts === "fixed") return usual;
  if (habits.bouts === "exponential") return -usual * Math.log(1 - random.uniform());
  const behind = birds.wanted[bird] * drunkUpTo(batch.curve, time) - birds.drunk[bird];
  return Math.min(
    BEHAVIOUR.most * usual,
    Math.max(BEHAVIOUR.least * usual, behind + BEHAVIOUR.ahead * usual),
  );
}
