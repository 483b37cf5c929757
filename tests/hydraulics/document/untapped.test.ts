import { expect, test } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { untappedSources } from "../../../packages/hydraulics/src/document/untapped.js";
import { buildSheetOf } from "../../../packages/hydraulics/src/judge/build/build-of-plan.js";
import { frostOfPlan } from "../../../packages/hydraulics/src/judge/weather/frost.js";
import { writeBasis, writePart } from "../../../packages/hydraulics/src/report/build/build-words.js";
import { writeFrostTodo } from "../../../packages/hydraulics/src/report/weather/frost-sentences.js";

function planWith(first: object, second: object = { tap: "open" }) {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "1 m" }],
    runs: [
      { id: "feed", from: "barrel", to: "tee", length: "3 m", pipe: "pvc-sch40-3/4", ...first },
      { id: "other", from: "barrel", length: "2 m", pipe: "pvc-sch40-3/4", ...second },
    ],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

test("untappedSources: a tap at the start of each run that leaves it, or a valve by name, shuts a vessel; one run without does not", () => {
  const untapped = (first: object, second?: object) => untappedSources(planWith(first, second))[0];
  expect(untapped({})).toBe(true);
  expect(untapped({ tap: "open" })).toBe(false);
  expect(untapped({ tap: "open" }, {})).toBe(true);
  expect(untapped({ fittings: ["elbow-90", "ball-valve x 2"] })).toBe(false);
  expect(untapped({ fittings: ["check-valve"] })).toBe(true);
  expect(untapped({ fittings: [{ name: "the old brass tap", k: 2 }] })).toBe(false);
  // Drawn towards the barrel, its tap is at the far end.
  expect(untapped({ from: "other end", to: "barrel", tap: "open" })).toBe(true);
});

test("a vessel that nothing shuts is told before a night of frost, with what would run out, and a tap for it is advised; else neither", () => {
  for (const [first, isTold] of [
    [{}, true],
    [{ tap: "open" }, false],
  ] as const) {
    const plan = planWith(first);
    const frost = frostOfPlan(plan, { low: -5 });
    const built = buildSheetOf(plan, { samples: 1, weeks: 0, day: "2026-07-04" });
    if (!frost.ok || !built.ok) throw new Error("the plan cannot be worked out");
    const todo = writeFrostTodo(frost.frost, "metric").join("\n");
    expect(/The plan has no tap at barrel \(\d{3} L\)/.test(todo)).toBe(isTold);
    const advised = built.sheet.parts.filter(({ basis }) => basis === "advised");
    expect(advised.map((part) => [writePart(part), part.where, writeBasis(part)])).toEqual(
      isTold ? [["tap, 3/4 in", ["barrel"], "advised: without it the vessel cannot be shut"]] : [],
    );
  }
});
