import { describe, expect, it } from "vitest";
import { type Line, SEGMENT_KIND, STUCK } from "../../../packages/hydraulics/src/model/line.js";
import type { Moment } from "../../../packages/hydraulics/src/model/moment.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { FRICTION_LAWS } from "../../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { fedSources, withOutlets } from "../../../packages/hydraulics/src/solve/with-outlets.js";
import { makeLine, makeMoment } from "../../arbitraries/make-line.js";

/**
 * Four points under one head, joined by pipe so wide that it loses nothing: a header tank fed at point 1 and another
 * at point 3, that are no part of the line but for their valves; drinkers that work, are stuck open, are stuck shut;
 * two leaks. Every flow is then k sqrt(head - height), by hand.
 */
const HEAD = 0.64;
const wide = { length: 0.001, bore: 20 };

function everyOutlet(isStuckOpen = false): { line: Line; moment: Moment } {
  const made = makeLine({
    heights: [0, 0, 0, 0, -5, -5],
    pipes: [0, 1, 2].map((from) => ({ from, to: from + 1, ...wide })),
    drinkers: [1, 2, 3].map((point) => ({ point, coefficient: 1e-6 * point })),
    sources: [0, 4, 5],
  });
  const [supply, first, second] = made.sources;
  const line: Line = {
    ...made,
    drinkers: { ...made.drinkers, stuck: Uint8Array.of(STUCK.not, STUCK.open, STUCK.shut) },
    sources: [
      supply!,
      { ...first!, feed: { point: 1, height: -0.36, coefficient: 4e-6, isStuckOpen } },
      { ...second!, feed: { point: 3, height: 0.15, coefficient: 5e-6 } },
    ],
    leaks: [
      { point: 2, height: 0.39, coefficient: 6e-6 },
      { point: 3, height: -0.17, coefficient: 7e-6 },
    ],
  };
  const moment = makeMoment(line, [HEAD, -4, -4], [true, false, true]);
  return { line, moment: { ...moment, feeding: Uint8Array.of(1, 0, 1) } };
}

describe.each(FRICTION_LAWS)("solveLine (%s) of all that lets water out", (friction) => {
  const close = (found: ArrayLike<number>, expected: readonly number[]) =>
    expect(Array.from(found, (q) => (q * 1e6).toFixed(6))).toEqual(expected.map((q) => q.toFixed(6)));

  it("gives each what the head over it drives, and nothing where it is shut", () => {
    const { line, moment } = everyOutlet();
    const solution = solveLine(prepareLine(line, friction), moment);
    expect(solution.outcome).toBe("solved");
    // sqrt 0.64 = 0.8, sqrt (0.64 - 0.15) = 0.7, sqrt 0.25 = 0.5, sqrt 0.81 = 0.9.
    close(solution.drinkerFlow, [0.8, 1.6, 0]);
    close(solution.feedFlow, [0, 0, 3.5]);
    close(solution.leakFlow, [3, 6.3]);
    close(solution.sourceFlow, [0.8 + 1.6 + 3.5 + 3 + 6.3, 0, 0]);
    close(solution.flow, [15.2, 14.4, 9.8]);
  });

  it("fills through a float valve stuck open, whatever its tank asks", () => {
    const { line, moment } = everyOutlet(true);
    close(solveLine(prepareLine(line, friction), moment).feedFlow, [0, 4, 3.5]);
  });

  it("takes a moment that says nothing of float valves as one in which none fills", () => {
    const { line, moment } = everyOutlet();
    const silent = makeMoment(line, [...moment.sourceHead], [true, false, true]);
    close(solveLine(prepareLine(line, friction), silent).feedFlow, [0, 0, 0]);
  });

  it("leaves an outlet beyond a shut tap dry, and its point at its own height", () => {
    const { line, moment } = everyOutlet();
    const shut = { ...line, segments: { ...line.segments, shut: Uint8Array.of(0, 0, 1) } };
    const solution = solveLine(prepareLine(shut, friction), moment);
    expect(solution.outcome).toBe("solved");
    close(solution.feedFlow, [0, 0, 0]);
    close(solution.leakFlow, [3, 0]);
    expect([solution.head[3], solution.reached[3]]).toEqual([0, 0]);
  });

  it("holds what a regulator lets through to what the outlets behind it take", () => {
    // 0.64 m before it, 0.25 m behind: the drinkers pass half of what they would at 1 m.
    const made = makeLine({
      heights: [0, 0, 0],
      pipes: [
        { from: 0, to: 1, ...wide },
        { from: 1, to: 2, ...wide, kind: SEGMENT_KIND.regulator, setting: 0.25 },
      ],
      drinkers: [1, 2].map((point) => ({ point, coefficient: 1e-5 })),
      sources: [0],
    });
    const line: Line = { ...made, leaks: [{ point: 2, height: 0, coefficient: 3e-6 }] };
    const solution = solveLine(prepareLine(line, friction), makeMoment(line, [HEAD]));
    expect(solution.outcome).toBe("solved");
    close(solution.drinkerFlow, [8, 5]);
    close(solution.leakFlow, [1.5]);
    close(solution.flow, [14.5, 6.5]);
  });
});

describe("withOutlets", () => {
  it("counts the sources that a valve fills by their place among all", () => {
    expect(fedSources(everyOutlet().line)).toEqual([1, 2]);
  });

  it("hangs valves, then leaks, behind the drinkers: orifices that nothing else opens", () => {
    const { drinkers } = withOutlets(everyOutlet().line);
    expect(drinkers.count).toBe(7);
    expect([...drinkers.point]).toEqual([1, 2, 3, 1, 3, 2, 3]);
    expect([...drinkers.height]).toEqual([0, 0, 0, -0.36, 0.15, 0.39, -0.17]);
    expect([...drinkers.coefficient]).toEqual([1e-6, 2e-6, 3e-6, 4e-6, 5e-6, 6e-6, 7e-6]);
    expect([...drinkers.exponent]).toEqual(new Array(7).fill(0.5));
    expect([...drinkers.openingHead]).toEqual(new Array(7).fill(0));
  });

  it("is the line itself where nothing but drinkers lets water out", () => {
    const line = makeLine({ heights: [0], pipes: [], drinkers: [], sources: [0] });
    expect(withOutlets(line)).toBe(line);
  });
});
