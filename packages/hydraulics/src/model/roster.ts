import type { Batch, Pen, RosterEntry, Stay } from "./flock.js";
import { emptied } from "./flock-at-line.js";

/**
 * The pens of a roster on a day: every batch in the pen where it then is. One that is still to come stands in its first
 * pen with an age below 0, by the days until it comes; one that has left, or is elsewhere, with no birds.
 *
 * @param day  days since 1970-01-01, the day ages of the roster are counted on
 */
export function pensOfRoster(
  pens: readonly Pen[],
  roster: readonly RosterEntry[],
  day: number,
): readonly Pen[] {
  const batches: Batch[][] = pens.map(() => []);
  for (const { batch, stays } of roster)
    stays.forEach((stay, k) => {
      batches[stay.pen][stay.place] = { ...onDay(batch, stay, day, k === 0), index: stay.place };
    });
  return pens.map((pen, p) => {
    const there = { ...pen, batches: batches[p] };
    return pen.isElsewhere === undefined ? there : emptied(there);
  });
}

function onDay(batch: Batch, { from, to }: Stay, day: number, isFirst: boolean): Batch {
  if (from !== undefined && day < from)
    return isFirst ? { ...batch, ageDays: Math.min(batch.ageDays, day - from) } : { ...batch, count: 0 };
  return to !== undefined && day >= to ? { ...batch, count: 0 } : batch;
}
