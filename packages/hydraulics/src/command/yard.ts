import { isGrave } from "../judge/yard/yard-finding.js";
import { yardForPlan } from "../judge/yard/yard-for-plan.js";
import { writeYardDocument } from "../report/yard/yard-document.js";
import { writeYardText } from "../report/yard/yard-text.js";
import type { Question } from "./answer-plan.js";
import { readCount } from "./arguments.js";

/** `headfall yard PLAN`: exit status 1 where birds go without, or may drown. */
export const YARD: Question = {
  options: ["weeks"],
  answer: ({ plan, name, day, system, paint, own }) => {
    const weeks = readCount("weeks", own["weeks"], 8, 104);
    if (typeof weeks !== "number") return weeks;
    const answer = yardForPlan(plan, { day, weeks });
    if (!answer.ok) return answer;
    const { yard } = answer;
    return {
      text: () => writeYardText(name, yard, system, paint),
      document: () => writeYardDocument(name, yard, system),
      status: yard.pens.some(({ findings }) => findings.some(isGrave)) ? 1 : 0,
    };
  },
};
