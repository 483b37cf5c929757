import { birdsForPlan } from "../judge/birds/birds-for-plan.js";
import { writeBirdsDocument } from "../report/birds/birds-document.js";
import { writeBirdsText } from "../report/birds/birds-text.js";
import type { Question } from "./answer-plan.js";
import { readCount } from "./arguments.js";

/** `headfall birds PLAN`: exit status 1 when some pen has fewer drinkers than its birds need. */
export const BIRDS: Question = {
  options: ["weeks"],
  answer: ({ plan, name, day, system, paint, own }) => {
    const weeks = readCount("weeks", own["weeks"], 8, 104);
    if (typeof weeks !== "number") return weeks;
    const answer = birdsForPlan(plan, { day, weeks });
    if (!answer.ok) return answer;
    const { birds } = answer;
    return {
      text: () => writeBirdsText(name, birds, system, paint),
      document: () => writeBirdsDocument(name, birds, system),
      status: birds.pens.every(({ drinkers }) => drinkers.covered >= 1 - 1e-9) ? 0 : 1,
    };
  },
};
