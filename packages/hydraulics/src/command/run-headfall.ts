import { VERSION } from "../document/version.js";
import { HELP } from "./help.js";
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
  if (name === undefined || name === "help" || name === "--help" || name === "-h") {
    process.stdout.write(HELP);
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
  const names = [...Object.keys(QUESTIONS), ...Object.keys(OF_MANY)];
  process.stderr.write(
    `headfall: there is no command ${JSON.stringify(name)}. There are: ${names.join(", ")}, help.\n`,
  );
  return 2;
}
