import { judgeWeeks } from "../judge/weeks.js";
import { writeWeeksDocument } from "../report/weeks-document.js";
import { writeWeeksText } from "../report/weeks-text.js";
import { readArguments, readCount } from "./arguments.js";
import { readAskedDay } from "./asked-day.js";
import { refuse } from "./check.js";
import { openPlan, showProblems, UNREADABLE } from "./open-plan.js";
import { paintFor } from "./paint.js";

/** `headfall weeks PLAN`: exit status 0 when every week is all good, 1 when some week is not. */
export async function runWeeks(args: readonly string[]): Promise<number> {
  const given = readArguments(args, ["weeks", "day"]);
  if ("fault" in given) return refuse(given.fault);
  const weeks = readCount("weeks", given.own["weeks"], 8, 104);
  if (typeof weeks !== "number") return refuse(weeks.fault);
  const day = readAskedDay(given.own["day"]);
  if (typeof day !== "string") return refuse(day.fault);
  const plan = await openPlan(given.plan);
  if (plan === undefined) return UNREADABLE;
  const judged = judgeWeeks(plan, { weeks, day });
  if (!judged.ok) {
    showProblems(given.plan, judged.problems);
    return UNREADABLE;
  }
  const text = given.json
    ? `${JSON.stringify(writeWeeksDocument(plan, judged, given.system), null, 2)}\n`
    : writeWeeksText(plan.name ?? "", judged, given.system, paintFor(given.colour));
  process.stdout.write(text);
  return [...judged.weeks, ...judged.hotWeeks].every(({ verdict }) => verdict === "good") ? 0 : 1;
}
