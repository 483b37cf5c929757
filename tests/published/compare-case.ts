import type { Figures, PublishedCase } from "./case-file.js";
import { type Figure, Givens, inUnit, splitFigure } from "./figures.js";
import { BIRD_QUESTIONS } from "./questions/birds.js";
import { BUILDING_QUESTIONS } from "./questions/building.js";
import { FITTING_QUESTIONS } from "./questions/fittings.js";
import { FRICTION_QUESTIONS } from "./questions/friction.js";
import { LEAST_COST_QUESTIONS } from "./questions/least-cost.js";
import { LINE_QUESTIONS } from "./questions/lines.js";
import { NETWORK_QUESTIONS } from "./questions/networks.js";
import type { Question } from "./questions/question.js";
import { RAIN_QUESTIONS } from "./questions/rain.js";
import { VESSEL_QUESTIONS } from "./questions/vessels.js";
import { WATER_QUESTIONS } from "./questions/water.js";
import { WEATHER_QUESTIONS } from "./questions/weather.js";
import { YARD_QUESTIONS } from "./questions/yard.js";

/** What can be put to the library. Each answers with the library's own functions and no formula of the case's. */
export const QUESTIONS: Readonly<Record<string, Question>> = {
  ...FRICTION_QUESTIONS,
  ...FITTING_QUESTIONS,
  ...NETWORK_QUESTIONS,
  ...LEAST_COST_QUESTIONS,
  ...VESSEL_QUESTIONS,
  ...WATER_QUESTIONS,
  ...BIRD_QUESTIONS,
  ...LINE_QUESTIONS,
  ...RAIN_QUESTIONS,
  ...WEATHER_QUESTIONS,
  ...YARD_QUESTIONS,
  ...BUILDING_QUESTIONS,
};

/** One printed figure beside the computed one, both in the printed unit. */
export interface Comparison {
  readonly name: string;
  readonly unit: string;
  readonly printed: number;
  readonly computed: number;
  readonly difference: number;
  /** Greatest difference allowed, in the same unit. */
  readonly allowed: number;
  readonly agrees: boolean;
}

export interface CaseComparison {
  readonly expected: readonly Comparison[];
  /** Figures that the source prints wrongly; none of them may agree. */
  readonly slips: readonly Comparison[];
}

/** Answers that take seconds, by case: asked by the test of the case, and again by the report. */
const searched = new Map<string, Readonly<Record<string, Figure>>>();

function answerOf(one: PublishedCase): Readonly<Record<string, Figure>> {
  const question = QUESTIONS[one.question];
  if (question === undefined) throw new Error(`${one.id}: no question is called ${one.question}`);
  const known = searched.get(one.id);
  if (known !== undefined) return known;
  const answer = question(new Givens(one.given));
  if (one.question in LEAST_COST_QUESTIONS) searched.set(one.id, answer);
  return answer;
}

export function compareCase(one: PublishedCase): CaseComparison {
  const computed = answerOf(one);
  const compare = (figures: Figures) =>
    Object.entries(figures).map(([name, printed]) => {
      const figure = computed[name];
      if (figure === undefined) throw new Error(`${one.id}: ${one.question} does not answer ${name}`);
      return compareFigure(name, printed, figure, one);
    });
  return { expected: compare(one.expect), slips: compare(one.slip ?? {}) };
}

function compareFigure(
  name: string,
  printed: number | string,
  figure: Figure,
  { tolerance: { relative = 0, absolute = 0 } }: PublishedCase,
): Comparison {
  const { value, unit } = splitFigure(printed);
  const computed = inUnit(figure, unit);
  const difference = computed - value;
  const allowed = Math.max(absolute, relative * Math.abs(value));
  return {
    name,
    unit,
    printed: value,
    computed,
    difference,
    allowed,
    agrees: Math.abs(difference) <= allowed,
  };
}
