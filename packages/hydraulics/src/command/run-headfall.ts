import { VERSION } from "../document/version.js";
import { isCommand, writeHelp, writeHelpOf } from "./help.js";
import { COMMANDS } from "./help-commands.js";
import { QUESTIONS } from "./questions.js";

type Command = (args: readonly string[]) => Promise<number>;

/** What is asked about more plans than one. */
const OF_MANY: Readonly<Record<string, () => Promise<Command>>> = {
  compare: async () => (await import("./compare.js")).runCompare,
  batch: async () => (await import("./batch.js")).runBatch,
};

/**
 * Reads the arguments, hands over to one sub-command, and gives its exit status back.
 *
 * @param args  as typed after `headfall`
 */
export async function runHeadfall(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  const helped = helpAsked(name, rest);
  if (helped !== undefined) {
    process.stdout.write(isCommand(helped) ? await writeHelpOf(helped) : writeHelp());
    return name === undefined ? 2 : 0;
  }
  if (name === "--version") {
    process.stdout.write(`${VERSION}\n`);
    return 0;
  }
  if (Object.hasOwn(OF_MANY, name)) return (await OF_MANY[name]())(rest);
  if (Object.hasOwn(QUESTIONS, name)) {
    const { answerPlan } = await import("./answer-plan.js");
    return answerPlan(rest, await QUESTIONS[name]());
  }
  process.stderr.write(
    `headfall: there is no command ${JSON.stringify(name)}. There are: ${Object.keys(COMMANDS).join(", ")}, help.\n`,
  );
  return 2;
}

/** What help is asked for: a command's name, or anything else for all of them; nothing where none is. */
function helpAsked(name: string | undefined, [first, ...rest]: readonly string[]): string | undefined {
  if (name === undefined || name === "--help" || name === "-h") return "";
  if (name === "help") return first ?? "";
  const isAsked = [first, ...rest].some((word) => word === "--help" || word === "-h");
  return isAsked && isCommand(name) ? name : undefined;
}
