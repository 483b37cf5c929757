import { readPlan } from "../document/read-plan.js";
import { writeProblem } from "../document/write-problem.js";
import { answerOf, type Given, type Question } from "./answer-plan.js";
import { UNREADABLE } from "./open-plan.js";
import type { QuestionName } from "./questions.js";

/** What a batch asks of each of its plans. */
export interface BatchAsk {
  readonly ask: QuestionName;
  readonly given: Given;
}

/** One line of what a batch writes. Described in docs/reference/batch-result.md. */
export type BatchLine = { readonly line: number; readonly ask: string; readonly status: number } & (
  | { readonly answer: unknown }
  | { readonly problems: readonly object[] }
  | { readonly fault: string }
);

/** The answer about the plan on one line; whatever is wrong with it, or goes wrong, becomes a line as well. */
export async function lineOf(
  question: Question,
  { ask, given }: BatchAsk,
  { line, text }: { readonly line: number; readonly text: string },
): Promise<BatchLine> {
  const reading = readPlan(text);
  const answered = reading.ok ? await tried(question, given, reading.plan) : reading;
  if ("document" in answered) return { line, ask, status: answered.status, answer: answered.document };
  if ("fault" in answered) return { line, ask, status: UNREADABLE, fault: answered.fault };
  const problems = answered.problems.map((problem) => {
    // A batch's lines have no lines of their own.
    const { line: _, ...told } = problem;
    return { ...told, sentence: writeProblem(told) };
  });
  return { line, ask, status: UNREADABLE, problems };
}

async function tried(question: Question, given: Given, plan: Parameters<typeof answerOf>[1]) {
  try {
    const answered = await answerOf(question, plan, given);
    return "document" in answered ? { document: answered.document(), status: answered.status } : answered;
  } catch (error) {
    return { fault: faultOf(error) };
  }
}

/** What went wrong, in one sentence. */
export function faultOf(error: unknown): string {
  const told = error instanceof Error ? error.message.split("\n")[0] : String(error);
  return `This plan could not be answered for: ${told}`;
}

/** A line as text: no line break stands within JSON that is written without indents. */
export const writeLine = (line: BatchLine): string => `${JSON.stringify(line)}\n`;

/** The beginning of a line, for what was written before: its number, what was asked, its status. */
export function readBeginning(text: string): Pick<BatchLine, "line" | "ask" | "status"> | undefined {
  const found = /^\{"line":(\d+),"ask":"([a-z]+)","status":([012]),/.exec(text);
  return found === null ? undefined : { line: Number(found[1]), ask: found[2], status: Number(found[3]) };
}
