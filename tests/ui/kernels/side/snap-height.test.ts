import { describe, expect, test } from "vitest";
import {
  levelNeighbours,
  snapHeight,
  stepHeight,
} from "../../../../packages/ui/src/kernels/side/snap-height.js";
import { drawPlan, examplePlan, handleIn } from "./drawn-plan.js";

const drawn = drawPlan(examplePlan("alder-bank-hen-house"));
const wall = handleIn(drawn, "joint wall");
const stand = handleIn(drawn, "stand 0");

describe("snapHeight", () => {
  test("comes to whole centimetres above what the handle is counted from", () => {
    expect(snapHeight(stand, 0.4649, [], 100, "metric").height).toBeCloseTo(0.46, 12);
    expect(snapHeight({ ...stand, from: 0.003 }, 0.4649, [], 100, "metric").height).toBeCloseTo(0.463, 12);
  });

  test("comes to half inches for those who read inches", () => {
    expect(snapHeight(stand, 0.4649, [], 100, "us").height / 0.0254).toBeCloseTo(18.5, 9);
  });

  test("is drawn to level with a neighbour, and says so", () => {
    expect(snapHeight(wall, 0.017, [0.0043], 100, "metric")).toEqual({ height: 0.0043, isLevel: true });
  });

  test("is drawn to level only gently: within 3 px and 1.5 cm", () => {
    expect(snapHeight(wall, 0.02, [0], 100, "metric")).toEqual({
      height: expect.closeTo(0.02, 12),
      isLevel: false,
    });
    expect(snapHeight(wall, 0.008, [0], 1000, "metric").isLevel).toBe(false);
  });

  test("stays within the handle's limits", () => {
    expect(snapHeight(stand, -3, [], 100, "metric").height).toBe(stand.low);
    expect(snapHeight(wall, 9, [8.99], 100, "metric").height).toBe(wall.high);
  });
});

describe("stepHeight", () => {
  test("goes from one whole step to the next, also from in between", () => {
    expect(stepHeight(stand, 0.45, 1, "metric")).toBeCloseTo(0.46, 12);
    expect(stepHeight(stand, 0.45, -10, "metric")).toBeCloseTo(0.35, 12);
    expect(stepHeight(stand, 0.4532, 1, "metric")).toBeCloseTo(0.46, 12);
    expect(stepHeight(stand, 0.457, 1, "us") / 0.0254).toBeCloseTo(18.5, 9);
  });
});

describe("levelNeighbours", () => {
  test("are those on either side that stay when a joint is moved", () => {
    // The end of the hen line hangs level from the joint before it, and moves with it.
    expect(levelNeighbours(handleIn(drawn, "joint hung line"), drawn.handles)).toEqual([wall.height]);
  });

  test("are for the ground the grounds on either side, and none for vessel and drop", () => {
    expect(levelNeighbours(handleIn(drawn, "ground wall"), drawn.handles)).toEqual([-0.2]);
    expect(levelNeighbours(stand, drawn.handles)).toEqual([]);
    expect(levelNeighbours(handleIn(drawn, "drop 2 0"), drawn.handles)).toEqual([]);
  });
});
