import { hangHeight } from "../../birds/hang-height.js";
import { isThere, type Pen } from "../../model/flock.js";
import { hangPointsOf } from "../../tables/bird-heights.js";
import type { HangPoint } from "../../tables/bird-types.js";

/** Where drinkers hang right for birds of an age [m above what they stand on]. */
export interface HangRange {
  readonly low: number;
  readonly height: number;
  readonly high: number;
  readonly ageDays: number;
}

/**
 * Where a device hangs right for a pen: for the smallest birds that are there, as too high leaves them dry and too low
 * only spills.
 */
export function hangAtForBirds(pen: Pen, device: HangPoint["device"]): HangRange | undefined {
  let lowest: HangRange | undefined;
  for (const { kind, ageDays } of pen.batches.filter(isThere)) {
    const range = hangHeight(hangPointsOf(kind.id), device, ageDays);
    if (range !== undefined && (lowest === undefined || range.height < lowest.height))
      lowest = { low: range.low, height: range.height, high: range.high, ageDays };
  }
  return lowest;
}
