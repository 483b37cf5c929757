import type { Checked, MomentName } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { howGotOf } from "../kernels/how-got/how-got-of.js";
import type { HowSubject } from "../kernels/how-got/subject.js";
import type { Selected } from "../kernels/selected.js";
import { numberButton } from "../verdicts/number-button.js";
import type { Board } from "./board.js";

/** What a figure is called beside its button. */
interface Figure {
  readonly name: string;
  readonly subject: HowSubject;
}

/** The figures of the chosen part, each a button that tells how it was got. */
export function partFigures({ checked, plan, part, moment, system }: Board) {
  const figures = figuresOfPart(checked, part, moment);
  return figures.length === 0
    ? nothing
    : html`<div class="figures" role="group" aria-label="Figures of the chosen part">
        ${figureList(figures, { checked, plan, system })}
      </div>`;
}

/** Names and buttons, two and two. */
export function figureList(
  figures: readonly Figure[],
  { checked, plan, system }: Pick<Board, "checked" | "plan" | "system">,
) {
  return html`<dl class="figure-list">
    ${figures.map(({ name, subject }) => {
      const how = howGotOf(subject, checked, plan, system);
      return how === undefined
        ? nothing
        : html`<div><dt>${name}</dt><dd>${numberButton(how.result, subject)}</dd></div>`;
    })}
  </dl>`;
}

/** The figures of one drinker at a moment. */
export const figuresOfDrinker = (drinker: number, moment: MomentName): readonly Figure[] => [
  { name: "Head if nothing flowed", subject: { of: "drinkerStaticHead", drinker, moment } },
  { name: "Head", subject: { of: "drinkerHead", drinker, moment } },
  { name: "Flow while worked", subject: { of: "drinkerFlow", drinker, moment } },
  { name: "Flow it needs", subject: { of: "drinkerNeed", drinker } },
  { name: "Margin", subject: { of: "drinkerMargin", drinker } },
  { name: "How sure", subject: { of: "drinkerCertainty", drinker } },
  { name: "Height of the drinker", subject: { of: "drinkerHeight", drinker } },
];

function figuresOfPart(checked: Checked, part: Selected | undefined, moment: MomentName): readonly Figure[] {
  switch (part?.kind) {
    case "source":
      return part.source < checked.sources.length ? figuresOfSource(part.source, moment) : [];
    case "run":
      return part.run < checked.runs.length ? figuresOfRun(part.run, moment) : [];
    case "joint": {
      const point = checked.line.points.id.indexOf(part.joint);
      return point < 0 ? [] : figuresOfPoint(point, moment);
    }
    default:
      return [];
  }
}

const figuresOfSource = (source: number, moment: MomentName): readonly Figure[] => [
  { name: "Water when full", subject: { of: "sourceVolume", source, which: "full" } },
  { name: "Of that, usable", subject: { of: "sourceVolume", source, which: "usable" } },
  { name: "Drawn", subject: { of: "sourceDraw", source, moment } },
  { name: "Height of the surface", subject: { of: "sourceSurface", source, moment } },
  { name: "Weight when full", subject: { of: "sourceMass", source } },
];

const figuresOfRun = (run: number, moment: MomentName): readonly Figure[] => [
  { name: "Length", subject: { of: "runLength", run } },
  { name: "Falls", subject: { of: "runFall", run } },
  { name: "Bore", subject: { of: "runBore", run } },
  { name: "Flow", subject: { of: "runFlow", run, moment } },
  { name: "Velocity", subject: { of: "runVelocity", run, moment } },
  { name: "Reynolds number", subject: { of: "runReynolds", run, moment } },
  { name: "Lost, Hazen-Williams", subject: { of: "runLoss", run, law: "hazenWilliams", moment } },
  { name: "Lost, Darcy-Weisbach", subject: { of: "runLoss", run, law: "darcyWeisbach", moment } },
  { name: "Water in the pipe", subject: { of: "runVolume", run } },
];

const figuresOfPoint = (point: number, moment: MomentName): readonly Figure[] => [
  { name: "Height of the pipe", subject: { of: "pointHeight", point } },
  { name: "Height of the grade line", subject: { of: "pointHead", point, moment } },
];
