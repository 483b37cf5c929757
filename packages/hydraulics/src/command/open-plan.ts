import { createReadStream } from "node:fs";
import { LIMITS } from "../document/limits.js";
import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { readPlan } from "../document/read-plan.js";
import { writeProblem } from "../document/write-problem.js";
import { fileFault } from "./file-fault.js";
import type { CommandName } from "./help-commands.js";

/** Exit status when the plan cannot be read. */
export const UNREADABLE = 2;

/** Reads the plan that an argument names; on any fault, writes it to standard error and gives nothing. */
export async function openPlan(name: string): Promise<Plan | undefined> {
  let text: string;
  try {
    text = await readText(name);
  } catch (error) {
    const what = name === "-" ? "standard input" : name;
    process.stderr.write(`headfall: cannot read ${what}: ${fileFault(error)}\n`);
    return undefined;
  }
  const reading = readPlan(text);
  if (reading.ok) return reading.plan;
  showProblems(name, reading.problems);
  return undefined;
}

export function showProblems(name: string, problems: readonly Problem[]): void {
  const what = problems.length === 1 ? "one problem" : `${problems.length} problems`;
  const lines = problems.map((problem) => `  ${writeProblem(problem)}`);
  process.stderr.write(`${name === "-" ? "standard input" : name} has ${what}:\n${lines.join("\n")}\n`);
}

/** The whole text as UTF-8; stops reading once it is past any plan's size. */
async function readText(name: string): Promise<string> {
  const stream = name === "-" ? process.stdin : createReadStream(name);
  const pieces: Buffer[] = [];
  let size = 0;
  for await (const piece of stream) {
    const bytes = typeof piece === "string" ? Buffer.from(piece) : (piece as Buffer);
    pieces.push(bytes);
    size += bytes.length;
    if (size > 4 * LIMITS.textLength) break;
  }
  return Buffer.concat(pieces)
    .toString("utf8")
    .replace(/^\ufeff/, "");
}

/** Says on standard error what is wrong with a command's arguments, and where they are told; gives the exit status. */
export function refuse(command: CommandName, fault: string): number {
  process.stderr.write(`headfall: ${fault} See: headfall help ${command}\n`);
  return UNREADABLE;
}
