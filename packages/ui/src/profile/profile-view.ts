import { nothing, svg } from "lit";
import { pathOf } from "../kernels/path-of.js";
import type { ProfileLayout } from "../kernels/profile-layout.js";
import type { Spot } from "../kernels/profile-request.js";
import { showHead } from "../kernels/shown.js";
import { trimmed } from "../kernels/typed-quantity.js";
import { writeCounts } from "../kernels/verdict-marks.js";
import { lossView } from "./loss-view.js";
import type { ProfileWords } from "./profile-words.js";
import { railView } from "./rail-view.js";
import { vesselView } from "./vessel-view.js";

/** The whole drawing. What it shows is also in the tables, so to a screen reader it is one picture with a name. */
export function profileView(layout: ProfileLayout, words: ProfileWords) {
  const { width, height, ground, pipe, plot } = layout;
  const bottom = plot.bottom + 6;
  const earth = [
    ...ground,
    { x: width, y: ground[ground.length - 1]!.y },
    { x: width, y: bottom },
    { x: 0, y: bottom },
  ];
  return svg`<svg part="drawing" role="img" viewBox="0 0 ${width} ${height}" height=${height}
      aria-label=${`The line from the side: ${writeCounts(words.checked.counts)}. The tables below hold the same.`}>
    <rect class="back" width=${width} height=${height}></rect>
    ${heightLines(layout)}
    <path class="ground" d="${pathOf(earth)}Z"></path>
    <path class="ground-line" d=${pathOf(ground)}></path>
    ${axisWords(layout, words.unitSign)}
    ${gradeView(layout)}
    <path class="pipe" d=${pathOf(pipe)}></path>
    ${drinkerStems(layout)}
    ${layout.air.map(airMark)}
    ${vesselView(layout)}
    ${railView(layout, words.drinker)}
    ${arrowView(layout, words)}
    ${lossView(layout, words)}
  </svg>`;
}

function heightLines({ heightTicks, width }: ProfileLayout) {
  return heightTicks.map(({ at }) => svg`<path class="tick" d="M26 ${at}H${width}"></path>`);
}

function axisWords({ plot, width, heightTicks, lengthTicks }: ProfileLayout, sign: string) {
  const last = heightTicks.length - 1;
  return svg`
    ${heightTicks.map(
      ({ at, value }, i) => svg`
      <text class="quiet" x="2" y=${at - 3}>${trimmed(value, 1)}${i === last ? ` ${sign}` : ""}</text>`,
    )}
    ${lengthTicks.map(
      ({ at, value }) => svg`
      <text class="quiet" x=${Math.min(at, width - 4)} y=${plot.bottom + 20}
        text-anchor=${at > width - 20 ? "end" : "middle"}>${trimmed(value, 1)} ${sign}</text>`,
    )}`;
}

function gradeView({ grade }: ProfileLayout) {
  const band = [...grade.highest, ...[...grade.lowest].reverse()];
  return svg`
    <path class="band" d="${pathOf(band)}Z"></path>
    <path class="extreme highest" d=${pathOf(grade.highest)}></path>
    <path class="extreme lowest" d=${pathOf(grade.lowest)}></path>
    <path class="chosen" d=${pathOf(grade.chosen)}></path>`;
}

function drinkerStems({ drinkers }: ProfileLayout) {
  const stems = drinkers.map(({ x, y, pipeY }) => `${pathOf([{ x, y: pipeY }])}V${Math.max(y, pipeY + 5)}`);
  return stems.length === 0 ? nothing : svg`<path class="stem" d=${stems.join("")}></path>`;
}

/** Two bubbles over the pipe, where air stays. */
function airMark({ x, y }: Spot) {
  return svg`<g class="air"><circle cx=${x - 2} cy=${y - 8} r="4"></circle><circle cx=${x + 4} cy=${y - 14} r="2.5"></circle></g>`;
}

/** The head of the drinker looked at, as the upright distance it is. */
function arrowView({ arrow, width }: ProfileLayout, { system }: ProfileWords) {
  if (arrow === undefined) return nothing;
  const { x, from, to, head } = arrow;
  const direction = to < from ? 1 : -1;
  const isLong = Math.abs(to - from) > 26;
  const isRight = x > width * 0.6;
  return svg`
    <path class="arrow" d="M${x} ${from}V${to}"></path>
    ${isLong ? svg`<path class="arrow-tip" d="M${x} ${to}l-4 ${7 * direction}h8Z"></path>` : nothing}
    <text class="halo" x=${x + (isRight ? -8 : 8)} y=${isLong ? (from + to) / 2 + 4 : Math.min(from, to) - 6} text-anchor=${isRight ? "end" : "start"}
      >head ${showHead(head, system)}</text>`;
}
