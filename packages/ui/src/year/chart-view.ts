import { writeDay, writeYearEvent, type YearEvent } from "@headfall/hydraulics";
import { html, nothing, svg } from "lit";
import { layYearChart, YEAR_ROW, type YearBlock, type YearChart } from "../kernels/year/year-chart.js";
import { wholeDates } from "../styles/whole-dates.js";
import type { YearRoom } from "./room.js";

/** The year in one picture: weeks across, pens down; what happens on a day is a mark, and stands below in words. */
export function chartView({ year, isWide }: YearRoom) {
  const chart = layYearChart(year, isWide ? 760 : 330);
  return html`<section aria-labelledby="year-picture">
    <h3 id="year-picture">${wholeDates(`${writeDay(year.from)} to ${writeDay(year.to - 1)}`)}</h3>
    ${pictureOf(chart)}
    ${keyOf(year.kit !== undefined)}
    ${
      year.events.length === 0
        ? nothing
        : html`<details open><summary>What happens</summary><ul class="days">${year.events.map(
            (event) => html`<li>${wholeDates(`${writeDay(event.day)} ${writeYearEvent(event)}.`)}</li>`,
          )}</ul></details>`
    }
  </section>`;
}

function pictureOf({ width, height, left, right, bottom, rows, months }: YearChart) {
  return svg`<svg class="chart" viewBox="0 0 ${width} ${height}" role="img"
    aria-label="Weeks across, pens down: how much each drinks, when birds come and go, and where kit is short. All of it stands in the tables and lists below.">
    ${months.map(
      ({ x, words }) => svg`<line class="grid" x1=${x} x2=${x} y1="0" y2=${bottom + 4}></line>
      <text class="tick" x=${x + 2} y=${bottom + 17}>${words}</text>`,
    )}
    ${rows.map(({ name, y, blocks, marks }) => {
      const top = y + YEAR_ROW.words;
      return svg`<text class="name" x=${left} y=${top - 4}>${name}</text>
        <rect class="ground" x=${left} y=${top} width=${right - left} height=${YEAR_ROW.block}></rect>
        ${blocks.map((block) => blockOf(block, top))}
        ${marks.map(({ x, event }) => markOf(event, x, top + YEAR_ROW.block, name))}`;
    })}
  </svg>`;
}

function blockOf({ x, width, fill, isShort }: YearBlock, top: number) {
  const height = fill * YEAR_ROW.block;
  return svg`${fill === 0 ? nothing : svg`<rect class="wet" x=${x} y=${top + YEAR_ROW.block - height} width=${width} height=${height}></rect>`}
    ${isShort ? svg`<rect class="short" x=${x + 1} y=${top + 1} width=${Math.max(1, width - 2)} height=${YEAR_ROW.block - 2}></rect>` : nothing}`;
}

/** Coming is a tip upwards, going one downwards, a move sideways, a change-over a ring. */
function markOf(event: YearEvent, x: number, y: number, pen: string) {
  if (event.code === "changeOver") return svg`<circle class="change" cx=${x} cy=${y} r="4"></circle>`;
  return svg`<path class="mark" d=${shapeOf(event, pen)} transform="translate(${x} ${y})"></path>`;
}

function shapeOf(event: Exclude<YearEvent, { code: "changeOver" }>, pen: string): string {
  if (event.code === "leaves") return DOWN;
  if (event.code === "moves") return event.to === pen ? UP : SIDEWAYS;
  return UP;
}

const [UP, DOWN, SIDEWAYS] = ["M0 -6L6 5H-6Z", "M0 6L6 -5H-6Z", "M6 0L-5 6V-6Z"];

const swatch = (shape: unknown) =>
  html`<svg viewBox="0 0 20 16" width="20" height="16" aria-hidden="true">${shape}</svg>`;

function keyOf(hasKit: boolean) {
  const path = (d: string | undefined) =>
    swatch(svg`<path class="mark" d=${d ?? ""} transform="translate(10 8)"></path>`);
  return html`<ul class="key">
    <li>${swatch(svg`<rect class="wet" x="2" y="4" width="16" height="10"></rect>`)} water of a day, hot days where there are any: the higher, the more</li>
    <li>${path(UP)} birds come, ${path(SIDEWAYS)} move to another pen, ${path(DOWN)} leave</li>
    <li>${swatch(svg`<circle class="change" cx="10" cy="8" r="4"></circle>`)} change over to other waterers</li>
    ${hasKit ? html`<li>${swatch(svg`<rect class="short" x="2" y="2" width="16" height="12"></rect>`)} short of kit</li>` : nothing}
  </ul>`;
}
