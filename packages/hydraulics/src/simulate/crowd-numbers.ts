import type { Line } from "../model/line.js";
import { type Crowd, type PenCrowd, putToWork } from "./crowd.js";
import { crowdLoad } from "./crowd-load.js";

/** How many drinkers of each group are at work, from which are. */
export function countByGroup(line: Line, atWork: Uint8Array): number[] {
  const { drinkers } = line;
  const counts = drinkers.groups.map(() => 0);
  for (let d = 0; d < drinkers.count; d += 1) counts[drinkers.group[d]] += atWork[d];
  return counts;
}

/**
 * Drinkers of a pen at work in an ordinary hour: the mean load of an hour of light, rounded up, at what the drinkers
 * give when the birds are busiest, which is the cautious side.
 */
export function ordinaryOf({ load, want, giving }: PenCrowd): number {
  if (load.demand === 0) return 0;
  return Math.min(giving.length, Math.max(1, Math.ceil(load.load * want.ordinaryShare - 1e-9)));
}

/**
 * The ordinary number of a pen shared among its groups: as drinkers evenly spaced over all that the pen reaches fall
 * into them.
 */
export function shareOrdinary(line: Line, pen: PenCrowd, counts: number[]): void {
  const among = pen.pen.drinkers;
  const ordinary = Math.min(among.length, ordinaryOf(pen));
  for (const d of among) counts[line.drinkers.group[d]] = 0;
  for (let k = 0; k < ordinary; k += 1) {
    const d = among[Math.floor(((k + 0.5) * among.length) / ordinary)];
    counts[line.drinkers.group[d]] += 1;
  }
}

/**
 * How far a pen's drinking may be off: least and greatest over the figure to size on, two standard deviations either
 * way, its batches weighed by what they drink.
 */
export function intakeSpread({ want }: PenCrowd): { readonly low: number; readonly high: number } {
  let [size, low, high] = [0, 0, 0];
  want.batches.forEach(({ count }, k) => {
    const intake = want.intakes[k];
    size += count * intake.size;
    low += count * intake.low;
    high += count * intake.high;
  });
  return size === 0 ? { low: 1, high: 1 } : { low: low / size, high: Math.max(1, high / size) };
}

/**
 * Who is at work if birds drank more or less, or took in more or less of what drinkers give, than the crowd was solved
 * with, without going through the line again.
 *
 * @param factors.intake   by pen, on what its birds drink
 * @param factors.flow     by group, on what its drinkers pass
 * @param factors.takenIn  on the share of a trigger's flow that a bird takes in
 */
export function atWorkVaried(
  line: Line,
  crowd: Crowd,
  factors: { readonly intake: readonly number[]; readonly flow: readonly number[]; readonly takenIn: number },
): Uint8Array {
  const atWork = crowd.atWork.slice();
  crowd.pens.forEach(({ want, giving, order, gives, stated }, p) => {
    if (giving.length === 0 || want.birds === 0) return;
    const batches = want.batches.map((batch) => ({ ...batch, demand: batch.demand * factors.intake[p] }));
    const places = giving.map(({ drinker, place }) => ({
      ...place,
      flow:
        place.flow *
        factors.flow[line.drinkers.group[drinker]] *
        (place.workedBy === "trigger" ? factors.takenIn : 1),
    }));
    const { demand, atOnce } = crowdLoad(batches, places);
    if (demand > 0) putToWork(order, gives, Math.min(giving.length, atOnce) - stated, atWork);
  });
  return atWork;
}
