import { expect, it } from "vitest";
import { SEGMENT_KIND } from "../../../../packages/hydraulics/src/model/line.js";
import {
  drinkerFlowAt,
  evaluateDrinkers,
} from "../../../../packages/hydraulics/src/solve/laws/drinker-laws.js";
import { addOneWayLosses } from "../../../../packages/hydraulics/src/solve/laws/one-way.js";
import { prepareLine } from "../../../../packages/hydraulics/src/solve/prepare-line.js";
import { makeLine } from "../../../arbitraries/make-line.js";

/** Drinkers of 1e-5 m3/s at 1 m, exponents a half, a half and 0.8, 0.3 m below point 1 and opened by 0.1 m. */
const EXPONENTS = [0.5, 0.5, 0.8];
const line = makeLine({
  heights: [0, -1],
  pipes: [{ from: 0, to: 1, length: 1 }],
  drinkers: EXPONENTS.map((exponent) => ({
    point: 1,
    coefficient: 1e-5,
    exponent,
    drop: 0.3,
    openingHead: 0.1,
  })),
  sources: [0],
});
const lawsOf = () => prepareLine(line, "darcyWeisbach").current.network.drinkers;

it("a drinker starts at its own height and what opens it", () => {
  for (const start of lawsOf().start) expect(start).toBeCloseTo(-1.2, 15);
});

it("drinkerFlowAt is k h^x above its start, and nothing at or below it", () => {
  expect(drinkerFlowAt(lawsOf(), 0, 0.25)).toBeCloseTo(5e-6, 18);
  expect(drinkerFlowAt(lawsOf(), 2, 0.25)).toBeCloseTo(1e-5 * 0.25 ** 0.8, 18);
  expect([0, -1].map((head) => drinkerFlowAt(lawsOf(), 2, head))).toEqual([0, 0]);
});

it("evaluateDrinkers gives the head each needs for its flow, and how it rises, for those at work alone", () => {
  const flow = Float64Array.of(5e-6, 7e-6, 2e-6);
  const [loss, slope] = [new Float64Array(3).fill(-1), new Float64Array(3).fill(-1)];
  evaluateDrinkers(lawsOf(), Int32Array.of(0, 2), flow, loss, slope);
  // h = (q/k)^(1/x), h' = h / (x q).
  expect(loss[0]).toBeCloseTo(0.25, 14);
  expect(slope[0]! / (0.25 / (0.5 * 5e-6))).toBeCloseTo(1, 12);
  expect(loss[2]).toBeCloseTo(0.2 ** 1.25, 14);
  expect(slope[2]! / (0.2 ** 1.25 / (0.8 * 2e-6))).toBeCloseTo(1, 12);
  expect([loss[1], slope[1]]).toEqual([-1, -1]);
});

it("evaluateDrinkers asks no head of a drinker that passes nothing, whatever stood there before", () => {
  const [loss, slope] = [new Float64Array(3).fill(7), new Float64Array(3).fill(7)];
  evaluateDrinkers(lawsOf(), Int32Array.of(0, 1, 2), new Float64Array(3), loss, slope);
  expect([...loss, ...slope]).toEqual([0, 0, 0, 0, 0, 0]);
});

it("addOneWayLosses adds what opens each valve, signed along the edge, and leaves pipes alone", () => {
  const valve = { kind: SEGMENT_KIND.oneWay, setting: 0.02, length: 0.1 };
  const valves = makeLine({
    heights: [0, 0, 0, 0],
    pipes: [
      { from: 0, to: 1, ...valve },
      { from: 1, to: 2, length: 1 },
      // Against the way in which the edge is numbered: from the source on.
      { from: 3, to: 2, ...valve, setting: 0.05 },
    ],
    drinkers: [],
    sources: [0],
  });
  const { oneWays } = prepareLine(valves, "darcyWeisbach").current.network;
  const loss = Float64Array.of(0, 1, 1, 1);
  addOneWayLosses(oneWays, loss);
  expect([...loss]).toEqual([0, 1.02, 1, 0.95]);
});
