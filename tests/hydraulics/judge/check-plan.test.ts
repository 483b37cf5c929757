import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { checkPlan, checkPlanInSteps, readPlan } from "../../../packages/hydraulics/src/index.js";

const EXAMPLES = new URL("../../../docs/examples/", import.meta.url);

const plans = readdirSync(EXAMPLES)
  .filter((name) => name.endsWith(".json"))
  .map((name) => {
    const reading = readPlan(readFileSync(new URL(name, EXAMPLES), "utf8"));
    if (!reading.ok) throw new Error(name);
    return [name, reading.plan] as const;
  });

it.each(plans)(
  "checkPlanInSteps(%s) ends with what checkPlan gives, whatever is done in between",
  (_, plan) => {
    const options = { samples: 0, day: "2026-07-04" };
    const steps = checkPlanInSteps(plan, options);
    let count = 0;
    let step = steps.next();
    while (!step.done) {
      count += 1;
      checkPlan(plans[0]![1], options);
      step = steps.next();
    }
    expect(count).toBe(2);
    expect(step.value).toEqual(checkPlan(plan, options));
  },
);

it("checkPlanInSteps ends at once with what a plan contradicts itself in", () => {
  const [, plan] = plans[0]!;
  const [source, ...others] = plan.sources;
  const overfull = { ...plan, sources: [{ ...source!, level: { full: "50 m" } }, ...others] };
  const step = checkPlanInSteps(overfull, { samples: 0 }).next();
  expect(step).toMatchObject({ done: true, value: { ok: false } });
  expect(step.value).toEqual(checkPlan(overfull, { samples: 0 }));
});
