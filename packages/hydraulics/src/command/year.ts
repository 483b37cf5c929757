import { yearForPlan } from "../judge/year/year-for-plan.js";
import { writeYearCsv } from "../report/year/csv-year.js";
import { writeYearCalendar } from "../report/year/year-calendar.js";
import { writeYearDocument } from "../report/year/year-document.js";
import { writeYearText } from "../report/year/year-text.js";
import { readDay } from "../units/day.js";
import type { Question } from "./answer-plan.js";
import { readCount } from "./arguments.js";

/** `headfall year PLAN`: exit status 1 where some pen goes short of kit. */
export const YEAR: Question = {
  options: ["weeks", "from"],
  flags: ["csv", "ics"],
  answer: ({ plan, name: title, day, system, paint, own, flags }) => {
    const weeks = readCount("weeks", own["weeks"], 52, 104);
    if (typeof weeks !== "number") return weeks;
    if (weeks === 0) return { fault: "--weeks is a whole number from 1 to 104, not 0." };
    const { from } = own;
    if (from !== undefined && readDay(from) === undefined)
      return { fault: `--from is a day such as 2026-07-04, not ${JSON.stringify(from)}.` };
    const answer = yearForPlan(plan, { from, weeks, day });
    if (!answer.ok) return answer;
    const { year } = answer;
    const { money } = plan;
    const text = () => {
      if (flags.has("csv")) return writeYearCsv(year, system);
      if (flags.has("ics")) return writeYearCalendar(year, title);
      return writeYearText(year, { title, money, system, paint });
    };
    return {
      text,
      document: () => writeYearDocument(year, { title, money, system }),
      status: (year.kit?.shortages.length ?? 0) > 0 ? 1 : 0,
    };
  },
};
