import { drinkerGroupsOf } from "../document/plan-lists.js";
import type { Plan } from "../document/plan-schema.js";
import { type CheckOptions, checkPlan, FIRST_SAMPLES } from "../judge/check-plan.js";
import { type MeasureAnswer, measureAgain } from "../judge/sureness/measure-again.js";
import type { Measuring } from "../judge/sureness/measuring.js";
import { writeCheckDocument } from "../report/check-document.js";
import { writeCheckText } from "../report/check-text.js";
import type { Question } from "./answer-plan.js";
import { readCount } from "./arguments.js";

/** `headfall check PLAN` */
export const CHECK: Question = {
  options: ["samples", "seed"],
  answer: ({ plan, day, system, paint, own, json }) => {
    const samples = readCount("samples", own["samples"], FIRST_SAMPLES, 100_000);
    const seed = readCount("seed", own["seed"], 1, 4_294_967_295);
    if (typeof samples !== "number") return samples;
    if (typeof seed !== "number") return seed;
    const asked = own["samples"] === undefined ? {} : { samples };
    const checking = checkAsTold(plan, json, { ...asked, seed, day });
    if (!checking.ok) return checking;
    const { checked, measuring } = checking;
    return {
      text: () => writeCheckText(checked, system, paint, measuring),
      document: () => writeCheckDocument(checked, system),
      status: checked.verdict === "good" ? 0 : 1,
    };
  },
};

/** In lines longer than this each measurement takes long to try: `headfall measure` does it. */
const MOST_MEASURED = 100;
const NOT_MEASURED: Measuring = { sure: 0, close: [], measurements: [], samples: 0 };

/** The text tells what to measure again; the document leaves that to one of its own. */
function checkAsTold(plan: Plan, isDocument: boolean, options: CheckOptions): MeasureAnswer {
  const count = plan.runs.reduce((sum, run) => sum + countOf(run), 0);
  if (!isDocument && count <= MOST_MEASURED) return measureAgain(plan, options);
  const checking = checkPlan(plan, options);
  return checking.ok ? { ...checking, measuring: NOT_MEASURED } : checking;
}

const countOf = (run: Plan["runs"][number]): number =>
  drinkerGroupsOf(run).reduce((sum, { count = 1 }) => sum + count, 0);
