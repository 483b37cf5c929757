import { carryingOf } from "../judge/time/carrying.js";
import { howLongItLasts } from "../judge/time/lasting.js";
import { writeLastingText } from "../report/time/lasting-text.js";
import { writeLastingDocument } from "../report/time/time-documents.js";
import type { Question } from "./answer-plan.js";

/** `headfall lasts PLAN`: exit status 1 when, filled as the plan says, some bird goes without in a hot spell. */
export const LASTS: Question = {
  ofLine: true,
  answer: ({ plan, name, day, system, paint }) => {
    const answer = howLongItLasts(plan, { day });
    if (!answer.ok) return answer;
    const carried = carryingOf(plan, { day });
    if (!carried.ok) return carried;
    const { lasting } = answer;
    return {
      text: () => writeLastingText(name, lasting, carried.carrying, system, paint),
      document: () => writeLastingDocument(name, lasting, carried.carrying),
      status: lasting.cases !== lasting.alone && lasting.cases.hot.firstWithout !== undefined ? 1 : 0,
    };
  },
};
