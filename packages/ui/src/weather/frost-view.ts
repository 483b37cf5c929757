import {
  FROST_CAUTIONS,
  FROST_LASTS_WORDS,
  FROST_PART_WORDS,
  type FrostBand,
  type FrostPart,
  type FrostRefills,
  writeFrostAnswer,
  writeFrostBand,
  writeFrostHolding,
  writeFrostNight,
  writeFrostRefills,
  writeFrostTime,
  writeFrostTodo,
  writeQuantity,
} from "@headfall/hydraulics";
import { html, nothing, svg } from "lit";
import { type FrostBar, type FrostBars, layFrostBars, ROW } from "../kernels/weather/frost-bars.js";
import { numberButton } from "../verdicts/number-button.js";
import type { WeatherRoom } from "./room.js";

/** The night of frost: what stops when, what to do before it, the day after. */
export function frostView(room: WeatherRoom) {
  const { frost, system } = room;
  const first = frost.first === undefined ? undefined : frost.parts[frost.first];
  return html`<section aria-labelledby="frost">
    <h3 id="frost">A night of frost</h3>
    <p class="quiet">${writeFrostNight(frost, system)}.</p>
    ${
      first?.blocked === undefined || frost.first === undefined
        ? nothing
        : html`<p>First to stop: ${first.id}, <span class="large">${numberButton(writeFrostTime(first.blocked.soonest), { of: "frostTime", part: frost.first, what: "blocked" })}</span> after dusk</p>`
    }
    <p>${writeFrostAnswer(frost)}</p>
    ${barsView(layFrostBars(frost, room.isWide ? 660 : 330), writeFrostAnswer(frost))}
    ${KEY}
    ${partsTable(room)}
    ${listView("Before the night", writeFrostTodo(frost, system))}
    ${listView("The day after", refillSentences(frost.refills))}
    ${refillsTable(room)}
    ${listView(
      "Or kept open by heat",
      frost.parts.flatMap((part) => writeFrostHolding(part, system) ?? []),
    )}
    ${listView("Mind", FROST_CAUTIONS)}
  </section>`;
}

/** What is alike of several waterers is said once. */
function refillSentences(refills: readonly FrostRefills[]): string[] {
  const alike = new Map<string, FrostRefills[]>();
  for (const one of refills) {
    const key = `${one.thatDay} ${one.isHopeless}`;
    alike.set(key, [...(alike.get(key) ?? []), one]);
  }
  return [...alike.values()].map((group) => {
    const [first] = group as [FrostRefills];
    if (group.length === 1) return writeFrostRefills(first);
    const names = group.map(({ id, count }) => (count === 1 ? id : `${id} (each of ${count})`));
    return writeFrostRefills({ ...first, count: 1, id: names.join(", ") });
  });
}

export const listView = (title: string, lines: readonly string[]) =>
  lines.length === 0
    ? nothing
    : html`<h4>${title}</h4><ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>`;

/** On one axis: plain until freezing, hatched while ice grows, empty and dashed once stopped; the whisker is still air. */
function barsView({ width, height, left, right, bottom, bars, hours, nightEnds }: FrostBars, words: string) {
  return svg`<svg class="chart" viewBox="0 0 ${width} ${height}" role="img" aria-label="Hours from dusk until each part stops. ${words}">
    <defs><pattern id="ice" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect class="ice-ground" width="6" height="6"></rect><line class="ice-line" x1="0" x2="0" y1="0" y2="6"></line></pattern></defs>
    ${hours.map(
      ({ at, value }) => svg`<line class="grid" x1=${at} x2=${at} y1="0" y2=${bottom}></line>
      <text class="tick" x=${at} y=${bottom + 16} text-anchor="middle">${value}</text>`,
    )}
    ${bars.map((bar) => barView(bar, left, right))}
    <line class="night" x1=${nightEnds} x2=${nightEnds} y1="0" y2=${bottom}></line>
    <text class="tick" x=${left} y=${bottom + 33}>hours from dusk</text>
    <text class="tick" x=${Math.min(nightEnds, right)} y=${bottom + 33} text-anchor="end">▲ frost ends</text>
  </svg>`;
}

function barView({ part, y, cold, stops, stopsLatest, goesOn }: FrostBar, left: number, right: number) {
  const top = y + ROW.words + 3;
  const middle = top + ROW.bar / 2;
  return svg`<text class="name" x=${left} y=${y + ROW.words - 1}>${part.id}${part.count > 1 ? ` (${part.count})` : ""}: ${FROST_LASTS_WORDS[part.lasts]}</text>
    <rect class="stopped" x=${left} y=${top} width=${right - left} height=${ROW.bar}></rect>
    <rect class="icing" x=${cold} y=${top} width=${Math.max(0, stops - cold)} height=${ROW.bar}></rect>
    <rect class="wet" x=${left} y=${top} width=${Math.max(1, cold - left)} height=${ROW.bar}></rect>
    ${
      goesOn
        ? nothing
        : svg`<path class="whisker" d="M${stops} ${middle}H${stopsLatest}M${stopsLatest} ${top + 2}V${top + ROW.bar - 2}"></path>`
    }`;
}

const swatch = (shape: unknown) =>
  html`<svg viewBox="0 0 40 14" width="40" height="14" aria-hidden="true">${shape}</svg>`;
const KEY = html`<ul class="key">
  <li>${swatch(svg`<rect class="wet" x="2" y="2" width="36" height="10"></rect>`)} water above freezing</li>
  <li>${swatch(svg`<rect class="icing" x="2" y="2" width="36" height="10"></rect>`)} at freezing point, ice grows</li>
  <li>${swatch(svg`<rect class="stopped" x="2" y="2" width="36" height="10"></rect>`)} stopped: no water, or no beak gets through</li>
  <li>${swatch(svg`<path class="whisker" d="M2 7H36M36 3V11"></path>`)} so much later in still air, and full</li>
</ul>`;

function partsTable({ frost, system }: WeatherRoom) {
  const time = (band: FrostBand | undefined, part: number, what: "cold" | "blocked" | "solid") =>
    band === undefined
      ? "its pipe first"
      : numberButton(writeFrostBand(band), { of: "frostTime", part, what });
  const holds = ({ volume: { full } }: FrostPart) =>
    full === 0 ? "" : writeQuantity(full, "volume", system, 2);
  return html`<details>
    <summary>The same as a table</summary>
    <div class="scroller" role="region" aria-label="Hours of frost by part" tabindex="0">
      <table>
        <thead><tr><th scope="col">Part</th><th scope="col">What</th><th scope="col">Holds</th><th scope="col">At freezing</th><th scope="col">Stopped</th><th scope="col">Frozen through</th><th scope="col">This night</th></tr></thead>
        <tbody>${frost.parts.map(
          (
            part,
            k,
          ) => html`<tr><th scope="row">${part.id}</th><td>${part.count > 1 ? `${part.count} × ` : ""}${FROST_PART_WORDS[part.kind]}</td><td>${holds(part)}</td>
            <td>${time(part.cold, k, "cold")}</td><td>${time(part.blocked, k, "blocked")}</td><td>${time(part.solid, k, "solid")}</td>
            <td>${FROST_LASTS_WORDS[part.lasts]}</td></tr>`,
        )}</tbody>
      </table>
    </div>
  </details>`;
}

function refillsTable({ frost, system }: WeatherRoom) {
  const [one] = frost.refills;
  if (one === undefined) return nothing;
  return html`<details>
    <summary>Refills in a day's light, by how cold it stays</summary>
    <div class="scroller" role="region" aria-label="Refills by temperature" tabindex="0">
      <table>
        <thead><tr><th scope="col">Waterer</th>${one.byAir.map(({ air }) => html`<th scope="col">${writeQuantity(air, "temperature", system, 3)}</th>`)}</tr></thead>
        <tbody>${frost.refills.map(
          ({ id, byAir }) =>
            html`<tr><th scope="row">${id}</th>${byAir.map(({ refills }) => html`<td>${refills}</td>`)}</tr>`,
        )}</tbody>
      </table>
    </div>
  </details>`;
}
