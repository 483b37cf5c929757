import { type Checked, writeCaution, writeFinding } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { numberButton } from "../verdicts/number-button.js";
import type { Board } from "./board.js";

/** Cautions: always open, never folded away. */
export function cautionsView({ cautions }: Checked, system: UnitSystem) {
  if (cautions.length === 0) return nothing;
  return html`<section aria-labelledby="cautions" part="cautions">
    <h2 id="cautions">Cautions</h2>
    <ul class="cautions">
      ${cautions.map((caution) => html`<li>${writeCaution(caution, system)}</li>`)}
    </ul>
  </section>`;
}

/** What happens when the line is filled from empty; nothing is filled where no pipe is laid yet. */
export function fillingView({ checked: { filling, line }, system }: Board) {
  if (line.runs.length === 0) return nothing;
  return html`<section aria-labelledby="filling" part="filling">
    <h2 id="filling">Filling from empty</h2>
    ${
      filling.length === 0
        ? html`<p>The line fills by itself: nothing on the way holds air back.</p>`
        : html`<ul>${filling.map((found, finding) => html`<li>${writeFinding(found, system)} ${numberButton("How", { of: "filling", finding })}</li>`)}</ul>`
    }
  </section>`;
}

/** What was taken where the plan is silent. */
export function defaultsView({ checked: { defaults } }: Board) {
  if (defaults.length === 0) return nothing;
  return html`<section aria-labelledby="defaults" part="defaults">
    <h2 id="defaults">Taken for granted</h2>
    <details>
      <summary>${defaults.length} ${defaults.length === 1 ? "thing" : "things"} the plan does not say</summary>
      <ul>
        ${defaults.map(({ path, value, because }, used) => html`<li><strong>${path}</strong>: ${numberButton(value, { of: "default", used })} (${because})</li>`)}
      </ul>
    </details>
  </section>`;
}
