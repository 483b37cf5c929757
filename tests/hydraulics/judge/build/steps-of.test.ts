import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { buildSheetOf } from "../../../../packages/hydraulics/src/judge/build/build-of-plan.js";
import type { BuildStep } from "../../../../packages/hydraulics/src/judge/build/build-sheet.js";
import { sizeOf } from "../../../../packages/hydraulics/src/judge/build/parts-of.js";
import { pipeById } from "../../../../packages/hydraulics/src/tables/pipes.js";

const PIPE = "pvc-sch40-3/4";

/** A barrel on a stand, a hose to a tee, and two lanes from there, one with cups. */
function sheetOf(more: Record<string, unknown> = {}, runs: Record<string, Record<string, unknown>> = {}) {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm" }],
    points: [
      { id: "tee", ground: "0 cm", above: "30 cm" },
      { id: "hump", ground: "0 cm", above: "50 cm", bleed: true },
    ],
    runs: [
      { id: "far", from: "hump", length: "3 m", fall: "50 cm", pipe: PIPE, ...runs["far"] },
      {
        ...{ id: "left", from: "tee", length: "8 m", fall: "30 cm", pipe: PIPE },
        ...{ drinkers: { id: "nipples", kind: "nipple-side-action", count: 3 }, ...runs["left"] },
      },
      {
        ...{ id: "right", from: "tee", to: "hump", length: "3 m", pipe: PIPE },
        ...{ drinkers: { id: "cups", kind: "cup-float", count: 2 }, ...runs["right"] },
      },
      { id: "hose", from: "barrel", to: "tee", length: "2 m", pipe: PIPE, ...runs["hose"] },
    ],
    shelf: [{ pipe: PIPE, sold: "3 m" }],
    ...more,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = buildSheetOf(reading.plan, { samples: 1, weeks: 0 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.sheet;
}
const all = <Code extends BuildStep["code"]>(steps: readonly BuildStep[], code: Code) =>
  steps.filter((step): step is Extract<BuildStep, { code: Code }> => step.code === code);

describe("the steps of building a plan", () => {
  const { steps } = sheetOf();

  it("go from stand and vessel by run, rinse, fill, bleed and leak test to the birds", () => {
    const codes = steps.map(({ code }) => code).filter((code, k, every) => code !== every[k - 1]);
    expect(codes).toEqual([
      ...["setStand", "drillVessel", "layRun", "setDrinkers", "layRun", "setDrinkers", "layRun"],
      ...["rinse", "fill", "bleed", "leakTest", "jugTest", "letBirdsIn"],
    ]);
  });

  it("lay runs as water first reaches them, whatever their order in the plan", () => {
    // The first cup is nearer to the tee than the first nipple.
    expect(all(steps, "layRun").map(({ run }) => run)).toEqual(["hose", "right", "left", "far"]);
  });

  it("name each run's own pieces, where it is longer than what is sold", () => {
    // Sticks of 3 m: 2 m and 3 m are one piece, 8 m three.
    expect(all(steps, "layRun").map(({ run, pieces }) => [run, pieces])).toEqual([
      ["hose", 1],
      ["right", 1],
      ["left", 3],
      ["far", 1],
    ]);
  });

  it("rinse through every end that feeds nothing, and only those", () => {
    expect(all(steps, "rinse")[0]!.ends).toEqual(["far end", "left end"]);
  });

  it("bleed at the hump that has one", () => {
    expect(all(steps, "bleed").map(({ point, hasBleed }) => [point, hasBleed])).toEqual([["hump", true]]);
  });

  it("fill what the pipes hold for the leak test: 16 m of its bore", () => {
    expect(all(steps, "leakTest")[0]!.volume).toBeCloseTo((16 * Math.PI * pipeById(PIPE)!.bore ** 2) / 4, 9);
  });

  it("drill one outlet for each run that leaves the vessel, and set a stand only where there is one", () => {
    expect(all(steps, "drillVessel")).toMatchObject([{ source: "barrel", outlets: 1 }]);
    const low = sheetOf({ sources: [{ id: "barrel", vessel: "drum-55gal-plastic", ground: "40 cm" }] });
    expect(all(low.steps, "setStand")).toEqual([]);
  });

  it("close a ring at the run by which water comes from both sides", () => {
    const ring = sheetOf({}, { far: { to: "left end", fall: undefined } });
    expect(all(steps, "closeRing")).toEqual([]);
    expect(all(ring.steps, "closeRing")).toHaveLength(1);
  });
});

describe("the parts of a plan", () => {
  const { parts } = sheetOf();
  const counts = (kind: string, sheet = parts) =>
    sheet.filter((part) => part.kind === kind).map(({ id, count }) => [id, count]);

  it("have a tee where three pipes meet and at every cup, none at nipples, which screw into the pipe", () => {
    expect(counts("tee")).toEqual([["tee 3/4 in", 3]]);
  });

  it("have a coupling where two pipes meet, and at each joint within a run; a cap at each end", () => {
    // At the hump, and two in the lane of three sticks.
    expect(counts("joiner")).toEqual([["coupling 3/4 in", 3]]);
    expect(counts("endCap")).toEqual([["end-cap 3/4 in", 2]]);
    expect(counts("bulkhead")).toEqual([["bulkhead 3/4 in", 1]]);
  });

  it("have a reducer where two pipes of different sizes meet", () => {
    const narrow = sheetOf({}, { far: { pipe: "pvc-sch40-1/2" } });
    expect(counts("joiner", narrow.parts)).toContainEqual(["reducer 1/2 in to 3/4 in", 1]);
  });

  it("take a pipe's size from what stands behind the last comma of its name", () => {
    expect(sizeOf("PVC pipe, schedule 40, 3/4 in")).toBe("3/4 in");
    expect(sizeOf("polyethylene, 20 mm")).toBe("20 mm");
    expect(sizeOf("own pipe of mine")).toBeUndefined();
  });
});
