import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { judgeLine } from "../../../../packages/hydraulics/src/judge/judge-line.js";
import { createSampleSolver } from "../../../../packages/hydraulics/src/judge/sureness/solve-sample.js";
import { buildLine } from "../../../../packages/hydraulics/src/model/build-line.js";
import { type Line, SEGMENT_KIND } from "../../../../packages/hydraulics/src/model/line.js";
import { FRICTION_LAWS } from "../../../../packages/hydraulics/src/solve/solution.js";
import { plans } from "../../../arbitraries/plans.js";
import { farthestApart } from "../../../laws/drawn-lines.js";
import { cases } from "../../../runner/cases.js";

/** What a solution is held to: energy along every run, to a ten-thousandth of a millimetre [m]. */
const SAME_HEAD = 1e-7;

/** The same line but for its bores, and for how long its pipes are. */
const narrower = (line: Line, share: number): Line => ({
  ...line,
  segments: {
    ...line.segments,
    bore: line.segments.bore.map((bore) => bore * share),
    length: line.segments.length.map((length) => length / share),
  },
});

const lineOf = (data: unknown): Line => {
  const reading = checkDocument(data);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  return built.line;
};

describe("createSampleSolver, on any plan and lines that differ from it in figures", () => {
  it("has the heads of the line solved afresh, idle and busy, still water or not", () => {
    fc.assert(
      fc.property(plans(), fc.double({ min: 0.9, max: 1.1, noNaN: true }), (data, share) => {
        const line = lineOf(data);
        // Beyond a valve that is shut, still water may stand at any head the valve holds: no one head is the right one.
        fc.pre(line.segments.kind.every((kind) => kind === SEGMENT_KIND.pipe));
        const varied = narrower(line, share);
        const found = createSampleSolver(judgeLine(line))({ line: varied, atWork: undefined }, varied);
        const { solved } = judgeLine(varied);
        FRICTION_LAWS.forEach((law, f) => {
          const { fullIdle, lowestBusiest } = solved[law];
          const sample = found[f]!;
          expect(farthestApart(sample.fullIdle.idle.head, fullIdle.idle.head)).toBeLessThan(SAME_HEAD);
          expect(farthestApart(sample.lowestBusiest.idle.head, lowestBusiest.idle.head)).toBeLessThan(
            SAME_HEAD,
          );
          expect(farthestApart(sample.lowestBusiest.solution.head, lowestBusiest.solution.head)).toBeLessThan(
            1e-8,
          );
        });
      }),
      cases(60),
    );
  });

  it("gives a sample the same whatever was solved before it, to the bit", () => {
    fc.assert(
      fc.property(plans(), (data) => {
        const line = lineOf(data);
        const [one, other] = [narrower(line, 0.95), narrower(line, 1.08)];
        const solve = createSampleSolver(judgeLine(line));
        const heads = (varied: Line) =>
          solve({ line: varied, atWork: undefined }, varied).map((sample) => [
            ...sample.lowestBusiest.solution.head,
          ]);
        const before = heads(one);
        heads(other);
        expect(heads(one)).toEqual(before);
      }),
      cases(30),
    );
  });
});
