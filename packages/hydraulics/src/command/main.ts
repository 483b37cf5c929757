import { VERSION } from "../document/version.js";
import { runAway } from "./away.js";
import { runBirds } from "./birds.js";
import { runCheck } from "./check.js";
import { runCure } from "./cure.js";
import { runDayCommand } from "./day.js";
import { HELP } from "./help.js";
import { runLasts } from "./lasts.js";
import { runMark } from "./mark.js";
import { runRain } from "./rain.js";
import { runSizes } from "./sizes.js";
import { runTrouble } from "./trouble.js";
import { runWeeks } from "./weeks.js";

const COMMANDS: Readonly<Record<string, (args: readonly string[]) => Promise<number>>> = {
  check: runCheck,
  birds: runBirds,
  day: runDayCommand,
  lasts: runLasts,
  away: runAway,
  mark: runMark,
  rain: runRain,
  sizes: runSizes,
  trouble: runTrouble,
  cure: runCure,
  weeks: runWeeks,
};

/** Reads the arguments, hands over to one sub-command, and gives its exit status back. */
async function main(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined || name === "help" || name === "--help" || name === "-h") {
    process.stdout.write(HELP);
    return name === undefined ? 2 : 0;
  }
  if (name === "--version") {
    process.stdout.write(`${VERSION}\n`);
    return 0;
  }
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (command === undefined) {
    process.stderr.write(
      `headfall: there is no command ${JSON.stringify(name)}. There are: ${Object.keys(COMMANDS).join(", ")}, help.\n`,
    );
    return 2;
  }
  return command(rest);
}

// A reader that goes away early (head, less) is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

process.exitCode = await main(process.argv.slice(2));
