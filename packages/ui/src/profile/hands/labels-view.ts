import { nothing, svg } from "lit";
import type { RunLabel } from "../../kernels/side/run-labels.js";

/** Lengths, falls and flows of the runs, each tied to its pipe; on a plate where they lie across pipe or ground. */
export function labelsView(labels: readonly RunLabel[]) {
  return labels.map(({ x, y, tie, lines, plate }) => {
    const edge = tie.y > y ? y + 18 : y - 13;
    const isFar = Math.abs(tie.y - edge) > 14;
    return svg`
      ${isFar ? svg`<path class="leader" d="M${x} ${edge}L${tie.x} ${tie.y}"></path>` : nothing}
      ${plate === undefined ? nothing : svg`<rect class="plate" x=${plate.left - 2} y=${plate.top} width=${plate.right - plate.left + 4} height=${plate.bottom - plate.top + 2} rx="4"></rect>`}
      <text class="halo" x=${x} y=${y} text-anchor="middle">${lines[0]}</text>
      <text class="halo" x=${x} y=${y + 14} text-anchor="middle">${lines[1]}</text>`;
  });
}
