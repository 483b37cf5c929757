import { goingAway } from "../judge/time/going-away.js";
import { writeAwayText } from "../report/time/away-text.js";
import { writeAwayDocument } from "../report/time/time-documents.js";
import type { Question } from "./answer-plan.js";
import { readCount } from "./arguments.js";

/** `headfall away PLAN --days 5`: exit status 1 when it does not last. */
export const AWAY: Question = {
  options: ["days"],
  ofLine: true,
  answer: ({ plan, name, day, system, paint, own }) => {
    const days = readCount("days", own["days"], 5, 60);
    if (typeof days !== "number") return days;
    if (days === 0) return { fault: "--days is a whole number from 1 to 60." };
    const answer = goingAway(plan, { days, day });
    if (!answer.ok) return answer;
    const { away } = answer;
    return {
      text: () => writeAwayText(name, away, system, paint),
      document: () => writeAwayDocument(name, away, system),
      status: away.lasts === undefined ? 0 : 1,
    };
  },
};
