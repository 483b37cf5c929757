import { VERDICTS, type VerdictName } from "@headfall/hydraulics";
import { nothing, svg } from "lit";
import { repeat } from "lit/directives/repeat.js";
import type { FlowArrow } from "../../kernels/above/flow-arrows.js";
import { LINE, type PlacedText } from "../../kernels/above/place-texts.js";
import type { Scene, SceneJoint, SceneMark, SceneRun } from "../../kernels/above/scene.js";
import { pathOf } from "../../kernels/path-of.js";
import type { Selected } from "../../kernels/selected.js";
import { verdictMarksAt } from "../../verdicts/verdict-mark.js";

const MARK_RADIUS = 5;
/** An arrow that points to the right, round (0, 0). */
const ARROW = [
  { x: 7, y: 0 },
  { x: -5, y: -5.5 },
  { x: -2.5, y: 0 },
  { x: -5, y: 5.5 },
];

/** All that is drawn, pipes undermost; what can be pressed lies over it. */
export function inkView(scene: Scene, selected: Selected | undefined) {
  const chosenRun = selected?.kind === "run" ? selected.run : -1;
  return svg`
    ${scene.feeds.map(({ from, to }) => svg`<path class="feed" d=${pathOf([from, to])}></path>`)}
    ${scene.runs.map(pipeView)}
    ${scene.runs.map((run) => cornersView(run, run.run.index === chosenRun))}
    ${scene.joints.map(jointView)}
    ${marksView(scene.groups.flatMap(({ marks }) => marks))}
    ${repeat(byId(scene.texts), ({ id }) => id, labelView)}`;
}

/** In an order that does not change as lengths do: a label that goes leaves the others as they are. */
const byId = (texts: readonly PlacedText[]) => [...texts].sort((a, b) => (a.id < b.id ? -1 : 1));

function labelView({ lines, at }: PlacedText) {
  return svg`<text class="label" text-anchor="middle" x=${at.x} y=${at.y - (lines.length * LINE) / 2 + 11}
    >${lines.map((line, i) => svg`<tspan class=${i === 0 ? "first" : "further"} x=${at.x} dy=${i === 0 ? 0 : LINE}>${line}</tspan>`)}</text>`;
}

function pipeView({ pixels, stroke, arrows, cut }: SceneRun) {
  return svg`
    <path class="pipe" d=${pathOf(pixels)} stroke-width=${stroke}></path>
    ${arrows.length === 0 ? nothing : svg`<path class="flow" d=${arrows.map(arrowPath).join("")}></path>`}
    ${
      cut === undefined
        ? nothing
        : svg`<g transform="translate(${cut.at.x} ${cut.at.y}) rotate(${cut.degrees})">
          <path class="cut-gap" d="M-8 0H8" stroke-width=${stroke + 4}></path>
          <path class="cut" d="M-9 0L-5 -8L1 8L5 -8L9 0"></path></g>`
    }`;
}

function arrowPath({ at, degrees }: FlowArrow): string {
  const turn = (degrees * Math.PI) / 180;
  const [across, down] = [Math.cos(turn), Math.sin(turn)];
  return `${pathOf(ARROW.map(({ x, y }) => ({ x: at.x + x * across - y * down, y: at.y + x * down + y * across })))}Z`;
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

/**
 * All marks of one kind are one path: a hand that drags a joint moves every drinker of its run, and dozens of elements
 * cost a frame dearly. Marks do not overlap, so the order in which they are drawn is not seen.
 */
function marksView(marks: readonly SceneMark[]) {
  const unknown = marks.filter(({ verdict }) => verdict === undefined);
  return svg`
    ${discsView("mark-back", marks, MARK_RADIUS + 2)}
    ${discsView("unknown", unknown, MARK_RADIUS - 1)}
    ${VERDICTS.map((verdict) => verdictMarksAt(verdict, spotsOf(marks, verdict), MARK_RADIUS))}
    ${severalView(marks.filter(({ verdict, drinkers }) => verdict !== undefined && drinkers.length > 1))}`;
}

const spotsOf = (marks: readonly SceneMark[], verdict: VerdictName) =>
  marks.filter((mark) => mark.verdict === verdict).map(({ pixel }) => pixel);

function discsView(kind: string, marks: readonly SceneMark[], radius: number) {
  if (marks.length === 0) return nothing;
  const disc = `m${-radius} 0a${radius} ${radius} 0 1 1 ${2 * radius} 0a${radius} ${radius} 0 1 1 ${-2 * radius} 0z`;
  return svg`<path class=${kind} d=${marks.map(({ pixel }) => `${pathOf([pixel])}${disc}`).join("")}></path>`;
}

function severalView(marks: readonly SceneMark[]) {
  if (marks.length === 0) return nothing;
  const lines = marks.map(({ pixel: { x, y } }) => `${pathOf([{ x: x - 6, y: y + 9.5 }])}h12`);
  return svg`<path class="several" d=${lines.join("")}></path>`;
}
