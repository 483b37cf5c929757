import { dateOf } from "@headfall/hydraulics";
import type { RainYear } from "./rain-years.js";

/** What a calendar is drawn from, day by day. */
export interface CalendarDays {
  readonly firstDay: number;
  /** What can be used of the vessel when it is full [m³]. */
  readonly usable: number;
  /** In the vessel at the end of each day, and run over on it [m³]. */
  readonly stored: Float64Array;
  readonly over: Float64Array;
  /** 1 where birds were short, and where the rain is not known. */
  readonly short: Uint8Array;
  readonly missing: Uint8Array;
}

/** One year, a square a day: months are rows, days of the month columns. Each kind of mark is one path. */
export interface RainCalendar {
  readonly width: number;
  readonly height: number;
  readonly squares: string;
  /** Water in each square, as high as the vessel is full. */
  readonly water: string;
  readonly surface: string;
  /** A cross on days birds were short. */
  readonly short: string;
  /** A ring where the rain is not known. */
  readonly missing: string;
  /** A bar over the square where water ran over. */
  readonly over: string;
  readonly rows: readonly { readonly month: number; readonly y: number }[];
  readonly columns: readonly { readonly day: number; readonly x: number }[];
}

const CELL = 10;
/** From month to month: further apart than days. */
const ROW = 12;
/** Between squares. */
const GAP = 1;
const LEFT = 26;
const TOP = 14;
const LABELLED = [1, 5, 10, 15, 20, 25, 31] as const;
/** What runs over is told from a millilitre on [m³]. */
const MILLILITRE = 1e-6;

const placeOf = (month: number, day: number) => ({
  x: LEFT + (day - 1) * CELL,
  y: TOP + (month - 1) * ROW,
});

const round = (value: number): number => Math.round(value * 100) / 100;

/** Lays out one year of the calendar. */
export function layRainCalendar(days: CalendarDays, year: RainYear): RainCalendar {
  const paths = { squares: "", water: "", surface: "", short: "", missing: "", over: "" };
  const side = CELL - GAP;
  for (let t = year.from; t < year.to; t += 1) {
    const { month, day } = dateOf(days.firstDay + t);
    const { x, y } = placeOf(month, day);
    paths.squares += `M${x} ${y}h${side}v${side}h${-side}z`;
    const share = days.usable > 0 ? Math.min(1, Math.max(0, (days.stored[t] ?? 0) / days.usable)) : 0;
    const level = round(share * side);
    if (level > 0) {
      paths.water += `M${x} ${round(y + side - level)}h${side}v${level}h${-side}z`;
      paths.surface += `M${x} ${round(y + side - level)}h${side}`;
    }
    if (days.short[t] === 1)
      paths.short += `M${x + 1} ${y + 1}l${side - 2} ${side - 2}M${x + side - 1} ${y + 1}l${2 - side} ${side - 2}`;
    if (days.missing[t] === 1)
      paths.missing += `M${x + 2} ${y + side / 2}a2.5 2.5 0 1 0 5 0a2.5 2.5 0 1 0 -5 0z`;
    if ((days.over[t] ?? 0) > MILLILITRE) paths.over += `M${x} ${y}h${side}`;
  }
  return {
    ...paths,
    width: LEFT + 31 * CELL,
    height: TOP + 12 * ROW,
    rows: Array.from({ length: 12 }, (_, k) => ({ month: k + 1, y: placeOf(k + 1, 1).y + side - 1 })),
    columns: LABELLED.map((day) => ({ day, x: placeOf(1, day).x + side / 2 })),
  };
}

/** The frame of one day's square. */
export function squareOf(day: number): { readonly x: number; readonly y: number; readonly side: number } {
  const date = dateOf(day);
  return { ...placeOf(date.month, date.day), side: CELL - GAP };
}

/** Which day of a year a place on its calendar is, by its place in the record; undefined beside the squares. */
export function dayAtSpot(
  { firstDay }: Pick<CalendarDays, "firstDay">,
  year: RainYear,
  spot: { readonly x: number; readonly y: number },
): number | undefined {
  const [month, day] = [Math.floor((spot.y - TOP) / ROW) + 1, Math.floor((spot.x - LEFT) / CELL) + 1];
  for (let t = year.from; t < year.to; t += 1) {
    const date = dateOf(firstDay + t);
    if (date.month === month && date.day === day) return t;
  }
  return undefined;
}
