import type { DayResult, PenDay } from "./day-result.js";

/** What is kept of one day among many. */
export interface DayRow {
  readonly seed: number;
  readonly pens: readonly PenDay[];
  readonly drawn: number;
}

/**
 * What is kept of one day where many are simulated.
 *
 * @example rowOf(day).seed   // 1
 */
export const rowOf = ({ seed, pens, balance }: DayResult): DayRow => ({ seed, pens, drawn: balance.drawn });

/** A figure over many days: the middle one, and those that one day in ten is below or above, and the most. */
export interface OverDays {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly most: number;
}

/** One pen over many simulated days. */
export interface PenDays {
  readonly pen: string;
  readonly birds: number;
  /** Days on which some bird came short, as a share. */
  readonly daysShort: number;
  readonly short: OverDays;
  readonly mostAtOnce: OverDays;
  readonly allTaken: OverDays;
  readonly meanWait: OverDays;
  readonly wait95: OverDays;
  readonly longestWait: OverDays;
  readonly gaveUp: OverDays;
  readonly foundDry: OverDays;
  readonly dry: OverDays;
}

/** Many simulated days: the spread of each figure over them. */
export interface DaysSummary {
  readonly days: number;
  readonly seeds: { readonly from: number; readonly to: number };
  readonly drawn: OverDays;
  readonly pens: readonly PenDays[];
}

/**
 * Many days in a few figures. Rows may come from several workers, in any order.
 *
 * @example summariseDays([rowOf(day)]).days   // 1
 */
export function summariseDays(rows: readonly DayRow[]): DaysSummary {
  if (rows.length === 0) throw new RangeError("summariseDays: there are 0 days; it needs one or more");
  const inOrder = [...rows].sort((a, b) => a.seed - b.seed);
  const [first] = inOrder;
  return {
    days: rows.length,
    seeds: { from: first.seed, to: inOrder[inOrder.length - 1].seed },
    drawn: overDays(inOrder.map(({ drawn }) => drawn)),
    pens: first.pens.map(({ pen, birds }, p): PenDays => {
      const over = (figure: keyof Omit<PenDay, "pen" | "dryFrom">) =>
        overDays(inOrder.map(({ pens }) => pens[p][figure]));
      return {
        pen,
        birds,
        daysShort: inOrder.filter(({ pens }) => pens[p].short > 0).length / inOrder.length,
        short: over("short"),
        mostAtOnce: over("mostAtOnce"),
        allTaken: over("allTaken"),
        meanWait: over("meanWait"),
        wait95: over("wait95"),
        longestWait: over("longestWait"),
        gaveUp: over("gaveUp"),
        foundDry: over("foundDry"),
        dry: over("dry"),
      };
    }),
  };
}

function overDays(values: readonly number[]): OverDays {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  return { low: at(0.1), middle: at(0.5), high: at(0.9), most: sorted[sorted.length - 1] };
}
