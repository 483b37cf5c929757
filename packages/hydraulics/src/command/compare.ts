import type { Plan } from "../document/plan-schema.js";
import { writeVariantsDocument } from "../report/cure/variants-document.js";
import { writeVariantsText } from "../report/cure/variants-text.js";
import { compareVariants, MOST_VARIANTS } from "../search/compare-variants.js";
import { readArguments, readCount } from "./arguments.js";
import { readAskedDay } from "./asked-day.js";
import { openPlan, refuse, showProblems, UNREADABLE } from "./open-plan.js";
import { paintFor } from "./paint.js";

export const OWN = ["samples", "day"];

/** `headfall compare PLAN PLAN`: exit status 0 when every drinker is good in some of them, 1 when in none. */
export async function runCompare(args: readonly string[]): Promise<number> {
  const given = readArguments(args, OWN, [], MOST_VARIANTS);
  if ("fault" in given) return refuse("compare", given.fault);
  if (given.plans.length < 2) return refuse("compare", "Which plans? Name two or more plan files.");
  const samples = readCount("samples", given.own["samples"], 200, 100_000);
  if (typeof samples !== "number") return refuse("compare", samples.fault);
  const day = readAskedDay(given.own["day"]);
  if (typeof day !== "string") return refuse("compare", day.fault);
  const plans: Plan[] = [];
  for (const name of given.plans) {
    const plan = await openPlan(name);
    if (plan === undefined) return UNREADABLE;
    plans.push(plan);
  }
  const comparing = compareVariants(plans, { samples, day });
  if (!comparing.ok) {
    showProblems(given.plans[comparing.variant], comparing.problems);
    return UNREADABLE;
  }
  const { variants } = comparing;
  process.stdout.write(
    given.json
      ? `${JSON.stringify(writeVariantsDocument(variants), null, 2)}\n`
      : writeVariantsText(variants, given.system, paintFor(given.colour)),
  );
  return variants.some(({ figures }) => figures.verdict === "good") ? 0 : 1;
}
