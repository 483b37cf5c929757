import { describe, expect, it } from "vitest";
import { readAsFilled, readDrinker } from "../../../packages/hydraulics/src/judge/read-drinker.js";
import type { SolvedMoment } from "../../../packages/hydraulics/src/judge/solve-moments.js";
import type { Moments } from "../../../packages/hydraulics/src/model/moment.js";
import { makeLine } from "../../arbitraries/make-line.js";

const K = 1e-5;
/** One drinker of 1e-5 sqrt(h), 0.2 m below its point, of which 2e-6 m3/s is asked. */
const line = makeLine({
  heights: [0, 1],
  pipes: [{ from: 0, to: 1, length: 1 }],
  drinkers: [{ point: 1, coefficient: K, drop: 0.2, need: 2e-6 }],
  sources: [0],
});
const momentsOf = (atWork: number) =>
  ({ named: { lowestBusiest: { atWork: Uint8Array.of(atWork) } } }) as unknown as Moments;

/** Solved with 1.5 m at the point when idle, 1.3 m when busy, and the drinker passing 7e-6 m3/s. */
function solved(oneMore: { atNeed: number; atMost: number; most: number }): SolvedMoment {
  const one = (value: number) => Float64Array.of(value);
  return {
    idle: { head: Float64Array.of(1.5, 1.5) },
    solution: { head: Float64Array.of(1.5, 1.3), drinkerFlow: one(7e-6) },
    oneMore: { atNeed: one(oneMore.atNeed), atMost: one(oneMore.atMost), most: one(oneMore.most) },
  } as unknown as SolvedMoment;
}
const nothing = { atNeed: 0, atMost: 0, most: 0 };

/** The flow at which k sqrt(h - taken(q)) is q, by halving. */
function meeting(taken: (q: number) => number, head: number): number {
  let [low, high] = [0, K * Math.sqrt(head)];
  for (let i = 0; i < 60; i += 1) {
    const q = (low + high) / 2;
    if (K * Math.sqrt(Math.max(0, head - taken(q))) > q) low = q;
    else high = q;
  }
  return low;
}

describe("readDrinker", () => {
  it("tells the head over the valve with nobody drinking and with all, and what passes while it is worked", () => {
    const { staticHead, flowingHead, flow } = readDrinker(
      line,
      solved(nothing),
      momentsOf(1),
      "lowestBusiest",
      0,
    );
    expect(staticHead).toBeCloseTo(0.7, 12);
    expect(flowingHead).toBeCloseTo(0.5, 12);
    expect(flow).toBe(7e-6);
    expect(readDrinker(line, solved(nothing), momentsOf(1), "fullIdle", 0).flow).toBe(0);
  });

  it("of one that is not at work tells what it would pass besides: where its law meets what it takes from the line", () => {
    // 0.1 m at its need, then up to 0.4 m at 8e-6 m3/s, on straight lines.
    const taken = (q: number) => (q <= 2e-6 ? 0.05e6 * q : 0.1 + (0.3 * (q - 2e-6)) / 6e-6);
    const { flowingHead, flow } = readDrinker(
      line,
      solved({ atNeed: 0.1, atMost: 0.4, most: 8e-6 }),
      momentsOf(0),
      "lowestBusiest",
      0,
    );
    const expected = meeting(taken, 0.5);
    expect(expected).toBeGreaterThan(2e-6);
    expect(flow / expected).toBeCloseTo(1, 7);
    expect(flowingHead).toBeCloseTo(0.5 - taken(expected), 7);
  });

  it("meets on the first straight line where it gets less than it needs", () => {
    const taken = (q: number) => (0.49 * q) / 2e-6;
    const oneMore = { atNeed: 0.49, atMost: 3, most: 8e-6 };
    const { flow } = readDrinker(line, solved(oneMore), momentsOf(0), "lowestBusiest", 0);
    const expected = meeting(taken, 0.5);
    expect(expected).toBeLessThan(2e-6);
    expect(flow / expected).toBeCloseTo(1, 7);
  });

  it("takes the line as it is where one more takes nothing from it", () => {
    const { flowingHead, flow } = readDrinker(line, solved(nothing), momentsOf(0), "lowestBusiest", 0);
    expect(flow).toBeCloseTo(K * Math.sqrt(0.5), 15);
    expect(flowingHead).toBeCloseTo(0.5, 12);
  });
});

describe("readAsFilled", () => {
  const reading = { staticHead: 0.7, flowingHead: 0.5, flow: 7e-6 };
  it("takes the head of the air off, and what passes with it", () => {
    const filled = readAsFilled(line, 0, reading, { airHead: 0.14, above: 0 });
    expect(filled.staticHead).toBe(0.7);
    expect(filled.flowingHead).toBeCloseTo(0.36, 12);
    expect(filled.flow).toBeCloseTo(6e-6, 15);
    expect(readAsFilled(line, 0, { ...reading, flow: 0 }, { airHead: 0.14, above: 0 }).flow).toBe(0);
    expect(readAsFilled(line, 0, reading, { airHead: 0.6, above: 0 }).flow).toBe(0);
  });

  it("lets nothing past a hump that stands above the water, where there is head beyond it", () => {
    expect(readAsFilled(line, 0, reading, { airHead: 0, above: 0.01 })).toEqual({
      ...reading,
      flowingHead: 0,
      flow: 0,
    });
    const low = { staticHead: -0.1, flowingHead: -0.3, flow: 0 };
    expect(readAsFilled(line, 0, low, { airHead: 0, above: 0.01 })).toBe(low);
  });

  it("changes nothing in a line without air", () => {
    expect(readAsFilled(line, 0, reading, { airHead: 0, above: 0 })).toBe(reading);
  });
});
