import fc from "fast-check";
import { expect, test } from "vitest";
import { checkDocument, readPlan } from "../../packages/hydraulics/src/document/read-plan.js";
import { checkPlan } from "../../packages/hydraulics/src/judge/check-plan.js";
import { mutatedPlans } from "../arbitraries/mutate-plan.js";
import { cases } from "../runner/cases.js";
import { expectReadable } from "./plan-laws.js";

/** Cases of each property; more by hand: HEADFALL_CASES=20000 HEADFALL_SEED=17. */

test("checkDocument(a plan with something changed) never throws, tells readable problems and changes nothing", () => {
  fc.assert(
    fc.property(mutatedPlans(), (document) => {
      const before = structuredClone(document);
      const reading = checkDocument(document);
      expect(document).toEqual(before);
      if (!reading.ok) expectReadable(reading.problems);
    }),
    cases(200),
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
    cases(200),
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
    cases(200),
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
    cases(200),
  );
});
