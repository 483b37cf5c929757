import { type Checked, type DrinkerReading, writeMargin } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { showFlow, showHead } from "../kernels/shown.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { verdictWord } from "../verdicts/verdict-mark.js";

/** Rows shown before the user asks for all of them: a long line stays quick to drag. */
export const FIRST_ROWS = 120;

export interface DrinkersTableRequest {
  readonly checked: Checked;
  readonly system: UnitSystem;
  readonly lookedAt: number;
  readonly showsAll: boolean;
  readonly onChoose: (drinker: number) => void;
  readonly onShowAll: () => void;
}

/** Every drinker with its heads, flows, verdict and margin; each row leads to how its numbers were got. */
export function drinkersTable(request: DrinkersTableRequest) {
  const { checked, showsAll } = request;
  const all = checked.drinkers;
  const shown = showsAll ? all : all.slice(0, FIRST_ROWS);
  return html`
    <div class="scroller" role="region" aria-labelledby="drinkers-caption" tabindex="0">
      <table class="cards" role="table">
        <caption id="drinkers-caption">
          Head is metres or feet of water above the drinker. Flows are while a bird works it.
        </caption>
        <thead role="rowgroup">
          <tr role="row">
            <th role="columnheader" scope="col" class="words">Drinker</th>
            <th role="columnheader" scope="col" class="words">Verdict</th>
            <th role="columnheader" scope="col">Margin</th>
            ${COLUMNS.map(({ title }) => html`<th role="columnheader" scope="col">${title}</th>`)}
            <th role="columnheader" scope="col"><span class="spoken">How it was got</span></th>
          </tr>
        </thead>
        <tbody role="rowgroup">
          ${repeat(
            shown,
            ({ drinker }) => drinker,
            (_, index) => drinkerRow(request, index),
          )}
        </tbody>
      </table>
    </div>
    ${
      shown.length < all.length
        ? html`<p><button @click=${request.onShowAll}>Show all ${all.length} drinkers</button></p>`
        : nothing
    }
  `;
}

const COLUMNS = [
  { title: "Head, full and idle", moment: "fullIdle", what: "flowingHead" },
  { title: "Head, full and busiest", moment: "fullBusiest", what: "flowingHead" },
  { title: "Head, lowest and busiest", moment: "lowestBusiest", what: "flowingHead" },
  { title: "Flow, lowest and busiest", moment: "lowestBusiest", what: "flow" },
] as const;

function drinkerRow({ checked, system, lookedAt, onChoose }: DrinkersTableRequest, index: number) {
  const verdict = checked.drinkers[index]!;
  return html`<tr role="row" aria-current=${index === lookedAt ? "true" : nothing}>
    <th role="rowheader" scope="row" class="words">${verdict.drinker}</th>
    <td role="cell" class="words">${verdictWord(verdict.verdict)}</td>
    <td role="cell" data-head="Margin">${writeMargin(verdict.margin, system)}</td>
    ${COLUMNS.map(
      ({ title, moment, what }) => html`<td role="cell" data-head=${title}>
        ${writeReading(verdict.moments[moment][checked.friction], what, system)}
      </td>`,
    )}
    <td role="cell" class="last"><button @click=${() => onChoose(index)} aria-label="How ${verdict.drinker} was got">How</button></td>
  </tr>`;
}

function writeReading(reading: DrinkerReading, what: "flowingHead" | "flow", system: UnitSystem): string {
  if (what === "flowingHead") return showHead(reading.flowingHead, system);
  return reading.flow === 0 ? "none" : showFlow(reading.flow, system);
}
