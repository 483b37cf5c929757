import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import type { Paint } from "../report/check-text.js";
import type { UnitSystem } from "../units/quantity.js";
import { type Arguments, readArguments } from "./arguments.js";
import { readAskedDay } from "./asked-day.js";
import { refuse } from "./check.js";
import { openPlan, showProblems, UNREADABLE } from "./open-plan.js";
import { paintFor } from "./paint.js";

/** What a sub-command is asked about a plan. */
export interface Asked {
  readonly plan: Plan;
  readonly name: string;
  readonly day: string;
  readonly system: UnitSystem;
  readonly paint: Paint;
  readonly own: Arguments["own"];
  readonly flags: Arguments["flags"];
}

/** What it answers: as text and as a document, each made only when it is wanted. */
export type Answer =
  | { readonly text: () => string; readonly document: () => unknown; readonly status: number }
  | { readonly problems: readonly Problem[] }
  | { readonly fault: string };

/** Reads arguments, day and plan, has the question answered, and writes the answer; gives the exit status back. */
export async function answerPlan(
  args: readonly string[],
  ownOptions: readonly string[],
  answer: (asked: Asked) => Answer | Promise<Answer>,
  ownFlags: readonly string[] = [],
): Promise<number> {
  const given = readArguments(args, [...ownOptions, "day"], ownFlags);
  if ("fault" in given) return refuse(given.fault);
  const day = readAskedDay(given.own["day"]);
  if (typeof day !== "string") return refuse(day.fault);
  const plan = await openPlan(given.plan);
  if (plan === undefined) return UNREADABLE;
  const { system, own, flags, colour } = given;
  const answered = await answer({
    plan,
    name: plan.name ?? "",
    day,
    system,
    own,
    flags,
    paint: paintFor(colour),
  });
  if ("fault" in answered) return refuse(answered.fault);
  if ("problems" in answered) {
    showProblems(given.plan, answered.problems);
    return UNREADABLE;
  }
  process.stdout.write(given.json ? `${JSON.stringify(answered.document(), null, 2)}\n` : answered.text());
  return answered.status;
}

/** The same for what is asked about a line: a plan of loose waterers alone has none. */
export function answerLine(
  args: readonly string[],
  ownOptions: readonly string[],
  answer: (asked: Asked) => Answer | Promise<Answer>,
  ownFlags: readonly string[] = [],
): Promise<number> {
  const ofLine = (asked: Asked) =>
    asked.plan.sources.length === 0 ? { problems: [NO_LINE] } : answer(asked);
  return answerPlan(args, ownOptions, ofLine, ownFlags);
}

const NO_LINE: Problem = {
  code: "missing",
  path: "sources",
  found: "a list of 0",
  allowed: "This is asked of a line, and the plan has loose waterers only.",
  mend: "Ask headfall yard, or add a source and a run.",
};
