import { keyMeant } from "./keys-at.js";
import { LIMITS } from "./limits.js";
import { type PathStep, type Problem, writeFound, writePath } from "./problem.js";
import type { CustomFault } from "./schema-parts.js";

/** A problem for each kind of finding, in our words. */

const CODE_OF_FAULT = {
  range: "outOfRange",
  unreadable: "unreadableQuantity",
  unprintable: "unprintable",
} as const satisfies Record<CustomFault["fault"], Problem["code"]>;

export function customProblem(path: string, fault: CustomFault): Problem {
  return {
    code: CODE_OF_FAULT[fault.fault],
    path,
    found: fault.found,
    allowed: fault.allowed,
    mend: fault.mend,
  };
}

export const TYPE_WORDS: Readonly<Record<string, string>> = {
  string: "text in quotes",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list in square brackets",
  object: "an object in curly brackets",
  record: "an object in curly brackets",
};

/** What a bare number most likely lacks, by the key it stands at. */
const UNIT_OF_KEY: Readonly<Record<string, string>> = {
  age: "weeks",
  light: "h",
  high: "°C",
  low: "°C",
  water: "°C",
  lay: "%",
  runoff: "%",
  area: "m²",
  each: "L",
  firstFlush: "L",
  volume: "L",
  hose: "L/min",
  need: "mL/min",
  flow: "mL/min",
};

export const nothingAt = (path: string, words: string): Problem => ({
  code: "missing",
  path,
  found: "nothing",
  allowed: `Here stands ${words}.`,
  mend: "Add it.",
});

export function typeProblem(
  path: string,
  value: unknown,
  expected: string,
  steps: readonly PathStep[],
): Problem {
  const words = TYPE_WORDS[expected] ?? expected;
  if (value === undefined) return nothingAt(path, words);
  const unitless = expected === "string" && typeof value === "number" && Number.isFinite(value);
  const unit = unitOf(steps);
  return {
    code: "wrongType",
    path,
    found: writeFound(value),
    allowed: unitless ? "A quantity is text with its unit." : `Here stands ${words}.`,
    mend: unitless
      ? `Write for instance "${value} ${unit}", with the unit you mean.`
      : "Mend it or leave the key out.",
  };
}

function unitOf(steps: readonly PathStep[]): string {
  const [above, key] = steps.slice(-2);
  if (above === "refill" && key === "every") return "h";
  return UNIT_OF_KEY[String(key)] ?? "cm";
}

/** A name given as a key, where that name cannot be one. */
export function keyProblem(steps: readonly PathStep[]): Problem {
  const key = String(steps.at(-1));
  return {
    code: key === "" ? "missing" : key.length > LIMITS.name ? "tooLong" : "unprintable",
    path: writePath(steps),
    found: key === "" ? "a name of no letters" : `the name ${JSON.stringify(key.slice(0, 40))}`,
    allowed: `A name is one line of 1 to ${LIMITS.name} signs that can be printed.`,
    mend: "Give it another.",
  };
}

/** A key the format does not have: with the one it was likely meant to be, of those `known` there. */
export function unknownKey(steps: readonly PathStep[], known: readonly string[]): Problem {
  const key = String(steps.at(-1));
  const meant = keyMeant(key, known);
  return {
    code: "unknownKey",
    path: writePath(steps),
    found: `the key ${JSON.stringify(key.slice(0, 40))}`,
    allowed: "The plan format has no such key here.",
    mend: meant === undefined ? "Check the spelling, or remove it." : `Did you mean "${meant}"?`,
  };
}

export function sizeProblem(
  path: string,
  value: unknown,
  origin: string,
  bound: number,
  end: "least" | "most",
): Problem {
  const at = end === "least" ? `at least ${bound}` : `at most ${bound}`;
  if (origin === "string") {
    const found = typeof value === "string" ? `${value.length} characters` : writeFound(value);
    return {
      code: end === "least" ? "missing" : "tooLong",
      path,
      found,
      allowed: `Text here has ${at} ${bound === 1 ? "character" : "characters"}.`,
      mend: end === "least" ? "Write something." : "Shorten it.",
    };
  }
  if (origin === "array") {
    return {
      code: end === "least" ? "tooFew" : "tooMany",
      path,
      found: writeFound(value),
      allowed: `This list has ${at} ${bound === 1 ? "entry" : "entries"}.`,
      mend: end === "least" ? "Add what is missing." : "Write regular lines as one entry with a count.",
    };
  }
  return {
    code: "outOfRange",
    path,
    found: writeFound(value),
    allowed: `This number is ${at}.`,
    mend: "Check the figure.",
  };
}
