import { expect, test } from "vitest";
import { costAtNeed, costOfOneMore } from "../../../packages/hydraulics/src/judge/solve-moments.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { lineOf } from "../model/built.js";

const line = lineOf(
  [
    { length: "20 m", pipe: { bore: "8 mm" } },
    {
      length: "4 m",
      pipe: { bore: "8 mm" },
      drinkers: { kind: "nipple-side-action", count: 4, every: "1 m" },
    },
  ],
  { sources: [{ vessel: "drum-55gal-plastic", stand: "60 cm", level: { full: "70 cm" } }] },
);

test("costOfOneMore of idle drinkers is the head their own draw takes from them, and nothing of those at work", () => {
  const prepared = prepareLine(line, "darcyWeisbach");
  const atWork = Uint8Array.of(1, 0, 0, 0);
  const moment = { name: "ordinary" as const, sourceHead: Float64Array.of(1.3), atWork };
  const before = solveLine(prepared, moment);
  const { atNeed, atMost, most } = costOfOneMore(prepared, atWork, before);
  expect([atNeed[0], atMost[0], most[0]]).toEqual([0, 0, 0]);
  for (const d of [1, 2, 3]) {
    const point = line.drinkers.point[d]!;
    const with1 = Uint8Array.from(atWork, (one, k) => (k === d ? 1 : one));
    const after = solveLine(prepared, { ...moment, atWork: with1 });
    const taken = before.head[point]! - after.head[point]!;
    // It really draws less than the most it could, and more than its need.
    expect(after.drinkerFlow[d]!).toBeGreaterThan(line.drinkers.need[d]!);
    expect(taken).toBeGreaterThan(atNeed[d]!);
    expect(taken).toBeLessThan(atMost[d]!);
    expect(atNeed[d]!).toBeGreaterThan(0.1 * taken);
  }
});

test("costAtNeed of each idle drinker is what costOfOneMore gives for its need, kind by kind or need by need", () => {
  const two = lineOf(
    [
      { length: "20 m", pipe: { bore: "8 mm" } },
      {
        ...{ length: "4 m", pipe: { bore: "8 mm" } },
        drinkers: [
          { kind: "nipple-side-action", count: 2, every: "1 m", need: "25 mL/min" },
          { kind: "cup-float", count: 2, every: "1 m", first: "2.5 m" },
        ],
      },
    ],
    { sources: [{ vessel: "drum-55gal-plastic", stand: "60 cm", level: { full: "70 cm" } }] },
  );
  expect(new Set(two.drinkers.need).size).toBe(2);
  const prepared = prepareLine(two, "hazenWilliams");
  const atWork = Uint8Array.of(1, 0, 0, 1);
  const moment = { name: "ordinary" as const, sourceHead: Float64Array.of(1.3), atWork };
  const solution = solveLine(prepared, moment);
  const byNeed = costAtNeed(prepared, atWork);
  const { atNeed } = costOfOneMore(prepared, atWork, solution);
  expect([byNeed[0], byNeed[3]]).toEqual([0, 0]);
  for (const d of [1, 2]) {
    expect(byNeed[d]).toBeGreaterThan(0);
    expect(byNeed[d]! / atNeed[d]!).toBeCloseTo(1, 9);
  }
});
