import { describe, expect, it } from "vitest";
import { SEGMENT_KIND } from "../../../packages/hydraulics/src/model/line.js";
import { headTakenByOneMore } from "../../../packages/hydraulics/src/solve/one-more.js";
import {
  prepareAlike,
  prepareBoth,
  prepareLine,
  startAfresh,
} from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { FRICTION_LAWS } from "../../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { keepState, startFrom } from "../../../packages/hydraulics/src/solve/workspace.js";
import { makeLine, makeMoment } from "../../arbitraries/make-line.js";

/** 0 - pipe - 1 - regulator that holds 0.2 m - 2 - pipe - 3 with a drinker; another drinker at 1. */
const line = (length = 10) =>
  makeLine({
    heights: [0, 0, 0, 0],
    pipes: [
      { from: 0, to: 1, length },
      { from: 1, to: 2, length: 0, kind: SEGMENT_KIND.regulator, setting: 0.2, kInfinity: 5 },
      { from: 2, to: 3, length: 6 },
    ],
    drinkers: [1, 3].map((point) => ({ point, coefficient: 1e-5 })),
    sources: [0],
  });
const busy = makeMoment(line(), [1]);
const low = makeMoment(line(), [0.1]);

describe.each(FRICTION_LAWS)("prepareLine (%s)", (friction) => {
  it("starts afresh when asked: the next answer is that of a line never solved, to the last digit", () => {
    const prepared = prepareLine(line(), friction);
    const fresh = solveLine(prepared, low);
    solveLine(prepared, busy);
    expect(prepared.current.set).toEqual([{ segment: 1, setting: "holds" }]);
    expect(startAfresh(prepared)).toBe(prepared);
    expect(prepared.current.set).toEqual([]);
    expect(solveLine(prepared, low)).toStrictEqual(fresh);
  });

  it("starts afresh with rings and with a drinker that rests now, as a line never solved does", () => {
    const ring = makeLine({
      heights: [0, 0, 0],
      pipes: [
        { from: 0, to: 1, length: 5 },
        { from: 1, to: 2, length: 3 },
        { from: 2, to: 0, length: 9 },
      ],
      drinkers: [1, 2, 2].map((point) => ({ point, coefficient: 1e-5 })),
      sources: [0],
    });
    const prepared = prepareLine(ring, friction);
    for (const head of [1, 0.05, 0.003, 20]) {
      solveLine(prepared, makeMoment(ring, [2]));
      const resting = makeMoment(ring, [head], [true, false, true]);
      const again = solveLine(startAfresh(prepared), resting);
      expect(again).toStrictEqual(solveLine(prepareLine(ring, friction), resting));
      expect(again.drinkerFlow[1]).toBe(0);
    }
  });

  it("made ready alike while a regulator holds, starts afresh from that", () => {
    const before = prepareLine(line(), friction);
    solveLine(before, busy);
    const alike = startAfresh(prepareAlike(before, line(14)));
    expect(alike.current.set).toEqual([{ segment: 1, setting: "holds" }]);
    expect(solveLine(alike, busy).outcome).toBe("solved");
  });

  it("after a solve asks of one drinker more behind a valve what the pipes lose more, and not what opens the valve", () => {
    const valved = makeLine({
      heights: [0, 0, 0],
      pipes: [
        { from: 0, to: 1, length: 0, kind: SEGMENT_KIND.oneWay, setting: 0.02, kInfinity: 5 },
        { from: 1, to: 2, length: 6 },
      ],
      drinkers: [{ point: 2, coefficient: 1e-5 }],
      sources: [0],
    });
    const prepared = prepareLine(valved, friction);
    const { flow } = solveLine(prepared, makeMoment(valved, [1]));
    const more = headTakenByOneMore(prepared, 1e-6);
    const lossAt = (q: number) => {
      const { pipes } = prepared.current.network;
      const [loss, slope] = [new Float64Array(3), new Float64Array(3)];
      pipes.kernel(pipes, 3, new Float64Array(3).fill(q), loss, slope);
      return loss[1]! + loss[2]!;
    };
    expect(more[2]).toBeCloseTo(lossAt(flow[1]! + 1e-6) - lossAt(flow[1]!), 12);
  });

  it("made ready alike, keeps who holds and starts from the last state, but not what it weighed the old figures by", () => {
    const before = prepareLine(line(), friction);
    solveLine(before, busy);
    const alike = prepareAlike(before, line(14));
    expect(alike.current.set).toEqual(before.current.set);
    const solution = solveLine(alike, busy);
    const fresh = solveLine(prepareLine(line(14), friction), busy);
    expect(solution.outcome).toBe("solved");
    expect(solution.head[1]).toBeCloseTo(fresh.head[1]!, 8);
    expect(solution.effort.steps).toBeLessThan(fresh.effort.steps);
  });

  it("kept and begun from again, gives the same answer to the last digit", () => {
    const prepared = prepareLine(line(), friction);
    solveLine(prepared, busy);
    const kept = keepState(prepared.current.work);
    const idle = makeMoment(line(), [1], [false, true]);
    const first = solveLine(prepared, idle);
    solveLine(prepared, makeMoment(line(), [0.7]));
    // It was warm, and is again.
    prepared.current.work.warm = false;
    startFrom(prepared.current.work, kept);
    expect(solveLine(prepared, idle)).toStrictEqual(first);
  });

  it("keeps what it has built for each set of devices, and comes back to it", () => {
    const prepared = prepareLine(line(), friction);
    solveLine(prepared, busy);
    const holding = prepared.current;
    solveLine(prepared, low);
    expect(prepared.current).not.toBe(holding);
    solveLine(prepared, busy);
    expect(prepared.current).toBe(holding);
    expect(prepared.zonings.size).toBe(2);
  });

  it("for both laws at once is prepared for each", () => {
    const both = prepareBoth(line());
    const alone = prepareLine(line(), friction);
    expect(solveLine(both[friction], busy)).toStrictEqual(solveLine(alone, busy));
  });

  it("after a solve asks of one drinker more behind a regulator that holds only what the pipe behind it loses", () => {
    const prepared = prepareLine(line(), friction);
    solveLine(prepared, busy);
    const taken = headTakenByOneMore(prepared, 1e-6);
    expect([taken[0], taken[2]]).toEqual([0, 0]);
    const lossOf = (s: number, flow: number) => {
      const { pipes, topology } = prepared.current.network;
      const [loss, slope] = [new Float64Array(4), new Float64Array(4)];
      pipes.kernel(pipes, 4, new Float64Array(4).fill(flow), loss, slope);
      return loss[topology.segment.indexOf(s)]!;
    };
    const { flow } = solveLine(prepared, busy);
    expect(taken[1]).toBeCloseTo(lossOf(0, flow[0]! + 1e-6) - lossOf(0, flow[0]!), 12);
    expect(taken[3]).toBeCloseTo(lossOf(2, flow[2]! + 1e-6) - lossOf(2, flow[2]!), 12);
  });
});
