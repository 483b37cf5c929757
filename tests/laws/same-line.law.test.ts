import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { prepareLine } from "../../packages/hydraulics/src/solve/prepare-line.js";
import { FRICTION_LAWS } from "../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../packages/hydraulics/src/solve/solve-line.js";
import { makeMoment } from "../arbitraries/make-line.js";
import {
  type DrawnLine,
  farthestApart,
  lineOf,
  momentOf,
  RUNS,
  rings,
  SAME_FLOW,
  SAME_HEAD,
  solved,
  trees,
  withPipe,
} from "./drawn-lines.js";

/** The loop may stop a quarter of its bar of 1e-7 m from the truth, on either side [m]. */
const SETTLED = 5e-8;

/** An order of 0 .. count - 1 by number: `order[new] = old`. */
function shuffled(count: number, seed: number): number[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, (_, i) => [random.uniform(), i] as const)
    .sort(([a], [b]) => a - b)
    .map(([, i]) => i);
}

function permuted(drawn: DrawnLine, seed: number) {
  const { heights, pipes, drinkers, sources } = drawn.parts;
  const points = shuffled(heights.length, seed);
  const segments = shuffled(pipes.length, seed + 1);
  const outlets = shuffled(drinkers.length, seed + 2);
  const isNow = (p: number) => points.indexOf(p);
  return {
    points,
    segments,
    outlets,
    drawn: {
      ...drawn,
      parts: {
        ...drawn.parts,
        heights: points.map((p) => heights[p]!),
        pipes: segments.map((s) => ({ ...pipes[s]!, from: isNow(pipes[s]!.from), to: isNow(pipes[s]!.to) })),
        drinkers: outlets.map((d) => ({ ...drinkers[d]!, point: isNow(drinkers[d]!.point) })),
        sources: sources.map(isNow),
      },
      atWork: outlets.map((d) => drawn.atWork[d]!),
    },
  };
}

const pick = (from: ArrayLike<number>, order: readonly number[]) => order.map((i) => from[i]!);

describe.each(FRICTION_LAWS)("solveLine (%s)", (friction) => {
  it("of points, pipes and drinkers in another order differs in nothing but order", () => {
    fc.assert(
      fc.property(fc.oneof(trees(), rings()), fc.nat(1e6), (drawn, seed) => {
        const other = permuted(drawn, seed);
        const [one, two] = [solved(drawn, friction), solved(other.drawn, friction)];
        expect(farthestApart(two.head, pick(one.head, other.points))).toBeLessThan(SAME_HEAD);
        expect(farthestApart(two.drinkerFlow, pick(one.drinkerFlow, other.outlets))).toBeLessThan(SAME_FLOW);
      }),
      RUNS,
    );
  });

  it("of a pipe split in two anywhere is that of the whole pipe", () => {
    fc.assert(
      fc.property(
        fc.oneof(trees(), rings()),
        fc.nat(),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (drawn, which, at) => {
          const s = which % drawn.parts.pipes.length;
          const pipe = drawn.parts.pipes[s]!;
          const { heights } = drawn.parts;
          const middle = heights.length;
          const split: DrawnLine = {
            ...drawn,
            parts: {
              ...drawn.parts,
              heights: [...heights, heights[pipe.from]! * (1 - at) + heights[pipe.to]! * at],
              pipes: [
                ...drawn.parts.pipes.map((one, i) =>
                  i === s ? { ...one, to: middle, length: one.length * at } : one,
                ),
                { ...pipe, from: middle, length: pipe.length * (1 - at), k1: 0, kInfinity: 0 },
              ],
            },
          };
          const [whole, two] = [solved(drawn, friction), solved(split, friction)];
          expect(farthestApart(two.head.slice(0, middle), whole.head)).toBeLessThan(SAME_HEAD);
          expect(farthestApart(two.drinkerFlow, whole.drinkerFlow)).toBeLessThan(SAME_FLOW);
          expect(Math.abs(two.flow.at(-1)! - two.flow[s]!)).toBeLessThan(SAME_FLOW);
        },
      ),
      RUNS,
    );
  });

  it("of a pipe laid the other way round differs only in the sign of its flow", () => {
    fc.assert(
      fc.property(fc.oneof(trees(), rings()), fc.nat(), (drawn, which) => {
        const s = which % drawn.parts.pipes.length;
        const { from, to } = drawn.parts.pipes[s]!;
        const [one, two] = [
          solved(drawn, friction),
          solved(withPipe(drawn, s, { from: to, to: from }), friction),
        ];
        expect(farthestApart(two.head, one.head)).toBeLessThan(SAME_HEAD);
        expect(farthestApart(two.drinkerFlow, one.drinkerFlow)).toBeLessThan(SAME_FLOW);
        expect(Math.abs(two.flow[s]! + one.flow[s]!)).toBeLessThan(SAME_FLOW * 100);
      }),
      RUNS,
    );
  });

  it("from a warm start is that from a cold one, whoever drank before", () => {
    fc.assert(
      fc.property(
        fc.oneof(trees(), rings()),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (drawn, headBefore) => {
          const cold = solved(drawn, friction);
          const prepared = prepareLine(lineOf(drawn), friction);
          const others = drawn.atWork.map((isOpen) => !isOpen);
          solveLine(prepared, makeMoment(prepared.line, [headBefore], others));
          const warm = solveLine(prepared, momentOf(drawn));
          expect(warm.outcome).toBe("solved");
          expect(farthestApart(warm.head, cold.head)).toBeLessThan(SETTLED);
          expect(farthestApart(warm.drinkerFlow, cold.drinkerFlow)).toBeLessThan(100 * SAME_FLOW);
        },
      ),
      RUNS,
    );
  });

  it("of the same line twice is the same to the last bit", () => {
    fc.assert(
      fc.property(fc.oneof(trees(), rings()), (drawn) => {
        expect(solved(drawn, friction)).toStrictEqual(solved(drawn, friction));
      }),
      RUNS,
    );
  });
});
