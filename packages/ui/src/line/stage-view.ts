import type { Checked } from "@headfall/hydraulics";
import { html } from "lit";
import { pathToDrinker } from "../kernels/profile-path.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** The drawing that comes with the first verdict, before anything on it can be grabbed. */
export function stageView(checked: Checked, worst: number, system: UnitSystem) {
  const path = worst < 0 ? undefined : pathToDrinker(checked.line, worst);
  return html`<div class="drawing">
    <headfall-profile
      .checked=${checked} .path=${path} moment="fullBusiest" .drinker=${worst} .system=${system}
    ></headfall-profile>
  </div>`;
}
