import { drinkerGroupsOf } from "../document/plan-lists.js";
import type { Plan } from "../document/plan-schema.js";
import { type CheckOptions, checkPlan, FIRST_SAMPLES } from "../judge/check-plan.js";
import { type MeasureAnswer, measureAgain } from "../judge/measure-again.js";
import type { Measuring } from "../judge/measuring.js";
import { writeCheckDocument } from "../report/check-document.js";
import { writeCheckText } from "../report/check-text.js";
import { readArguments, readCount } from "./arguments.js";
import { readAskedDay } from "./asked-day.js";
import { openPlan, showProblems, UNREADABLE } from "./open-plan.js";
import { paintFor } from "./paint.js";

/** `headfall check PLAN` */
export async function runCheck(args: readonly string[]): Promise<number> {
  const given = readArguments(args, ["samples", "seed", "day"]);
  if ("fault" in given) return refuse(given.fault);
  const samples = readCount("samples", given.own["samples"], FIRST_SAMPLES, 100_000);
  const seed = readCount("seed", given.own["seed"], 1, 4_294_967_295);
  if (typeof samples !== "number") return refuse(samples.fault);
  if (typeof seed !== "number") return refuse(seed.fault);
  const day = readAskedDay(given.own["day"]);
  if (typeof day !== "string") return refuse(day.fault);
  const plan = await openPlan(given.plan);
  if (plan === undefined) return UNREADABLE;
  const asked = given.own["samples"] === undefined ? {} : { samples };
  const checking = checkAsTold(plan, given.json, { ...asked, seed, day });
  if (!checking.ok) {
    showProblems(given.plan, checking.problems);
    return UNREADABLE;
  }
  const { checked, measuring } = checking;
  const text = given.json
    ? `${JSON.stringify(writeCheckDocument(checked, given.system), null, 2)}\n`
    : writeCheckText(checked, given.system, paintFor(given.colour), measuring);
  process.stdout.write(text);
  return checked.verdict === "good" ? 0 : 1;
}

/** In lines longer than this each measurement takes long to try: `headfall measure` does it. */
const MOST_MEASURED = 100;
const NOT_MEASURED: Measuring = { sure: 0, close: [], measurements: [], samples: 0 };

/** The text tells what to measure again; the document leaves that to one of its own. */
function checkAsTold(plan: Plan, isDocument: boolean, options: CheckOptions): MeasureAnswer {
  const count = plan.runs.reduce((sum, run) => sum + countOf(run), 0);
  if (!isDocument && count <= MOST_MEASURED) return measureAgain(plan, options);
  const checking = checkPlan(plan, options);
  return checking.ok ? { ...checking, measuring: NOT_MEASURED } : checking;
}

const countOf = (run: Plan["runs"][number]): number =>
  drinkerGroupsOf(run).reduce((sum, { count = 1 }) => sum + count, 0);

export function refuse(fault: string): number {
  process.stderr.write(`headfall: ${fault} See: headfall help\n`);
  return UNREADABLE;
}
