import {
  DRUNK_LESS_ABOVE,
  HEAT_CHANGE_WORDS,
  type HeatPart,
  REFUSED_ABOVE,
  writeClock,
  writeDegrees,
  writeDuration,
  writeHeatAnswer,
  writeHeatCautions,
  writeHeatDay,
  writeHeatFlush,
  writeHeatWaterer,
  writeRenewal,
} from "@headfall/hydraulics";
import { html, nothing, svg } from "lit";
import { showVolume } from "../kernels/shown.js";
import { type HeatChart, layHeatChart } from "../kernels/weather/heat-chart.js";
import { wantRoom } from "../room/no-line.js";
import { numberButton } from "../verdicts/number-button.js";
import { listView } from "./frost-view.js";
import type { WeatherRoom } from "./room.js";

/** The hot day: water by the hour, what to flush, what each change would make of it. */
export function heatView(room: WeatherRoom) {
  const { heat, system, chosen } = room;
  const part = heat.parts[chosen];
  const renewal = writeRenewal(heat, system);
  return html`<section aria-labelledby="heat">
    <h3 id="heat">A hot, clear day</h3>
    <p class="quiet">${writeHeatDay(heat, system)}.</p>
    ${drunkView(room)}
    <p>${writeHeatAnswer(heat, system)}</p>
    ${part === undefined ? nothing : partView(room, part)}
    ${partsTable(room)}
    ${listView("To flush", [...heat.flushes.map((flush) => writeHeatFlush(flush, system)), ...(renewal === undefined ? [] : [renewal])])}
    ${listView(
      "Loose waterers",
      heat.parts.flatMap((one) => writeHeatWaterer(one, system) ?? []),
    )}
    ${listView("Mind on hot days", writeHeatCautions(heat, system))}
  </section>`;
}

/** What the birds drink that day; where there are none, where to say which there are. */
function drunkView({ heat: { intake }, system }: WeatherRoom) {
  if (intake === undefined)
    return html`<p>What is drunk that day is told once the plan says which birds there are.
      <button type="button" @click=${wantRoom("birds")}>Go to the birds</button></p>`;
  const number = (which: "size" | "expect") =>
    numberButton(showVolume(intake[which], system), { of: "flockIntake", which, heat: true });
  return html`<p>The birds drink <span class="large">${number("size")}</span> that day to size on, ${number("expect")} to expect.</p>`;
}

function partView(room: WeatherRoom, part: HeatPart) {
  const { heat, system, chosen, isWide, choose } = room;
  const limits = [
    { at: DRUNK_LESS_ABOVE, words: `${writeDegrees(DRUNK_LESS_ABOVE, system)}: drunk less` },
    { at: REFUSED_ABOVE, words: `${writeDegrees(REFUSED_ABOVE, system)}: refused` },
  ];
  const chart = layHeatChart({
    heat,
    part,
    limits,
    isUs: system === "us",
    width: isWide ? 660 : 330,
    height: 260,
  });
  const words = `Water standing in ${part.id} through the day: at worst ${writeDegrees(part.hottest.peak, system)} at ${writeClock(part.hottest.at)}, ${writeDegrees(part.expected.peak, system)} to expect.`;
  return html`
    <label class="field">Part drawn
      <select @change=${(event: Event) => choose(Number((event.target as HTMLSelectElement).value))}>
        ${heat.parts.map(({ id }, k) => html`<option value=${k} ?selected=${k === chosen}>${id}</option>`)}
      </select></label>
    <p>At worst <span class="large">${numberButton(writeDegrees(part.hottest.peak, system), { of: "heatPeak", part: chosen, side: "hottest" })}</span>
      at ${writeClock(part.hottest.at)}, ${numberButton(writeDegrees(part.expected.peak, system), { of: "heatPeak", part: chosen, side: "expected" })} to expect</p>
    ${chartView(chart, system === "us" ? "°F" : "°C", words)}
    ${KEY}
    ${leversView(room, part)}`;
}

function chartView(chart: HeatChart, unit: string, words: string) {
  const { width, height, plot, hours, degrees, limits, air, hottest, expected } = chart;
  return svg`<svg class="chart" viewBox="0 0 ${width} ${height}" role="img" aria-label=${words}>
    ${degrees.map(
      ({ at, value }) => svg`<line class="grid" x1=${plot.left} x2=${plot.right} y1=${at} y2=${at}></line>
      <text class="tick" x=${plot.left - 5} y=${at + 4} text-anchor="end">${value}</text>`,
    )}
    ${hours.map(
      ({
        at,
        value,
      }) => svg`<line class="grid" x1=${at} x2=${at} y1=${plot.bottom} y2=${plot.bottom + 5}></line>
      <text class="tick" x=${at} y=${plot.bottom + 18} text-anchor="middle">${value}</text>`,
    )}
    <text class="tick" x=${plot.left} y=${height - 4}>hour of the day; water in ${unit}</text>
    ${limits.map(
      ({ y }, k) =>
        svg`<line class="limit ${k === 0 ? "less" : "refused"}" x1=${plot.left} x2=${plot.right} y1=${y} y2=${y}></line>`,
    )}
    <path class="air" d=${air}></path>
    <path class="expected" d=${expected}></path>
    <path class="hottest" d=${hottest}></path>
    ${limits.map(
      ({ words: limit, wordsX, wordsY }) => svg`<text class="halo" x=${wordsX} y=${wordsY}>${limit}</text>`,
    )}
  </svg>`;
}

const swatch = (name: string) =>
  html`<svg viewBox="0 0 40 14" width="40" height="14" aria-hidden="true"><path class=${name} d="M2 7H38"></path></svg>`;
const KEY = html`<ul class="key">
  <li>${swatch("hottest")} at worst: still air, the darker end of its colour</li>
  <li>${swatch("expected")} to expect</li>
  <li>${swatch("air")} the air</li>
</ul>`;

/** What white, shade, foam or earth would make of the part drawn. */
function leversView({ system }: WeatherRoom, { id, levers, hottest }: HeatPart) {
  if (levers.length === 0) return nothing;
  const warm = (seconds: number) => (seconds === 0 ? "never" : writeDuration(seconds));
  return html`<h4>What would change it</h4>
    <div class="scroller" role="region" aria-label="What would change ${id}" tabindex="0">
      <table class="narrow">
        <thead><tr><th scope="col">${id}</th><th scope="col">At worst</th><th scope="col">Above ${writeDegrees(DRUNK_LESS_ABOVE, system)}</th><th scope="col">Above ${writeDegrees(REFUSED_ABOVE, system)}</th></tr></thead>
        <tbody>
          <tr><th scope="row">as it is</th><td>${writeDegrees(hottest.peak, system)}</td><td>${warm(hottest.less)}</td><td>${warm(hottest.refused)}</td></tr>
          ${levers.map(
            ({ change, peak, less, refused }) =>
              html`<tr><th scope="row">${HEAT_CHANGE_WORDS[change](system)}</th><td>${writeDegrees(peak, system)}</td><td>${warm(less)}</td><td>${warm(refused)}</td></tr>`,
          )}
        </tbody>
      </table>
    </div>`;
}

/** Every third hour of the day, at worst. */
function partsTable({ heat, system }: WeatherRoom) {
  const hours = [0, 3, 6, 9, 12, 15, 18, 21];
  const at = (curve: readonly number[]) =>
    hours.map(
      (hour) => html`<td>${writeDegrees(curve[Math.round((hour * 3600) / heat.step)] ?? 0, system)}</td>`,
    );
  return html`<details>
    <summary>Every part by the hour, at worst</summary>
    <div class="scroller" role="region" aria-label="Water by the hour" tabindex="0">
      <table>
        <thead><tr><th scope="col">Part</th>${hours.map((hour) => html`<th scope="col">${writeClock(hour * 3600)}</th>`)}</tr></thead>
        <tbody>
          <tr><th scope="row">air</th>${at(heat.air)}</tr>
          ${heat.parts.map(({ id, hottest }) => html`<tr><th scope="row">${id}</th>${at(hottest.water)}</tr>`)}
        </tbody>
      </table>
    </div>
  </details>`;
}
