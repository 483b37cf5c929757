import { describe, expect, it } from "vitest";
import { prepareAlike, prepareLine } from "../../packages/hydraulics/src/solve/prepare-line.js";
import { solveLine } from "../../packages/hydraulics/src/solve/solve-line.js";
import { randomLine } from "../arbitraries/random-line.js";
import { faultsOfCheck } from "../hostile/plan-faults.js";

describe("drinkers that are nearly shut", () => {
  it("do not run away with the line by the last bit of a head: wide valves on a pipe of 3.5 mm", () => {
    // All that gets through is drunk by the first that are worked; those behind pass some 1e-15 m3/s.
    const plan = {
      headfall: 1,
      sources: [{ vessel: "drum-55gal-steel-open" }],
      runs: [
        {
          length: "27.7324 ft",
          fall: "0.2072 ft",
          pipe: { bore: "3.5 mm" },
          drinkers: [{ kind: "jar cap valve", count: 14 }],
        },
      ],
      ownDrinkers: {
        "jar cap valve": {
          readings: [
            { head: "0.4000 m", flow: "0.207864 gpm" },
            { head: "98.425 in", flow: "85.3802 L/h" },
          ],
          holdsUpTo: "24.8740 ft",
          need: "0.006878 gpm",
        },
      },
    };
    expect(faultsOfCheck(plan)).toEqual([]);
  });

  it("do not where a random line's bores become a twentieth, either", () => {
    const { line, moment } = randomLine(1777);
    const before = prepareLine(line, "darcyWeisbach");
    solveLine(before, moment);
    const bore = line.segments.bore.map((one) => one / 20);
    const { outcome, effort } = solveLine(
      prepareAlike(before, { ...line, segments: { ...line.segments, bore } }),
      moment,
    );
    expect(outcome).toBe("solved");
    expect(effort.steps).toBeLessThan(60);
  });
});
