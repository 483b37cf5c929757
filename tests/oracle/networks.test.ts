import { describe, expect, it } from "vitest";
import { SEGMENT_KIND } from "../../packages/hydraulics/src/model/line.js";
import { prepareLine } from "../../packages/hydraulics/src/solve/prepare-line.js";
import { FRICTION_LAWS, type LineSolution } from "../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../packages/hydraulics/src/solve/solve-line.js";
import { makeLine, makeMoment } from "../arbitraries/make-line.js";
import { randomLine } from "../arbitraries/random-line.js";
import { askPython, PYTHON_IS } from "./ask-python.js";
import { type Bound, expectClose } from "./closeness.js";
import { type DrawnNetwork, drawNetwork, type Features } from "./drawn-networks.js";
import { type NetworkAnswer, networkQuestion } from "./network-question.js";

const KINDS: Readonly<Record<string, Features>> = {
  "a plain line of 60 drinkers": { drinkers: 60 },
  "a tree of 60 drinkers on four runs": { drinkers: 60, branches: 3 },
  "a tree of 300 drinkers on ten runs": { drinkers: 300, branches: 9 },
  "a ring": { drinkers: 40, branches: 1, chords: 1 },
  "three rings": { drinkers: 60, branches: 3, chords: 3 },
  "two sources": { drinkers: 40, secondSource: true },
  "two sources and rings": { drinkers: 60, branches: 3, chords: 2, secondSource: true },
  "shut taps": { drinkers: 60, branches: 4, shutTaps: 2 },
  "shut taps in rings": { drinkers: 60, branches: 4, chords: 4, shutTaps: 3 },
  "a one-way valve": { drinkers: 40, branches: 1, oneWay: true },
  "one-way valves at two sources": { drinkers: 40, branches: 1, oneWay: true, secondSource: true },
  "a one-way valve shut by the other source": {
    drinkers: 40,
    branches: 1,
    oneWay: true,
    secondSource: true,
    secondBelow: 0.5,
  },
  "regulators that hold": { drinkers: 60, branches: 3, regulators: { count: 2, setting: 0.15 } },
  "regulators without head to spare": { drinkers: 60, branches: 3, regulators: { count: 2, setting: 1.9 } },
  "nobody drinks": { drinkers: 30, branches: 2, chords: 1, idleShare: 1 },
  "everybody drinks": { drinkers: 60, branches: 2, idleShare: 0 },
};
/** A head of a micrometre moves no verdict. */
const HEADS = { relative: 0, absolute: 1e-6 };
/** Down to 1 mm3/min: by Hazen-Williams the last bit of a head drives as much through a short idle pipe. */
const FLOWS = { relative: 1e-6, absolute: 2e-11 };
/** Likewise in pipes of half a metre. */
const WILD_FLOWS = { relative: 1e-6, absolute: 1e-9 };

const SEEDS = [1, 2];

/** A drawn line as a case of its own for each friction law. */
const casesOf = (name: string, drawn: DrawnNetwork, flows: Bound) =>
  FRICTION_LAWS.map((friction) => ({ name: `${name}, ${friction}`, friction, drawn, flows }));

/**
 * Lines nobody would build: bores from 1 to 500 mm, coefficients over eight powers of ten, drinkers above the water.
 * Those with one-way valves are left to the drawings above: behind a valve that is shut heads are anybody's.
 */
const wild = Array.from({ length: 40 }, (_, k) => ({ seed: k + 1, ...randomLine(k + 1) }))
  .filter(({ parts }) => parts.pipes.every(({ kind }) => kind !== SEGMENT_KIND.oneWay))
  .map(({ seed, parts, moment }) => ({
    seed,
    drawn: {
      parts,
      sourceHead: [...moment.sourceHead],
      atWork: Array.from(moment.atWork, (one) => one === 1),
    },
  }));

const cases = [
  ...Object.entries(KINDS).flatMap(([kind, features]) =>
    SEEDS.flatMap((seed) => casesOf(`${kind}, drawing ${seed}`, drawNetwork(seed, features), FLOWS)),
  ),
  ...wild.flatMap(({ seed, drawn }) => casesOf(`wild line ${seed}`, drawn, WILD_FLOWS)),
];

const withoutPipes = (answer: Record<string, NetworkAnswer>) =>
  Object.fromEntries(
    Object.entries(answer).map(([name, { head, drinkerFlow }]) => [name, { head, drinkerFlow }]),
  );

type Case = (typeof cases)[number];

function solve({ drawn, friction }: Case): LineSolution {
  const line = makeLine(drawn.parts);
  return solveLine(prepareLine(line, friction), makeMoment(line, drawn.sourceHead, drawn.atWork));
}

type Solved = { readonly one: Case; readonly solution: LineSolution };

const segmentsOfKind = ({ one }: Solved, wanted: number) =>
  one.drawn.parts.pipes.flatMap(({ kind, from, to }, s) => (kind === wanted ? [{ s, from, to }] : []));

const valveFlows = (solved: Solved) =>
  segmentsOfKind(solved, SEGMENT_KIND.oneWay).map(({ s }) => solved.solution.flow[s]!);

/** Which regulators bring the head down by more than their fittings would. */
const regulatorsHold = (solved: Solved) =>
  segmentsOfKind(solved, SEGMENT_KIND.regulator).map(
    ({ from, to }) => solved.solution.head[from]! - solved.solution.head[to]! > 0.02,
  );

describe(`solveLine against Newton on heads with scipy, ${PYTHON_IS}`, () => {
  const asked = Object.fromEntries(
    cases.map(({ name, drawn, friction }) => [name, networkQuestion(drawn, friction)]),
  );
  const { answer, recorded } = askPython<Record<string, NetworkAnswer>>("networks", asked, {
    digits: 8,
    keep: withoutPipes,
  });

  it.each(cases.map((one) => [one.name, one] as const))("%s: the same heads and flows", (name, one) => {
    const solution = solve(one);
    expect(solution.outcome).toBe("solved");
    const theirs = answer[name]!;
    expect([...solution.reached]).toEqual(theirs.head.map((head) => (head === null ? 0 : 1)));
    expectClose(
      "head",
      solution.head,
      theirs.head.map((head, p) => head ?? solution.head[p]!),
      HEADS,
    );
    if (theirs.flow !== undefined) expectClose("flow", solution.flow, theirs.flow, one.flows);
    expectClose("drinker's flow", solution.drinkerFlow, theirs.drinkerFlow, one.flows);
  });

  it("is asked of taps that cut points off, valves that shut, and regulators that hold and that do not", () => {
    const solutions = cases.map((one) => ({ one, solution: solve(one) }));
    const count = (kind: string, has: (solved: (typeof solutions)[number]) => boolean) =>
      solutions.filter((solved) => solved.one.name.startsWith(kind) && has(solved)).length;
    const regulatorsThat = (hold: boolean) => (solved: (typeof solutions)[number]) =>
      regulatorsHold(solved).every((holds) => holds === hold);

    expect(count("shut taps", ({ solution }) => solution.reached.includes(0))).toBeGreaterThan(0);
    expect(count("a one-way valve shut", (solved) => valveFlows(solved).includes(0))).toBeGreaterThan(0);
    expect(
      count("one-way valves at two", (solved) => valveFlows(solved).every((q) => q > 0)),
    ).toBeGreaterThan(0);
    expect(count("regulators that hold", regulatorsThat(true))).toBeGreaterThan(0);
    expect(count("regulators without head", regulatorsThat(false))).toBeGreaterThan(0);
  });

  it("is what was recorded", () => {
    expect(Object.keys(recorded)).toEqual(Object.keys(answer));
    for (const [name, { head, drinkerFlow }] of Object.entries(answer)) {
      const kept = recorded[name]!;
      expectClose(
        `${name}, heads`,
        kept.head.map((h) => h ?? 0),
        head.map((h) => h ?? 0),
        { relative: 1e-7, absolute: 1e-8 },
      );
      expectClose(`${name}, drinkers`, kept.drinkerFlow, drinkerFlow, { relative: 1e-6, absolute: 1e-9 });
    }
  });
});
