import { describe, expect, it } from "vitest";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import type { CauseCode } from "../../../../packages/hydraulics/src/judge/trouble/cause.js";
import { asBuilt, mayHappen } from "../../../../packages/hydraulics/src/judge/trouble/rehearse-truth.js";
import type { Random } from "../../../../packages/hydraulics/src/numerics/random.js";
import { penPlan } from "../birds/pens.js";
import { ASKED_ON, planOf } from "./ask.js";

const asking = askAboutTrouble(planOf(penPlan()), { day: ASKED_ON });
if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
const { bench } = asking.question;
const { line, levels } = bench;

/** A die that falls as it is told: these between 0 and 1 one after the other, whole numbers at their greatest. */
function die(uniforms: readonly number[] = [], normal = 0): Random {
  const left = [...uniforms];
  return {
    uniform: () => {
      const next = left.shift();
      if (next === undefined) throw new Error("the die was thrown too often");
      return next;
    },
    normal: () => normal,
    integerBelow: (below: number) => below - 1,
  } as unknown as Random;
}
const makersOf = (code: CauseCode, id: string) =>
  mayHappen(bench).filter((make) => {
    const { cause } = make(bench, die(new Array(9).fill(0.99)));
    return cause.code === code && cause.id === id;
  });
function truth(code: CauseCode, id: string, ...uniforms: number[]) {
  const makers = makersOf(code, id);
  expect(makers).toHaveLength(1);
  return makers[0]!(bench, die(uniforms)).trial;
}
/** From low to high evenly in logarithms. */
const between = (low: number, high: number, share: number) => low * (high / low) ** share;

describe("a line as built", () => {
  it("is one deviation off by a centimetre, a level by 15 mm, flows by an eighth of their kind and a twelfth of their own", () => {
    const built = asBuilt(bench, die([], 1));
    built.line.drinkers.height.forEach((height, d) => {
      expect(height - line.drinkers.height[d]!).toBeCloseTo(0.01, 12);
      const flow = built.line.drinkers.coefficient[d]! / line.drinkers.coefficient[d]!;
      expect(Math.log(flow)).toBeCloseTo(0.12 + 0.08, 9);
    });
    expect(asBuilt(bench, die([], -1)).levels[0]! - levels[0]!).toBeCloseTo(-0.015, 12);
  });

  it("has its water between a millimetre over the outlet and full, however far off it is", () => {
    const [source] = line.sources;
    expect(asBuilt(bench, die([], 100)).levels[0]).toBe(source!.levels.full);
    expect(asBuilt(bench, die([], -100)).levels[0]).toBeCloseTo(source!.outlet + 0.001, 12);
  });

  it("is the plan itself where nothing is off", () => {
    const built = asBuilt(bench, die([], 0));
    expect(built.levels).toEqual(levels);
    expect([...built.line.drinkers.coefficient]).toEqual([...line.drinkers.coefficient]);
  });
});

describe("what is made to happen", () => {
  it("a stoppage sits at the run's start in two of five, else anywhere; in eleven of twenty shut, else open by 2 to 30 in a thousand", () => {
    const { firstSegment, segmentCount } = line.runs[1]!;
    const last = firstSegment + segmentCount - 1;
    const shutAt = (trial: ReturnType<typeof truth>) =>
      [...trial.line.segments.shut].flatMap((isShut, s) => (isShut > line.segments.shut[s]! ? [s] : []));
    expect(shutAt(truth("runBlocked", "hen line", 0.39, 0.54))).toEqual([firstSegment]);
    expect(shutAt(truth("runBlocked", "hen line", 0.41, 0.54))).toEqual([last]);
    for (const share of [0, 0.5, 1]) {
      const trial = truth("runBlocked", "hen line", 0.39, 0.56, share);
      const openShare = between(0.002, 0.03, share);
      expect(trial.severity.openShare).toBeCloseTo(openShare, 12);
      expect(shutAt(trial)).toEqual([]);
      const more = trial.line.segments.kInfinity[firstSegment]! - line.segments.kInfinity[firstSegment]!;
      expect(more).toBeCloseTo((1 / (0.61 * openShare)) ** 2, 3);
      expect(trial.isAlike).toBe(true);
    }
    expect(truth("runBlocked", "hen line", 0.39, 0.54)).toMatchObject({
      severity: { openShare: 0 },
      isAlike: false,
    });
  });

  it("a sag holds 4 to 30 cm of air from some place behind the run's start on", () => {
    for (const share of [0, 0.5, 1]) {
      const trial = truth("sagHoldsAir", "hen line", share);
      const airHead = between(0.04, 0.3, share);
      expect(trial.severity.airHead).toBeCloseTo(airHead, 12);
      const { points } = line.runs[1]!;
      points.forEach((point, k) => {
        expect(trial.airHead![point]).toBeCloseTo(k === points.length - 1 ? airHead : 0, 12);
      });
    }
  });

  it("low water is empty in two of five, else 35 to 98 hundredths of what could be drawn are gone", () => {
    const [source] = line.sources;
    const over = levels[0]! - source!.outlet;
    const empty = truth("waterLow", "barrel", 0.39);
    expect(empty).toMatchObject({ isAlike: false, levels: [source!.outlet] });
    expect(empty.severity.below).toBeCloseTo(over, 12);
    for (const share of [0, 0.5, 1]) {
      const trial = truth("waterLow", "barrel", 0.41, share);
      expect(trial.severity.below! / over).toBeCloseTo(between(0.35, 0.98, share), 9);
      expect(levels[0]! - trial.levels![0]!).toBeCloseTo(trial.severity.below!, 12);
      expect(trial.isAlike).toBe(true);
    }
  });

  it("slime leaves a drinker 2 to 40 parts in a hundred in every other case, itself alone", () => {
    const id = line.drinkers.id[2]!;
    for (const share of [0, 1]) {
      const trial = truth("drinkerBlocked", id, 0.51, share);
      expect(trial.severity.openShare).toBeCloseTo(between(0.02, 0.4, share), 12);
      trial.line.drinkers.coefficient.forEach((k, d) => {
        const left = d === 2 ? trial.severity.openShare! : 1;
        expect(k / line.drinkers.coefficient[d]!).toBeCloseTo(left, 12);
      });
    }
    // Else it is one of the states that are looked for: the first of them, blocked, in half.
    expect(truth("drinkerBlocked", id, 0.49, 0.49).severity.openShare).toBe(0);
    expect(truth("drinkerBlocked", id, 0.49, 0.74).severity.openShare).toBe(0.08);
    expect(truth("drinkerBlocked", id, 0.49, 1).severity.openShare).toBe(0.3);
  });

  it("is every run and source once, and what birds drink in the line as built", () => {
    expect(makersOf("runBlocked", "feed")).toHaveLength(1);
    expect(makersOf("moreDrunk", "")).toHaveLength(1);
    expect(makersOf("lessDrunk", "")).toHaveLength(1);
    expect(makersOf("givesLessThanThought", line.drinkers.groups[0]!.id)).toHaveLength(1);
    const built = asBuilt(bench, die([], 1));
    const less = makersOf("lessDrunk", "")[0]!(built, die([0.2]));
    expect(less.trial.line).toBe(built.line);
    expect(less.bench).toBe(built);
  });
});
