import type * as z from "zod/mini";
import {
  customProblem,
  keyProblem,
  nothingAt,
  sizeProblem,
  TYPE_WORDS,
  typeProblem,
  unknownKey,
} from "./issue-problems.js";
import { keysAt } from "./keys-at.js";
import { planSchema } from "./plan-schema.js";
import { type PathStep, type Problem, writeFound, writePath } from "./problem.js";
import type { CustomFault } from "./schema-parts.js";

/** What a wrong key was meant to be is looked for in so many findings: beyond, a document was not typed by hand. */
const MOST_OFFERED = 200;
/** More keys than this that one object should not have are no slips either. */
const MOST_SLIPS = 20;

/**
 * The schema's findings as problems: the one place that knows how the schema library words things, so that none
 * of its own messages is ever shown.
 */
export function readIssues(issues: readonly z.core.$ZodIssue[], document: unknown): Problem[] {
  return issues.flatMap((issue, i) => readIssue(issue, document, [], i < MOST_OFFERED));
}

function readIssue(
  issue: z.core.$ZodIssue,
  document: unknown,
  above: readonly PathStep[],
  isOffered: boolean,
): Problem[] {
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
      return unknownKeys(issue.keys, document, steps, isOffered);
    case "invalid_union":
      return unionProblems(issue, document, steps, isOffered);
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

function unknownKeys(
  keys: readonly string[],
  document: unknown,
  steps: readonly PathStep[],
  isOffered: boolean,
): Problem[] {
  const known = isOffered && keys.length <= MOST_SLIPS ? keysAt(planSchema, document, steps) : [];
  return keys.map((key) => unknownKey([...steps, key], known));
}

/** Of the ways a value may be written, the one it comes nearest to: that way's findings are the useful ones. */
function unionProblems(
  issue: z.core.$ZodIssueInvalidUnion,
  document: unknown,
  steps: readonly PathStep[],
  isOffered: boolean,
): Problem[] {
  const value = valueAt(document, steps);
  const ways = issue.errors.filter((way) => way.length > 0);
  const near = ways.filter((way) => !way.some(isWrongKindOfValue));
  if (near.length === 0) return [noWayFits(issue.errors, writePath(steps), value)];
  const misses = (way: readonly z.core.$ZodIssue[]) =>
    way.reduce((sum, found) => sum + (found.code === "unrecognized_keys" ? found.keys.length : 1), 0);
  const best = near.reduce((a, b) => (misses(b) < misses(a) ? b : a));
  return best.flatMap((found) => readIssue(found, document, steps, isOffered));
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

function valueAt(document: unknown, steps: readonly PathStep[]): unknown {
  let value = document;
  for (const step of steps) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<PathStep, unknown>)[step];
  }
  return value;
}
