import { type Checked, type MomentName, writeVerdict } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { guard } from "lit/directives/guard.js";
import { howGotOf } from "../kernels/how-got/how-got-of.js";
import type { HowSubject } from "../kernels/how-got/subject.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { howGotView } from "../verdicts/how-got-view.js";

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

/** The drinker looked at: its sentence, and how each of its numbers was got. */
export function drinkerView(checked: Checked, drinker: number, moment: MomentName, system: UnitSystem) {
  const verdict = checked.drinkers[drinker];
  if (verdict === undefined) return nothing;
  return html`<section class="sheet" aria-labelledby="looked-at" part="drinker">
    <h2 id="looked-at" tabindex="-1">${verdict.drinker}: how it was got</h2>
    <p>${writeVerdict(verdict, checked.line, system)}</p>
    ${howSubjects(drinker, moment).map((subject) => howGotView(howGotOf(subject, checked, undefined, system)!))}
  </section>`;
}

/** The numbers of a drinker that are told one by one below its sentence. */
const howSubjects = (drinker: number, moment: MomentName): readonly HowSubject[] => [
  { of: "drinkerHead", drinker, moment },
  { of: "drinkerFlow", drinker, moment },
  { of: "drinkerMargin", drinker },
];
