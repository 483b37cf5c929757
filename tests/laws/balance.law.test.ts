import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Line, SEGMENT_KIND } from "../../packages/hydraulics/src/model/line.js";
import type { Moment } from "../../packages/hydraulics/src/model/moment.js";
import {
  headLossDarcyWeisbach,
  reynoldsNumber,
  velocityInBore,
} from "../../packages/hydraulics/src/physics/darcy-weisbach.js";
import { headLossOfCoefficient } from "../../packages/hydraulics/src/physics/fittings.js";
import { headLossHazenWilliams } from "../../packages/hydraulics/src/physics/hazen-williams.js";
import { prepareLine } from "../../packages/hydraulics/src/solve/prepare-line.js";
import {
  FRICTION_LAWS,
  type FrictionLaw,
  type LineSolution,
} from "../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../packages/hydraulics/src/solve/solve-line.js";
import { randomLine } from "../arbitraries/random-line.js";

/** What a pipe loses, put together here from the formulas of physics/ [m]. */
function lossOf(line: Line, friction: FrictionLaw, s: number, flow: number): number {
  const { segments, water } = line;
  const length = segments.length[s]!;
  const bore = segments.bore[s]!;
  const run =
    friction === "hazenWilliams"
      ? headLossHazenWilliams({ length, bore, coefficient: segments.hazenWilliams[s]! }, flow)
      : headLossDarcyWeisbach(
          { length, bore, roughness: segments.roughness[s]!, viscosity: water.viscosity },
          flow,
        );
  if (flow === 0) return run;
  const reynolds = reynoldsNumber({ bore, viscosity: water.viscosity }, flow);
  const coefficient = segments.k1[s]! / reynolds + segments.kInfinity[s]!;
  return run + headLossOfCoefficient(coefficient, velocityInBore(bore, flow));
}

/** Water in less water out, at the worst point, as a share of the largest flow. */
function imbalance(line: Line, solution: LineSolution): number {
  const { segments, drinkers } = line;
  const left = new Float64Array(line.points.count);
  const largest = solution.flow.reduce((most, q) => Math.max(most, Math.abs(q)), 0);
  solution.flow.forEach((q, s) => {
    left[segments.from[s]!]! -= q;
    left[segments.to[s]!]! += q;
  });
  solution.drinkerFlow.forEach((q, d) => {
    left[drinkers.point[d]!]! -= q;
  });
  solution.sourceFlow.forEach((q, i) => {
    left[line.sources[i]!.point]! += q;
  });
  return largest === 0 ? Math.max(...left.map(Math.abs)) : Math.max(...left.map(Math.abs)) / largest;
}

/** Faults of energy, in words; a line in order has none. */
function energyFaults(line: Line, moment: Moment, friction: FrictionLaw, solution: LineSolution): string[] {
  const { segments, drinkers, points } = line;
  const { head, flow, reached, drinkerFlow } = solution;
  const faults: string[] = [];
  const expectNear = (what: string, a: number, b: number) => {
    if (!(Math.abs(a - b) <= 1e-7)) faults.push(`${what}: ${a} m against ${b} m`);
  };
  for (let s = 0; s < segments.count; s += 1) {
    const [from, to] = [segments.from[s]!, segments.to[s]!];
    const q = flow[s]!;
    const isStill = segments.shut[s] === 1 || reached[from] === 0 || reached[to] === 0;
    if (isStill) {
      if (q !== 0) faults.push(`segment ${s} flows where no water comes`);
      continue;
    }
    const drop = head[from]! - head[to]!;
    const setting = segments.setting[s]!;
    const over = drop - lossOf(line, friction, s, q);
    if (segments.kind[s] === SEGMENT_KIND.pipe) expectNear(`pipe ${s}`, over, 0);
    else if (q < 0) faults.push(`device ${s} runs backwards`);
    else if (segments.kind[s] === SEGMENT_KIND.oneWay) {
      if (q > 0) expectNear(`valve ${s}`, over, setting);
      else if (over > setting + 1e-7) faults.push(`valve ${s} stays shut under ${over} m`);
    } else if (over > 1e-7) expectNear(`regulator ${s}`, head[to]!, points.height[to]! + setting);
    else expectNear(`open regulator ${s}`, over, 0);
  }
  for (let d = 0; d < drinkers.count; d += 1) {
    const p = drinkers.point[d]!;
    const q = drinkerFlow[d]!;
    const spare = head[p]! - drinkers.height[d]! - drinkers.openingHead[d]!;
    if (moment.atWork[d] === 0 || reached[p] === 0) {
      if (q !== 0) faults.push(`drinker ${d} flows though nobody works it`);
    } else if (q > 0)
      expectNear(`drinker ${d}`, (q / drinkers.coefficient[d]!) ** (1 / drinkers.exponent[d]!), spare);
    else if (spare > 1e-7) faults.push(`drinker ${d} is shut under ${spare} m`);
  }
  line.sources.forEach((source, i) => {
    expectNear(`source ${i}`, head[source.point]!, moment.sourceHead[i]!);
  });
  return faults;
}

describe.each(FRICTION_LAWS)("every solution (%s)", (friction) => {
  it("balances: water in is water out at each point, and each head is spent where the formulas say", () => {
    fc.assert(
      fc.property(fc.nat(0x7fffffff), (seed) => {
        const { line, moment } = randomLine(seed);
        const solution = solveLine(prepareLine(line, friction), moment);
        expect(solution.outcome).toBe("solved");
        expect(imbalance(line, solution)).toBeLessThanOrEqual(1e-9);
        expect(energyFaults(line, moment, friction, solution)).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });
});
