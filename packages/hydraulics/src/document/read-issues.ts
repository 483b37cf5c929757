import type * as z from "zod/mini";
import { LIMITS } from "./limits.js";
import { type PathStep, type Problem, writeFound, writePath } from "./problem.js";
import type { CustomFault } from "./schema-parts.js";

/**
 * The schema's findings as problems: the one place that knows how the schema library words things, so that none
 * of its own messages is ever shown.
 */
export function readIssues(issues: readonly z.core.$ZodIssue[], document: unknown): Problem[] {
  return issues.flatMap((issue) => readIssue(issue, document, []));
}

function readIssue(issue: z.core.$ZodIssue, document: unknown, above: readonly PathStep[]): Problem[] {
  const steps = [...above, ...issue.path.map((step) => (typeof step === "symbol" ? String(step) : step))];
  const path = writePath(steps);
  const value = valueAt(document, steps);
  const found = writeFound(value);
  switch (issue.code) {
    case "custom":
      return [customProblem(path, issue.params as unknown as CustomFault)];
    case "invalid_type":
      return [typeProblem(path, value, issue.expected, steps)];
    case "unrecognized_keys":
      return issue.keys.map((key) => unknownKey([...steps, key]));
    case "invalid_union":
      return unionProblems(issue, document, steps);
    case "invalid_value": {
      const choices = issue.values.map((choice) => JSON.stringify(choice)).join(", ");
      return [
        { code: "notAChoice", path, found, allowed: `Allowed: ${choices}.`, mend: "Write one of these." },
      ];
    }
    case "too_small":
      return [sizeProblem(path, value, issue.origin, Number(issue.minimum), "least")];
    case "too_big":
      return [sizeProblem(path, value, issue.origin, Number(issue.maximum), "most")];
    case "invalid_key":
      return [keyProblem(steps)];
    case "invalid_format":
      return [
        {
          code: "notAChoice",
          path,
          found,
          allowed: 'A whole number, or a share up to "100 %".',
          mend: 'Write for instance 6 or "50 %".',
        },
      ];
    default:
      return [
        {
          code: "wrongType",
          path,
          found,
          allowed: "This does not belong here.",
          mend: "See the plan format in the docs.",
        },
      ];
  }
}

const CODE_OF_FAULT = {
  range: "outOfRange",
  unreadable: "unreadableQuantity",
  unprintable: "unprintable",
} as const satisfies Record<CustomFault["fault"], Problem["code"]>;

function customProblem(path: string, fault: CustomFault): Problem {
  return {
    code: CODE_OF_FAULT[fault.fault],
    path,
    found: fault.found,
    allowed: fault.allowed,
    mend: fault.mend,
  };
}

const TYPE_WORDS: Readonly<Record<string, string>> = {
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
  high: "degC",
  low: "degC",
  water: "degC",
  lay: "%",
  runoff: "%",
  area: "m2",
  each: "L",
  firstFlush: "L",
  volume: "L",
  hose: "L/min",
  need: "mL/min",
  flow: "mL/min",
};

const nothingAt = (path: string, words: string): Problem => ({
  code: "missing",
  path,
  found: "nothing",
  allowed: `Here stands ${words}.`,
  mend: "Add it.",
});

function typeProblem(path: string, value: unknown, expected: string, steps: readonly PathStep[]): Problem {
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
function keyProblem(steps: readonly PathStep[]): Problem {
  const key = String(steps.at(-1));
  return {
    code: key === "" ? "missing" : key.length > LIMITS.name ? "tooLong" : "unprintable",
    path: writePath(steps),
    found: key === "" ? "a name of no letters" : `the name ${JSON.stringify(key.slice(0, 40))}`,
    allowed: `A name is one line of 1 to ${LIMITS.name} signs that can be printed.`,
    mend: "Give it another.",
  };
}

function unknownKey(steps: readonly PathStep[]): Problem {
  return {
    code: "unknownKey",
    path: writePath(steps),
    found: `the key ${JSON.stringify(String(steps.at(-1)).slice(0, 40))}`,
    allowed: "The plan format has no such key here.",
    mend: "Check the spelling, or remove it.",
  };
}

/** Of the ways a value may be written, the one it comes nearest to: that way's findings are the useful ones. */
function unionProblems(
  issue: z.core.$ZodIssueInvalidUnion,
  document: unknown,
  steps: readonly PathStep[],
): Problem[] {
  const value = valueAt(document, steps);
  const ways = issue.errors.filter((way) => way.length > 0);
  const near = ways.filter((way) => !way.some(isWrongKindOfValue));
  if (near.length === 0) return [noWayFits(issue.errors, writePath(steps), value)];
  const misses = (way: readonly z.core.$ZodIssue[]) =>
    way.reduce((sum, found) => sum + (found.code === "unrecognized_keys" ? found.keys.length : 1), 0);
  const best = near.reduce((a, b) => (misses(b) < misses(a) ? b : a));
  return best.flatMap((found) => readIssue(found, document, steps));
}

const isWrongKindOfValue = (issue: z.core.$ZodIssue): boolean =>
  (issue.code === "invalid_union" && issue.path.length === 0 && issue.errors.every(isOfWrongType)) ||
  (issue.path.length === 0 && (issue.code === "invalid_type" || issue.code === "invalid_value")) ||
  (issue.code === "invalid_value" && issue.path.length === 1 && issue.path[0] === "shape");

const isOfWrongType = (way: readonly z.core.$ZodIssue[]) =>
  way.some((issue) => issue.code === "invalid_type" && issue.path.length === 0);

/** The findings of all ways, those of a choice within a choice among them. */
const allFindings = (ways: readonly (readonly z.core.$ZodIssue[])[]): z.core.$ZodIssue[] =>
  ways
    .flat()
    .flatMap((issue) =>
      issue.code === "invalid_union" && issue.path.length === 0 ? allFindings(issue.errors) : [issue],
    );

function noWayFits(errors: readonly (readonly z.core.$ZodIssue[])[], path: string, value: unknown): Problem {
  const found = allFindings(errors);
  const shapes = found.flatMap((issue) =>
    issue.code === "invalid_value" && issue.path[0] === "shape" ? issue.values : [],
  );
  if (shapes.length > 0 && typeof value === "object" && value !== null) {
    return {
      code: "notAChoice",
      path: `${path}.shape`,
      found: writeFound((value as Record<string, unknown>)["shape"]),
      allowed: `Allowed: ${shapes.map((s) => JSON.stringify(s)).join(", ")}.`,
      mend: "Write one of these.",
    };
  }
  const kinds = found.flatMap((issue) => {
    if (issue.path.length > 0) return [];
    if (issue.code === "invalid_type") return [TYPE_WORDS[issue.expected] ?? issue.expected];
    return issue.code === "invalid_value" ? issue.values.map((choice) => JSON.stringify(choice)) : [];
  });
  const words = [...new Set(kinds)].join(", or ");
  if (value === undefined) return nothingAt(path, words);
  return {
    code: "wrongType",
    path,
    found: writeFound(value),
    allowed: `Here stands ${words}.`,
    mend: "Mend it or leave the key out.",
  };
}

function sizeProblem(
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

function valueAt(document: unknown, steps: readonly PathStep[]): unknown {
  let value = document;
  for (const step of steps) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<PathStep, unknown>)[step];
  }
  return value;
}
