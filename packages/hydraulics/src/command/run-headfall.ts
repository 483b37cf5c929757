import { VERSION } from "../document/version.js";
import { HELP } from "./help.js";

type Command = (args: readonly string[]) => Promise<number>;

/** Each is loaded when it is asked for, so that none waits for the others. */
const COMMANDS: Readonly<Record<string, () => Promise<Command>>> = {
  check: async () => (await import("./check.js")).runCheck,
  measure: async () => (await import("./measure.js")).runMeasure,
  birds: async () => (await import("./birds.js")).runBirds,
  day: async () => (await import("./day.js")).runDayCommand,
  lasts: async () => (await import("./lasts.js")).runLasts,
  away: async () => (await import("./away.js")).runAway,
  mark: async () => (await import("./mark.js")).runMark,
  mishaps: async () => (await import("./mishaps.js")).runMishaps,
  rain: async () => (await import("./rain.js")).runRain,
  build: async () => (await import("./build.js")).runBuild,
  compare: async () => (await import("./compare.js")).runCompare,
  sizes: async () => (await import("./sizes.js")).runSizes,
  trouble: async () => (await import("./trouble.js")).runTrouble,
  cure: async () => (await import("./cure.js")).runCure,
  heat: async () => (await import("./heat.js")).runHeat,
  frost: async () => (await import("./frost.js")).runFrost,
  weeks: async () => (await import("./weeks.js")).runWeeks,
  yard: async () => (await import("./yard.js")).runYard,
  year: async () => (await import("./year.js")).runYear,
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
  const load = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (load === undefined) {
    process.stderr.write(
      `headfall: there is no command ${JSON.stringify(name)}. There are: ${Object.keys(COMMANDS).join(", ")}, help.\n`,
    );
    return 2;
  }
  const command = await load();
  return command(rest);
}
