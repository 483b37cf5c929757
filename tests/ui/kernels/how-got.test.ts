import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { FORMULA_SOURCES, howGot } from "../../../packages/ui/src/kernels/how-got.js";
import { smallChecked } from "../fixtures/small-line.js";

const checked = smallChecked({ verdicts: ["good", "drips"] });
const [head, flow, margin] = howGot({ checked, drinker: 1, moment: "lowestBusiest", system: "metric" });

test("howGot(head) fills the formula with this plan's heights and losses", () => {
  // Drinker 2: surface 0.6 m, drinker at 0.55 - 0.02 - 0.1 = 0.43 m, 2 cm lost.
  expect(head!.filled).toBe("60 cm − 43 cm − 2 cm = 15 cm");
  expect(head!.result).toBe("15 cm");
});

test("howGot(head) tells the second opinion beside it", () => {
  expect(head!.notes.join(" ")).toContain("Darcy-Weisbach leaves 13 cm");
});

test("howGot(head) blames the pipe alone where it keeps no air, and air too where it does", () => {
  expect(head!.formula).not.toContain("air");
  const hump = {
    code: "humpTrapsAir",
    point: "hump",
    pointIndex: 1,
    airHead: 0.1,
    flowToClear: 1e-4,
    flowThere: 1e-6,
    locks: false,
  } as const;
  const aired = howGot({
    checked: { ...checked, filling: [hump] },
    drinker: 1,
    moment: "lowestBusiest",
    system: "metric",
  })[0]!;
  expect(aired.formula).toContain("by pipe and air");
  expect(aired.notes.join(" ")).toContain("Filling from empty");
});

test("howGot(flow) fills the drinker's law, or says that it is idle", () => {
  expect(flow!.filled).toBe("60 mL/min × ((15 cm − 4 cm) / 100 cm)^0.5 = 30 mL/min");
  const idle = howGot({ checked, drinker: 1, moment: "fullIdle", system: "metric" })[1]!;
  expect(idle.filled).toContain("gives nothing at this moment");
});

test("howGot(margin) fills the rule that decided the verdict", () => {
  expect(margin!.formula).toBe("margin = head it holds − head when full and idle");
  expect(margin!.filled).toContain("100 cm − 110 cm");
});

test("howGot(margin) of a drinker judged by its supply sets its head against the head it needs", () => {
  const drinker = {
    ...checked.drinkers[0]!,
    margin: 0.1,
    because: { code: "tooHigh", staticHead: 0, openingHead: 0.04 } as const,
  };
  const supply = howGot({
    checked: { ...checked, drinkers: [drinker] },
    drinker: 0,
    moment: "ordinary",
    system: "metric",
  })[2]!;
  // Opens at 4 cm; half the flow at 1 m, by a square root law, takes a quarter of a metre more.
  expect(supply.filled).toBe("39 cm − 29 cm = 10 cm");
});

test("every source named by a formula is in the table of sources", () => {
  const table = JSON.parse(readFileSync("reference-tables/sources.json", "utf8")) as Record<string, unknown>;
  for (const key of Object.values(FORMULA_SOURCES).flat()) expect(Object.keys(table)).toContain(key);
});
