import type { Question } from "./answer-plan.js";
import type { CommandName } from "./help-commands.js";
import { QUESTIONS } from "./questions.js";

/** The options and flags of a command beyond those that all of them take. */
export async function optionsOf(name: CommandName): Promise<Required<Pick<Question, "options" | "flags">>> {
  if (name === "compare") return { options: (await import("./compare.js")).OWN, flags: [] };
  if (name === "batch") return { options: (await import("./batch.js")).OWN, flags: [] };
  const { options = [], flags = [] } = await QUESTIONS[name]();
  return { options, flags };
}
