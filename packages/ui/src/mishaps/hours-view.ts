import { html, svg } from "lit";
import type { DayBar } from "../kernels/mishaps/day-share.js";

/** Until harm, as a bar against a day. */
export function hoursView({ share, isOver }: DayBar) {
  return html`<svg class="hours" viewBox="0 0 240 18" preserveAspectRatio="none" aria-hidden="true">
      <rect class="day" x="0.5" y="3" width="239" height="12"></rect>
      <rect class=${isOver ? "span over" : "span"} x="0.5" y="3" width=${Math.max(1.5, 239 * share)} height="12"></rect>
      ${[6, 12, 18].map((hour) => svg`<line class="hour" x1=${hour * 10} x2=${hour * 10} y1="1" y2="17"></line>`)}
    </svg>`;
}
