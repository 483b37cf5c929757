import { describe, expect, test } from "vitest";
import { bareHeight, dragText, heightText } from "../../../../packages/ui/src/kernels/side/handle-words.js";
import { drawPlan, examplePlan, handleIn } from "./drawn-plan.js";

const drawn = drawPlan(examplePlan("alder-bank-hen-house"));
const wall = handleIn(drawn, "joint wall");
const drop = handleIn(drawn, "drop 2 0");

describe("heightText", () => {
  test("says a height above, below or level with what it is counted from", () => {
    expect(heightText(wall, wall.height, "metric")).toBe("10 cm above the ground");
    expect(heightText(wall, -0.2, "metric")).toBe("level with the ground");
    expect(heightText(drop, drop.from - 0.12, "metric")).toBe("12 cm below the pipe");
  });

  test("says a stand's height alone, in the reader's units", () => {
    const stand = handleIn(drawn, "stand 0");
    expect(heightText(stand, stand.height, "metric")).toBe("45 cm");
    expect(heightText(stand, 0.4572, "us")).toBe("1 ft 6 in");
  });
});

describe("dragText", () => {
  test("says the new figure and its change", () => {
    expect(dragText(wall, 0.42, 0.38, "metric")).toBe("62 cm, +4 cm");
    expect(dragText(wall, -0.28, -0.1, "metric")).toBe("-8 cm, -18 cm");
  });

  test("counts a drop downwards, and gives nought no sign", () => {
    expect(dragText(drop, drop.from - 0.12, drop.from - 0.1, "metric")).toBe("12 cm, +2 cm");
    expect(dragText(drop, drop.from, drop.from, "metric")).toBe("0 cm, 0 cm");
  });
});

describe("bareHeight", () => {
  test("is in centimetres or inches, and grows upwards for every handle", () => {
    expect(bareHeight(wall, wall.height, "metric")).toBe(10);
    expect(bareHeight(wall, -0.2 + 10 * 0.0254, "us")).toBe(10);
    expect(bareHeight(drop, drop.from - 0.12, "metric")).toBe(-12);
    expect(Object.is(bareHeight(wall, -0.2 - 1e-9, "metric"), 0)).toBe(true);
  });
});
