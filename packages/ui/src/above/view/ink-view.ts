import { nothing, svg } from "lit";
import { LINE } from "../../kernels/above/place-texts.js";
import type { Scene, SceneGroup, SceneJoint, SceneRun } from "../../kernels/above/scene.js";
import type { Selected } from "../../kernels/selected.js";
import { pathOf } from "../../profile/profile-words.js";
import { verdictMarkAt } from "../../verdicts/verdict-mark.js";

const MARK_RADIUS = 5;

/** All that is drawn, pipes undermost; what can be pressed lies over it. */
export function inkView(scene: Scene, selected: Selected | undefined) {
  const chosenRun = selected?.kind === "run" ? selected.run : -1;
  return svg`
    ${scene.feeds.map(({ from, to }) => svg`<path class="feed" d=${pathOf([from, to])}></path>`)}
    ${scene.runs.map(pipeView)}
    ${scene.runs.map((run) => cornersView(run, run.run.index === chosenRun))}
    ${scene.joints.map(jointView)}
    ${scene.groups.map(marksView)}
    ${scene.texts.map(
      ({
        lines,
        at,
      }) => svg`<text class="label" text-anchor="middle" x=${at.x} y=${at.y - (lines.length * LINE) / 2 + 11}
        >${lines.map((line, i) => svg`<tspan class=${i === 0 ? "first" : "further"} x=${at.x} dy=${i === 0 ? 0 : LINE}>${line}</tspan>`)}</text>`,
    )}`;
}

function pipeView({ pixels, stroke, arrows, cut }: SceneRun) {
  return svg`
    <path class="pipe" d=${pathOf(pixels)} stroke-width=${stroke}></path>
    ${arrows.map(
      ({ at, degrees }) =>
        svg`<path class="flow" d="M7 0L-5 -5.5L-2.5 0L-5 5.5Z" transform="translate(${at.x} ${at.y}) rotate(${degrees})"></path>`,
    )}
    ${
      cut === undefined
        ? nothing
        : svg`<g transform="translate(${cut.at.x} ${cut.at.y}) rotate(${cut.degrees})">
          <path class="cut-gap" d="M-8 0H8" stroke-width=${stroke + 4}></path>
          <path class="cut" d="M-9 0L-5 -8L1 8L5 -8L9 0"></path></g>`
    }`;
}

/** Corners are bends of the pipe; those of a chosen run show that they can be taken hold of. */
function cornersView({ pixels }: SceneRun, isChosen: boolean) {
  if (!isChosen) return nothing;
  return pixels
    .slice(1, -1)
    .map(({ x, y }) => svg`<rect class="corner" x=${x - 5} y=${y - 5} width="10" height="10"></rect>`);
}

function jointView({ at, vessel, meeting }: SceneJoint) {
  if (vessel === undefined) {
    // A loose end is open, a tee is full.
    return svg`<circle class="joint ${meeting === 1 ? "end" : ""}" cx=${at.x} cy=${at.y} r=${meeting > 2 ? 6 : 5}></circle>`;
  }
  const { outline, half } = vessel;
  if (outline.kind === "round") {
    return svg`
      <circle class="vessel" cx=${at.x} cy=${at.y} r=${half}></circle>
      <circle class="brim" cx=${at.x} cy=${at.y} r=${half * 0.8}></circle>`;
  }
  const large = Math.max(outline.length, outline.width) || 1;
  const [width, height] = [(outline.length / large) * half, (outline.width / large) * half];
  return svg`
    <rect class="vessel" x=${at.x - width} y=${at.y - height} width=${2 * width} height=${2 * height} rx="3"></rect>
    <rect class="brim" x=${at.x - width * 0.82} y=${at.y - height * 0.82} width=${1.64 * width} height=${1.64 * height} rx="2"></rect>`;
}

function marksView({ marks }: SceneGroup) {
  return marks.map(({ pixel: { x, y }, verdict, drinkers }) => {
    const back = svg`<circle class="mark-back" cx=${x} cy=${y} r=${MARK_RADIUS + 2}></circle>`;
    if (verdict === undefined)
      return svg`${back}<circle class="unknown" cx=${x} cy=${y} r=${MARK_RADIUS - 1}></circle>`;
    const several =
      drinkers.length > 1 ? svg`<path class="several" d="M${x - 6} ${y + 9.5}h12"></path>` : nothing;
    return svg`${back}${verdictMarkAt(verdict, x, y, MARK_RADIUS)}${several}`;
  });
}
