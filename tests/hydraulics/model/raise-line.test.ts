import { expect, test } from "vitest";
import { raiseLine } from "../../../packages/hydraulics/src/model/raise-line.js";
import { heightOf, lineOf } from "./built.js";

/** A feed along the ground, a hung line of four nipples, and a tail that goes back down to the ground. */
const hung = lineOf([
  { id: "feed", to: "wall", length: "4 m", fall: "0 cm" },
  {
    id: "hen line",
    to: "far",
    length: "3 m",
    fall: "0 cm",
    drinkers: { kind: "nipple-side-action", count: 4, every: "60 cm" },
  },
  { id: "tail", to: "drain", length: "2 m", fall: "0 cm", drinkers: { kind: "cup-float", first: "1 m" } },
]);
const lift = (...raise: number[]) => raiseLine(hung, raise);
const drinkerHeights = ({ drinkers }: typeof hung) =>
  Array.from(drinkers.height, (h) => Number(h.toFixed(9)));

test("raiseLine (no run raised) gives the line itself", () => {
  expect(lift(0, 0, 0)).toBe(hung);
});

test("raiseLine lifts the run's ends and its drinkers as far as asked, and nothing at the vessel", () => {
  const raised = lift(0, 0.2, 0);
  expect(heightOf(raised, "wall") - heightOf(hung, "wall")).toBeCloseTo(0.2, 12);
  expect(heightOf(raised, "far") - heightOf(hung, "far")).toBeCloseTo(0.2, 12);
  expect(heightOf(raised, "drain")).toBe(heightOf(hung, "drain"));
  expect(raised.points.height[hung.sources[0]!.point]).toBe(hung.points.height[hung.sources[0]!.point]);
  expect(drinkerHeights(raised).slice(0, 4)).toEqual(
    drinkerHeights(hung)
      .slice(0, 4)
      .map((h) => h + 0.2),
  );
});

test("raiseLine bends a run that meets the raised one: half way along, half as far", () => {
  const [before, after] = [drinkerHeights(hung), drinkerHeights(lift(0, 0.2, 0))];
  expect(after[4]! - before[4]!).toBeCloseTo(0.1, 9);
});

test("raiseLine leaves surveyed ground alone: only what lies past the last surveyed place goes up", () => {
  const line = lineOf([
    {
      id: "feed",
      to: "wall",
      length: "10 m",
      fall: "0 cm",
      survey: [{ along: "4 m", fall: "10 cm" }],
      drinkers: { kind: "cup-float", count: 2, first: "2 m", every: "5 m" },
    },
    { id: "hen line", to: "far", length: "3 m", fall: "0 cm" },
  ]);
  const raised = raiseLine(line, [0, 0.3]);
  // At 2 m nothing; at 7 m, half way from the survey at 4 m to the end at 10 m, half of it.
  expect(raised.drinkers.height[0]).toBe(line.drinkers.height[0]);
  expect(raised.drinkers.height[1]! - line.drinkers.height[1]!).toBeCloseTo(0.15, 9);
});

test("raiseLine shares what it does not change, and lets two raised runs that meet go up together", () => {
  const raised = lift(0, 0.2, 0.1);
  expect(raised.segments).toBe(hung.segments);
  expect(raised.points.ground).toBe(hung.points.ground);
  expect(heightOf(raised, "far") - heightOf(hung, "far")).toBeCloseTo(0.2, 12);
  expect(heightOf(raised, "drain") - heightOf(hung, "drain")).toBeCloseTo(0.1, 12);
});

test("raiseLine lifts by a metre as by any other height", () => {
  const raised = lift(0, 1, 0);
  expect(heightOf(raised, "far") - heightOf(hung, "far")).toBeCloseTo(1, 12);
});
