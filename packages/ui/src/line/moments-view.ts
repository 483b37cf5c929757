import type { MomentName } from "@headfall/hydraulics";
import { html } from "lit";

const CHOICES: readonly { moment: MomentName; label: string }[] = [
  { moment: "fullIdle", label: "Full, idle" },
  { moment: "fullBusiest", label: "Full, busiest" },
  { moment: "lowestBusiest", label: "Lowest, busiest" },
  { moment: "ordinary", label: "Ordinary hour" },
];

/** The four moments to look at; the verdict is over all of them, whichever is shown. */
export function momentsView(chosen: MomentName, onChoose: (moment: MomentName) => void) {
  return html`<fieldset part="moments">
    <legend>Moment shown</legend>
    <div class="choices">
      ${CHOICES.map(
        ({ moment, label }) => html`<label
          ><input type="radio" name="moment" value=${moment} .checked=${moment === chosen}
            @change=${() => onChoose(moment)} />${label}</label
        >`,
      )}
    </div>
  </fieldset>`;
}
