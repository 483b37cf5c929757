import { dateOf, dayNumber, type YearEvent, type YearOfPlan } from "@headfall/hydraulics";
import { type LinearScale, linearScale } from "../linear-scale.js";
import { MONTH_NAMES } from "../month-names.js";

/** One pen in one period, as a block: as high as its water is against the most of any pen. */
export interface YearBlock {
  readonly period: number;
  readonly x: number;
  readonly width: number;
  /** Of the row's height, from 0 to 1; 0 where no bird is there. */
  readonly fill: number;
  readonly isShort: boolean;
}

export interface YearRow {
  readonly pen: number;
  readonly name: string;
  readonly y: number;
  readonly blocks: readonly YearBlock[];
  /** What happens in this pen, where on the axis; in the order of days. */
  readonly marks: readonly { readonly x: number; readonly event: YearEvent }[];
}

/** The year as a picture: weeks across, pens down. */
export interface YearChart {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly rows: readonly YearRow[];
  readonly months: readonly { readonly x: number; readonly words: string }[];
}

/** Height of a row, of the words over it, and of its block. */
export const YEAR_ROW = { height: 58, words: 16, block: 30 } as const;
const MARGIN = { side: 8, top: 4, bottom: 24 } as const;
/** Room that a month's name takes. */
const MONTH_ROOM = 30;

export function layYearChart(year: YearOfPlan, width: number): YearChart {
  const [left, right] = [MARGIN.side, width - MARGIN.side];
  const x = linearScale([year.from, year.to], [left, right]);
  const most = Math.max(
    ...year.periods.flatMap(({ pens }) => pens.map(({ draw, hotDraw }) => (hotDraw ?? draw).size)),
  );
  const bottom = MARGIN.top + year.pens.length * YEAR_ROW.height;
  return {
    width,
    height: bottom + MARGIN.bottom,
    left,
    right,
    bottom,
    rows: year.pens.map(({ pen: name }, pen) => ({
      pen,
      name,
      y: MARGIN.top + pen * YEAR_ROW.height,
      blocks: blocksOf(year, pen, { x, most }),
      marks: year.events
        .filter((event) => event.pen === name || (event.code === "moves" && event.to === name))
        .map((event) => ({ x: x(event.day), event })),
    })),
    months: monthsOf(year, x),
  };
}

function blocksOf(
  { periods, kit, pens }: YearOfPlan,
  pen: number,
  { x, most }: { readonly x: LinearScale; readonly most: number },
): YearBlock[] {
  const shortages = (kit?.shortages ?? []).filter((shortage) => shortage.pen === pens[pen]!.pen);
  return periods.map(({ from, to, pens: all }, period) => {
    const { birds, draw, hotDraw } = all[pen]!;
    return {
      period,
      x: x(from),
      width: x(to) - x(from),
      // A pen with birds always shows, however little they drink.
      fill: birds === 0 || most === 0 ? 0 : Math.max(0.08, (hotDraw ?? draw).size / most),
      isShort: shortages.some((shortage) => from >= shortage.from && from < shortage.to),
    };
  });
}

/** Beginnings of months, named where there is room. */
function monthsOf({ from, to }: YearOfPlan, x: LinearScale): YearChart["months"] {
  const first = dateOf(from);
  const months: { x: number; words: string }[] = [];
  let room = Number.NEGATIVE_INFINITY;
  for (let k = 1; ; k += 1) {
    const month = first.month + k;
    const day = dayNumber(first.year + Math.floor((month - 1) / 12), ((month - 1) % 12) + 1, 1);
    if (day >= to) return months;
    const at = x(day);
    const isNamed = at - room >= MONTH_ROOM;
    if (isNamed) room = at;
    months.push({ x: at, words: isNamed ? MONTH_NAMES[(month - 1) % 12]! : "" });
  }
}
