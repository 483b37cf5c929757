import { FIRST_SAMPLES } from "../judge/check-plan.js";
import { measureAgain } from "../judge/sureness/measure-again.js";
import { writeMeasureDocument } from "../report/sureness/measure-document.js";
import { writeMeasureText } from "../report/sureness/measure-text.js";
import type { Question } from "./answer-plan.js";
import { readCount } from "./arguments.js";

/** `headfall measure PLAN`: exit status 1 where a verdict is a close call. */
export const MEASURE: Question = {
  options: ["samples", "seed"],
  ofLine: true,
  answer: ({ plan, day, system, paint, own }) => {
    const samples = readCount("samples", own["samples"], FIRST_SAMPLES, 100_000);
    if (typeof samples !== "number") return samples;
    const seed = readCount("seed", own["seed"], 1, 4_294_967_295);
    if (typeof seed !== "number") return seed;
    const asked = own["samples"] === undefined ? {} : { samples };
    const answer = measureAgain(plan, { ...asked, seed, day });
    if (!answer.ok) return answer;
    const { checked, measuring } = answer;
    return {
      text: () => writeMeasureText(checked, measuring, system, paint),
      document: () => writeMeasureDocument(checked, measuring, system),
      status: measuring.close.length === 0 ? 0 : 1,
    };
  },
};
