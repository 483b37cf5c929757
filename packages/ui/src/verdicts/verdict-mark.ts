import type { VerdictName } from "@headfall/hydraulics";
import { html, nothing, svg } from "lit";
import { pathOf, shapeFromMiddle } from "../kernels/path-of.js";
import type { Spot } from "../kernels/profile-request.js";
import { VERDICT_MARKS } from "../kernels/verdict-marks.js";

/** The mark of a verdict inside a drawing, `radius` px around (x, y). */
export function verdictMarkAt(verdict: VerdictName, x: number, y: number, radius: number) {
  const mark = VERDICT_MARKS[verdict];
  return svg`<path class="mark ${verdict}" d=${mark.path} transform="translate(${x} ${y}) scale(${radius})"
    fill=${mark.isFilled ? "currentColor" : "none"} stroke="currentColor" stroke-width="0.3"
    stroke-linejoin="round"></path>`;
}

/** The marks of a verdict around all these spots, as one element. */
export function verdictMarksAt(verdict: VerdictName, spots: readonly Spot[], radius: number) {
  if (spots.length === 0) return nothing;
  const mark = VERDICT_MARKS[verdict];
  const shape = shapeFromMiddle(mark.path, radius);
  return svg`<path class="mark ${verdict}" d=${spots.map((spot) => `${pathOf([spot])}${shape}`).join("")}
    fill=${mark.isFilled ? "currentColor" : "none"} stroke="currentColor" stroke-width=${0.3 * radius}
    stroke-linejoin="round"></path>`;
}

/** The mark and its word, for use in running text and tables. */
export function verdictWord(verdict: VerdictName) {
  return html`<span class="verdict ${verdict}"
    ><svg class="inline-mark" viewBox="-1.2 -1.2 2.4 2.4" width="18" height="18" aria-hidden="true">
      ${verdictMarkAt(verdict, 0, 0, 1)}
    </svg>
    ${VERDICT_MARKS[verdict].word}</span
  >`;
}
