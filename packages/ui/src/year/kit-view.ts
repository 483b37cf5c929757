import {
  type KitGiven,
  writeDay,
  writeHandedOut,
  writeKitProof,
  writeLeastToBuy,
  writePieces,
  writeShortage,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { metOf } from "../kernels/how-got/year.js";
import { wholeDates } from "../styles/whole-dates.js";
import { numberButton } from "../verdicts/number-button.js";
import type { YearRoom } from "./room.js";

/** The kit given out: what is short and what to buy, what to put out when, and where everything stands. */
export function kitView(room: YearRoom) {
  const { year, plan, system } = room;
  const { kit } = year;
  if (kit === undefined)
    return html`<section aria-labelledby="year-kit"><h3 id="year-kit">The kit</h3>
      <p>The plan tells of none. Say what is on hand, and it is given out to the pens week by week.</p></section>`;
  const buy = kit.buy === undefined ? [] : writeLeastToBuy(kit.buy, plan.money);
  return html`<section aria-labelledby="year-kit">
    <h3 id="year-kit">The kit, given out</h3>
    ${
      kit.shortages.length === 0
        ? html`<p><strong>Enough for every pen in every week.</strong></p>`
        : html`<h4>What is short</h4><ul>${kit.shortages.map((shortage) => html`<li>${wholeDates(writeShortage(shortage))}</li>`)}</ul>`
    }
    ${buy.length === 0 ? nothing : html`<h4>The least to buy</h4>${buy.map((line) => html`<p>${wholeDates(line)}</p>`)}`}
    ${kit.handed.length === 0 ? nothing : html`<h4>To put out</h4>`}
    <ul class="days">${writeHandedOut(kit.handed).map(
      ({ day, sentence }) => html`<li>${wholeDates(`${writeDay(day)} ${sentence}.`)}</li>`,
    )}</ul>
    ${kitTable(room, kit)}
    <p class="quiet">${writeKitProof(kit, system)}</p>
  </section>`;
}

/** A row for each period in which anything is other than in the one before. */
function kitTable({ year }: YearRoom, kit: KitGiven) {
  const { pens, periods } = year;
  const told = periods.map(({ pens: all }, t) =>
    all.map(({ birds }, p) => (birds === 0 ? "–" : piecesIn(kit, t, p))),
  );
  const rows = [...periods.keys()].filter(
    (t) => t === 0 || told[t]!.some((cell, p) => cell !== told[t - 1]![p]),
  );
  return html`<details>
    <summary>Where everything stands</summary>
    <div class="scroller" role="region" aria-label="Kit by week and pen" tabindex="0">
      <table>
        <thead><tr><th scope="col">From</th>${pens.map(({ pen }) => html`<th scope="col">${pen}</th><th scope="col">met</th>`)}</tr></thead>
        <tbody>${rows.map(
          (t) =>
            html`<tr><th scope="row">${wholeDates(writeDay(periods[t]!.from))}</th>${pens.map(
              (_, p) =>
                html`<td class="words">${told[t]![p]}</td><td>${periods[t]!.pens[p]!.birds === 0 ? nothing : numberButton(`${Math.floor(100 * metOf(year, t, p) + 1e-6)} %`, { of: "yearMet", pen: p, period: t })}</td>`,
            )}</tr>`,
        )}</tbody>
      </table>
    </div>
  </details>`;
}

const piecesIn = ({ kinds, lent }: KitGiven, t: number, p: number): string =>
  lent[t]![p]!.flatMap((count, k) => (count > 0 ? [writePieces(count, kinds[k]!.name)] : [])).join("; ") ||
  "nothing";
