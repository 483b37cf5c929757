import { writeDay } from "@headfall/hydraulics";
import { html, nothing, svg } from "lit";
import { type ChartSeries, layWeekChart, type SeriesLook } from "../kernels/birds/week-chart.js";
import { type WeekDrinks, weekDrinksOf } from "../kernels/birds/week-drinks.js";
import type { HowSubject } from "../kernels/how-got/subject.js";
import { showVolume } from "../kernels/shown.js";
import { upperFirst } from "../kernels/upper-first.js";
import { US_GALLON } from "../kernels/us-units.js";
import { wholeDates } from "../styles/whole-dates.js";
import { askHow, numberInTable, roveNumbers } from "../verdicts/number-button.js";
import { type BirdsRoom, weekName } from "./room.js";

const LITRE = 1e-3;

/** What is drunk in each coming week: a chart, and the same in a table. */
export function chartView(room: BirdsRoom) {
  const { weeks, hotWeeks, system, isWide, isOld } = room;
  // Nobody drinks from the line.
  if (weeks.length === 0 || weeks.every(({ pens }) => pens.every(({ isElsewhere }) => isElsewhere)))
    return nothing;
  const drinks = weekDrinksOf(weeks, hotWeeks);
  return html`<section aria-labelledby="weeks-drunk" class=${isOld ? "older" : nothing}>
    <h3 id="weeks-drunk">A day's water in the coming weeks</h3>
    ${drawing(drinks, isWide, system === "us")}
    <details ?open=${isWide}><summary>Week by week, and where each figure comes from</summary>${tableView(room, drinks)}</details>
  </section>`;
}

function drawing(drinks: WeekDrinks, isWide: boolean, isUs: boolean) {
  const chart = layWeekChart({
    drinks,
    width: isWide ? 680 : 336,
    height: isWide ? 280 : 240,
    unit: isUs ? US_GALLON : LITRE,
  });
  const { plot } = chart;
  return html`<svg class="chart" viewBox="0 0 ${chart.width} ${chart.height}" role="img"
    aria-label="Water a day by week; the table below has the same figures">
    ${chart.ticks.map(
      ({ at, value }) => svg`<line class="grid" x1=${plot.left} x2=${plot.right} y1=${at} y2=${at}></line>
        <text class="tick" x=${plot.left - 6} y=${at + 4} text-anchor="end">${value}</text>`,
    )}
    ${chart.weeks.map(
      ({ week, x }) =>
        svg`<text class="tick" x=${x} y=${plot.bottom + 16} text-anchor="middle">${week === 0 ? "now" : week}</text>`,
    )}
    <text class="tick" x=${plot.left} y=${chart.height - 4}>${isUs ? "gal" : "L"} a day, by weeks from now</text>
    ${chart.series.map((series) => seriesView(series, plot.right))}
  </svg>`;
}

/** A line, its points each with a shape of their own, and its name where it ends. */
function seriesView({ look, label, path, points, labelY }: ChartSeries, right: number) {
  return svg`<g class="series ${look}">
    <path class="run" d=${path}></path>
    ${points.map(({ x, y }) => svg`<path class="dot" d=${SHAPES[look]} transform="translate(${x} ${y})"></path>`)}
    <text x=${right + 10} y=${labelY + 4}>${label}</text>
  </g>`;
}

const SHAPES: Readonly<Record<SeriesLook, string>> = {
  size: "M-3.5 0A3.5 3.5 0 1 1 3.5 0A3.5 3.5 0 1 1 -3.5 0Z",
  expect: "M-3 -3H3V3H-3Z",
  hot: "M0 -4.5L4.5 3.5H-4.5Z",
  batch1: "M0 -4L4 0L0 4L-4 0Z",
  batch2: "M-3.5 0H3.5M0 -3.5V3.5",
  batch3: "M-3 -3L3 3M-3 3L3 -3",
};

function tableView(room: BirdsRoom, drinks: WeekDrinks) {
  const { weeks, system } = room;
  const { batches } = drinks;
  const columns = columnsOf(drinks);
  const number = (week: number, column: (typeof columns)[number], c: number) =>
    numberInTable(showVolume(column.values[week]!, system), `${column.key} ${week}`, () => ({
      subject: column.subject(week),
      describedBy: `drunk-week-${week} drunk-${c}`,
      isTabStop: week === 0 && c === 0,
    }));
  return html`<div class="scroller" role="region" aria-label="Water by week" tabindex="0">
    <table class="drunk" @click=${askHow} @keydown=${roveNumbers}>
      <caption>Press a number to see where it comes from and how sure it is.</caption>
      <thead><tr><th scope="col">Week</th>${columns.map(({ head }, c) => html`<th scope="col" id="drunk-${c}">${head}</th>`)}</tr></thead>
      <tbody>
        ${weeks.map(
          ({ week, day }) => html`<tr>
            <th scope="row" id="drunk-week-${week}">${weekName(week)}${day === undefined ? nothing : html` <span class="quiet date">${wholeDates(dayOfWeek(room, week))}</span>`}</th>
            ${columns.map((column, c) => html`<td>${number(week, column, c)}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>
  ${batches.length < 2 ? nothing : html`<ol class="batches">${batches.map(({ label, birds }) => html`<li>${label}: ${birds}</li>`)}</ol>`}`;
}

interface DrunkColumn {
  readonly key: string;
  readonly head: string;
  readonly values: readonly number[];
  subject(week: number): HowSubject;
}

function columnsOf({ size, expect, hot, batches }: WeekDrinks): readonly DrunkColumn[] {
  return [
    {
      key: "size",
      head: "To size on",
      values: size,
      subject: (week) => ({ of: "flockIntake", which: "size", week }),
    },
    {
      key: "expect",
      head: "To expect",
      values: expect,
      subject: (week) => ({ of: "flockIntake", which: "expect", week }),
    },
    ...(hot.length === 0
      ? []
      : [
          {
            key: "hot",
            head: "Hot day, to size on",
            values: hot,
            subject: (week: number): HowSubject => ({ of: "flockIntake", which: "size", week, hot: true }),
          },
        ]),
    ...(batches.length < 2 ? [] : batches).map(
      ({ pen, batch, label, size: values }, k): DrunkColumn => ({
        key: `batch ${k}`,
        head: `${upperFirst(label)}, to size on`,
        values,
        subject: (week) => ({ of: "batchIntake", pen, batch, which: "size", week }),
      }),
    ),
  ];
}

/** The week reports are told of the plan's day on. */
function dayOfWeek({ weeks }: BirdsRoom, week: number): string {
  const day = weeks[0]?.day;
  return day === undefined ? "" : writeDay(day + 7 * week);
}
