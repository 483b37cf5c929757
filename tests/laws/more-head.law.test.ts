import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FRICTION_LAWS } from "../../packages/hydraulics/src/solve/solution.js";
import { type DrawnLine, RUNS, rings, SAME_FLOW, solved, trees, withPipe } from "./drawn-lines.js";

const raised = (drawn: DrawnLine, by: number): DrawnLine => ({
  ...drawn,
  sourceHead: drawn.sourceHead.map((head) => head + by),
});
const more = fc.double({ min: 1e-4, max: 1, noNaN: true });
const total = (flows: Float64Array) => flows.reduce((sum, q) => sum + q, 0);

/** Pipes and drinkers that water reaches only through a pipe of a tree (pipe i ends at point i + 1). */
function beyond({ parts }: DrawnLine, pipe: number): boolean[] {
  const isBeyond = parts.heights.map((_, p) => p === pipe + 1);
  parts.pipes.forEach(({ from, to }) => {
    if (isBeyond[from]) isBeyond[to] = true;
  });
  return isBeyond;
}

describe.each(FRICTION_LAWS)("solveLine (%s)", (friction) => {
  it("with more head at the source never lowers a flow of a tree, in pipe or drinker", () => {
    fc.assert(
      fc.property(trees(), more, (drawn, by) => {
        const [before, after] = [solved(drawn, friction), solved(raised(drawn, by), friction)];
        after.flow.forEach((q, s) => void expect(q).toBeGreaterThanOrEqual(before.flow[s]! - SAME_FLOW));
        after.drinkerFlow.forEach(
          (q, d) => void expect(q).toBeGreaterThanOrEqual(before.drinkerFlow[d]! - SAME_FLOW),
        );
      }),
      RUNS,
    );
  });

  it("with more head at the source never lowers a drinker's flow or a head in a ring", () => {
    fc.assert(
      fc.property(rings(), more, (drawn, by) => {
        const [before, after] = [solved(drawn, friction), solved(raised(drawn, by), friction)];
        after.drinkerFlow.forEach(
          (q, d) => void expect(q).toBeGreaterThanOrEqual(before.drinkerFlow[d]! - SAME_FLOW),
        );
        after.head.forEach((h, p) => void expect(h).toBeGreaterThanOrEqual(before.head[p]! - 1e-7));
      }),
      RUNS,
    );
  });

  it("with one more drinker open never raises another's flow, and never lowers the draw", () => {
    fc.assert(
      fc.property(fc.oneof(trees(), rings()), fc.nat(), (drawn, pick) => {
        const shut = drawn.atWork.flatMap((isOpen, d) => (isOpen ? [] : [d]));
        fc.pre(shut.length > 0);
        const opened = shut[pick % shut.length]!;
        const before = solved(drawn, friction);
        const after = solved(
          { ...drawn, atWork: drawn.atWork.map((isOpen, d) => isOpen || d === opened) },
          friction,
        );
        after.drinkerFlow.forEach((q, d) => {
          if (d !== opened) expect(q).toBeLessThanOrEqual(before.drinkerFlow[d]! + SAME_FLOW);
        });
        expect(after.sourceFlow[0]).toBeGreaterThanOrEqual(before.sourceFlow[0]! - SAME_FLOW);
      }),
      RUNS,
    );
  });

  // Those that do not hang on the wider pipe may lose: what it gives the others passes the pipes they share.
  it.each([
    ["wider", (pipe: { length: number; bore?: number }, by: number) => ({ bore: pipe.bore! * (1 + by) })],
    [
      "shorter",
      (pipe: { length: number; bore?: number }, by: number) => ({ length: pipe.length / (1 + by) }),
    ],
  ] as const)(
    "with a %s pipe never lowers the flow of a drinker beyond it, nor the draw, nor raises a flow elsewhere",
    (_, change) => {
      fc.assert(
        fc.property(trees(), fc.nat(), more, (drawn, pick, by) => {
          const which = pick % drawn.parts.pipes.length;
          const before = solved(drawn, friction);
          const after = solved(withPipe(drawn, which, change(drawn.parts.pipes[which]!, by)), friction);
          const isBeyond = beyond(drawn, which);
          after.drinkerFlow.forEach((q, d) => {
            const was = before.drinkerFlow[d]!;
            if (isBeyond[drawn.parts.drinkers[d]!.point]) expect(q).toBeGreaterThanOrEqual(was - SAME_FLOW);
            else expect(q).toBeLessThanOrEqual(was + SAME_FLOW);
          });
          expect(total(after.drinkerFlow)).toBeGreaterThanOrEqual(total(before.drinkerFlow) - SAME_FLOW);
        }),
        RUNS,
      );
    },
  );
});
