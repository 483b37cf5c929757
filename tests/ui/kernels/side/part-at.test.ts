import { describe, expect, test } from "vitest";
import { distanceToPiece, partAt, partOfDrinker } from "../../../../packages/ui/src/kernels/side/part-at.js";
import { partOutline } from "../../../../packages/ui/src/kernels/side/part-outline.js";
import { drawPlan, examplePlan } from "./drawn-plan.js";

const { checked, path, layout } = drawPlan(examplePlan("alder-bank-hen-house"));
const at = (x: number, y: number) => partAt(layout, checked.line, path, { x, y });
const { vessel, pipe, drinkers, rail } = layout;

describe("partAt", () => {
  test("a press on a drinker or on its mark is that drinker, by its place in the plan", () => {
    const third = drinkers[2]!;
    const chosen = { part: { kind: "drinkers", run: 2, group: 0, number: 2 }, drinker: 2 };
    expect(at(third.x + 3, third.y + 5)).toEqual(chosen);
    expect(at(third.x, rail.top + 20)).toEqual(chosen);
  });

  test("a press on a joint is the joint", () => {
    expect(at(pipe[1]!.x + 4, pipe[1]!.y - 4)?.part).toEqual({ kind: "joint", joint: "wall" });
  });

  test("a press on the vessel or its stand is the source", () => {
    const source = { kind: "source", source: 0 };
    expect(at((vessel.left + vessel.right) / 2, (vessel.top + vessel.bottom) / 2)?.part).toEqual(source);
    expect(at(vessel.left + 5, (vessel.bottom + vessel.ground) / 2)?.part).toEqual(source);
  });

  test("a press on the pipe is its run", () => {
    const [a, b] = [pipe[0]!, pipe[1]!];
    expect(at((a.x + b.x) / 2, (a.y + b.y) / 2 + 10)?.part).toEqual({ kind: "run", run: 0 });
  });

  test("a press on nothing is nothing", () => {
    expect(at((pipe[0]!.x + pipe[1]!.x) / 2, layout.plot.top)).toBeUndefined();
  });
});

test("partOfDrinker counts groups within their run", () => {
  const rain = drawPlan(examplePlan("alder-bank-rain-barrel")).checked.line;
  expect(partOfDrinker(rain, 1)).toEqual({ kind: "drinkers", run: 0, group: 0, number: 1 });
  expect(partOfDrinker(rain, 3)).toEqual({ kind: "drinkers", run: 2, group: 0, number: 0 });
});

test("distanceToPiece is to the nearest spot of the piece, its ends included", () => {
  const [a, b] = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
  ];
  expect(distanceToPiece({ x: 5, y: 3 }, a, b)).toBe(3);
  expect(distanceToPiece({ x: 13, y: 4 }, a, b)).toBe(5);
  expect(distanceToPiece({ x: 3, y: 4 }, a, a)).toBe(5);
});

describe("partOutline", () => {
  const outline = (selected: Parameters<typeof partOutline>[3]) =>
    partOutline(layout, checked.line, path, selected);

  test("goes round the vessel, along a run, and round a joint", () => {
    const box = outline({ kind: "source", source: 0 })!;
    expect(box).toMatchObject({ kind: "box", left: vessel.left - 4, top: vessel.top - 4 });
    expect(outline({ kind: "run", run: 1 })).toMatchObject({ kind: "way", spots: pipe.slice(1, 3) });
    expect(outline({ kind: "joint", joint: "wall" })).toMatchObject({ kind: "rings", spots: [pipe[1]] });
  });

  test("rings one drinker, or all of its group", () => {
    const group = { kind: "drinkers", run: 2, group: 0 } as const;
    expect(outline({ ...group, number: 3 })).toMatchObject({ spots: [{ index: 3 }] });
    expect(outline(group)).toMatchObject({ spots: { length: 24 } });
  });

  test("is nothing for what is not on the drawing", () => {
    expect(outline(undefined)).toBeUndefined();
    expect(outline({ kind: "source", source: 7 })).toBeUndefined();
    expect(outline({ kind: "run", run: 9 })).toBeUndefined();
    expect(outline({ kind: "joint", joint: "nowhere" })).toBeUndefined();
    expect(outline({ kind: "drinkers", run: 0, group: 4 })).toBeUndefined();
  });
});
