import { nothing, svg } from "lit";
import type { RunLabel } from "../../kernels/side/run-labels.js";

/** Lengths, falls and flows of the runs, in a row of their own over the foot of the drawing. */
export function labelsView(labels: readonly RunLabel[], y: number) {
  return labels.map(
    ({ x, at, from, to, lines }) => svg`
    <path class="leader" d="M${from + 2} ${y - 15}v-4H${to - 2}v4"></path>
    ${Math.abs(x - at) > 12 ? svg`<path class="leader" d="M${at} ${y - 19}L${x} ${y - 12}"></path>` : nothing}
    <text class="halo" x=${x} y=${y} text-anchor="middle">${lines[0]}</text>
    <text class="halo" x=${x} y=${y + 14} text-anchor="middle">${lines[1]}</text>`,
  );
}
