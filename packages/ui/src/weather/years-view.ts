import {
  FROST_PART_WORDS,
  type FrostOfRecord,
  HEAT_RECORD_CAUTIONS,
  type HeatOfRecord,
  writeDay,
  writeDegrees,
  writeFrostRecordAnswer,
  writeHeatRecordAnswer,
  writeQuantity,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { wholeDates } from "../styles/whole-dates.js";
import type { AirController } from "./air-controller.js";

/** What a daily record tells: nights of frost and hot days by year, and how often each part stops or is too warm. */
export function yearsView(air: AirController, system: UnitSystem) {
  const { record, told, progress, isOld } = air;
  if (record === undefined) return nothing;
  return html`<section aria-labelledby="by-year">
    <h3 id="by-year">By the record of ${air.from}</h3>
    ${
      progress === undefined
        ? nothing
        : html`<p role="status">Going through the record ... <progress max="1" .value=${progress} aria-label="Record gone through"></progress></p>`
    }
    ${
      told === undefined
        ? nothing
        : html`<div class=${isOld ? "older" : ""}>${frostYears(told.frost, system)} ${heatYears(told.heat, system)}
            <p class="quiet">A past record is no promise, and a hollow is colder than a station. ${HEAT_RECORD_CAUTIONS.join(" ")}</p></div>`
    }
  </section>`;
}

const day = (one: number | undefined) => (one === undefined ? "" : writeDay(one));
const rate = (a: number) => (a >= 10 ? String(Math.round(a)) : String(Number(a.toPrecision(2))));

function frostYears(record: FrostOfRecord, system: UnitSystem) {
  const degrees = (air: number | undefined) =>
    air === undefined ? "" : writeQuantity(air, "temperature", system, 3);
  return html`<h4>Nights of frost</h4>
    <p>${wholeDates(writeFrostRecordAnswer(record, system))}</p>
    ${table(
      "Nights of frost by winter",
      ["Winter from", "Nights", "In a row", "First", "Last", "Coldest"],
      record.seasons.map(({ year, nights, longest, first, last, coldest }) => [
        String(year),
        String(nights),
        String(longest),
        day(first),
        day(last),
        degrees(coldest),
      ]),
    )}
    ${
      record.stops.length === 0
        ? nothing
        : html`<details><summary>How often each part stops</summary>${table(
            "Nights a year on which each part stops",
            ["Part", "What", "Surely, nights a year", "At worst"],
            record.stops.map(({ id, kind, surely, atWorst }) => [
              id,
              FROST_PART_WORDS[kind],
              rate(surely),
              rate(atWorst),
            ]),
          )}</details>`
    }`;
}

function heatYears(record: HeatOfRecord, system: UnitSystem) {
  const degrees = (air: number | undefined) => (air === undefined ? "" : writeDegrees(air, system));
  return html`<h4>Hot days</h4>
    <p>${wholeDates(writeHeatRecordAnswer(record, system))}</p>
    ${table(
      "Hot days by year",
      [
        ...["Summer of", `${degrees(25)} and more`, `${degrees(30)} and more`],
        ...["In a row", "First", "Last", "Hottest"],
      ],
      record.seasons.map(({ year, summer, hot, longest, first, last, hottest }) => [
        String(year),
        String(summer),
        String(hot),
        String(longest),
        day(first),
        day(last),
        degrees(hottest),
      ]),
    )}
    ${
      record.often.length === 0
        ? nothing
        : html`<details><summary>How often its water is too warm</summary>${table(
            "Days a year on which the water of each part is too warm",
            [
              ...["Part, days a year", `Above ${degrees(30)}, to expect`],
              ...["At worst", `Above ${degrees(44)}, at worst`],
            ],
            record.often.map(({ id, expected, atWorst, refused }) => [
              id,
              rate(expected),
              rate(atWorst),
              rate(refused),
            ]),
          )}</details>`
    }`;
}

function table(label: string, heads: readonly string[], rows: readonly (readonly string[])[]) {
  return html`<div class="scroller" role="region" aria-label=${label} tabindex="0">
    <table>
      <thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
      <tbody>${rows.map(
        ([first, ...cells]) =>
          html`<tr><th scope="row">${first}</th>${cells.map((cell) => html`<td>${wholeDates(cell)}</td>`)}</tr>`,
      )}</tbody>
    </table>
  </div>`;
}
