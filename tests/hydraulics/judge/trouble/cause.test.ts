import { expect, test } from "vitest";
import { CAUSE_CODES, FAULTY_PLAN, PRIORS } from "../../../../packages/hydraulics/src/judge/trouble/cause.js";

test("every cause has a prior, none of those tried more than six times as likely as another", () => {
  expect(Object.keys(PRIORS).sort()).toEqual([...CAUSE_CODES].sort());
  const { somethingElse, ...tried } = PRIORS;
  const all = Object.values(tried);
  expect(Math.max(...all) / Math.min(...all)).toBeLessThanOrEqual(6);
  expect(somethingElse).toBeLessThan(Math.min(...all));
});

test("a plan that its own check finds wanting is likelier than any one kind, and less likely than all others together", () => {
  const all = Object.values(PRIORS);
  expect(FAULTY_PLAN).toBeGreaterThan(Math.max(...all));
  expect(FAULTY_PLAN).toBeLessThan(all.reduce((sum, prior) => sum + prior, 0) - PRIORS.asDesigned);
});
