import {
  WATERER_MISHAP_CAUTIONS,
  type WatererGuardResult,
  type WatererMishapRow,
  writeWatererEffects,
  writeWatererGain,
  writeWatererGuard,
  writeWatererMishap,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { dayBarOf, writeHarmAfter } from "../kernels/mishaps/day-share.js";
import { isSameGuard } from "../kernels/mishaps/same-guard.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { upperFirst } from "../kernels/upper-first.js";
import { openAllButton } from "../room/open-all.js";
import { numberButton } from "../verdicts/number-button.js";
import { hoursView } from "./hours-view.js";
import type { MishapsRoom } from "./room.js";

/** What any one mishap does to the loose waterers, the worst first: nothing where there are none. */
export function waterersView(room: MishapsRoom) {
  const { mishaps, system } = room;
  const { waterers, rows } = mishaps;
  if (waterers.length === 0) return nothing;
  return html`<section aria-labelledby="loose-mishaps"><h3 id="loose-mishaps">Loose waterers</h3>
    <p class="quiet">One of them at a time, everything full in the morning; birds go on at the others of their pen that hold water. First those with the most birds times
      hours of light without, until somebody comes.</p>
    ${rows.length === 0 ? html`<p class="buttons">${openAllButton(room.isAllOpen, room.acts.openAll)}</p>` : nothing}
    <ol class="rows" aria-label="Mishaps of loose waterers, the worst first">${repeat(
      waterers,
      ({ worst }) => writeWatererMishap(worst, system),
      (row, at) => rowView(room, row, at),
    )}</ol>
  </section>`;
}

function rowView({ isAllOpen, system }: MishapsRoom, row: WatererMishapRow, at: number) {
  const { worst } = row;
  const id = `loose-mishap-${at}`;
  const { harmAfter, birds, pen } = worst;
  return html`<li class="row" aria-labelledby=${id}>
    <details ?open=${isAllOpen}><summary><div class="brief">
        <h4 id=${id}><span class="rank">${at + 1}</span> ${upperFirst(writeWatererMishap(worst, system))}</h4>
        <p><strong>harm ${writeHarmAfter(harmAfter)}</strong></p>
      </div></summary>
      ${
        birds === 0
          ? nothing
          : html`<p class="harm">First bird without water, ${pen}: <strong>${numberButton(writeHarmAfter(harmAfter), { of: "mishapWaterer", row: at })}</strong></p>
              ${hoursView(dayBarOf(harmAfter))}`
      }
      <p>${writeWatererEffects(row, system).join(" ")}</p>
      ${guardsView(row, system)}
    </details>
  </li>`;
}

function guardsView({ cheapest, guards }: WatererMishapRow, system: UnitSystem) {
  if (cheapest === undefined)
    return html`<p class="guard"><strong>Guard:</strong> none was found. It harms sooner than anybody looks.</p>`;
  const told = (one: WatererGuardResult) =>
    html`${writeWatererGuard(one.guard, system)}${writeWatererGain(one, system)}.`;
  const others = guards.filter((one) => !isSameGuard(one, cheapest));
  const isLate = !cheapest.isEnough && cheapest.guard.kind !== "look";
  return html`<p class="guard"><strong>Guard:</strong> ${told(cheapest)} ${isLate ? "Even so a look every day may come too late." : nothing}</p>
    ${
      others.length === 0
        ? nothing
        : html`<details><summary>Other guards (${others.length})</summary><ul>${others.map((one) => html`<li>${told(one)}</li>`)}</ul></details>`
    }`;
}

/** What is said beside them. */
export const watererCautions = () => WATERER_MISHAP_CAUTIONS.map((words) => html`<p>${words}</p>`);
