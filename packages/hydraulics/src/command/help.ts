import { optionsOf } from "./command-options.js";
import { COMMAND_GROUPS, COMMANDS, type CommandName } from "./help-commands.js";
import { COMMON_OPTIONS, OPTIONS, type OptionWords, OWN_WORDS } from "./help-options.js";

const WIDTH = 100;

/** Whether there is such a command. */
export const isCommand = (name: string): name is CommandName => Object.hasOwn(COMMANDS, name);

/** All commands, by what one wants to know. */
export function writeHelp(): string {
  const groups = Object.entries(COMMAND_GROUPS).map(([group, names]) => {
    const rows = names.map((name) => ({ typed: usageOf(name), says: COMMANDS[name].what }));
    return `${group}\n${writeRows(rows, 22)}`;
  });
  return `headfall: gravity-fed watering for small flocks, from a plan to a verdict

${groups.join("\n\n")}

All of them take
${writeRows([...COMMON_OPTIONS, OPTIONS["day"]], 19)}

headfall help COMMAND tells the options of one. PLAN is a plan file (docs/examples has some to try);
- reads standard input.
${status("something starves, drips, is dry, too few or does not last")}
`;
}

/** One command: what it is for, its own options, an example, its exit status. */
export async function writeHelpOf(name: CommandName): Promise<string> {
  const { what, one, example, page } = COMMANDS[name];
  const { options, flags } = await optionsOf(name);
  const own = [...options, ...flags].map((option) => OWN_WORDS[name]?.[option] ?? OPTIONS[option]);
  return `headfall ${usageOf(name)}: ${what}

${writeRows([...own, ...(options.includes("day") ? [] : [OPTIONS["day"]]), ...COMMON_OPTIONS], 25)}

For instance: ${example}
Shown at work in docs/${page}
${status(one)}
`;
}

const usageOf = (name: CommandName) => `${name} ${COMMANDS[name].given ?? "PLAN"}`;

const status = (one: string | undefined) =>
  `Exit status: 0${one === undefined ? "" : ` all good, 1 when ${one}`}, 2 when a plan or an option cannot be read.`;

/** Two columns; a first one that is too wide has a line of its own, and the second is broken at words. */
function writeRows(rows: readonly OptionWords[], column: number): string {
  return rows
    .flatMap(({ typed, says }) => writeRow(typed, brokenAt(says, WIDTH - column - 2), column))
    .join("\n");
}

function writeRow(typed: string, says: readonly string[], column: number): string[] {
  const indent = " ".repeat(column + 2);
  const rest = says.map((line) => `${indent}${line}`);
  if (typed.length >= column) return [`  ${typed}`, ...rest];
  return [`  ${typed.padEnd(column)}${says[0]}`, ...rest.slice(1)];
}

function brokenAt(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
