import { writeSizesDocument } from "../report/sizes-document.js";
import { writeSizesText } from "../report/sizes-text.js";
import { compareSizes } from "../search/compare-sizes.js";
import { readArguments } from "./arguments.js";
import { readAskedDay } from "./asked-day.js";
import { refuse } from "./check.js";
import { openPlan, showProblems, UNREADABLE } from "./open-plan.js";
import { paintFor } from "./paint.js";

/** `headfall sizes PLAN`: exit status 0 when some size works, 1 when none does. */
export async function runSizes(args: readonly string[]): Promise<number> {
  const given = readArguments(args, ["run", "day"]);
  if ("fault" in given) return refuse(given.fault);
  const day = readAskedDay(given.own["day"]);
  if (typeof day !== "string") return refuse(day.fault);
  const plan = await openPlan(given.plan);
  if (plan === undefined) return UNREADABLE;
  const comparing = compareSizes(plan, {
    day,
    ...(given.own["run"] === undefined ? {} : { run: given.own["run"] }),
  });
  if (!comparing.ok) {
    showProblems(given.plan, comparing.problems);
    return UNREADABLE;
  }
  const { comparison } = comparing;
  const text = given.json
    ? `${JSON.stringify(writeSizesDocument(comparison), null, 2)}\n`
    : writeSizesText(comparison, given.system, paintFor(given.colour));
  process.stdout.write(text);
  return comparison.smallestThatWorks === undefined ? 1 : 0;
}
