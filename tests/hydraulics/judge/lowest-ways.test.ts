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

test("findLowestWays takes the shorter of two ways alike in height, in whichever direction their pipes were laid", () => {
  const ring = (lengths: readonly [number, number], isShut = false) =>
    makeLine({
      heights: [1, 0, 0, 0],
      // The first two were laid from far to near.
      pipes: [
        { from: 1, to: 0, length: lengths[0], shut: isShut },
        { from: 3, to: 1, length: 1 },
        { from: 0, to: 2, length: lengths[1] },
        { from: 2, to: 3, length: 1 },
      ],
      drinkers: [],
      sources: [0],
    });
  const before3 = (...asked: Parameters<typeof ring>) => {
    const ways = findLowestWays(ring(...asked));
    expect([...ways.point].sort()).toEqual([0, 1, 2, 3]);
    return ways.point[ways.parent[ways.point.indexOf(3)]!];
  };
  expect(before3([5, 4])).toBe(2);
  expect(before3([4, 5])).toBe(1);
  // A tap that is shut lets nothing by, however short that way is.
  expect(before3([1, 9], true)).toBe(2);
});

test("findLowestWays begins at every source, parents before children, and names the pipe each is reached by", () => {
  const line = makeLine({
    heights: [1, 0, 0, 1],
    pipes: [
      { from: 0, to: 1, length: 3 },
      { from: 1, to: 2, length: 3 },
      { from: 3, to: 2, length: 1 },
    ],
    drinkers: [],
    sources: [0, 3],
  });
  const ways = findLowestWays(line);
  expect([ways.nodeCount, ways.rootCount]).toEqual([4, 2]);
  expect([...ways.point.slice(0, 2)].sort()).toEqual([0, 3]);
  expect([...ways.segment.slice(0, 2), ...ways.parent.slice(0, 2)]).toEqual([-1, -1, -1, -1]);
  const reachedBy = (point: number) => ways.segment[ways.point.indexOf(point)];
  expect([reachedBy(1), reachedBy(2)]).toEqual([0, 2]);
  for (let node = 2; node < 4; node += 1) expect(ways.parent[node]).toBeLessThan(node);
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
