import { VERDICTS } from "@headfall/hydraulics";
import { nothing, svg } from "lit";
import type { ProfileLayout } from "../kernels/profile-layout.js";
import type { RailMark } from "../kernels/verdict-rail.js";
import { verdictMarksAt } from "../verdicts/verdict-mark.js";

const MARK_RADIUS = 5.5;
const ROW_HEIGHT = 13;

/**
 * The strip of verdicts: a mark under each drinker, and words under each stretch of neighbours alike. All marks of one
 * verdict are one path, since dozens of elements cost each frame of a drag dearly.
 */
export function railView({ rail }: ProfileLayout, lookedAt: number) {
  const first = rail.top + 12;
  const { marks } = rail;
  const spotOf = ({ x, row }: RailMark) => ({ x, y: first + row * ROW_HEIGHT });
  const seen = marks.find(({ drinkers }) => drinkers.includes(lookedAt));
  const wordsAt = rail.top + 12 + rail.rows * ROW_HEIGHT + 8;
  return svg`
    ${VERDICTS.map((verdict) => verdictMarksAt(verdict, marks.filter((mark) => mark.verdict === verdict).map(spotOf), MARK_RADIUS))}
    ${
      seen === undefined
        ? nothing
        : svg`<circle class="looked-at" cx=${seen.x} cy=${spotOf(seen).y} r="9"></circle>`
    }
    ${rail.words.map(
      ({ x, from, to, verdict, text }) => svg`<g class=${verdict}>
        <path class="bracket" d="M${from - 5} ${wordsAt - 12}H${to + 5}"></path>
        <text class="rail-word" x=${x} y=${wordsAt + 2} text-anchor="middle">${text}</text>
      </g>`,
    )}`;
}
