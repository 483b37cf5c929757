import type { Pen, Weather } from "../../model/flock.js";
import { intakeOfPen } from "../../model/flock-intake.js";
import type { LooseWaterer } from "../../model/yard.js";
import { IN_REACH, type Region } from "../birds/drinkers-needed.js";
import { reachOf } from "../yard/waterer-reach.js";
import { staysIn, tiltOf, waterLeft } from "../yard/waterer-tilt.js";
import { countOf } from "./count-of.js";
import type { Serving } from "./year-result.js";

/** What one piece meets of a pen's need, and what holds it back. */
export type Served = Pick<Serving, "share" | "because">;

/**
 * Fillings a day that a keeper is taken to be ready for: in the morning and in the evening.
 *
 * @source common-practice, twice a day, from memory
 */
const FILLINGS = 2;

/** The pen a waterer stands in, on the day its birds ask most. */
export interface PenServed {
  readonly pen: Pen;
  readonly weather: Weather;
  readonly region: Region;
  /** Birds at drinkers at once in the busiest minutes. */
  readonly atOnce: number;
}

/**
 * Share of a pen's need that one loose waterer meets as it stands: the least of what rules and advice, the crowd at the
 * busiest minutes, a day's water in two fillings, and two in reach of each bird leave it. Undefined where it gives no
 * water, or no bird is there.
 */
export function servedByWaterer(
  waterer: LooseWaterer,
  { pen, weather, region, atOnce }: PenServed,
): Served | undefined {
  const birds = countOf(pen);
  if (birds === 0) return undefined;
  const tilt = tiltOf(waterer);
  const reach = reachOf({ ...waterer, count: 1 }, tilt, pen, region);
  if (reach.atOnce === 0) return undefined;
  const gives = Math.max(0, staysIn(waterer, tilt) - waterLeft(waterer, tilt));
  const drunk = intakeOfPen(pen, weather).size;
  return leastOf([
    { because: "inReach", share: 1 / Math.min(birds, IN_REACH) },
    { because: "rules", share: reach.covers ?? 1 },
    { because: "crowd", share: atOnce > 0 ? reach.atOnce / atOnce : 1 },
    { because: "water", share: drunk > 0 ? (FILLINGS * gives) / drunk : 1 },
  ]);
}

const leastOf = (all: readonly Served[]): Served =>
  all.reduce((least, one) => (one.share < least.share ? one : least));
