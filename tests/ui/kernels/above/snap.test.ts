import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { layAbove } from "../../../../packages/ui/src/kernels/above/lay-above.js";
import { type SnapRequest, snap, snapStep } from "../../../../packages/ui/src/kernels/above/snap.js";
import { PLACED } from "../../fixtures/placed-plan.js";

const layout = layAbove(PLACED);
const request = { layout, reach: 0.5, step: 0.1 };

describe("snap", () => {
  test("draws a place to the nearest joint within reach, before any run", () => {
    expect(snap({ ...request, at: { x: 9.7, y: 0.3 } })).toEqual({
      place: { x: 10, y: 0 },
      to: { kind: "joint", joint: "tee" },
    });
  });

  test("draws a place beside a run onto it, and says how far along the pipe that is", () => {
    const { place, to } = snap({ ...request, at: { x: 4.03, y: 0.4 } });
    expect(place).toEqual({ x: 4.03, y: 0 });
    expect(to).toMatchObject({ kind: "run", run: 0 });
    expect(to.kind === "run" && to.along).toBeCloseTo(4.03, 9);
  });

  test("takes a direction near straight as straight, and the length as a whole number of steps", () => {
    const anchor = { x: 0, y: 20 };
    expect(snap({ ...request, anchor, at: { x: 3.04, y: 20.2 } })).toEqual({
      place: { x: 3, y: 20 },
      to: { kind: "direction", degrees: 0 },
    });
    const slanted = snap({ ...request, anchor, at: { x: 2.1, y: 22.0 } });
    expect(slanted.to).toEqual({ kind: "direction", degrees: 45 });
    expect(slanted.place.x).toBeCloseTo(2.9 * Math.SQRT1_2, 9);
  });

  test("leaves another direction as the hand has it, with a sensible length", () => {
    const { place, to } = snap({ ...request, step: 0.5, anchor: { x: 0, y: 20 }, at: { x: 3, y: 21.1 } });
    expect(to).toEqual({ kind: "length" });
    expect(Math.hypot(place.x, place.y - 20)).toBeCloseTo(3, 9);
    expect(Math.atan2(place.y - 20, place.x)).toBeCloseTo(Math.atan2(1.1, 3), 9);
  });

  test("without an anchor draws a place to the grid of steps", () => {
    expect(snap({ ...request, step: 0.5, at: { x: 30.2, y: 20.3 } }).place).toEqual({ x: 30, y: 20.5 });
  });

  test("never draws a joint to itself nor to its own runs", () => {
    const { to } = snap({ ...request, held: "tee", at: { x: 10.1, y: 0.1 } });
    expect(to.kind).toBe("grid");
  });

  test("twice is the same as once, wherever the hand is", () => {
    const coordinate = fc.double({ min: -4, max: 18, noNaN: true });
    const spot = fc.record({ x: coordinate, y: coordinate });
    const asked: fc.Arbitrary<SnapRequest> = fc.record(
      {
        at: spot,
        layout: fc.constant(layout),
        reach: fc.double({ min: 0, max: 1, noNaN: true }),
        step: fc.constantFrom(0.1, 0.5, 1, 0.1524, 0.3048),
        anchor: spot,
        held: fc.constantFrom("tee", "pen"),
        isOnRuns: fc.boolean(),
      },
      { requiredKeys: ["at", "reach", "step"] },
    );
    fc.assert(
      fc.property(asked, (one) => {
        const once = snap(one);
        const twice = snap({ ...one, at: once.place });
        expect(Math.hypot(twice.place.x - once.place.x, twice.place.y - once.place.y)).toBeLessThan(1e-9);
      }),
      { numRuns: 2000 },
    );
  });
});

test("snapStep is 10 cm or 6 in near by, and longer from further off", () => {
  expect([200, 50, 14, 2].map((scale) => snapStep(scale, "metric"))).toEqual([0.1, 0.1, 0.5, 5]);
  expect(snapStep(40, "us")).toBeCloseTo(0.1524, 12);
  expect(snapStep(20, "us")).toBeCloseTo(0.3048, 12);
});
