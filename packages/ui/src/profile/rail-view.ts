import { nothing, svg } from "lit";
import type { ProfileLayout } from "../kernels/profile-layout.js";
import { verdictMarkAt } from "../verdicts/verdict-mark.js";

const MARK_RADIUS = 5.5;
const ROW_HEIGHT = 13;

/** The strip of verdicts: a mark under each drinker, and words under each stretch of neighbours alike. */
export function railView({ rail }: ProfileLayout, lookedAt: number) {
  const first = rail.top + 12;
  const wordsAt = rail.top + 12 + rail.rows * ROW_HEIGHT + 8;
  return svg`
    ${rail.marks.map(({ x, row, verdict, drinkers }) => {
      const y = first + row * ROW_HEIGHT;
      return svg`
        ${verdictMarkAt(verdict, x, y, MARK_RADIUS)}
        ${drinkers.includes(lookedAt) ? svg`<circle class="looked-at" cx=${x} cy=${y} r="9"></circle>` : nothing}`;
    })}
    ${rail.words.map(
      ({ x, from, to, verdict, text }) => svg`<g class=${verdict}>
        <path class="bracket" d="M${from - 5} ${wordsAt - 12}H${to + 5}"></path>
        <text class="rail-word" x=${x} y=${wordsAt + 2} text-anchor="middle">${text}</text>
      </g>`,
    )}`;
}
