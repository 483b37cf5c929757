import fc from "fast-check";
import { expect, test } from "vitest";
import { mutatedPlans } from "../arbitraries/mutate-plan.js";
import { cases } from "../runner/cases.js";
import { faultsOfCutText, faultsOfDocument, faultsOfText } from "./document-faults.js";

/** Cases of each property; more by hand: HEADFALL_CASES=20000 HEADFALL_SEED=17, or `npm run night`. */
const MORE_THAN_SECONDS = 3_600_000;

test(
  "a plan with something changed is checked or refused in readable problems, and stays as it is",
  () => {
    fc.assert(
      fc.property(mutatedPlans(), (document) => {
        expect(faultsOfDocument(document)).toEqual([]);
      }),
      cases(100),
    );
  },
  MORE_THAN_SECONDS,
);

test(
  "readPlan(a changed plan as text) places each problem on a line",
  () => {
    fc.assert(
      fc.property(mutatedPlans(), (document) => {
        expect(faultsOfText(document)).toEqual([]);
      }),
      cases(60),
    );
  },
  MORE_THAN_SECONDS,
);

test(
  "readPlan(any text cut out of a plan) never throws",
  () => {
    fc.assert(
      fc.property(
        mutatedPlans(),
        fc.nat(),
        fc.nat(),
        fc.constantFrom("", "\u0000", "\ud800", "\ufeff", "}", '"', "\\u", "/*", "🐔"),
        (document, from, to, between) => {
          expect(faultsOfCutText(document, { from, to, between })).toEqual([]);
        },
      ),
      cases(60),
    );
  },
  MORE_THAN_SECONDS,
);
