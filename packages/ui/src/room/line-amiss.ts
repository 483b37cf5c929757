import type { Checked } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { writeCounts } from "../kernels/verdict-marks.js";
import { wantRoom } from "./no-line.js";

/** Where litres are counted: that some drinkers of the line starve or stay dry all the same, and where to mend that. */
export function lineAmissView(checked: Checked | undefined) {
  if (checked === undefined || checked.counts.starves + checked.counts.dry === 0) return nothing;
  return html`<p class="amiss">Litres are counted here. <strong>Of the drinkers ${writeCounts(checked.counts)}</strong>, at the lowest water
      and the busiest minutes: mend that first.
      <button type="button" @click=${wantRoom("cure")}>Find the smallest change</button></p>`;
}
