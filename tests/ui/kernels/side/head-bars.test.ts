import { describe, expect, test } from "vitest";
import {
  bandText,
  boundsOf,
  headBar,
  headBars,
  headsOf,
} from "../../../../packages/ui/src/kernels/side/head-bars.js";
import { scalesOf } from "../../../../packages/ui/src/kernels/side/side-scales.js";
import { drawPlan, examplePlan } from "./drawn-plan.js";

const { checked, layout } = drawPlan(examplePlan("alder-bank-hen-house"));

describe("headBars", () => {
  test("stand over each drinker from its lowest to its highest head, to the drawing's scale", () => {
    const { y, perMetreUp } = scalesOf(layout);
    for (const bar of headBars(checked, layout)) {
      const { lowest, highest } = headsOf(checked, bar.drinker);
      expect(bar.valve - bar.highest).toBeCloseTo(highest * perMetreUp, 6);
      expect(bar.lowest - bar.highest).toBeCloseTo((highest - lowest) * perMetreUp, 6);
      expect(bar.valve).toBeCloseTo(y(checked.line.drinkers.height[bar.drinker]!), 9);
    }
    expect(headBars(checked, layout)).toHaveLength(24);
  });

  test("mark the head at which the drinker gives just what it must", () => {
    const { needs } = boundsOf(checked, 0);
    const { coefficient, exponent, openingHead, need } = checked.line.drinkers;
    expect(coefficient[0]! * (needs - openingHead[0]!) ** exponent[0]!).toBeCloseTo(need[0]!, 15);
  });

  test("tell which drinkers leave what they need or hold", () => {
    const rain = drawPlan(examplePlan("alder-bank-rain-barrel"), { drinker: 4 });
    const bars = headBars(rain.checked, rain.layout);
    for (const { drinker, isShort } of bars) {
      const { verdict } = rain.checked.drinkers[drinker]!;
      expect(isShort).toBe(verdict === "starves" || verdict === "dry");
    }
    const high = headBar(raisedTo(2), layout, 0, 100);
    expect([high.isOver, high.isShort]).toEqual([true, false]);
  });

  test("gather with the rail's marks, the worst drinker of each standing for the rest", () => {
    const narrow = drawPlan(examplePlan("alder-bank-hen-house"), { width: 150 });
    const bars = headBars(narrow.checked, narrow.layout);
    expect(bars.length).toBe(narrow.layout.rail.marks.length);
    expect(bars.length).toBeLessThan(24);
  });
});

/** The same check with every head raised by so many metres. */
function raisedTo(by: number): typeof checked {
  const [first, ...rest] = checked.drinkers;
  const { moments } = first!;
  const idle = moments.fullIdle.hazenWilliams;
  const fullIdle = {
    ...moments.fullIdle,
    [checked.friction]: { ...idle, flowingHead: idle.flowingHead + by },
  };
  return { ...checked, drinkers: [{ ...first!, moments: { ...moments, fullIdle } }, ...rest] };
}

test("bandText gives nought no unit of its own", () => {
  const dry = drawPlan(examplePlan("alder-bank-rain-barrel"), { drinker: 4 });
  expect(bandText(dry.checked, 4, "metric")).toMatch(/^0 to [\d.]+ cm$/);
});

test("bandText says both heads, the unit once where it is the same", () => {
  const { lowest, highest } = headsOf(checked, 0);
  expect(bandText(checked, 0, "metric")).toBe(
    `${Number((lowest * 100).toPrecision(3))} to ${Number((highest * 100).toPrecision(3))} cm`,
  );
  expect(bandText(checked, 0, "us")).toBe("1 ft to 3 ft 1 in");
});
