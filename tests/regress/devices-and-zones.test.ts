import { describe, expect, it } from "vitest";
import { SEGMENT_KIND } from "../../packages/hydraulics/src/model/line.js";
import { prepareLine } from "../../packages/hydraulics/src/solve/prepare-line.js";
import { FRICTION_LAWS } from "../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../packages/hydraulics/src/solve/solve-line.js";
import { makeLine, makeMoment } from "../arbitraries/make-line.js";

describe.each(FRICTION_LAWS)("solveLine (%s)", (friction) => {
  it("feeds a zone through a one-way valve after another has been found shut, though both were at first", () => {
    // Two ways into one zone of drinkers. Taken open, the wide way back from the source carries water against its
    // valve and on, backwards through the other: both are found shut. Then only the second would open again.
    const line = makeLine({
      heights: [0, 0, 0, 0],
      pipes: [
        { from: 0, to: 1, length: 20, bore: 0.01 },
        { from: 1, to: 2, length: 1, bore: 0.01, kind: SEGMENT_KIND.oneWay, setting: 0.02 },
        { from: 3, to: 0, length: 1, bore: 0.05, kind: SEGMENT_KIND.oneWay, setting: 0.02 },
        { from: 2, to: 3, length: 1, bore: 0.02 },
      ],
      drinkers: [
        { point: 1, coefficient: 1e-5 },
        { point: 3, coefficient: 1e-5 },
      ],
      sources: [0],
    });
    const solution = solveLine(prepareLine(line, friction), makeMoment(line, [1]));
    expect(solution.outcome).toBe("solved");
    expect(solution.flow[2]).toBe(0);
    expect(solution.reached[3]).toBe(1);
    // What passes the open valve is what the zone behind it drinks, and it drinks.
    expect(solution.drinkerFlow[1]).toBeGreaterThan(1e-6);
    expect(solution.flow[1]).toBeCloseTo(solution.drinkerFlow[1]!, 12);
  });

  it("gives one answer for a regulator of some loss, whatever was solved before", () => {
    // Idle, the regulator holds 0.5 m. Busy, its own loss leaves less than that: it stands wide open and holds nothing.
    const line = makeLine({
      heights: [0, 0, 0],
      pipes: [
        { from: 0, to: 1, length: 0, bore: 0.01, kind: SEGMENT_KIND.regulator, setting: 0.5, kInfinity: 40 },
        { from: 1, to: 2, length: 1, bore: 0.02 },
      ],
      drinkers: [{ point: 2, coefficient: 1e-4 }],
      sources: [0],
    });
    const busy = makeMoment(line, [1], [true]);
    const fresh = solveLine(prepareLine(line, friction), busy);
    const used = prepareLine(line, friction);
    const idle = solveLine(used, makeMoment(line, [1], [false]));
    const after = solveLine(used, busy);
    expect([idle.outcome, fresh.outcome, after.outcome]).toEqual(["solved", "solved", "solved"]);
    expect(idle.head[1]).toBeCloseTo(0.5, 9);
    expect(fresh.head[1]).toBeLessThan(0.5);
    expect(after.head[1]).toBeCloseTo(fresh.head[1]!, 9);
    expect(after.drinkerFlow[0]).toBeCloseTo(fresh.drinkerFlow[0]!, 12);
  });

  it.each([
    ["a dead end lies before it", []],
    ["a lower source lies before it", [0]],
  ])("lets nothing back through a regulator that is fed from behind, where %s", (_words, before) => {
    // 0 - regulator - 1 - pipe - 2, the water at 2: its outlet stands far above its setting, and it cannot hold that.
    const line = makeLine({
      heights: [0, 0, 0],
      pipes: [
        { from: 0, to: 1, length: 0, bore: 0.02, kind: SEGMENT_KIND.regulator, setting: 0.1, kInfinity: 10 },
        { from: 2, to: 1, length: 5, bore: 0.02 },
      ],
      drinkers: [{ point: 1, coefficient: 1e-5 }],
      sources: [...before, 2],
    });
    const heads = before.length === 0 ? [2] : [1, 2];
    const solution = solveLine(prepareLine(line, friction), makeMoment(line, heads));
    expect(solution.outcome).toBe("solved");
    expect(solution.flow[0]).toBe(0);
    expect(solution.head[1]).toBeGreaterThan(1.5);
    // All that the drinker passes comes from the source behind.
    expect(solution.flow[1]).toBeCloseTo(solution.drinkerFlow[0]!, 12);
  });

  it("opens a regulator again that was shut, once its outlet stands low enough to be fed", () => {
    // Idle, the source behind stands higher and shuts it; empty, that source is the lower one and the regulator feeds.
    const line = makeLine({
      heights: [0, 0, 0],
      pipes: [
        { from: 0, to: 1, length: 0, bore: 0.02, kind: SEGMENT_KIND.regulator, setting: 0.1, kInfinity: 10 },
        { from: 2, to: 1, length: 5, bore: 0.02 },
      ],
      drinkers: [{ point: 1, coefficient: 1e-5 }],
      sources: [0, 2],
    });
    const prepared = prepareLine(line, friction);
    expect(solveLine(prepared, makeMoment(line, [1, 2])).flow[0]).toBe(0);
    const low = solveLine(prepared, makeMoment(line, [1, 0.05]));
    expect(low.outcome).toBe("solved");
    expect(low.head[1]).toBeCloseTo(0.1, 9);
    expect(low.flow[0]).toBeGreaterThan(0);
    expect(low.flow[0]).toBeCloseTo(
      solveLine(prepareLine(line, friction), makeMoment(line, [1, 0.05])).flow[0]!,
      12,
    );
  });

  it("shuts a regulator whose outlet is a source that stands above its setting, and feeds that source while it is low", () => {
    const line = makeLine({
      heights: [0, 0],
      pipes: [
        { from: 0, to: 1, length: 5, bore: 0.02, kind: SEGMENT_KIND.regulator, setting: 0.1, kInfinity: 10 },
      ],
      drinkers: [],
      sources: [0, 1],
    });
    const prepared = prepareLine(line, friction);
    expect(solveLine(prepared, makeMoment(line, [1, 0.5]))).toMatchObject({
      outcome: "solved",
      flow: new Float64Array([0]),
    });
    const low = solveLine(prepared, makeMoment(line, [1, 0.05]));
    expect(low.outcome).toBe("solved");
    expect(low.flow[0]).toBeGreaterThan(0);
  });

  it.each([
    ["one-way valve", SEGMENT_KIND.oneWay],
    ["regulator", SEGMENT_KIND.regulator],
  ])("lets no water stand before a %s that nothing feeds, though none flows", (_words, kind) => {
    // 2 - device - 1: only the outlet of the device is joined to the source. A head there above that of the source
    // would balance at no flow, and nothing would ever have made it.
    const line = makeLine({
      heights: [0, 0, 0],
      pipes: [
        { from: 0, to: 1, length: 5, bore: 0.02 },
        { from: 2, to: 1, length: 5, bore: 0.02, kind, setting: 0.05 },
      ],
      drinkers: [{ point: 2, coefficient: 1e-5 }],
      sources: [0],
    });
    const idle = solveLine(prepareLine(line, friction), makeMoment(line, [1], [false]));
    expect(idle.outcome).toBe("solved");
    expect(Array.from(idle.reached)).toEqual([1, 1, 0]);
    expect(idle.head[1]).toBeCloseTo(1, 12);
    expect(idle.flow[1]).toBe(0);
  });
});
