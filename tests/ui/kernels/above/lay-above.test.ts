import type { Plan } from "@headfall/hydraulics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { layAbove, lengthOf, spotAt } from "../../../../packages/ui/src/kernels/above/lay-above.js";
import { randomPlan } from "../../../arbitraries/plans.js";

type Run = Plan["runs"][number];
const planWith = (runs: Run[], others: Partial<Plan> = {}): Plan => ({
  headfall: 1,
  sources: [{ id: "barrel", vessel: "bucket-20l" }],
  runs,
  ...others,
});
/** Where a plan's joints are, to the centimetre. */
const placesIn = (plan: Plan) =>
  Object.fromEntries(
    layAbove(plan).joints.map(({ name, x, y }) => [name, [x, y].map((at) => Math.round(at * 100) / 100 + 0)]),
  );

describe("layAbove of a plan that says no places", () => {
  test("lays runs one after another straight to the right, from the source at 0", () => {
    expect(
      placesIn(
        planWith([
          { to: "a", length: "4 m" },
          { to: "b", length: "150 cm" },
        ]),
      ),
    ).toEqual({
      barrel: [0, 0],
      a: [4, 0],
      b: [5.5, 0],
    });
  });

  test("turns the second and third run of a joint aside", () => {
    const runs = ["b", "c", "d"].map((to) => ({ from: "a", to, length: "2 m" }));
    expect(placesIn(planWith([{ to: "a", length: "4 m" }, ...runs]))).toEqual({
      barrel: [0, 0],
      a: [4, 0],
      b: [6, 0],
      c: [4, 2],
      d: [4, -2],
    });
  });

  test("draws every run of a tree to scale, and puts every joint somewhere", () => {
    fc.assert(
      fc.property(fc.nat({ max: 5000 }), (seed) => {
        const layout = layAbove(randomPlan(seed) as unknown as Plan);
        for (const { x, y } of layout.joints) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
        const sources = layout.joints.filter(({ source }) => source >= 0).length;
        if (sources === 1 && layout.runs.length === layout.joints.length - 1)
          for (const { isToScale, length, name } of layout.runs)
            expect(isToScale || length < 0.1, name).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  test("draws a second source that nothing joins below the first", () => {
    const sources = [
      { id: "barrel", vessel: "bucket-20l" },
      { id: "spare", vessel: "bucket-20l" },
    ];
    expect(placesIn(planWith([{ to: "a", length: "4 m" }], { sources }))["spare"]).toEqual([0, -3]);
  });
});

describe("layAbove of a plan that says some places", () => {
  const at = (x: number, y: number) => ({ x: `${x} m`, y: `${y} m` });

  test("lays what leads to a known place on its left, and what leads on from it on its right", () => {
    const plan = planWith(
      [
        { to: "a", length: "4 m" },
        { to: "b", length: "2 m" },
      ],
      {
        points: [{ id: "a", place: at(10, 1) }],
      },
    );
    expect(placesIn(plan)).toEqual({ barrel: [6, 1], a: [10, 1], b: [12, 1] });
  });

  test("goes on from two known places the way that leads from one to the other", () => {
    const plan = planWith(
      [
        { to: "a", length: "4 m" },
        { to: "b", length: "2 m" },
      ],
      {
        sources: [{ id: "barrel", vessel: "bucket-20l", place: at(0, 0) }],
        points: [{ id: "a", place: at(0, 4) }],
      },
    );
    expect(placesIn(plan)["b"]).toEqual([0, 6]);
  });

  test("keeps places and corners as they are said, and tells whether the drawing is as long as the run", () => {
    const corners = [at(3, 0)];
    const plan = planWith(
      [
        { to: "a", length: "7 m", corners },
        { to: "b", length: "20 m" },
      ],
      {
        sources: [{ id: "barrel", vessel: "bucket-20l", place: at(0, 0) }],
        points: [
          { id: "a", place: at(3, 4) },
          { id: "b", place: at(9, 4) },
        ],
      },
    );
    const { runs, joints } = layAbove(plan);
    expect(runs.map(({ drawnLength, isToScale }) => [drawnLength, isToScale])).toEqual([
      [7, true],
      [6, false],
    ]);
    expect(runs[0]!.spots).toEqual(
      [
        { name: "barrel", x: 0, y: 0, source: 0, point: -1, isPlaced: true },
        { x: 3, y: 0 },
        { name: "a", x: 3, y: 4, source: -1, point: 0, isPlaced: true },
      ].map(({ x, y }) => ({ x, y })),
    );
    expect(joints.every(({ isPlaced }) => isPlaced)).toBe(true);
  });

  test("tells of each joint which source or listed point it is", () => {
    const plan = planWith([{ id: "feed", length: "4 m" }], { points: [{ id: "feed end" }] });
    expect(layAbove(plan).jointByName.get("feed end")).toMatchObject({
      source: -1,
      point: 0,
      isPlaced: false,
    });
    expect(layAbove(plan).jointByName.get("barrel")).toMatchObject({ source: 0, point: -1 });
  });
});

describe("spotAt", () => {
  const way = [
    { x: 0, y: 0 },
    { x: 3, y: 0 },
    { x: 3, y: 1 },
  ];

  test("finds the spot a share of the way along, round corners", () => {
    expect([0, 0.5, 0.75, 1].map((share) => spotAt(way, share))).toEqual([
      { x: 0, y: 0 },
      { x: 2, y: 0 },
      { x: 3, y: 0 },
      { x: 3, y: 1 },
    ]);
  });

  test("stays on the way beyond its ends, and on a way of no length", () => {
    expect(spotAt(way, -1)).toEqual({ x: 0, y: 0 });
    expect(spotAt(way, 2)).toEqual({ x: 3, y: 1 });
    expect(spotAt([way[0]!, way[0]!], 0.5)).toEqual({ x: 0, y: 0 });
  });

  test("divides the way: from the start to the spot is its share of the length", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        const spot = spotAt(way, share);
        const before = way.slice(0, spot.y > 0 ? 2 : 1);
        expect(lengthOf([...before, spot])).toBeCloseTo(4 * share, 9);
      }),
    );
  });
});

test("layAbove puts a header tank beside the joint that fills it, and its runs on from there", () => {
  const { jointByName } = layAbove({
    headfall: 1,
    sources: [
      { id: "tote", vessel: "tote-275gal" },
      { id: "tank", vessel: "bucket-20l", feed: { from: "pen" } },
    ],
    runs: [
      { from: "tote", to: "pen", length: "10 m" },
      { from: "tank", to: "end", length: "4 m" },
    ],
  });
  expect(jointByName.get("tank")).toMatchObject({ x: 11.5, y: 0 });
  expect(jointByName.get("end")).toMatchObject({ x: 15.5, y: 0 });
});
