import { checkDocument, type PlanReading } from "./check-document.js";
import { type ReadText, readJsonText } from "./json-text.js";
import { type PathStep, type Problem, sortProblems, writeFound } from "./problem.js";

export { checkDocument, type PlanReading } from "./check-document.js";

/**
 * Reads a plan file. All that is wrong with it comes back at once, in the order of the text; nothing is half-read.
 *
 * @param text  the file's text: JSON, comments let pass
 * @returns the plan exactly as typed, or the problems; never throws
 * @example readPlan("{").problems[0].code   // "notJson"
 */
export function readPlan(text: string): PlanReading {
  if (typeof text !== "string") return { ok: false, problems: [notText(text)] };
  const json = readJsonText(text.replace(/^\ufeff/, ""));
  if (!json.ok) return { ok: false, problems: sortProblems(json.problems) };
  const reading = checkDocument(json.read.value);
  return reading.ok
    ? reading
    : { ok: false, problems: sortProblems(reading.problems.map((problem) => placed(problem, json.read))) };
}

/** Adds line and column; a problem's path is read back into steps to find its place in the text. */
function placed(problem: Problem, read: ReadText): Problem {
  return { ...problem, ...read.placeOf(stepsOf(problem.path)) };
}

function stepsOf(path: string): PathStep[] {
  const steps: PathStep[] = [];
  for (const match of path.matchAll(/\[(\d+)\]|\["((?:[^"\\]|\\.)*)"\]|([A-Za-z_][\w-]*)/g)) {
    if (match[1] !== undefined) steps.push(Number(match[1]));
    else steps.push(match[2] === undefined ? match[3] : String(JSON.parse(`"${match[2]}"`)));
  }
  return path.startsWith("the plan") ? [] : steps;
}

const notText = (value: unknown): Problem => ({
  code: "notText",
  path: "the plan",
  found: writeFound(value),
  allowed: "A plan file is text.",
  mend: "Pass the text of the file.",
});
