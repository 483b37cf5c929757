import { describe, expect, it } from "vitest";
import { type Line, SEGMENT_KIND, STUCK } from "../../../packages/hydraulics/src/model/line.js";
import type { Moment } from "../../../packages/hydraulics/src/model/moment.js";
import { checkSolution } from "../../../packages/hydraulics/src/solve/check-solution.js";
import { buildLossTable } from "../../../packages/hydraulics/src/solve/loss-table.js";
import type { LineSolution } from "../../../packages/hydraulics/src/solve/solution.js";
import { type DrinkerPart, makeLine, makeMoment, type PipePart } from "../../arbitraries/make-line.js";

/** A state written down by hand, of a source at point 0 and one element of whose loss nothing but the head is felt. */
interface Written {
  readonly pipe?: Omit<PipePart, "from" | "to" | "length">;
  readonly drinker?: Omit<DrinkerPart, "point">;
  readonly stuck?: number;
  readonly isWorked?: boolean;
  readonly leak?: { height: number; coefficient: number };
  readonly feed?: { height: number; coefficient: number; isStuckOpen?: boolean };
  readonly isFeeding?: boolean;
  readonly heads: readonly [number, number];
  /** At the source; if left out, as it is at its point. */
  readonly sourceHead?: number;
  readonly flow?: number;
  readonly drinkerFlow?: number;
  readonly leakFlow?: number;
  readonly feedFlow?: number;
  readonly reached?: readonly [number, number];
}

/** 0 - an element of no length - 1, with what is asked at point 1. */
function lineOf({ pipe, drinker, stuck, leak, feed }: Written): Line {
  const made = makeLine({
    heights: [0, 0],
    pipes: [{ from: 0, to: 1, length: 0, bore: 10, ...pipe }],
    drinkers: drinker === undefined ? [] : [{ ...drinker, point: 1 }],
    sources: [0],
  });
  return {
    ...made,
    drinkers: { ...made.drinkers, ...(stuck === undefined ? {} : { stuck: Uint8Array.of(stuck) }) },
    sources: [{ ...made.sources[0]!, feed: feed && { point: 1, ...feed } }],
    ...(leak === undefined ? {} : { leaks: [{ point: 1, ...leak }] }),
  };
}

function check(written: Written) {
  const { heads, flow = 0, drinkerFlow = 0, leakFlow = 0, feedFlow = 0, reached = [1, 1] } = written;
  const line = lineOf(written);
  const moment: Moment = {
    ...makeMoment(line, [written.sourceHead ?? heads[0]], [written.isWorked ?? true]),
    ...(written.isFeeding === undefined ? {} : { feeding: Uint8Array.of(written.isFeeding ? 1 : 0) }),
  };
  const state: LineSolution = {
    outcome: "solved",
    friction: "darcyWeisbach",
    head: Float64Array.from(heads),
    reached: Uint8Array.from(reached),
    flow: Float64Array.of(flow),
    drinkerFlow: Float64Array.from(written.drinker === undefined ? [] : [drinkerFlow]),
    sourceFlow: Float64Array.of(flow),
    feedFlow: Float64Array.of(feedFlow),
    leakFlow: Float64Array.from(written.leak === undefined ? [] : [leakFlow]),
    checks: { continuity: { worst: 0, at: -1 }, energy: { worst: 0, at: -1 } },
    effort: { steps: 0, evaluations: 0 },
  };
  return checkSolution(line, moment, state, buildLossTable(line, "darcyWeisbach"));
}

const NEVER = Number.POSITIVE_INFINITY;
type Row = readonly [words: string, missing: number, written: Written];

/** What the energy check says is missing [m]; where anything is, it is at the one element there is. */
function says(rows: readonly Row[]) {
  it.each(rows)("%s: %f m", (_, missing, written) => {
    const { energy } = check(written);
    if (missing === NEVER) expect(energy.worst).toBe(NEVER);
    else expect(energy.worst).toBeCloseTo(missing, 12);
    expect(energy.at).toBe(missing === 0 ? -1 : 0);
  });
}

describe("checkSolution of a pipe that loses nothing", () => {
  says([
    ["as high at both ends", 0, { heads: [1, 1], flow: 1e-9 }],
    ["high before it and low beyond it", 0.2, { heads: [1, 0.8], flow: 1e-9 }],
    ["low before it and high beyond it", 0.2, { heads: [0.8, 1], flow: 1e-9 }],
    ["from a source that stands as high", 0, { heads: [1, 1], sourceHead: 1, flow: 1e-9 }],
    ["from a source that stands higher", 0.1, { heads: [0.9, 0.9], sourceHead: 1, flow: 1e-9 }],
    ["from a source that stands lower", 0.2, { heads: [1, 1], sourceHead: 0.8, flow: 1e-9 }],
    ["shut, whatever stands at its ends", 0, { heads: [1, 0], pipe: { shut: true } }],
    ["shut, and passing water", NEVER, { heads: [1, 0], pipe: { shut: true }, flow: 1e-12 }],
    ["cut off at both ends", 0, { heads: [1, 0], reached: [0, 0] }],
    ["cut off at both ends, and passing water", NEVER, { heads: [1, 0], reached: [0, 0], flow: 1e-12 }],
    ["cut off at its first end alone", NEVER, { heads: [1, 0], reached: [0, 1] }],
    ["cut off at its second end alone", NEVER, { heads: [1, 0], reached: [1, 0] }],
  ]);
});

describe("checkSolution of a one-way valve that 0.02 m opens", () => {
  const pipe = { kind: SEGMENT_KIND.oneWay, setting: 0.02 };
  says([
    ["open, and taking what opens it", 0, { pipe, heads: [0.02, 0], flow: 1e-9 }],
    ["open, and taking more", 0.01, { pipe, heads: [1, 0.97], flow: 1e-9 }],
    ["open, and taking less", 0.01, { pipe, heads: [1, 0.99], flow: 1e-9 }],
    ["shut, with as much as opens it", 0, { pipe, heads: [0.02, 0] }],
    ["shut, with more", 0.01, { pipe, heads: [1, 0.97] }],
    ["shut against any head back", 0, { pipe, heads: [0, 5] }],
    ["still but for rounding", 0, { pipe, heads: [0, 5], flow: -5e-16 }],
    ["still but for rounding, forwards", 0, { pipe, heads: [0, 5], flow: 1e-15 }],
    ["flowing a little forwards against the head", 5.02, { pipe, heads: [0, 5], flow: 1e-14 }],
    ["flowing back", NEVER, { pipe, heads: [0, 5], flow: -2e-15 }],
    ["with nothing before it", 0, { pipe, heads: [0, 5], reached: [0, 1] }],
    ["with nothing beyond it", NEVER, { pipe, heads: [0, 5], reached: [1, 0] }],
  ]);
});

describe("checkSolution of a regulator set to 0.5 m", () => {
  const pipe = { kind: SEGMENT_KIND.regulator, setting: 0.5 };
  // 100 velocity heads in a bore of 10 mm at 1e-4 m3/s: 8.2662 m by v = 4 Q / (pi d^2).
  const tight = { ...pipe, bore: 0.01, kInfinity: 100 };
  const loss = (100 * (4e-4 / (Math.PI * 0.01 ** 2)) ** 2) / (2 * 9.80665);
  says([
    ["holding", 0, { pipe, heads: [1, 0.5], flow: 1e-9 }],
    ["holding within the bar", 0, { pipe, heads: [1, 0.5 + 9e-8], flow: 1e-9 }],
    ["held a little high", 0.5 - 2e-7, { pipe, heads: [1, 0.5 + 2e-7], flow: 1e-9 }],
    ["held a little low", 0.5 + 2e-7, { pipe, heads: [1, 0.5 - 2e-7], flow: 1e-9 }],
    ["wide open below its setting", 0, { pipe, heads: [0.4, 0.4], flow: 1e-9 }],
    ["wide open, with less beyond it than there is", 0.1, { pipe, heads: [0.4, 0.3], flow: 1e-9 }],
    ["wide open, with more beyond it than there is", 0.1, { pipe, heads: [0.3, 0.4], flow: 1e-9 }],
    [
      "at its setting, though its own loss leaves less",
      loss - 0.5,
      { pipe: tight, heads: [1, 0.5], flow: 1e-4 },
    ],
    [
      "at its setting, its own loss leaving just that",
      0,
      { pipe: tight, heads: [loss + 0.5, 0.5], flow: 1e-4 },
    ],
    ["at its setting, and flowing back", NEVER, { pipe, heads: [1, 0.5], flow: -1e-12 }],
    ["shut, with its setting beyond it", 0, { pipe, heads: [0.3, 0.5] }],
    ["shut, with more beyond it", 0, { pipe, heads: [1, 0.7] }],
    ["shut, with less beyond it, but more than before it", 0, { pipe, heads: [0.2, 0.3] }],
    ["shut, with less beyond it than before it, within the bar", 0, { pipe, heads: [0.3, 0.3 - 5e-8] }],
    ["shut, with less beyond it than before it", 2e-7, { pipe, heads: [0.3, 0.3 - 2e-7] }],
    ["shut, with less beyond it, and enough before it", 0.7, { pipe, heads: [1, 0.3] }],
    ["open, with more beyond it than its setting", 0.3, { pipe, heads: [1, 0.7], flow: 1e-9 }],
  ]);
});

describe("checkSolution of a drinker that passes 1e-5 m3/s at 1 m, 0.1 m below its point, opened by 0.04 m", () => {
  const drinker = { coefficient: 1e-5, drop: 0.1, openingHead: 0.04 };
  const slow = { ...drinker, exponent: 0.8 };
  says([
    ["as its law has it", 0, { drinker, heads: [0.94, 0.94], drinkerFlow: 1e-5 }],
    ["with less head", 0.2, { drinker, heads: [0.74, 0.74], drinkerFlow: 1e-5 }],
    ["with more head", 0.2, { drinker, heads: [1.14, 1.14], drinkerFlow: 1e-5 }],
    ["of exponent 0.8, as its law has it", 0, { drinker: slow, heads: [0.94, 0.94], drinkerFlow: 1e-5 }],
    [
      "of exponent 0.8, passing half",
      1 - 0.5 ** 1.25,
      { drinker: slow, heads: [0.94, 0.94], drinkerFlow: 5e-6 },
    ],
    ["shut, with no head to open it", 0, { drinker, heads: [-0.07, -0.07] }],
    ["shut, though there is head", 0.3, { drinker, heads: [0.24, 0.24] }],
    ["cut off, and dry", 0, { drinker, heads: [1, 1], reached: [0, 0] }],
    ["cut off, and flowing", NEVER, { drinker, heads: [1, 1], reached: [0, 0], drinkerFlow: 1e-12 }],
    ["with nobody at it", 0, { drinker, isWorked: false, heads: [1, 1] }],
    [
      "with nobody at it, and flowing",
      NEVER,
      { drinker, isWorked: false, heads: [1, 1], drinkerFlow: 1e-12 },
    ],
    [
      "stuck open with nobody at it",
      0,
      { drinker, stuck: STUCK.open, isWorked: false, heads: [0.94, 0.94], drinkerFlow: 1e-5 },
    ],
    [
      "stuck open, yet dry",
      0.94 + 0.06,
      { drinker, stuck: STUCK.open, isWorked: false, heads: [0.94, 0.94] },
    ],
    ["stuck shut, though worked", 0, { drinker, stuck: STUCK.shut, heads: [0.94, 0.94] }],
    [
      "stuck shut, yet flowing",
      NEVER,
      { drinker, stuck: STUCK.shut, heads: [0.94, 0.94], drinkerFlow: 1e-12 },
    ],
  ]);
});

describe("checkSolution of a leak and of a float valve that pass 1e-6 m3/s at 1 m, 0.2 m below their point", () => {
  const leak = { height: -0.2, coefficient: 1e-6 };
  says([
    ["a leak that pours as its law has it", 0, { leak, heads: [0.05, 0.05], leakFlow: 5e-7 }],
    ["a leak that pours too little", 0.75, { leak, heads: [0.8, 0.8], leakFlow: 5e-7 }],
    ["a leak that pours too much", 0.75, { leak, heads: [0.05, 0.05], leakFlow: 1e-6 }],
    ["a leak that is dry with head over it", 0.25, { leak, heads: [0.05, 0.05] }],
    ["a leak that is dry over the water", 0, { leak, heads: [-0.3, -0.3] }],
    ["a leak where no water comes", 0, { leak, heads: [1, 1], reached: [0, 0] }],
    [
      "a leak that pours where no water comes",
      NEVER,
      { leak, heads: [1, 1], reached: [0, 0], leakFlow: 1e-12 },
    ],
  ]);
  const feed = leak;
  says([
    [
      "a valve that fills as its law has it",
      0,
      { feed, isFeeding: true, heads: [0.05, 0.05], feedFlow: 5e-7 },
    ],
    ["a valve that fills too little", 0.75, { feed, isFeeding: true, heads: [0.8, 0.8], feedFlow: 5e-7 }],
    ["a valve that fills too much", 0.75, { feed, isFeeding: true, heads: [0.05, 0.05], feedFlow: 1e-6 }],
    ["a valve that is dry with head over it", 0.25, { feed, isFeeding: true, heads: [0.05, 0.05] }],
    ["a valve that is dry over the water", 0, { feed, isFeeding: true, heads: [-0.3, -0.3] }],
    ["a valve where no water comes", 0, { feed, isFeeding: true, heads: [1, 1], reached: [0, 0] }],
    [
      "a valve that fills where no water comes",
      NEVER,
      { feed, isFeeding: true, heads: [1, 1], reached: [0, 0], feedFlow: 1e-12 },
    ],
    ["a shut valve", 0, { feed, isFeeding: false, heads: [0.05, 0.05] }],
    ["a shut valve that fills", NEVER, { feed, isFeeding: false, heads: [0.05, 0.05], feedFlow: 5e-7 }],
    ["a valve of which nothing is said", 0, { feed, heads: [0.05, 0.05] }],
    ["a valve stuck open", 0, { feed: { ...feed, isStuckOpen: true }, heads: [0.05, 0.05], feedFlow: 5e-7 }],
    [
      "a valve stuck open that is dry",
      0.25,
      { feed: { ...feed, isStuckOpen: true }, isFeeding: false, heads: [0.05, 0.05] },
    ],
    ["water into a source that has no valve", NEVER, { isFeeding: true, heads: [1, 1], feedFlow: 1e-12 }],
  ]);
});

describe("checkSolution of the water that comes and goes", () => {
  it("misses what a leak and a float valve take from their point, and names that point", () => {
    const leak = { height: 0, coefficient: 1e-6 };
    const balanced = check({ leak, heads: [1, 1], flow: 1e-6, leakFlow: 1e-6 });
    expect(balanced).toMatchObject({ passed: true, continuity: { worst: 0, at: -1 } });
    const { continuity, passed } = check({ leak, heads: [1, 1], flow: 4e-6, leakFlow: 1e-6 });
    expect(continuity.worst).toBeCloseTo(3e-6, 15);
    expect([continuity.at, passed]).toEqual([1, false]);
    const filled = check({ feed: leak, isFeeding: true, heads: [1, 1], flow: 4e-6, feedFlow: 1e-6 });
    expect(filled.continuity.worst).toBeCloseTo(3e-6, 15);
  });

  it("measures what is missing by the largest flow, to a thousand-millionth of it", () => {
    const leak = { height: 0, coefficient: 1e-6 };
    const written = { leak, heads: [1, 1], leakFlow: 1e-6 } as const;
    expect(check({ ...written, flow: 1e-6 * (1 + 9e-10) }).passed).toBe(true);
    expect(check({ ...written, flow: 1e-6 * (1 + 1.1e-9) }).passed).toBe(false);
    // Where nothing flows, only rounding may be missing.
    expect(check({ leak, heads: [0, 0], leakFlow: 0, flow: 0 }).passed).toBe(true);
  });
});

it("checkSolution takes the largest flow of all pipes, whichever way round it runs", () => {
  const line = makeLine({
    heights: [0, 0, 0],
    pipes: [
      { from: 0, to: 1, length: 0, bore: 10 },
      { from: 2, to: 0, length: 0, bore: 10 },
    ],
    drinkers: [],
    sources: [0],
  });
  const [small, large] = [1e-9, 1e-6];
  // Each pours what it does at a millionth of a metre.
  const leaks = [small, large].map((flow, k) => ({ point: k + 1, height: 0, coefficient: 1000 * flow }));
  const state: LineSolution = {
    ...{ outcome: "solved", friction: "darcyWeisbach", head: new Float64Array(3).fill(1e-6) },
    ...{ reached: Uint8Array.of(1, 1, 1), drinkerFlow: new Float64Array(0), feedFlow: Float64Array.of(0) },
    flow: Float64Array.of(small, -large * (1 + 5e-10)),
    sourceFlow: Float64Array.of(small + large * (1 + 5e-10)),
    leakFlow: Float64Array.of(small, large),
    checks: { continuity: { worst: 0, at: -1 }, energy: { worst: 0, at: -1 } },
    effort: { steps: 0, evaluations: 0 },
  };
  const table = buildLossTable(line, "darcyWeisbach");
  const found = checkSolution({ ...line, leaks }, makeMoment(line, [1e-6]), state, table);
  // Half of a thousand-millionth of the large one is missing: by the small one it would be far too much.
  expect(found.continuity.at).toBe(2);
  expect(found.continuity.worst / (1e-9 * large)).toBeCloseTo(0.5, 5);
  expect(found.passed).toBe(true);
});
