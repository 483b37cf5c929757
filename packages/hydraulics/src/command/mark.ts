import { sourceNames } from "../document/run-ends.js";
import { dailyMark } from "../judge/time/daily-mark.js";
import { writeMarkText } from "../report/time/mark-text.js";
import { writeMarkDocument } from "../report/time/time-documents.js";
import { readQuantity } from "../units/quantity.js";
import type { Question } from "./answer-plan.js";

/** `headfall mark PLAN --source NAME --level "60 cm"` */
export const MARK: Question = {
  options: ["source", "level"],
  ofLine: true,
  answer: ({ plan, name, day, system, paint, own }) => {
    const names = sourceNames(plan);
    const source = own["source"] === undefined ? 0 : names.indexOf(own["source"]);
    if (source < 0)
      return { fault: `--source is one of ${names.join(", ")}, not ${JSON.stringify(own["source"])}.` };
    const typed = own["level"];
    const level = typed === undefined ? undefined : readQuantity(typed, "length");
    if (level !== undefined && !level.ok) return { fault: `--level: found ${level.found}. ${level.allowed}` };
    try {
      const answer = dailyMark(plan, {
        source,
        day,
        ...(level === undefined ? {} : { level: level.quantity.si }),
      });
      if (!answer.ok) return answer;
      return {
        text: () => writeMarkText(name, answer.mark, system, paint),
        document: () => writeMarkDocument(name, answer.mark, system),
        status: 0,
      };
    } catch (error) {
      if (error instanceof RangeError && level !== undefined)
        return { fault: "--level is from the bottom up to the full level." };
      throw error;
    }
  },
};
