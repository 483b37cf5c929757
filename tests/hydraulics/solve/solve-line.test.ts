import { describe, expect, it } from "vitest";
import { SEGMENT_KIND } from "../../../packages/hydraulics/src/model/line.js";
import { headLossDarcyWeisbach } from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import { checkSolution } from "../../../packages/hydraulics/src/solve/check-solution.js";
import { buildLossTable } from "../../../packages/hydraulics/src/solve/loss-table.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { FRICTION_LAWS, type FrictionLaw } from "../../../packages/hydraulics/src/solve/solution.js";
import { reachState, solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { type DrinkerPart, makeLine, makeMoment, type PipePart } from "../../arbitraries/make-line.js";
import { randomLine } from "../../arbitraries/random-line.js";
import { cases } from "../../runner/cases.js";

const GRAVITY = 9.80665;

/** A line of pipes one after the other from a source at height 0, a drinker at the end of each. */
function chain(
  pipes: readonly Omit<PipePart, "from" | "to">[],
  drinker: Omit<DrinkerPart, "point">,
  temperatureC = 20,
) {
  return makeLine({
    heights: [0, ...pipes.map(() => 0)],
    pipes: pipes.map((pipe, i) => ({ ...pipe, from: i, to: i + 1 })),
    drinkers: pipes.map((_, i) => ({ ...drinker, point: i + 1 })),
    sources: [0],
    temperatureC,
  });
}

const solve = (line: ReturnType<typeof makeLine>, friction: FrictionLaw, head: number) =>
  solveLine(prepareLine(line, friction), makeMoment(line, [head]));

describe("solveLine of one drinker on one pipe", () => {
  it("by Darcy-Weisbach in laminar flow is the root of R q + (q/k)^2 = H", () => {
    // R = 128 nu L / (pi g d^4) at 20 degC (1.0034 mm2/s), 30 m of 15.8 mm; k = 5 mL/s at 1 m.
    const line = chain([{ length: 30 }], { coefficient: 5e-6 });
    const r = (128 * line.water.viscosity * 30) / (Math.PI * GRAVITY * 0.0158 ** 4);
    expect(r).toBeCloseTo((128 * 1.0034e-6 * 30) / (Math.PI * GRAVITY * 0.0158 ** 4), -1);
    const k2 = 5e-6 ** 2;
    const q = (k2 / 2) * (-r + Math.sqrt(r * r + (4 * 0.5) / k2));
    const { outcome, drinkerFlow, head, flow } = solve(line, "darcyWeisbach", 0.5);
    expect(outcome).toBe("solved");
    expect(drinkerFlow[0]! / q).toBeCloseTo(1, 9);
    expect(head[1]).toBeCloseTo(0.5 - r * q, 10);
    expect(flow[0]).toBe(drinkerFlow[0]);
  });

  it("by Hazen-Williams with a drinker of exponent 1/1.852 is (H / (r + k^-1.852))^(1/1.852)", () => {
    const k = 5e-6;
    const line = chain([{ length: 30 }], { coefficient: k, exponent: 1 / 1.852 });
    const r = (10.67 * 30) / (150 ** 1.852 * 0.0158 ** 4.8704);
    const q = (0.5 / (r + k ** -1.852)) ** (1 / 1.852);
    expect(solve(line, "hazenWilliams", 0.5).drinkerFlow[0]! / q).toBeCloseTo(1, 7);
  });

  it("with nothing but fittings spends the head on them: H = (K + 2 g A^2/k^2) v^2/2g", () => {
    const line = chain([{ length: 0, kInfinity: 12 }], { coefficient: 2e-4 });
    const area = (Math.PI / 4) * 0.0158 ** 2;
    const q = Math.sqrt(1 / (12 / (2 * GRAVITY * area ** 2) + 1 / 2e-4 ** 2));
    for (const friction of FRICTION_LAWS)
      expect(solve(line, friction, 1).drinkerFlow[0]! / q).toBeCloseTo(1, 7);
  });

  it("at no head, or below its opening head, gives nothing and loses nothing", () => {
    const line = chain([{ length: 30 }], { coefficient: 5e-6, openingHead: 0.04 });
    for (const friction of FRICTION_LAWS) {
      for (const head of [0, 0.039, -1]) {
        const solution = solve(line, friction, head);
        expect(solution.outcome).toBe("solved");
        expect(solution.drinkerFlow[0]).toBe(0);
        expect(solution.head[1]).toBe(head);
      }
    }
  });
});

describe("solveLine of three drinkers, one after the other", () => {
  it("is a ladder of equal resistances by hand: 5/13, 2/13 and 1/13 of the head are left", () => {
    // Laminar pipes of resistance R, drinkers straight in head of resistance R: 1/R each.
    const bare = chain([{ length: 10, bore: 0.006 }], { coefficient: 1 });
    const r = (128 * bare.water.viscosity * 10) / (Math.PI * GRAVITY * 0.006 ** 4);
    const line = chain(
      [10, 10, 10].map((length) => ({ length, bore: 0.006 })),
      { coefficient: 1 / r, exponent: 1 },
    );
    const { head, drinkerFlow, sourceFlow } = solve(line, "darcyWeisbach", 0.013);
    [0.013, 0.005, 0.002, 0.001].forEach((h, p) => void expect(head[p]).toBeCloseTo(h, 9));
    [0.005, 0.002, 0.001].forEach((h, d) => void expect((drinkerFlow[d]! * r) / h).toBeCloseTo(1, 7));
    expect((sourceFlow[0]! * r) / 0.008).toBeCloseTo(1, 7);
  });

  it("spends each metre once: the head at the last is the source's less the losses of the sums beyond", () => {
    const line = chain(
      [4, 6, 8].map((length) => ({ length, bore: 0.009 })),
      { coefficient: 1.2e-5 },
    );
    const { drinkerFlow, head } = solve(line, "darcyWeisbach", 0.8);
    const [a, b, c] = [...drinkerFlow] as [number, number, number];
    const lost = [
      [4, a + b + c],
      [6, b + c],
      [8, c],
    ].map(([length, flow]) =>
      headLossDarcyWeisbach(
        { length: length!, bore: 0.009, roughness: 1.5e-6, viscosity: line.water.viscosity },
        flow!,
      ),
    );
    expect(head[3]).toBeCloseTo(0.8 - lost.reduce((sum, h) => sum + h, 0), 8);
    expect(c).toBeCloseTo(1.2e-5 * Math.sqrt(head[3]!), 12);
    expect(a).toBeGreaterThan(b);
    expect(b).toBeGreaterThan(c);
  });
});

describe("solveLine of 24 nipples 30 cm apart in 15.8 mm pipe, 1.44 L/min in all", () => {
  // 60 mL/min each whatever the line loses: a drinker under 1 km of head does not feel some millimetres.
  const steady = { coefficient: 1e-6 / Math.sqrt(1000) };
  const lost = (friction: FrictionLaw, temperatureC: number) => {
    const line = chain(new Array<{ length: number }>(24).fill({ length: 0.3 }), steady, temperatureC);
    const { head, sourceFlow } = solve(line, friction, 1000);
    expect(sourceFlow[0]! * 60_000).toBeCloseTo(1.44, 4);
    return 1000 * (1000 - head[24]!);
  };

  it("loses 6.0 mm at 20 degC and 9.1 mm at 5 degC by Darcy-Weisbach, summed segment by segment", () => {
    expect(lost("darcyWeisbach", 20)).toBeCloseTo(6.0, 1);
    expect(lost("darcyWeisbach", 5)).toBeCloseTo(9.1, 1);
  });

  it("loses 4.4 mm by Hazen-Williams, warm or cold", () => {
    expect(lost("hazenWilliams", 20)).toBeCloseTo(4.4, 1);
    expect(lost("hazenWilliams", 5)).toBeCloseTo(4.4, 1);
  });

  it("loses (N + 1)/2N of what the whole flow would, laminar: 25/48", () => {
    const line = chain([{ length: 7.2 }], steady);
    const whole = (128 * line.water.viscosity * 7.2 * 24e-6) / (Math.PI * GRAVITY * 0.0158 ** 4);
    expect(lost("darcyWeisbach", 20) / (1000 * whole)).toBeCloseTo(25 / 48, 3);
  });
});

describe("solveLine of straight laws", () => {
  it("takes one step, as any Newton step on them is exact, and evaluates at its start and at its end", () => {
    const line = chain([{ length: 30 }, { length: 4 }], { coefficient: 5e-6, exponent: 1 });
    const { outcome, effort } = solve(line, "darcyWeisbach", 0.5);
    expect([outcome, effort]).toEqual(["solved", { steps: 1, evaluations: 2 }]);
  });
});

describe("solveLine where it cannot be solved", () => {
  it("says stalled, keeps every field and the best state, and shows what is wrong with it", () => {
    const line = chain([{ length: 30 }], { coefficient: 5e-6 });
    const solution = solveLine(prepareLine(line, "darcyWeisbach"), makeMoment(line, [Number.NaN]));
    expect(solution.outcome).toBe("stalled");
    expect(Object.keys(solution).sort()).toEqual(Object.keys(solve(line, "darcyWeisbach", 1)).sort());
    expect(solution.checks.energy.worst).toBe(Number.POSITIVE_INFINITY);
    expect(solution.effort.steps).toBeGreaterThan(0);
    expect(solution.head).toHaveLength(2);
  });
});

describe("reachState", () => {
  it("leaves what it reached unchecked, in arrays as long as what they are of", () => {
    const line = chain([{ length: 30 }], { coefficient: 5e-6 });
    const state = reachState(prepareLine(line, "darcyWeisbach"), makeMoment(line, [1]));
    const unchecked = { worst: 0, at: -1 };
    expect(state).toMatchObject({ outcome: "solved", checks: { continuity: unchecked, energy: unchecked } });
    expect([state.leakFlow.length, state.feedFlow.length, state.flow.length]).toEqual([0, 1, 1]);
  });

  it("says stalled by its own stopping rule, and tries a line no more often for having devices", () => {
    const made = chain([{ length: 30 }, { length: 0, kind: 1, setting: 0.01 }], { coefficient: 5e-6 });
    const { outcome, effort } = reachState(
      prepareLine(made, "darcyWeisbach"),
      makeMoment(made, [Number.NaN]),
    );
    expect([outcome, effort.steps]).toEqual(["stalled", 200]);
  });
});

it("solveLine solves 3,000 random lines by both laws within the bars, and no number is missing", () => {
  const failed: string[] = [];
  for (let seed = 1; seed <= cases(3000).numRuns; seed += 1) {
    const { line, moment } = randomLine(seed);
    for (const friction of FRICTION_LAWS) {
      const solution = solveLine(prepareLine(line, friction), moment);
      const { passed } = checkSolution(line, moment, solution, buildLossTable(line, friction));
      const numbers = [
        solution.head,
        solution.flow,
        solution.drinkerFlow,
        solution.sourceFlow,
        solution.feedFlow,
      ];
      const allFinite = numbers.every((list) => list.every(Number.isFinite));
      if (solution.outcome !== "solved" || !passed || !allFinite)
        failed.push(`${seed} ${friction} ${solution.outcome}`);
    }
  }
  expect(failed).toEqual([]);
}, 120_000);

describe.each(FRICTION_LAWS)("solveLine (%s)", (friction) => {
  it("tells an answer that fails its check as stalled, though the loop was content", () => {
    const line = chain([{ length: 30 }], { coefficient: 5e-6 });
    const prepared = prepareLine(line, friction);
    prepared.losses = buildLossTable(chain([{ length: 31 }], { coefficient: 5e-6 }), friction);
    const moment = makeMoment(line, [0.5]);
    expect(reachState(prepared, moment).outcome).toBe("solved");
    const { outcome, checks } = solveLine(prepared, moment);
    expect(outcome).toBe("stalled");
    expect(checks.energy.worst).toBeGreaterThan(1e-5);
  });

  it("counts each evaluation of its laws: where it starts, each step and each cut, drinkers that run dry too", () => {
    for (const seed of [4, 22, 111, 350, 693]) {
      const { line, moment } = randomLine(seed);
      const prepared = prepareLine(line, friction);
      const { pipes } = prepared.current.network;
      let evaluations = 0;
      const counting: typeof pipes.kernel = (...given) => {
        evaluations += 1;
        pipes.kernel(...given);
      };
      const network = { ...prepared.current.network, pipes: { ...pipes, kernel: counting } };
      const counted = { ...prepared, devices: [], current: { ...prepared.current, network } };
      expect(solveLine(counted, moment).effort.evaluations).toBe(evaluations);
    }
  });

  it("brings the head before a regulator right, though its zone takes hardly less than when it stood open", () => {
    const parts = (setting: number) =>
      makeLine({
        heights: [0, 0, 0],
        pipes: [
          { from: 0, to: 1, length: 60, bore: 0.006 },
          { from: 1, to: 2, length: 0, kind: SEGMENT_KIND.regulator, setting },
        ],
        drinkers: [{ point: 2, coefficient: 5e-6 }],
        sources: [0],
      });
    const open = solve(parts(2), friction, 1);
    const held = open.head[2]! - 1e-3;
    const solution = solve(parts(held), friction, 1);
    expect(solution.outcome).toBe("solved");
    expect(solution.drinkerFlow[0]! / (5e-6 * Math.sqrt(held))).toBeCloseTo(1, 9);
    expect(open.drinkerFlow[0]! - solution.drinkerFlow[0]!).toBeLessThan(1e-8);
    expect(solution.head[1]).toBeGreaterThan(open.head[1]!);
  });
});
