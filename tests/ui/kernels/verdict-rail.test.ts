import type { VerdictName } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { layVerdictRail } from "../../../packages/ui/src/kernels/verdict-rail.js";

const spread = (verdicts: readonly VerdictName[], spacing: number) =>
  verdicts.map((verdict, index) => ({ index, verdict, x: 40 + index * spacing }));

test("layVerdictRail gives each drinker its own mark, right under it, where there is room", () => {
  const rail = layVerdictRail(spread(["good", "drips", "dry"], 30), 0, 360);
  expect(rail.rows).toBe(1);
  expect(rail.marks.map(({ x, verdict }) => [x, verdict])).toEqual([
    [40, "good"],
    [70, "drips"],
    [100, "dry"],
  ]);
});

test("layVerdictRail staggers marks over rows where they are close, and drops none", () => {
  const rail = layVerdictRail(spread(new Array(24).fill("good"), 6.5), 0, 360);
  expect(rail.rows).toBe(2);
  expect(rail.marks).toHaveLength(24);
  expect(rail.marks.slice(0, 4).map(({ row }) => row)).toEqual([0, 1, 0, 1]);
});

test("layVerdictRail gathers marks that are closer still, and shows the worst of each gathering", () => {
  const verdicts = new Array<VerdictName>(100).fill("good");
  verdicts[50] = "dry";
  const rail = layVerdictRail(spread(verdicts, 1), 0, 360);
  expect(rail.rows).toBe(3);
  expect(rail.marks.length).toBeLessThan(30);
  expect(rail.marks.filter(({ verdict }) => verdict === "dry")).toHaveLength(1);
  expect(rail.marks.flatMap(({ drinkers }) => drinkers)).toEqual(verdicts.map((_, index) => index));
});

test("layVerdictRail writes each stretch of neighbours alike once, with a verb that agrees", () => {
  const rail = layVerdictRail(spread(["good", "good", "good", "drips", "drips", "starves"], 50), 0, 360);
  expect(rail.words.map(({ text }) => text)).toEqual(["3 good", "2 drip", "1 starves"]);
});

test("layVerdictRail keeps the words of trouble when not all words fit", () => {
  const rail = layVerdictRail(spread(["good", "dry", "good", "dry", "good", "dry", "good"], 20), 30, 190);
  expect(rail.words.filter(({ verdict }) => verdict === "dry")).toHaveLength(3);
  expect(rail.words.length).toBeLessThan(7);
});
