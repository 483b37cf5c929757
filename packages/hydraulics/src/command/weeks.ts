import { judgeWeeks } from "../judge/birds/weeks.js";
import { writeWeeksDocument } from "../report/birds/weeks-document.js";
import { writeWeeksText } from "../report/birds/weeks-text.js";
import type { Question } from "./answer-plan.js";
import { readCount } from "./arguments.js";

/** `headfall weeks PLAN`: exit status 0 when every week is all good, 1 when some week is not. */
export const WEEKS: Question = {
  options: ["weeks"],
  answer: ({ plan, name, day, system, paint, own }) => {
    const weeks = readCount("weeks", own["weeks"], 8, 104);
    if (typeof weeks !== "number") return weeks;
    const judged = judgeWeeks(plan, { weeks, day });
    if (!judged.ok) return judged;
    return {
      text: () => writeWeeksText(name, judged, system, paint),
      document: () => writeWeeksDocument(plan, judged, system),
      status: [...judged.weeks, ...judged.hotWeeks].every(({ verdict }) => verdict === "good") ? 0 : 1,
    };
  },
};
