import { writeDay, writeRange, writeVolume, type YearPeriod } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { wholeDates } from "../styles/whole-dates.js";
import { numberButton } from "../verdicts/number-button.js";
import type { YearRoom } from "./room.js";

/** The year as tables: water, and heights. */
export function tablesView(room: YearRoom) {
  return html`<section aria-labelledby="year-water">
    <h3 id="year-water">Water a day, and heights</h3>
    ${waterTable(room)} ${heightTable(room)}
  </section>`;
}

function waterTable({ year, system, isWide }: YearRoom) {
  const total = ({ pens }: YearPeriod, which: "draw" | "hotDraw") =>
    writeVolume(
      pens.reduce((sum, pen) => sum + (pen[which]?.size ?? 0), 0),
      system,
    );
  return html`<details ?open=${isWide}>
    <summary>Week by week, to size on</summary>
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

function heightTable({ year, system }: YearRoom) {
  const range = (at: { readonly low: number; readonly high: number } | undefined) =>
    at === undefined ? "–" : writeRange(at.low, at.high, "length", system, 2);
  return html`<details>
    <summary>How high pins and lips belong</summary>
    <div class="scroller" role="region" aria-label="Heights by week and pen" tabindex="0">
      <table>
        <thead><tr><th scope="col">From</th>${year.pens.map(
          ({ pen }) => html`<th scope="col">${pen}, pins</th><th scope="col">lips</th>`,
        )}</tr></thead>
        <tbody>${year.periods.map(
          ({ from, pens }) =>
            html`<tr><th scope="row">${wholeDates(writeDay(from))}</th>${pens.map(
              ({ heights }) => html`<td>${range(heights.nipple)}</td><td>${range(heights.cup)}</td>`,
            )}</tr>`,
        )}</tbody>
      </table>
    </div>
  </details>`;
}
