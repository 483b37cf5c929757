import { html, nothing } from "lit";
import { fieldView, problemView } from "../fields/entry-view.js";
import { offShelf, priceEntries, shelfChoice, shelfEntries, shelfName } from "./price-entries.js";
import type { CureRoom } from "./room.js";

/** Pipe that is there or can be had, and what things cost: part of the plan, and folded away until it is wanted. */
export function pricesView({ plan, typing }: CureRoom) {
  const { shelf = [] } = plan;
  const priced = Object.keys(plan.prices ?? {}).length;
  return html`<details>
      <summary>Pipe on hand and for sale: ${shelf.length === 0 ? "any size" : shelf.length}</summary>
      <p class="note quiet">${
        shelf.length === 0
          ? "With nothing here, every size of each run's own kind of pipe is thought of."
          : "Only these sizes are thought of. What is on hand is used before any is bought."
      }</p>
      ${shelf.map(
        ({ pipe }, index) => html`<fieldset><legend>${shelfName(pipe)}</legend>
          <div class="pair">${shelfEntries(plan, index).map((entry) => fieldView(entry, typing))}</div>
          <div class="buttons"><button type="button" @click=${() => typing.want(`shelf ${index} off`, offShelf(plan, index))}>Take it off<span class="spoken"> the shelf: ${shelfName(pipe)}</span></button></div>
          ${problemView(typing, `shelf ${index} off`)}
        </fieldset>`,
      )}
      ${fieldView(shelfChoice(plan), typing)}
    </details>
    <details>
      <summary>Prices of other things: ${priced === 0 ? nothing : priced} ${priced === 0 ? "none yet" : "given"}</summary>
      <p class="note quiet">Your own prices. Of what has none only the number of pieces counts.</p>
      <div class="pair">${priceEntries(plan).map((entry) => fieldView(entry, typing))}</div>
    </details>`;
}
