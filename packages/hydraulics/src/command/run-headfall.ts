import { VERSION } from "../document/version.js";
import { editDistance, slipsIn } from "../tables/edit-distance.js";
import { isCommand, writeHelp, writeHelpOf } from "./help.js";
import { COMMANDS } from "./help-commands.js";
import { QUESTIONS } from "./questions.js";

/**
 * Reads the arguments, hands over to one sub-command, and gives its exit status back.
 *
 * @param args  as typed after `headfall`
 */
export async function runHeadfall(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  const helped = helpAsked(name, rest);
  if (helped !== undefined) {
    if (helped !== "" && !isCommand(helped)) return noCommand(helped);
    process.stdout.write(helped === "" ? writeHelp() : await writeHelpOf(helped));
    return name === undefined ? 2 : 0;
  }
  if (name === "--version") {
    process.stdout.write(`${VERSION}\n`);
    return 0;
  }
  if (!isCommand(name)) return noCommand(name);
  if (name === "compare") return (await import("./compare.js")).runCompare(rest);
  if (name === "batch") return (await import("./batch.js")).runBatch(rest);
  const { answerPlan } = await import("./answer-plan.js");
  return answerPlan(name, rest, await QUESTIONS[name]());
}

function noCommand(name: string): number {
  const names = Object.keys(COMMANDS);
  const near = names.find((each) => editDistance(each, name.slice(0, 40)) <= slipsIn(name));
  const meant = near === undefined ? "" : ` Do you mean ${near}?`;
  process.stderr.write(
    `headfall: there is no command ${JSON.stringify(name)}.${meant} There are: ${names.join(", ")}, help.\n`,
  );
  return 2;
}

/** What help is asked for: a command by its name, or all of them (""); nothing where none is. */
function helpAsked(name: string | undefined, [first, ...rest]: readonly string[]): string | undefined {
  if (name === undefined || name === "--help" || name === "-h") return "";
  if (name === "help") return first ?? "";
  const isAsked = [first, ...rest].some((word) => word === "--help" || word === "-h");
  return isAsked && isCommand(name) ? name : undefined;
}
