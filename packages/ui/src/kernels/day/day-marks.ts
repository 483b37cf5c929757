import type { ProfileLayout } from "../profile-layout.js";
import type { DayIndex, DayMoment } from "./day-index.js";

/** Birds at one drinker, or at neighbours too close to be told apart. */
export interface AtWorkMark {
  readonly x: number;
  readonly y: number;
  /** Where its stem ends, at the drinker [px]. */
  readonly drinkerY: number;
  readonly birds: number;
  readonly drinkers: readonly number[];
}

export interface WaitMark {
  readonly pen: number;
  readonly birds: number;
  readonly x: number;
  readonly y: number;
}

export interface DayMarks {
  readonly atWork: readonly AtWorkMark[];
  readonly waiting: readonly WaitMark[];
  /** Birds at drinkers, or waiting for some, that the drawing does not show. */
  readonly elsewhere: { readonly drinking: number; readonly waiting: number };
}

const ABOVE_DRINKER = 16;
const ROW = 26;
const WAIT_ROW = 20;

/** Marks over the drawing from the side: in the columns and rows its verdicts stand in, above the drinkers. */
export function layDayMarks(layout: ProfileLayout, index: DayIndex, moment: DayMoment): DayMarks {
  const yOf = new Map(layout.drinkers.map(({ index: drinker, y }) => [drinker, y]));
  const atWork = layout.rail.marks.flatMap(({ x, row, drinkers }): AtWorkMark[] => {
    const birds = drinkers.reduce((sum, drinker) => sum + (moment.at[drinker] ?? 0), 0);
    if (birds === 0) return [];
    const drinkerY = Math.min(...drinkers.map((drinker) => yOf.get(drinker) ?? layout.plot.bottom));
    const y = Math.max(layout.plot.top + ABOVE_DRINKER, drinkerY - ABOVE_DRINKER - row * ROW);
    return [{ x, y, drinkerY, birds, drinkers }];
  });
  const waiting = waitMarks(layout, index, moment);
  const shown = (marks: readonly { readonly birds: number }[]) =>
    marks.reduce((sum, { birds }) => sum + birds, 0);
  const all = (counts: Int32Array) => counts.reduce((sum, count) => sum + count, 0);
  return {
    atWork,
    waiting,
    elsewhere: {
      drinking: all(moment.drinking) - shown(atWork),
      waiting: all(moment.waiting) - shown(waiting),
    },
  };
}

/** At the top, over the middle of the pen's drinkers; pens one below the other. */
function waitMarks({ plot, drinkers }: ProfileLayout, index: DayIndex, { waiting }: DayMoment): WaitMark[] {
  const marks: WaitMark[] = [];
  for (let pen = 0; pen < index.pens; pen += 1) {
    const xs = drinkers.filter((drawn) => index.drinkersOfPen[pen]!.includes(drawn.index)).map(({ x }) => x);
    const birds = waiting[pen]!;
    if (birds === 0 || xs.length === 0) continue;
    const x = (Math.min(...xs) + Math.max(...xs)) / 2;
    marks.push({ pen, birds, x, y: plot.top + 8 + marks.length * WAIT_ROW });
  }
  return marks;
}

/** Where the water stands in the drawn vessel [px]: its full level is drawn, its bottom too, and it is straight between. */
export function surfaceY({ vessel }: ProfileLayout, level: number, fullLevel: number): number {
  const share = fullLevel <= 0 ? 0 : level / fullLevel;
  return vessel.bottom + (vessel.full - vessel.bottom) * share;
}
