import type { VerdictName } from "@headfall/hydraulics";
import { placeLabels } from "./place-labels.js";
import { isWorse, VERDICT_MARKS } from "./verdict-marks.js";

/** A drinker on its way to the rail: where it is across the drawing, and its verdict. */
export interface RailDrinker {
  readonly index: number;
  readonly x: number;
  readonly verdict: VerdictName;
}

/** One mark on the rail; it stands for one drinker, or for neighbours that are too close to be told apart. */
export interface RailMark {
  readonly x: number;
  readonly row: number;
  readonly verdict: VerdictName;
  readonly drinkers: readonly number[];
}

/** Words under a stretch of neighbours with the same verdict: "7 drip". */
export interface RailWord {
  readonly x: number;
  readonly from: number;
  readonly to: number;
  readonly verdict: VerdictName;
  readonly text: string;
}

export interface VerdictRail {
  readonly marks: readonly RailMark[];
  readonly words: readonly RailWord[];
  readonly rows: number;
}

/** Least distance between marks of one row [px], and the most rows they are staggered over. */
const MARK_ROOM = 13;
const MOST_ROWS = 3;
/** Width of one character of the words [px], on the wide side. */
const LETTER = 7;

/**
 * Lays the verdicts of the drinkers out on a strip under the drawing, each under its drinker: staggered over up to
 * three rows where they are close, gathered where even that is too tight (the worst of them shows).
 *
 * @param drinkers  from left to right
 * @param left      edge of the strip [px]
 * @param right     edge of the strip [px]
 */
export function layVerdictRail(drinkers: readonly RailDrinker[], left: number, right: number): VerdictRail {
  const rows = rowsFor(drinkers);
  const gathered = gather(drinkers, MARK_ROOM / rows);
  const marks = gathered.map((mark, i) => ({ ...mark, row: i % rows }));
  return { marks, words: layWords(drinkers, left, right), rows };
}

function rowsFor(drinkers: readonly RailDrinker[]): number {
  let closest = Number.POSITIVE_INFINITY;
  for (let i = 1; i < drinkers.length; i++) closest = Math.min(closest, drinkers[i]!.x - drinkers[i - 1]!.x);
  if (drinkers.length < 2) return 1;
  return Math.max(1, Math.min(MOST_ROWS, Math.ceil(MARK_ROOM / Math.max(closest, 0.01))));
}

function gather(drinkers: readonly RailDrinker[], room: number): Omit<RailMark, "row">[] {
  const marks: { x: number; verdict: VerdictName; drinkers: number[] }[] = [];
  let start = Number.NEGATIVE_INFINITY;
  for (const drinker of drinkers) {
    const last = marks[marks.length - 1];
    // A hundredth of a pixel is let pass, so that even spacing does not gather by rounding.
    if (last === undefined || drinker.x - start >= room - 0.01) {
      marks.push({ x: drinker.x, verdict: drinker.verdict, drinkers: [drinker.index] });
      start = drinker.x;
    } else {
      last.drinkers.push(drinker.index);
      if (isWorse(drinker.verdict, last.verdict)) last.verdict = drinker.verdict;
    }
  }
  return marks;
}

function layWords(drinkers: readonly RailDrinker[], left: number, right: number): RailWord[] {
  const stretches: { from: number; to: number; verdict: VerdictName; count: number }[] = [];
  for (const drinker of drinkers) {
    const last = stretches[stretches.length - 1];
    if (last === undefined || last.verdict !== drinker.verdict) {
      stretches.push({ from: drinker.x, to: drinker.x, verdict: drinker.verdict, count: 1 });
    } else {
      last.to = drinker.x;
      last.count++;
    }
  }
  const texts = stretches.map(({ count, verdict }) => `${count} ${wordFor(verdict, count)}`);
  const placed = placeLabels(
    stretches.map((stretch, i) => ({
      at: (stretch.from + stretch.to) / 2,
      size: texts[i]!.length * LETTER,
      weight: (stretch.verdict === "good" ? 0 : 1e6) + stretch.count,
    })),
    left,
    right,
    8,
  );
  return stretches.flatMap((stretch, i) => {
    const x = placed[i];
    if (x === undefined) return [];
    return [{ x, from: stretch.from, to: stretch.to, verdict: stretch.verdict, text: texts[i]! }];
  });
}

/** The verdict as a verb that agrees: one drips, two drip. */
function wordFor(verdict: VerdictName, count: number): string {
  const word = VERDICT_MARKS[verdict].word;
  return count > 1 && (verdict === "drips" || verdict === "starves") ? word.slice(0, -1) : word;
}
