import { isDeepStrictEqual } from "node:util";
import { readQuestion } from "../../packages/hydraulics/src/command/answer-plan.js";
import { lineOf, readBeginning, writeLine } from "../../packages/hydraulics/src/command/batch-line.js";
import { CHECK } from "../../packages/hydraulics/src/command/check.js";
import { linesOf } from "../../packages/hydraulics/src/command/text-lines.js";
import {
  RAIN_UNITS,
  readAirRecord,
  readPlan,
  readRainRecord,
  writePlan,
} from "../../packages/hydraulics/src/index.js";
import { type PairsReading, readPairs } from "../../packages/ui/src/fields/read-pairs.js";
import { isBundle, isProblems, readBundle } from "../../packages/ui/src/storage/plan-bundle.js";
import { readLink, writeLink } from "../../packages/ui/src/storage/share-link.js";
import { faultsOfProblems, notFinite } from "../hostile/plan-faults.js";

type Faults = string[] | Promise<string[]>;

/**
 * Every reader of text that comes from outside. Each tells what is wrong with how it read a text: refused in no
 * readable words, numbers that are none, or something else when read a second time. A text alone is never a fault.
 */
export const READERS: Readonly<Record<string, (text: string) => Faults>> = {
  plan: faultsOfPlanText,
  plans: faultsOfBundle,
  rain: faultsOfRain,
  air: faultsOfAir,
  link: faultsOfLink,
  batch: faultsOfBatch,
  survey: faultsOfSurvey,
};

function faultsOfPlanText(text: string): string[] {
  const reading = readPlan(text);
  if (!reading.ok) return faultsOfProblems(reading.problems);
  const again = readPlan(writePlan(reading.plan));
  return isDeepStrictEqual(again, reading) ? [] : ["written and read again it is another plan"];
}

function faultsOfBundle(text: string): string[] {
  if (!isBundle(text)) return [];
  const read = readBundle(text);
  if (isProblems(read)) return faultsOfProblems(read);
  return read.flatMap(({ reading }) => (reading.ok ? [] : faultsOfProblems(reading.problems)));
}

interface RecordReading {
  readonly ok: boolean;
  readonly question?: { readonly ask: string; readonly choices: readonly string[] };
  readonly problems?: Parameters<typeof faultsOfProblems>[0];
}

/** A reading, and one with each answer to what it asks; a question that comes again once answered is a fault. */
function answered<Reading extends RecordReading>(
  read: (options: Record<string, string>) => Reading,
  faultsOf: (reading: Reading) => string[],
  options: Record<string, string> = {},
): string[] {
  const reading = read(options);
  if (reading.problems !== undefined) return faultsOfProblems(reading.problems);
  if (reading.question === undefined) return faultsOf(reading);
  const { ask, choices } = reading.question;
  if (ask in options) return [`asks for ${ask} again`];
  if (choices.length === 0) return [`asks for ${ask} and leaves no choice`];
  const last = choices.length - 1;
  return [...new Set([0, last])].flatMap((k) => answered(read, faultsOf, { ...options, [ask]: choices[k]! }));
}

function faultsOfRain(text: string): string[] {
  return answered(
    (options) => readRainRecord(text, options),
    (reading) => {
      if (!reading.ok) return [];
      const { rain, missing, air, unit } = reading.record;
      return [
        ...notFinite({ rain, air }),
        ...(rain.every((one) => one >= 0) ? [] : ["rain below nought"]),
        ...(rain.length === missing.length && rain.length > 0 ? [] : ["days without rain or none"]),
        ...(unit in RAIN_UNITS ? [] : [`a unit ${unit}`]),
      ];
    },
  );
}

function faultsOfAir(text: string): string[] {
  return answered(
    (options) => readAirRecord(text, options),
    (reading) => {
      if (!reading.ok) return [];
      const { low, high, known } = reading.record;
      const isSensible = (one: number) => Number.isNaN(one) || Math.abs(one) < 150;
      return [
        ...(low.every(isSensible) && high.every(isSensible) ? [] : ["air of no earth"]),
        ...(low.filter((one) => !Number.isNaN(one)).length === known ? [] : [`${known} days known, said it`]),
        ...(low.length === high.length ? [] : ["lows without highs"]),
      ];
    },
  );
}

async function faultsOfLink(text: string): Promise<string[]> {
  const reading = await readLink(text);
  if (!reading.ok) return reading.because === "notAPlan" ? faultsOfProblems(reading.problems) : [];
  const link = await writeLink(reading.plan, "https://example.org/");
  const again = await readLink(link.slice(link.indexOf("#")));
  return isDeepStrictEqual(again, reading) ? [] : ["written and read again it is another plan"];
}

async function faultsOfBatch(text: string): Promise<string[]> {
  const bytes = Buffer.from(text);
  async function* pieces() {
    for (let from = 0; from < bytes.length; from += 1 + (from % 97))
      yield bytes.subarray(from, from + 1 + (from % 97));
  }
  const faults: string[] = [];
  let lines = 0;
  for await (const { line, text: one } of linesOf(pieces(), 100_000)) {
    lines += 1;
    if (line !== lines) faults.push(`line ${lines} is counted ${line}`);
    // Some lines, so that a text of many is no slower.
    if (line > 3) continue;
    const written = writeLine(await lineOf(CHECK, { ask: "check", given: given() }, { line, text: one }));
    if (!/^[^\n]+\n$/.test(written)) faults.push("more than a line is written");
    if (readBeginning(written)?.line !== line) faults.push("its beginning is not read again");
    if (written.includes("could not be answered for: ")) faults.push(written);
  }
  const last = bytes.length > 0 && bytes.at(-1) !== 10 ? 1 : 0;
  if (lines !== bytes.filter((one) => one === 10).length + last) faults.push("lines are lost");
  return faults;
}

function given() {
  const read = readQuestion(["alder-bank.json", "--samples", "0", "--day", "2026-07-04"], CHECK);
  if ("fault" in read) throw new Error(read.fault);
  return read;
}

function faultsOfSurvey(text: string): string[] {
  return (["metric", "us"] as const).flatMap((system) => [
    ...faultsOfPairs(readPairs(text, ["distance", "length"], system)),
    ...faultsOfPairs(readPairs(text, ["length", "volume"], system)),
  ]);
}

function faultsOfPairs(reading: PairsReading): string[] {
  if (!reading.ok)
    return /undefined|\[object/.test(reading.problem) || reading.problem === "" ? [reading.problem] : [];
  return reading.pairs.flatMap(({ first, second }) => notFinite([first.value, second.value]));
}
