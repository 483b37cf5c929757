import { expect, test } from "vitest";
import { fallingLevel } from "../../../../packages/hydraulics/src/judge/trouble/falling-level.js";
import { lineOf } from "../../model/built.js";

const AREA = (Math.PI / 4) * 0.5 ** 2;
const [barrel] = lineOf([{ length: "1 m", drinkers: { kind: "bell", count: 1 } }], {
  sources: [
    {
      vessel: { shape: "upright", diameter: "50 cm", height: "80 cm" },
      outlet: "5 cm",
      level: { full: "70 cm" },
    },
  ],
}).sources;
const levelOf = (level: number, leakAt: (level: number) => number) => fallingLevel(barrel!, level, leakAt);

test("fallingLevel of an even leak and draw is volume over flow, down to the outlet and no farther", () => {
  const { fallIn, timeToEmpty } = levelOf(0.65, () => 1e-6);
  expect(timeToEmpty(2e-6)).toBeCloseTo((AREA * 0.6) / 3e-6, 6);
  expect(fallIn(3600, 2e-6)).toBeCloseTo((3e-6 * 3600) / AREA, 9);
  expect(fallIn(1e9, 2e-6)).toBeCloseTo(0.6, 9);
});

test("fallingLevel of a leak that falls with the height is near the integral over the height", () => {
  // q = k h over the outlet: h falls as exp(-k t / A), by a half in A ln 2 / k.
  const k = 1e-5;
  const { fallIn } = levelOf(0.65, (level) => k * (level - 0.05));
  expect(fallIn((AREA * Math.LN2) / k, 0)).toBeCloseTo(0.3, 2);
});

test("fallingLevel never ends where nothing leaves, or a hose brings more; at its outlet it never ends either", () => {
  const never = Number.POSITIVE_INFINITY;
  expect(levelOf(0.65, () => 0).timeToEmpty(0)).toBe(never);
  expect(levelOf(0.65, () => 1e-6).timeToEmpty(-2e-6)).toBe(never);
  expect(levelOf(0.05, () => 0).timeToEmpty(0)).toBe(never);
  expect(levelOf(0.65, () => 1e-6).fallIn(3600, -2e-6)).toBe(0);
});
