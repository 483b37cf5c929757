import { expect, test } from "vitest";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import { supposeStoppage } from "../../../../packages/hydraulics/src/judge/trouble/pipe-causes.js";
import { penPlan } from "../birds/pens.js";
import { planOf } from "./ask.js";

test("supposeStoppage of a short run tries each of its pieces of pipe", () => {
  const asking = askAboutTrouble(planOf({ ...penPlan({ drinkers: { count: 3 } }), pens: undefined }));
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  const { bench } = asking.question;
  const run = bench.line.runs[1]!;
  const supposed = supposeStoppage(bench, 1, []);
  expect(supposed!.cause).toMatchObject({ code: "runBlocked", id: "hen line" });
  expect(run.segmentCount).toBeGreaterThan(2);
  const places = supposed!.trials.map(({ severity }) => severity.along);
  expect(new Set(places).size).toBe(run.segmentCount);
  expect(supposed!.trials.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
});
