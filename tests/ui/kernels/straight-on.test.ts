import type { Plan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { layAbove } from "../../../packages/ui/src/kernels/above/lay-above.js";
import { freeSpot, spotStraightOn } from "../../../packages/ui/src/kernels/straight-on.js";

const barrel = { vessel: "bucket-20l", place: { x: "0 m", y: "0 m" } };
const plan = (runs: Plan["runs"], points: Plan["points"] = []): Plan => ({
  headfall: 1,
  sources: [barrel],
  points,
  runs,
});

test("spotStraightOn goes to the right from a source that nothing leaves", () => {
  expect(spotStraightOn(layAbove(plan([])), "barrel", 5)).toEqual({ x: 5, y: 0 });
});

test("spotStraightOn goes on the way the run came", () => {
  const layout = layAbove(plan([{ to: "a", length: "3 m" }], [{ id: "a", place: { x: "0 m", y: "3 m" } }]));
  const spot = spotStraightOn(layout, "a", 2);
  expect(spot.x).toBeCloseTo(0, 9);
  expect(spot.y).toBeCloseTo(5, 9);
});

test("spotStraightOn turns aside where a run already goes straight on, and again where one goes aside", () => {
  const points = [
    { id: "a", place: { x: "3 m", y: "0 m" } },
    { id: "b", place: { x: "6 m", y: "0 m" } },
    { id: "c", place: { x: "3 m", y: "3 m" } },
  ];
  const first: Plan["runs"] = [
    { to: "a", length: "3 m" },
    { from: "a", to: "b", length: "3 m" },
  ];
  const aside = spotStraightOn(layAbove(plan(first, points.slice(0, 2))), "a", 1);
  expect([aside.x, aside.y].map((value) => value.toFixed(6))).toEqual(["3.000000", "1.000000"]);
  const other = spotStraightOn(
    layAbove(plan([...first, { from: "a", to: "c", length: "3 m" }], points)),
    "a",
    1,
  );
  expect([other.x, other.y].map((value) => value.toFixed(6))).toEqual(["3.000000", "-1.000000"]);
});

test("spotStraightOn takes the last piece of a run with corners as its way", () => {
  const layout = layAbove(
    plan(
      [{ to: "a", length: "6 m", corners: [{ x: "3 m", y: "0 m" }] }],
      [{ id: "a", place: { x: "3 m", y: "-3 m" } }],
    ),
  );
  const spot = spotStraightOn(layout, "a", 2);
  expect(spot.x).toBeCloseTo(3, 9);
  expect(spot.y).toBeCloseTo(-5, 9);
});

test("freeSpot is below all that is drawn", () => {
  expect(freeSpot(layAbove(plan([])))).toEqual({ x: 0, y: -3 });
  expect(freeSpot(layAbove({ headfall: 1, sources: [], runs: [] }))).toEqual({ x: 0, y: 0 });
});
