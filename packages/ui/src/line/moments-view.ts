import type { MomentName } from "@headfall/hydraulics";
import { html } from "lit";

/** What is shown: one of the four moments, or both extremes held at once. */
export type Shown = MomentName | "bothEnds";

const CHOICES: readonly { shown: Shown; label: string }[] = [
  { shown: "fullIdle", label: "Full, idle" },
  { shown: "fullBusiest", label: "Full, busiest" },
  { shown: "lowestBusiest", label: "Lowest, busiest" },
  { shown: "ordinary", label: "Ordinary hour" },
  { shown: "bothEnds", label: "Both ends at once" },
];

/** The moment whose figures are written while both extremes are drawn: the one of the greatest flow. */
export const momentOf = (shown: Shown): MomentName => (shown === "bothEnds" ? "fullBusiest" : shown);

/** The moments to look at; the verdict is over all of them, whichever is shown. */
export function momentsView(chosen: Shown, onChoose: (shown: Shown) => void) {
  return html`<fieldset part="moments">
    <legend>Moment shown</legend>
    <div class="choices">
      ${CHOICES.map(
        ({ shown, label }) => html`<label
          ><input type="radio" name="moment" value=${shown} .checked=${shown === chosen}
            @change=${() => onChoose(shown)} />${label}</label
        >`,
      )}
    </div>
  </fieldset>`;
}
