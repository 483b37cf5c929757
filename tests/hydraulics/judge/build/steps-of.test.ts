import { describe, expect, it } from "vitest";
import type { BuildStep } from "../../../../packages/hydraulics/src/judge/build/build-sheet.js";
import { pipeById } from "../../../../packages/hydraulics/src/tables/pipes.js";
import { PIPE, sheetOf } from "./two-lanes.js";

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

  it("drill an outlet for a run that is written towards the vessel, too", () => {
    const second = { id: "back", from: "back end", to: "barrel", length: "1 m", pipe: PIPE };
    const points = [
      { id: "tee", ground: "0 cm", above: "30 cm" },
      { id: "hump", ground: "0 cm", above: "50 cm", bleed: true },
      { id: "back end", ground: "0 cm", above: "20 cm" },
    ];
    const { steps: both } = sheetOf({ points }, {}, [second]);
    expect(all(both, "drillVessel")).toMatchObject([{ source: "barrel", outlets: 2 }]);
  });

  it("close a ring at the run by which water comes from both sides", () => {
    const ring = sheetOf({}, { far: { to: "left end", fall: undefined } });
    expect(all(steps, "closeRing")).toEqual([]);
    expect(all(ring.steps, "closeRing")).toHaveLength(1);
  });
});
