import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { hasWaterers } from "../model/yard.js";
import type { Paint } from "../report/check-text.js";
import type { UnitSystem } from "../units/quantity.js";
import { type Arguments, readArguments } from "./arguments.js";
import { readAskedDay } from "./asked-day.js";
import type { CommandName } from "./help-commands.js";
import { openPlan, refuse, showProblems, UNREADABLE } from "./open-plan.js";
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
  /** Whether the document is wanted, not the text. */
  readonly json: boolean;
}

/** What it answers: as text and as a document, each made only when it is wanted. */
export type Answer =
  | { readonly text: () => string; readonly document: () => unknown; readonly status: number }
  | { readonly problems: readonly Problem[] }
  | { readonly fault: string };

/** A sub-command that answers of one plan: its own options and flags, and how it answers. */
export interface Question {
  readonly options?: readonly string[];
  readonly flags?: readonly string[];
  /** Asked about a line: a plan of loose waterers alone has none. */
  readonly ofLine?: boolean;
  /** Of loose waterers as well: only a plan of neither is refused. */
  readonly ofWaterers?: boolean;
  readonly answer: (asked: Asked) => Answer | Promise<Answer>;
}

/** The arguments of a question, once read, and the day it is asked on. */
export interface Given extends Arguments {
  readonly day: string;
}

/** Reads the arguments of a question, with `more` options that are not its own; or says what is wrong with them. */
export function readQuestion(
  args: readonly string[],
  { options = [], flags = [] }: Question,
  more: readonly string[] = [],
): Given | { readonly fault: string } {
  const given = readArguments(args, [...options, ...more, "day"], flags);
  if ("fault" in given) return given;
  const day = readAskedDay(given.own["day"]);
  return typeof day === "string" ? { ...given, day } : day;
}

/** The question's answer about one plan. */
export async function answerOf(question: Question, plan: Plan, given: Given): Promise<Answer> {
  const isAnswered = question.ofWaterers === true && hasWaterers(plan);
  if (question.ofLine === true && plan.sources.length === 0 && !isAnswered) return { problems: [NO_LINE] };
  const { system, own, flags, colour, json, day } = given;
  return question.answer({
    plan,
    name: plan.name ?? "",
    day,
    system,
    own,
    flags,
    json,
    paint: paintFor(colour),
  });
}

/** Reads arguments and plan, has the question answered, and writes the answer; gives the exit status back. */
export async function answerPlan(
  command: CommandName,
  args: readonly string[],
  question: Question,
): Promise<number> {
  const given = readQuestion(args, question);
  if ("fault" in given) return refuse(command, given.fault);
  const plan = await openPlan(given.plan);
  if (plan === undefined) return UNREADABLE;
  const answered = await answerOf(question, plan, given);
  if ("fault" in answered) return refuse(command, answered.fault);
  if ("problems" in answered) {
    showProblems(given.plan, answered.problems);
    return UNREADABLE;
  }
  process.stdout.write(given.json ? `${JSON.stringify(answered.document(), null, 2)}\n` : answered.text());
  return answered.status;
}

const NO_LINE: Problem = {
  code: "missing",
  path: "sources",
  found: "a list of 0",
  allowed: "This is asked of a line, and the plan has loose waterers only.",
  mend: "Ask headfall yard, or add a source and a run.",
};
