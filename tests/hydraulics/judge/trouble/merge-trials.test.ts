import { describe, expect, it } from "vitest";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import { mergeTrials } from "../../../../packages/hydraulics/src/judge/trouble/merge-trials.js";
import { withNarrow, withShutAt } from "../../../../packages/hydraulics/src/judge/trouble/pipe-causes.js";
import type { Trial } from "../../../../packages/hydraulics/src/judge/trouble/trial.js";
import { type Line, STUCK } from "../../../../packages/hydraulics/src/model/line.js";
import { withMishap } from "../../../../packages/hydraulics/src/model/with-mishap.js";
import { ASKED_ON, example } from "./ask.js";

const asking = askAboutTrouble(example("alder-bank-brooder"), { day: ASKED_ON });
if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
const { bench } = asking.question;
const { line } = bench;

const trial = (more: Partial<Trial> = {}): Trial => ({
  weight: 0.5,
  severity: { along: 1 },
  line,
  isAlike: true,
  ...more,
});
const withLine = (changed: Line, more: Partial<Trial> = {}) => trial({ line: changed, ...more });
const merged = (a: Trial, b: Trial) => {
  const [one, other] = [mergeTrials(bench, a, b), mergeTrials(bench, b, a)];
  expect(one === undefined).toBe(other === undefined);
  return one;
};
/** A drinker that gives only a share of its flow. */
const slimed = (drinker: number, share: number): Line => ({
  ...line,
  drinkers: {
    ...line.drinkers,
    coefficient: line.drinkers.coefficient.map((k, d) => (d === drinker ? share * k : k)),
  },
});

describe("mergeTrials", () => {
  it("of a trial and the plan as it is gives that trial's line, both weights taken together", () => {
    const [one, same] = [withLine(withShutAt(line, 0), { isAlike: false }), trial()];
    expect(merged(one, same)).toMatchObject({ weight: 0.25, severity: {}, isAlike: false, line: one.line });
    expect(merged(same, one)?.line).toBe(one.line);
    expect(merged(same, same)).toMatchObject({ isAlike: true, line, levels: bench.levels });
  });

  it("holds what either changes, place by place", () => {
    const both = merged(withLine(slimed(1, 0.3)), withLine(withShutAt(line, 2), { isAlike: false }))!;
    expect(both.line.drinkers.coefficient[1]).toBeCloseTo(0.3 * line.drinkers.coefficient[1]!, 15);
    expect(both.line.segments.shut[2]).toBe(1);
    const two = merged(withLine(slimed(1, 0.3)), withLine(slimed(3, 0.1)))!.line.drinkers.coefficient;
    expect([...two].map((k, d) => k / line.drinkers.coefficient[d]!)).toEqual(
      [1, 0.3, 1, 0.1, 1].map((share) => expect.closeTo(share, 12)),
    );
  });

  it("takes shares of one drinker's flow of each other, and adds up what sits in one pipe", () => {
    const shares = merged(withLine(slimed(2, 0.3)), withLine(slimed(2, 0.5)))!.line.drinkers.coefficient;
    expect(shares[2]! / line.drinkers.coefficient[2]!).toBeCloseTo(0.15, 12);
    const lost = (changed: Line) => changed.segments.kInfinity[1]! - line.segments.kInfinity[1]!;
    const [a, b] = [withNarrow(line, 1, 0.04), withNarrow(line, 1, 0.012)];
    expect(lost(merged(withLine(a), withLine(b))!.line)).toBeCloseTo(lost(a) + lost(b), 6);
  });

  it("is none where both set the same drinker, vessel or joint otherwise; one where both set it alike", () => {
    const open = withMishap(line, { kind: "drinkerStuckOpen", drinker: 1 });
    const shut = withMishap(line, { kind: "drinkerBlocked", drinker: 1 });
    const other = withMishap(line, { kind: "drinkerBlocked", drinker: 2 });
    expect(merged(withLine(open), withLine(shut))).toBeUndefined();
    expect([...merged(withLine(open), withLine(other))!.line.drinkers.stuck!]).toEqual([
      STUCK.not,
      STUCK.open,
      STUCK.shut,
      STUCK.not,
      STUCK.not,
    ]);
    const apart = (point: number) => withMishap(line, { kind: "jointApart", point });
    const joints = [line.sources[0]!.point, line.runs[0]!.points.at(-1)!];
    const middle = apart(joints[1]!);
    expect(merged(withLine(middle), withLine(middle))).toBeUndefined();
    expect(merged(withLine(middle), withLine(open))!.line.leaks).toHaveLength(middle.leaks!.length);
    const lid = withMishap(line, { kind: "lidOff", source: 0 });
    const sealed = withMishap(line, { kind: "ventBlocked", source: 0 });
    expect(merged(withLine(lid), withLine(sealed))).toBeUndefined();
  });

  it("adds up columns of air, and keeps one where only one has any", () => {
    const air = (head: number) => new Float64Array(line.points.count).fill(head);
    const both = merged(trial({ airHead: air(0.1) }), trial({ airHead: air(0.05) }));
    expect([...both!.airHead!].every((head) => Math.abs(head - 0.15) < 1e-12)).toBe(true);
    expect(merged(trial({ airHead: air(0.1) }), trial())!.airHead).toEqual(air(0.1));
    expect(merged(trial(), trial())).not.toHaveProperty("airHead");
  });

  it("keeps who is at work, the birds, what is spilt and what nobody fills, of whichever trial has it", () => {
    const atWork = bench.atWork.map((one) => 1 - one);
    const { flock } = bench.asked;
    const spilt = { drinker: 1, left: 0.1 };
    for (const more of [{ atWork }, { flock }, { spilt }, { notFilled: 0 }] as Partial<Trial>[]) {
      expect(merged(trial(more), trial())).toMatchObject(more);
      expect(merged(trial(), trial(more))).toMatchObject(more);
    }
    expect(merged(trial({ flock }), trial({ flock }))).toBeUndefined();
    expect(merged(trial({ spilt }), trial({ spilt }))).toBeUndefined();
    expect(merged(trial({ notFilled: 0 }), trial({ notFilled: 0 }))!.notFilled).toBe(0);
    expect(merged(trial({ notFilled: 0 }), trial({ notFilled: 1 }))).toBeUndefined();
  });

  it("is none where one states the heads of its own level, and the other another level, vessel or head", () => {
    const heads = Float64Array.of(0.3);
    expect(merged(trial({ heads }), trial({ heads }))).toBeUndefined();
    expect(merged(trial({ heads }), trial({ levels: [0.1] }))).toBeUndefined();
    const lid = withMishap(line, { kind: "lidOff", source: 0 });
    expect(merged(trial({ heads }), withLine(lid))).toBeUndefined();
    expect(merged(trial({ heads }), withLine(slimed(1, 0.3)))!.heads).toBe(heads);
    expect(merged(trial({ levels: [0.1] }), trial())!.levels).toEqual([0.1]);
    expect(merged(trial({ levels: [0.1] }), trial({ levels: [0.2] }))).toBeUndefined();
  });
});
