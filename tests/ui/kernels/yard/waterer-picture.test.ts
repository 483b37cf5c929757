import { type LooseWaterer, type Plan, readPlan, type Tilt, yardForPlan } from "@headfall/hydraulics";
import { describe, expect, it } from "vitest";
import { pictureOf, type Spot } from "../../../../packages/ui/src/kernels/yard/waterer-picture.js";

function standing(waterer: Record<string, unknown>): { waterer: LooseWaterer; tilt: Tilt } {
  const plan: unknown = {
    headfall: 1,
    sources: [],
    runs: [],
    pens: [{ birds: { kind: "hen", count: 4 }, waterers: [waterer] }],
  };
  const reading = readPlan(JSON.stringify(plan));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = yardForPlan(reading.plan as Plan, { weeks: 0 });
  if (!answer.ok) throw new Error("the yard is built");
  return answer.yard.pens[0]!.waterers[0]!;
}

const SIZE = { width: 300, height: 190 };
const draw = (waterer: Record<string, unknown>) => {
  const { waterer: built, tilt } = standing(waterer);
  return pictureOf(built, tilt, SIZE);
};
const heights = (shape: readonly Spot[]) => shape.map(([, y]) => y);
/** By the shoelace rule [px²]. */
const areaOf = (shape: readonly Spot[]) =>
  Math.abs(
    shape.reduce((sum, [x, y], k) => {
      const [nextX, nextY] = shape[(k + 1) % shape.length]!;
      return sum + x * nextY - nextX * y;
    }, 0),
  ) / 2;

describe("pictureOf", () => {
  it("draws water level whatever the ground does: its surface runs from side to side at one height", () => {
    for (const kind of ["fount-1gal", "pan-40cm", "trough-90cm", "bell-bucket-5gal", "bucket-fount-5gal"])
      for (const slope of ["0 %", "4 %", "20 %", "80 %"]) {
        const [from, to] = draw({ kind, slope }).level!;
        expect(Math.abs(from![1] - to![1]), `${kind} on ${slope}`).toBeLessThanOrEqual(0.2);
      }
  });

  it("has the ground fall to the right as the slope says", () => {
    const [left, right] = draw({ kind: "pan-40cm", slope: "20 %" }).ground;
    expect((right![1] - left![1]) / (right![0] - left![0])).toBeCloseTo(0.2, 2);
  });

  it("a pan on a slope is drawn with less water the steeper it stands", () => {
    const wet = ["0 %", "10 %", "20 %", "40 %"].map((slope) => {
      const { water, walls } = draw({ kind: "pan-40cm", slope });
      // One scale both ways: the wall's length gives it.
      const [from, to] = walls[0]!.slice(1, 3);
      const scale = Math.hypot(to![0] - from![0], to![1] - from![1]) / 0.34;
      return areaOf(water[0]!) / scale ** 2;
    });
    expect(wet[0]).toBeCloseTo(0.037, 3);
    for (let k = 1; k < wet.length; k += 1) expect(wet[k]!).toBeLessThan(wet[k - 1]!);
  });

  it("drops fall from the lower lip only of a fount that drains, and its jar is empty down to the lip", () => {
    expect(draw({ kind: "fount-1gal", slope: "5 %" }).drops).toEqual([]);
    const drained = draw({ kind: "fount-1gal", slope: "9 %" });
    expect(drained.drops).toHaveLength(3);
    const top = Math.min(...drained.water.flatMap(heights));
    expect(top).toBeCloseTo(drained.level![0]![1], 0);
  });

  it("the hole lies on the surface of a fount that holds; the dashed ground is where it would not", () => {
    const { hole, level, limit, ground } = draw({ kind: "fount-1gal", slope: "4 %", hole: "downhill" });
    expect(hole![1]).toBeCloseTo(level![0]![1], 0);
    const steepness = ([from, to]: readonly Spot[]) => (to![1] - from![1]) / (to![0] - from![0]);
    expect(steepness(limit!)).toBeCloseTo(0.3, 1);
    expect(steepness(ground)).toBeLessThan(steepness(limit!));
  });

  it("all of it lies inside its frame", () => {
    for (const kind of ["jar-fount-1qt", "trough-90cm", "nipple-bucket-5gal", "water-tower-15gal"])
      for (const slope of ["0 %", "30 %", "100 %"]) {
        const { walls, water, pins } = draw({ kind, slope });
        for (const [x, y] of [...walls, ...water, ...pins].flat()) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(300);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(190);
        }
      }
  });
});
