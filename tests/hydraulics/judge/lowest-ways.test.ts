import { expect, test } from "vitest";
import { findLowestWays } from "../../../packages/hydraulics/src/judge/lowest-ways.js";
import { makeLine } from "../../arbitraries/make-line.js";
import { checkOf } from "./yard/yard.js";

test("findLowestWays takes the clear side of a ring, though the humped one is shorter", () => {
  const line = makeLine({
    heights: [1, 0, 1.6, 0.1, 0],
    pipes: [
      { from: 0, to: 1, length: 2 },
      { from: 1, to: 2, length: 1 },
      { from: 2, to: 4, length: 1 },
      { from: 1, to: 3, length: 5 },
      { from: 3, to: 4, length: 5 },
    ],
    drinkers: [],
    sources: [0],
  });
  const ways = findLowestWays(line);
  const parentOf = (point: number) => ways.point[ways.parent[ways.point.indexOf(point)]!];
  expect(parentOf(4)).toBe(3);
});

test("a ring with one humped and one clear way serves its drinkers by the clear one", () => {
  const checked = checkOf({
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic", stand: "60 cm", level: { full: "60 cm", lowest: "10 cm" } }],
    points: [
      { id: "tee", ground: "0 cm" },
      { id: "over the door", ground: "0 cm", above: "2 m" },
      { id: "round the back", ground: "0 cm" },
      { id: "pen", ground: "0 cm", above: "30 cm" },
    ],
    runs: [
      { length: "2 m", to: "tee" },
      { from: "tee", length: "3 m", to: "over the door" },
      { from: "over the door", length: "3 m", to: "pen" },
      { from: "tee", length: "12 m", to: "round the back" },
      { from: "round the back", length: "6 m", to: "pen" },
      {
        from: "pen",
        length: "2 m",
        fall: "0 cm",
        drinkers: { kind: "nipple-side-action", count: 4, busiest: 2 },
      },
    ],
  });
  expect(checked.counts.dry).toBe(0);
  expect(checked.filling.some(({ code }) => code === "humpAboveWater")).toBe(true);
});
