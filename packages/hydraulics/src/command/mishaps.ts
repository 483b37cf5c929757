import { mishapsOfPlan } from "../judge/mishaps/mishaps-of-plan.js";
import { writeMishapsDocument } from "../report/mishaps/mishaps-document.js";
import { writeMishapsText } from "../report/mishaps/mishaps-text.js";
import type { Question } from "./answer-plan.js";

/** How many are told, from the worst, and with their guards. */
const WORST = 12;

/** `headfall mishaps PLAN`: something can go wrong with every plan, so that is no ground for an exit status of 1. */
export const MISHAPS: Question = {
  flags: ["all"],
  ofLine: true,
  ofWaterers: true,
  answer: ({ plan, name, day, system, paint, flags }) => {
    const most = flags.has("all") ? Number.POSITIVE_INFINITY : WORST;
    const answer = mishapsOfPlan(plan, { day, guardsFor: most });
    if (!answer.ok) return answer;
    const { mishaps } = answer;
    return {
      text: () => writeMishapsText(name, mishaps, { system, paint, most }),
      document: () => writeMishapsDocument(name, mishaps, system),
      status: 0,
    };
  },
};
