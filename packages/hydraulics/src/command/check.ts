import { checkPlan } from "../judge/check-plan.js";
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
  const samples = readCount("samples", given.own["samples"], 200, 100_000);
  const seed = readCount("seed", given.own["seed"], 1, 4_294_967_295);
  if (typeof samples !== "number") return refuse(samples.fault);
  if (typeof seed !== "number") return refuse(seed.fault);
  const day = readAskedDay(given.own["day"]);
  if (typeof day !== "string") return refuse(day.fault);
  const plan = await openPlan(given.plan);
  if (plan === undefined) return UNREADABLE;
  const checking = checkPlan(plan, { samples, seed, day });
  if (!checking.ok) {
    showProblems(given.plan, checking.problems);
    return UNREADABLE;
  }
  const { checked } = checking;
  const text = given.json
    ? `${JSON.stringify(writeCheckDocument(checked, given.system), null, 2)}\n`
    : writeCheckText(checked, given.system, paintFor(given.colour));
  process.stdout.write(text);
  return checked.verdict === "good" ? 0 : 1;
}

export function refuse(fault: string): number {
  process.stderr.write(`headfall: ${fault} See: headfall help\n`);
  return UNREADABLE;
}
