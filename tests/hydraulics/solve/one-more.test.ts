import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  headLossDarcyWeisbach,
  reynoldsNumber,
  velocityInBore,
} from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import { headLossOfCoefficient } from "../../../packages/hydraulics/src/physics/fittings.js";
import { headLossHazenWilliams } from "../../../packages/hydraulics/src/physics/hazen-williams.js";
import { headTakenByOneMore } from "../../../packages/hydraulics/src/solve/one-more.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { FRICTION_LAWS, type FrictionLaw } from "../../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { type DrawnLine, lineOf, momentOf, RUNS, solved, trees } from "../../laws/drawn-lines.js";

function loss(drawn: DrawnLine, friction: FrictionLaw, s: number, flow: number): number {
  const { segments, water } = lineOf(drawn);
  const [length, bore] = [segments.length[s]!, segments.bore[s]!];
  const pipe =
    friction === "hazenWilliams"
      ? headLossHazenWilliams({ length, bore, coefficient: segments.hazenWilliams[s]! }, flow)
      : headLossDarcyWeisbach(
          { length, bore, roughness: segments.roughness[s]!, viscosity: water.viscosity },
          flow,
        );
  if (flow === 0) return pipe;
  const coefficient =
    segments.k1[s]! / reynoldsNumber({ bore, viscosity: water.viscosity }, flow) + segments.kInfinity[s]!;
  return pipe + headLossOfCoefficient(coefficient, velocityInBore(bore, flow));
}

const flows = fc.double({ min: 1e-7, max: 2e-5, noNaN: true });

describe.each(FRICTION_LAWS)("headTakenByOneMore (%s)", (friction) => {
  it("on a tree is what the pipes on the way lose more, all other flows kept", () => {
    fc.assert(
      fc.property(trees(), flows, (drawn, flow) => {
        const prepared = prepareLine(lineOf(drawn), friction);
        const solution = solveLine(prepared, momentOf(drawn));
        const taken = headTakenByOneMore(prepared, flow);
        // Pipe i of a drawn tree ends at point i + 1.
        const expected = [0];
        drawn.parts.pipes.forEach(({ from }, s) => {
          const q = solution.flow[s]!;
          expected.push(expected[from]! + loss(drawn, friction, s, q + flow) - loss(drawn, friction, s, q));
        });
        expected.forEach((h, p) => void expect(taken[p]).toBeCloseTo(h, 9));
      }),
      RUNS,
    );
  });

  it("never understates the fall when a drinker of that flow is really opened", () => {
    fc.assert(
      fc.property(
        trees(),
        fc.nat(),
        fc.double({ min: 1e-6, max: 3e-5, noNaN: true }),
        (drawn, pick, coefficient) => {
          const point = 1 + (pick % drawn.parts.pipes.length);
          const { drinkers } = drawn.parts;
          const opened = {
            ...drawn,
            parts: { ...drawn.parts, drinkers: [...drinkers, { point, coefficient }] },
            atWork: [...drawn.atWork, true],
          };
          const [before, after] = [solved(drawn, friction), solved(opened, friction)];
          const flow = after.drinkerFlow.at(-1)!;
          fc.pre(flow > 1e-9);
          const prepared = prepareLine(lineOf(drawn), friction);
          solveLine(prepared, momentOf(drawn));
          expect(headTakenByOneMore(prepared, flow)[point]).toBeGreaterThanOrEqual(
            before.head[point]! - after.head[point]! - 1e-8,
          );
        },
      ),
      RUNS,
    );
  });
});
