import {
  type DeviceNeeded,
  type Plan,
  writeDay,
  writeRange,
  writeVolume,
  type YearOfPlan,
  type YearPeriod,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { wholeDates } from "../styles/whole-dates.js";
import { numberButton } from "../verdicts/number-button.js";
import type { YearRoom } from "./room.js";

/** The year as tables: water, drinkers needed, and heights. */
export function tablesView(room: YearRoom) {
  return html`<section aria-labelledby="year-water">
    <h3 id="year-water">Water a day, drinkers, and heights</h3>
    ${waterTable(room)} ${needTable(room)} ${heightTable(room)}
  </section>`;
}

function waterTable({ year, system, isWide }: YearRoom) {
  const total = ({ pens }: YearPeriod, which: "draw" | "hotDraw") =>
    writeVolume(
      pens.reduce((sum, pen) => sum + (pen[which]?.size ?? 0), 0),
      system,
    );
  return html`<details ?open=${isWide}>
    <summary>Week by week, to size on, as on its last day</summary>
    <div class="scroller" role="region" aria-label="Water by week and pen" tabindex="0">
      <table>
        <thead><tr><th scope="col">From</th>${year.pens.map(
          ({ pen }) => html`<th scope="col">${pen}, birds</th><th scope="col">a day</th>`,
        )}<th scope="col">All</th><th scope="col">All, hot day</th></tr></thead>
        <tbody>${year.periods.map(
          (period, t) =>
            html`<tr><th scope="row">${wholeDates(writeDay(period.from))}</th>${period.pens.map(
              ({ birds, draw }, p) =>
                html`<td>${birds === 0 ? "–" : birds}</td><td>${birds === 0 ? nothing : numberButton(writeVolume(draw.size, system), { of: "yearDraw", pen: p, period: t })}</td>`,
            )}<td>${total(period, "draw")}</td><td>${period.hotAir === undefined ? "–" : total(period, "hotDraw")}</td></tr>`,
        )}</tbody>
      </table>
    </div>
  </details>`;
}

/** What each pen needs of drinkers on a line, from when on, and has: a row for each time in which that is other than before. */
function needTable({ year, plan }: YearRoom) {
  const pens = year.pens.filter(({ index }) => asksOfLine(year, plan, index));
  if (pens.length === 0) return nothing;
  const cells = year.periods.map(({ pens: all }) => pens.map(({ index }) => needWords(all[index]!)));
  return html`<details>
    <summary>Drinkers needed, as on the last day</summary>
    <div class="scroller" role="region" aria-label="Drinkers needed by week and pen" tabindex="0">
      <table>
        <thead><tr><th scope="col">From</th>${pens.map(({ pen }) => html`<th scope="col">${pen}</th>`)}</tr></thead>
        <tbody>${rowsByChange(cells).map(
          (t) =>
            html`<tr><th scope="row">${wholeDates(writeDay(year.periods[t]!.from))}</th>${pens.map(({ index }) => html`<td class="words">${needCell(year.periods[t]!, t, index)}</td>`)}</tr>`,
        )}</tbody>
      </table>
    </div>
  </details>`;
}

/** The periods in which something is other than in the one before. */
const rowsByChange = (cells: readonly (readonly string[])[]): number[] =>
  [...cells.keys()].filter((t) => t === 0 || cells[t]!.some((words, k) => words !== cells[t - 1]![k]));

/** Whether a pen has drinkers of the line, or nothing else that is told of: then nipples are counted for it. */
const asksOfLine = ({ periods, kit }: YearOfPlan, { pens = [] }: Plan, pen: number): boolean =>
  periods.some(({ pens: all }) => all[pen]!.birds > 0 && !all[pen]!.drinkers.isSuggestion) ||
  (kit === undefined && (pens[pen]?.waterers ?? []).length === 0);

const hasWords = ({ has }: DeviceNeeded): string => (has === 0 ? "none there" : `${has} there`);

const needWords = ({ birds, drinkers }: YearPeriod["pens"][number]): string =>
  birds === 0
    ? "–"
    : drinkers.devices.map((need) => `${need.needed} ${need.device} ${hasWords(need)}`).join();

function needCell({ pens }: YearPeriod, period: number, pen: number) {
  const { birds, drinkers } = pens[pen]!;
  if (birds === 0) return "–";
  return drinkers.devices.map(
    (need, device) =>
      html`<div>${numberButton(`${need.needed} ${need.device}${need.needed === 1 ? "" : "s"}`, { of: "yearNeeded", pen, period, device })},
        ${need.has < need.needed && drinkers.devices.length === 1 ? html`<strong>${hasWords(need)}</strong>` : hasWords(need)}</div>`,
  );
}

function heightTable({ year, system }: YearRoom) {
  const range = (at: { readonly low: number; readonly high: number } | undefined) =>
    at === undefined ? "–" : writeRange(at.low, at.high, "length", system, 2);
  const cells = year.periods.map(({ pens }) =>
    pens.flatMap(({ heights }) => [range(heights.nipple), range(heights.cup)]),
  );
  return html`<details>
    <summary>How high pins and lips belong, as on the first day</summary>
    <div class="scroller" role="region" aria-label="Heights by week and pen" tabindex="0">
      <table>
        <thead><tr><th scope="col">From</th>${year.pens.map(
          ({ pen }) => html`<th scope="col">${pen}, pins</th><th scope="col">lips</th>`,
        )}</tr></thead>
        <tbody>${rowsByChange(cells).map(
          (t) =>
            html`<tr><th scope="row">${wholeDates(writeDay(year.periods[t]!.from))}</th>${cells[t]!.map((cell) => html`<td>${cell}</td>`)}</tr>`,
        )}</tbody>
      </table>
    </div>
  </details>`;
}
