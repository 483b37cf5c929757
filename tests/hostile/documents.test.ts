import fc from "fast-check";
import { expect, test } from "vitest";
import { PROBLEM_CODES, type Problem } from "../../packages/hydraulics/src/document/problem.js";
import { checkDocument, readPlan } from "../../packages/hydraulics/src/document/read-plan.js";
import { writeProblem } from "../../packages/hydraulics/src/document/write-problem.js";
import { checkPlan } from "../../packages/hydraulics/src/judge/check-plan.js";
import { mutatedPlans } from "../arbitraries/mutate-plan.js";

/** Cases of each property; more by hand: HEADFALL_CASES=20000 HEADFALL_SEED=17. */
const numRuns = Number(process.env["HEADFALL_CASES"] ?? 300);

function expectReadable(problems: readonly Problem[]): void {
  expect(problems.length).toBeGreaterThan(0);
  for (const problem of problems) {
    const { code, path, found, allowed, mend } = problem;
    expect(PROBLEM_CODES).toContain(code);
    for (const part of [path, found, allowed, mend]) expect(part.trim()).not.toBe("");
    const sentence = writeProblem(problem);
    expect(sentence.length).toBeLessThan(1000);
    expect(sentence).not.toMatch(/undefined|\[object|invalid_|Invalid input/);
  }
}

test("checkDocument(a plan with something changed) never throws, tells readable problems and changes nothing", () => {
  fc.assert(
    fc.property(mutatedPlans(), (document) => {
      const before = structuredClone(document);
      const reading = checkDocument(document);
      expect(document).toEqual(before);
      if (!reading.ok) expectReadable(reading.problems);
    }),
    { numRuns },
  );
});

test("what checkDocument lets pass, checkPlan checks or tells readable problems of", () => {
  fc.assert(
    fc.property(mutatedPlans(), (document) => {
      const reading = checkDocument(document);
      if (!reading.ok) return;
      const checking = checkPlan(reading.plan, { samples: 0 });
      if (!checking.ok) expectReadable(checking.problems);
    }),
    { numRuns },
  );
});

test("readPlan(a changed plan as text) places each problem on a line", () => {
  fc.assert(
    fc.property(mutatedPlans(), (document) => {
      const text = JSON.stringify(document, null, 1);
      const reading = readPlan(text);
      if (reading.ok) return;
      expectReadable(reading.problems);
      const lines = text.split("\n");
      const places = reading.problems.map(({ line = 0 }) => line);
      for (const line of places) expect(lines[line - 1]).toBeDefined();
      expect(places).toEqual([...places].sort((a, b) => a - b));
    }),
    { numRuns },
  );
});

test("readPlan(any text cut out of a plan) never throws", () => {
  fc.assert(
    fc.property(
      mutatedPlans(),
      fc.nat(),
      fc.nat(),
      fc.string({ unit: "binary", maxLength: 5 }),
      (document, a, b, more) => {
        const text = JSON.stringify(document);
        const cut = `${text.slice(a % text.length)}${more}${text.slice(0, b % text.length)}`;
        const reading = readPlan(cut);
        if (!reading.ok) expectReadable(reading.problems);
      },
    ),
    { numRuns },
  );
});
