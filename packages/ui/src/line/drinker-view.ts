import { type Checked, MOMENT_WORDS, writeVerdict } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { guard } from "lit/directives/guard.js";
import type { Board } from "./board.js";
import { figureList, figuresOfDrinker } from "./figures-view.js";

/** Most drinkers offered by name in the list; any other is reached from its row in the table. */
const MOST_OFFERED = 300;

/** Chooses the end of the line that is drawn: the worst drinker, or one by name. */
export function drinkerChoice(checked: Checked, chosen: string, onChoose: (drinker: string) => void) {
  const ids = checked.line.drinkers.id;
  return html`<div class="field">
    <label for="drinker">Drinker to look at</label>
    <select id="drinker" @change=${(event: Event) => onChoose((event.target as HTMLSelectElement).value)}>
      ${guard([ids.join("\n"), chosen], () => {
        const offered = ids.slice(0, MOST_OFFERED);
        if (chosen !== "" && !offered.includes(chosen)) offered.push(chosen);
        return html`<option value="" ?selected=${chosen === ""}>The worst one</option>
          ${offered.map((id) => html`<option value=${id} ?selected=${id === chosen}>${id}</option>`)}`;
      })}
    </select>
  </div>`;
}

/** The drinker looked at: its sentence, and its figures, each with how it was got. */
export function drinkerView(board: Board) {
  const { checked, lookedAt, moment, system } = board;
  const verdict = checked.drinkers[lookedAt];
  if (verdict === undefined) return nothing;
  return html`<section class="sheet" aria-labelledby="looked-at" part="drinker">
    <h2 id="looked-at" tabindex="-1">${verdict.drinker}</h2>
    <p>${writeVerdict(verdict, checked.line, system)}</p>
    <p class="quiet">Figures: ${MOMENT_WORDS[moment]}. Press one to see how it was got.</p>
    ${figureList(figuresOfDrinker(lookedAt, moment), board)}
  </section>`;
}
