import { describe, expect, it } from "vitest";
import { type Line, SEGMENT_KIND } from "../../../packages/hydraulics/src/model/line.js";
import type { Moment } from "../../../packages/hydraulics/src/model/moment.js";
import { checkSolution } from "../../../packages/hydraulics/src/solve/check-solution.js";
import { buildLossTable } from "../../../packages/hydraulics/src/solve/loss-table.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import {
  FRICTION_LAWS,
  type FrictionLaw,
  type LineSolution,
} from "../../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { makeLine, makeMoment } from "../../arbitraries/make-line.js";

/**
 * One of everything: 0 source - pipe - 1 - regulator - 2 - pipe - 3; 1 - valve - 4 (open); 1 - valve - 5 (shut, the
 * drinker there stands idle and point 5 hangs on 4 through a pipe); 1 - shut tap - 6. Drinkers at 3, 4 and 6, an idle
 * one at 1, one above the water at 4.
 */
function everything(): { line: Line; moment: Moment } {
  const made = makeLine({
    heights: [0, -0.5, -0.5, -0.6, -0.4, -0.4, -0.5, -0.7],
    pipes: [
      { from: 0, to: 1, length: 10, kInfinity: 3, k1: 500 },
      { from: 1, to: 2, length: 0.001, kind: SEGMENT_KIND.regulator, setting: 0.3, kInfinity: 10 },
      { from: 2, to: 3, length: 5 },
      { from: 1, to: 4, length: 0.001, kind: SEGMENT_KIND.oneWay, setting: 0.02 },
      { from: 5, to: 1, length: 0.001, kind: SEGMENT_KIND.oneWay, setting: 0.02 },
      { from: 4, to: 5, length: 2 },
      { from: 1, to: 6, length: 1, shut: true },
      { from: 3, to: 7, length: 1 },
    ],
    drinkers: [
      { point: 3, coefficient: 5e-6 },
      { point: 4, coefficient: 5e-6, exponent: 0.7 },
      { point: 6, coefficient: 5e-6 },
      { point: 1, coefficient: 5e-6 },
      { point: 4, coefficient: 5e-6, drop: -5 },
    ],
    sources: [0],
  });
  const line: Line = {
    ...made,
    sources: [{ ...made.sources[0]!, feed: { point: 7, height: -0.5, coefficient: 1e-6 } }],
  };
  const moment: Moment = {
    ...makeMoment(line, [1], [true, true, true, false, true]),
    feeding: Uint8Array.of(1),
  };
  return { line, moment };
}

type Field = "flow" | "head" | "drinkerFlow" | "sourceFlow" | "feedFlow" | "reached";
/** Which number of the state is spoilt, and to what; `most` is the largest flow. */
type Spoiling = readonly [field: Field, index: number, change: (value: number, most: number) => number];
type Fault = readonly [name: string, kind: "continuity" | "energy", ...spoiling: Spoiling];

/** What the check says of the true solution, or of that with one fault put in. */
function checked(friction: FrictionLaw, spoiling?: Spoiling) {
  const { line, moment } = everything();
  const solution = solveLine(prepareLine(line, friction), moment);
  const state: LineSolution = structuredClone(solution);
  if (spoiling !== undefined) {
    const [field, index, change] = spoiling;
    state[field][index] = change(state[field][index]!, solution.flow[0]!);
  }
  return { ...checkSolution(line, moment, state, buildLossTable(line, friction)), solution };
}

describe.each(FRICTION_LAWS)("checkSolution (%s)", (friction) => {
  it("passes the true solution, in which each device is in the state it was drawn for", () => {
    const { passed, solution, continuity, energy } = checked(friction);
    expect(solution.outcome).toBe("solved");
    expect(passed).toBe(true);
    expect(solution.checks).toEqual({ continuity, energy });
    expect(solution.head[2]).toBeCloseTo(-0.2, 9);
    expect(solution.flow[3]).toBeGreaterThan(0);
    expect([solution.flow[4], solution.flow[6], solution.reached[6]]).toEqual([0, 0, 0]);
    expect(solution.feedFlow[0]).toBeGreaterThan(0);
    expect([...solution.drinkerFlow].map((q) => q > 0)).toEqual([true, true, false, false, false]);
  });

  // Each fault is a little beyond its bar: 1e-9 of the largest flow, and 1e-7 m of head.
  const faults: readonly Fault[] = [
    ["a source that gives more than leaves it", "continuity", "sourceFlow", 0, (q) => q * (1 + 2e-9)],
    ["a pipe that gains water on the way", "continuity", "flow", 2, (q, most) => q + 2e-9 * most],
    [
      "a drinker that gives more than reaches it",
      "continuity",
      "drinkerFlow",
      0,
      (q, most) => q + 3e-9 * most,
    ],
    [
      "a float valve that lets in more than reaches it",
      "continuity",
      "feedFlow",
      0,
      (q, most) => q + 3e-9 * most,
    ],
    ["a flow that is not a number", "continuity", "flow", 2, () => Number.NaN],
    ["a head that no pipe accounts for", "energy", "head", 3, (h) => h + 3e-7],
    ["a source's head that is above its water's", "energy", "head", 0, (h) => h + 3e-7],
    ["a source's head that is below its water's", "energy", "head", 0, (h) => h - 3e-7],
    ["a drinker whose flow is not its law's", "energy", "drinkerFlow", 1, (q) => q * (1 + 1e-5)],
    ["a drinker shut though there is head to open it", "energy", "drinkerFlow", 0, () => 0],
    ["a drinker that flows with nobody at it", "energy", "drinkerFlow", 3, () => 1e-12],
    ["a drinker that flows where no water comes", "energy", "drinkerFlow", 2, () => 1e-12],
    ["a shut tap that passes water", "energy", "flow", 6, () => 1e-12],
    ["a one-way valve that runs backwards", "energy", "flow", 4, () => -1e-12],
    ["an open valve that takes less than opens it", "energy", "head", 4, (h) => h + 0.01],
    ["a regulator that neither holds nor stands open", "energy", "head", 2, (h) => h + 1e-6],
    ["a float valve whose flow is not its law's", "energy", "feedFlow", 0, (q) => q * 1.001],
    ["an open pipe of which one end is said to be cut off", "energy", "reached", 3, () => 0],
    ["a head that is not a number", "energy", "head", 3, () => Number.NaN],
  ];
  it.each(faults)("finds %s, by %s", (_, kind, ...fault) => {
    const found = checked(friction, fault);
    expect(found.passed).toBe(false);
    const bar = kind === "energy" ? 1e-7 : 1e-9 * found.solution.flow[0]!;
    expect(found[kind].worst).toBeGreaterThan(bar);
    expect(found[kind].at).toBeGreaterThanOrEqual(0);
  });
});
