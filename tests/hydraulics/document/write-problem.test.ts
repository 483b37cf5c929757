import { expect, test } from "vitest";
import { PROBLEM_CODES } from "../../../packages/hydraulics/src/document/problem.js";
import { readPlan } from "../../../packages/hydraulics/src/document/read-plan.js";
import { writeProblem } from "../../../packages/hydraulics/src/document/write-problem.js";
import { PROBLEM_CASES, problemsOf } from "./problem-cases.js";

test("every problem code has a document that provokes it", () => {
  expect(Object.keys(PROBLEM_CASES).sort()).toEqual([...PROBLEM_CODES].sort());
});

test.each(PROBLEM_CODES)(
  "writeProblem(%s) says where, what was found, what is allowed and how to mend it",
  (code) => {
    const [document, sentence] = PROBLEM_CASES[code];
    const problems = document === undefined ? notText() : problemsOf(document);
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(problems.map(writeProblem)).toEqual([sentence]);
  },
);

function notText() {
  const reading = readPlan(undefined as unknown as string);
  return reading.ok ? [] : reading.problems;
}
