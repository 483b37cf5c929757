import { describe, expect, test } from "vitest";
import { middleOfLongest, readingPlaceAt } from "../../../../packages/ui/src/kernels/side/reading-place.js";
import { drawPlan, examplePlan, madePlan } from "./drawn-plan.js";

const { checked, path } = drawPlan(examplePlan("alder-bank-rain-barrel"), { drinker: 4 });
const SHED_HOSE = 12 * 0.3048;

describe("readingPlaceAt", () => {
  test("gives the run, a whole decimetre along it, and how much lower the pipe is there than the run's start", () => {
    // The sill hose climbs 65 cm in its first metre, then falls 75 cm in the second.
    expect(readingPlaceAt(checked, path, SHED_HOSE + 0.52, "metric")).toEqual({
      run: 2,
      along: expect.closeTo(0.5, 9),
      fall: expect.closeTo(-0.325, 9),
    });
    expect(readingPlaceAt(checked, path, SHED_HOSE + 1.5, "metric")!.fall).toBeCloseTo(-0.65 + 0.375, 9);
  });

  test("counts from the ground under a source where the run starts at one", () => {
    const place = readingPlaceAt(checked, path, 1.8, "metric")!;
    const from = checked.line.points.height[checked.line.sources[0]!.point]!;
    expect(place).toMatchObject({ run: 0, along: expect.closeTo(1.8, 9) });
    expect(place.fall).toBeCloseTo(-(from + ((0.1 - from) * 1.8) / SHED_HOSE), 9);
  });

  test("comes to three inches for those who read inches", () => {
    expect(readingPlaceAt(checked, path, SHED_HOSE + 0.52, "us")!.along / 0.0254).toBeCloseTo(21, 9);
  });

  test("knows a run that the path goes through from its end", () => {
    const plan = madePlan({
      sources: [{ id: "barrel", vessel: "rain-barrel-50gal", stand: "50 cm" }],
      points: [
        { id: "tee", above: "20 cm" },
        { id: "far", above: "10 cm" },
      ],
      runs: [
        { from: "barrel", to: "tee", length: "2 m" },
        {
          from: "far",
          to: "tee",
          length: "5 m",
          drinkers: { kind: "nipple-side-action", count: 1, first: "1 m" },
        },
      ],
    });
    const back = drawPlan(plan);
    const place = readingPlaceAt(back.checked, back.path, 2 + 1.5, "metric");
    expect(place).toEqual({ run: 1, along: expect.closeTo(3.5, 9), fall: expect.closeTo(-0.07, 9) });
  });

  test("puts none on a joint, nor beyond the path", () => {
    expect(readingPlaceAt(checked, path, SHED_HOSE, "metric")).toBeUndefined();
    expect(readingPlaceAt(checked, path, 0, "metric")).toBeUndefined();
    expect(readingPlaceAt(checked, path, 99, "metric")).toBeUndefined();
  });
});

describe("middleOfLongest", () => {
  test("is half way along the longest piece between surveyed places", () => {
    // Of 1 m, 1 m and 3 m; drinkers on the way are no surveyed places.
    expect(middleOfLongest(checked, path, 2)).toBeCloseTo(SHED_HOSE + 3.5, 9);
    expect(middleOfLongest(checked, path, 1)).toBeUndefined();
  });
});
