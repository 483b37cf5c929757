import { html, nothing } from "lit";
import { dripLossInDay, MOST_DRINKERS, MOST_DROPS, readCount } from "../kernels/mishaps/drip-loss.js";
import { showVolume } from "../kernels/shown.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What was typed into the reckoner of drips. */
export interface DripsTyped {
  readonly aMinute: string;
  readonly drinkers: string;
}

interface DripsRoom {
  readonly typed: DripsTyped;
  readonly system: UnitSystem;
  readonly type: (typed: DripsTyped) => void;
}

/** Drops counted at a drinker, in litres a day: no plan is needed for it. */
export function dripsView({ typed, system, type }: DripsRoom) {
  const aMinute = readCount(typed.aMinute, MOST_DROPS);
  const drinkers = readCount(typed.drinkers, MOST_DRINKERS);
  return html`<section aria-labelledby="drips">
    <h3 id="drips">Drips</h3>
    <p>Count the drops that fall from a drinker in a minute, with no bird at it.</p>
    <div class="drips-typed">
      ${field("Drops a minute", typed.aMinute, aMinute === undefined ? MOST_DROPS : undefined, (words) => type({ ...typed, aMinute: words }))}
      ${field("Drinkers that drip so", typed.drinkers, drinkers === undefined ? MOST_DRINKERS : undefined, (words) => type({ ...typed, drinkers: words }))}
    </div>
    <p role="status">${aMinute === undefined || drinkers === undefined ? nothing : lossView(dripLossInDay({ aMinute, drinkers }), system)}</p>
    <p class="quiet">A drop is reckoned as 0.05 mL where it is small, as from a pin in a laboratory, and as 0.25 mL where it is large, as from a tap.
      Catch them in a jar for an hour to know better.</p>
  </section>`;
}

const lossView = ({ small, large }: { readonly small: number; readonly large: number }, system: UnitSystem) =>
  html`<strong>${showVolume(small, system)} to ${showVolume(large, system)} a day</strong> to the litter, if the drops are small or large.`;

function field(label: string, typed: string, wrongBeyond: number | undefined, type: (words: string) => void) {
  return html`<label class="typed"><span>${label}</span>
    <input type="text" inputmode="numeric" autocomplete="off" .value=${typed} aria-invalid=${wrongBeyond === undefined ? "false" : "true"}
      @input=${(event: Event) => type((event.target as HTMLInputElement).value)} />
    ${wrongBeyond === undefined ? nothing : html`<span class="problem">A whole number from 0 to ${wrongBeyond}, for instance 10.</span>`}
  </label>`;
}
