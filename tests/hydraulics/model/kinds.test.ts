import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { behaviourOf } from "../../../packages/hydraulics/src/model/drinker-kind.js";
import { isThere } from "../../../packages/hydraulics/src/model/flock.js";
import { createTypedValues } from "../../../packages/hydraulics/src/model/typed-values.js";
import { HELD_ASIDE, watererWithMishap } from "../../../packages/hydraulics/src/model/waterer-mishap.js";
import type { LooseWaterer } from "../../../packages/hydraulics/src/model/yard.js";
import { builtFrom, lineOf } from "./built.js";

const drinkers = (kind: string) => ({ kind, count: 2, every: "30 cm" });
const PLAN = {
  headfall: 1,
  sources: [{ vessel: "drum-55gal-plastic", ground: "1 m" }],
  runs: [
    { id: "cups", length: "3 m", drinkers: drinkers("cup-float") },
    { id: "trough", length: "3 m", drinkers: drinkers("trough-float") },
  ],
};

describe("kinds of pipe and drinkers", () => {
  it("that no table has are refused by their name", () => {
    const reading = checkDocument(PLAN);
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    const [run] = reading.plan.runs;
    expect(() => buildLine({ ...reading.plan, runs: [{ ...run!, pipe: "no such pipe" }] })).toThrow(
      /no pipe is called "no such pipe"/,
    );
    // A name that every object has is no drinker of the plan's own.
    const own = { ...reading.plan, ownDrinkers: {} };
    expect(() => behaviourOf(own, "constructor", createTypedValues())).toThrow(
      /no drinker is called "constructor"/,
    );
  });

  it("that are open water are told by their group", () => {
    expect(builtFrom(PLAN).openWater).toEqual(["trough"]);
  });
});

describe("the ground", () => {
  it("where the plan says nothing is that of the nearest joint of which it does", () => {
    const { points } = lineOf([{ id: "line", to: "end", length: "3 m", fall: "-20 cm" }], {
      sources: [{ vessel: "drum-55gal-plastic", ground: "1 m" }],
    });
    expect(points.ground[points.id.indexOf("end")]).toBeCloseTo(1, 9);
  });
});

it("birds are there from the day they hatch on, if there are any", () => {
  const batches = [
    { ageDays: 0, count: 1 },
    { ageDays: -1, count: 5 },
    { ageDays: 30, count: 0 },
  ];
  expect(batches.map(isThere)).toEqual([true, false, false]);
});

it("a bell held aside leans by as much as its cord lets it, and all but turns over on a cord that is hardly longer", () => {
  const lean = (cord: number) =>
    watererWithMishap({ cord, slope: 0, kind: {} } as unknown as LooseWaterer, { kind: "heldAside" }).slope;
  // Held a tenth of a metre aside by a cord of half a metre it leans by the angle whose sine is a fifth.
  expect(lean(0.5)).toBeCloseTo(Math.tan(Math.asin(HELD_ASIDE / 0.5)), 9);
  expect(lean(HELD_ASIDE)).toBeCloseTo(10, 9);
});
