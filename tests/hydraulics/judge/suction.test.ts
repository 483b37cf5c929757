import { expect, test } from "vitest";
import { findSuction } from "../../../packages/hydraulics/src/judge/suction.js";

/** A line of points at height 0 with these heads, one pipe from each to the next. */
function suctionOf(head: readonly number[], { flow = 1e-5, reached = head.map(() => 1) } = {}) {
  const count = head.length - 1;
  const line = {
    water: { density: 1000, vapourPressure: 2300, temperatureC: 20 },
    points: { count: head.length, id: head.map((_, p) => `point ${p}`), height: head.map(() => 0) },
    segments: {
      count,
      from: Array.from({ length: count }, (_, s) => s),
      to: Array.from({ length: count }, (_, s) => s + 1),
    },
  };
  const solution = { head, reached, flow: new Array<number>(count).fill(flow) };
  return findSuction(line as never, solution as never, "fullBusiest");
}

test("findSuction names the point farthest under its pipe, and none where every head is above", () => {
  expect(suctionOf([0.5, 0.1, 0.3])).toEqual([]);
  expect(suctionOf([0.5, -0.1, -0.4, -0.2])).toEqual([
    { code: "suction", point: "point 2", pointIndex: 2, head: -0.4, moment: "fullBusiest", breaks: false },
  ]);
  expect(suctionOf([-0.4, -0.4])[0]).toMatchObject({ pointIndex: 0 });
});

test("findSuction passes over a millimetre, points without water, and water that stands", () => {
  expect(suctionOf([0.5, -0.001])).toEqual([]);
  expect(suctionOf([0.5, -0.0011])).toHaveLength(1);
  expect(suctionOf([0.5, -0.4], { reached: [1, 0] })).toEqual([]);
  expect(suctionOf([0.5, -0.4], { flow: 0 })).toEqual([]);
  expect(suctionOf([0.5, -0.4], { flow: -1e-5 })).toHaveLength(1);
});

test("findSuction says that the column breaks some seven metres down, as of any siphon with something to spare", () => {
  const breaks = (head: number) => {
    const [found] = suctionOf([0.5, head]);
    return found?.code === "suction" && found.breaks;
  };
  expect([breaks(-5), breaks(-11)]).toEqual([false, true]);
});
