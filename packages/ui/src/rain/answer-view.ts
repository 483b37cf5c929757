import { SEASON_WORDS, writeRain, writeRainAnswer, writeRainRun, writeShare } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { RainFigure } from "../kernels/how-got/subject.js";
import { sumsOf } from "../kernels/rain/rain-months.js";
import { showVolume } from "../kernels/shown.js";
import { numberButton } from "../verdicts/number-button.js";
import type { RainRoom } from "./room.js";

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
const asked = (what: RainFigure, way = 0) => ({ of: "rain", what, way }) as const;

/** At the head of the room: days short, the size that never fails, in one sentence what it means. */
export function answerView({ supply, system }: RainRoom) {
  const [run] = supply.runs;
  if (run === undefined) return nothing;
  const { shortDays } = run.balance;
  const size = supply.neverFailsDrawnFirst;
  if (supply.demandMost === 0) return html`<p><strong>${writeRainAnswer(supply, system)}</strong></p>`;
  return html`<dl class="answer">
      <div><dt>Days short of water</dt>
        <dd><span class="large ${shortDays > 0 ? "dry" : "good"}">${numberButton(shortDays, asked("shortDays"))}</span> of ${supply.days},
          at most ${run.longestShort} in a row</dd></div>
      <div><dt>Never fails with</dt>
        <dd><span class="large">${numberButton(size === undefined ? "no size" : showVolume(size, system), asked("neverFailsDrawnFirst"))}</span>
          ${size === undefined ? "" : "usable; "}this vessel has ${numberButton(showVolume(supply.usable, system), { of: "sourceVolume", source: supply.index, which: "usable" })}</dd></div>
    </dl>
    <p><strong>${writeRainAnswer(supply, system)}</strong></p>
    <p>Birds drink ${numberButton(showVolume(supply.demandMean, system), asked("drunk"))} a day on average, ${showVolume(supply.demandMost, system)} on the hottest
      (${supply.figure === "size" ? "the figure to size on" : "the figure to expect"}; heat ${supply.heatFrom === "record" ? "of each day of the record" : "as in the plan"}).
      ${supply.missingDays === 0 ? "" : `${supply.missingDays} days (${writeShare(supply.missingDays / supply.days)}) are not known and are taken as dry.`}</p>`;
}

/** Both orders of a day's rain and a day's draw, begun full and empty. */
export function runsView({ supply, runIndex, acts }: RainRoom) {
  return html`<section aria-labelledby="ways">
    <h3 id="ways">Reckoned four ways</h3>
    <p>Whether birds drink before or after the day's rain is not in a record: the truth lies between. Beginning full hides a want that beginning empty shows.</p>
    <div class="scroller" role="region" aria-label="Days short by way of reckoning" tabindex="0"><table class="cards ways">
      <thead><tr><th scope="col" class="words">Way</th><th scope="col">Days short</th><th scope="col">Longest, days</th><th scope="col">Days served</th><th scope="col">Water served</th></tr></thead>
      <tbody>${supply.runs.map(
        (run, index) => html`<tr aria-current=${index === runIndex ? "true" : nothing}>
          <th scope="row">${writeRainRun(run)}</th>
          <td data-head="Days short">${numberButton(run.balance.shortDays, asked("shortDays", index))}</td><td data-head="Longest, days">${run.longestShort}</td>
          <td data-head="Days served">${numberButton(percent(run.inTime), asked("inTime", index))}</td><td data-head="Water served">${numberButton(percent(run.inVolume), asked("inVolume", index))}</td></tr>`,
      )}</tbody></table></div>
    <div class="field"><label for="rain-run">Shown from here on</label>
      <select id="rain-run" class="long" @change=${(event: Event) => acts.reckon(Number((event.target as HTMLSelectElement).value))}>
        ${supply.runs.map((run, index) => html`<option value=${index} ?selected=${index === runIndex}>${writeRainRun(run)}</option>`)}
      </select></div>
  </section>`;
}

/** Days short by season and by year. */
export function partsView(room: RainRoom) {
  const { run, years, record, supply, system } = room;
  const seasons = run.seasons.map((part, season) => ({ name: SEASON_WORDS[season]!, ...part }));
  const byYear = years.map((year) => ({
    name: `${year.year}${year.to - year.from < 365 ? ", in part" : ""}`,
    ...sumsOf(record, supply, run, year),
  }));
  return html`<section aria-labelledby="parts">
    <h3 id="parts">By season and year</h3>
    ${partsTable("Season", seasons, system, "By season")} ${partsTable("Year", byYear, system, "By year")}
  </section>`;
}

interface Part {
  readonly name: string;
  readonly days: number;
  readonly shortDays: number;
  readonly missing: number;
  readonly rain: number;
}

function partsTable(head: string, parts: readonly Part[], system: RainRoom["system"], label: string) {
  const most = Math.max(1, ...parts.map(({ shortDays }) => shortDays));
  const isWhole = parts.every(({ missing }) => missing === 0);
  return html`<div class="scroller tall" role="region" aria-label=${label} tabindex="0"><table>
    <thead><tr><th scope="col" class="words">${head}</th><th scope="col">Days short</th><td class="bars"></td><th scope="col">Of days</th><th scope="col">Rain</th>${isWhole ? nothing : html`<th scope="col">Days not known</th>`}</tr></thead>
    <tbody>${parts.map(
      ({ name, days, shortDays, missing, rain }) => html`<tr><th scope="row">${name}</th><td>${shortDays}</td>
        <td class="bars"><svg class="bar" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true"><rect width=${(100 * shortDays) / most} height="12"></rect></svg></td>
        <td>${days}</td><td>${writeRain(rain, system)}</td>${isWhole ? nothing : html`<td>${missing}</td>`}</tr>`,
    )}</tbody></table></div>`;
}
