import { describe, expect, it } from "vitest";
import { flowOfDrinker } from "../../../packages/hydraulics/src/model/drinker-flow.js";
import { buildMoments } from "../../../packages/hydraulics/src/model/moment.js";
import { crowdOf, putToWork } from "../../../packages/hydraulics/src/simulate/crowd.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import type { BirdKind } from "../../../packages/hydraulics/src/tables/bird-types.js";
import { lineOf } from "../model/built.js";
import { batch, flockOf, PLAIN_BIRD } from "./made-birds.js";

const NOTHING_STATED: ReadonlySet<number> = new Set();
const sources = (stand: string) => [
  { vessel: "drum-55gal-plastic", stand, level: { full: "70 cm", lowest: "10 cm" } },
];
const nipples = (count: number, more: Record<string, unknown> = {}) => ({
  kind: "nipple-side-action",
  count,
  every: "20 cm",
  ...more,
});

/** Ten nipples on a thin, long hose: what one draws, the others miss. */
const thin = (stand = "60 cm") =>
  lineOf(
    [
      { length: "40 m", pipe: { bore: "5 mm" } },
      { length: "3 m", pipe: { bore: "5 mm" }, drinkers: nipples(10) },
    ],
    {
      sources: sources(stand),
    },
  );

describe("crowdOf", () => {
  it("ends where crowd and line agree: the flows of those at work give back the number at work", () => {
    const line = thin();
    const crowd = crowdOf(line, flockOf(line, [{ batches: [batch(30)] }]), NOTHING_STATED);
    const [pen] = crowd.pens;
    const moment = { ...buildMoments(line).named.lowestBusiest, atWork: crowd.atWork };
    const { head, drinkerFlow } = solveLine(prepareLine(line, "darcyWeisbach"), moment);
    const flows = Array.from(crowd.atWork, (isAtWork, d) =>
      isAtWork === 1
        ? drinkerFlow[d]!
        : flowOfDrinker(line.drinkers, d, head[line.drinkers.point[d]!]! - line.drinkers.height[d]!),
    );
    const rate = flows.reduce((sum, flow) => sum + Math.min(0.5 * flow, 1e-6), 0) / flows.length;
    expect(pen!.load.load).toBeCloseTo(pen!.load.demand / rate, 6);
    expect(crowd.atWork.reduce((sum, one) => sum + one, 0)).toBe(pen!.busiest);
    expect(pen!.busiest).toBe(Math.min(10, pen!.load.atOnce));
  });

  it("puts more birds at a weak line than at one that gives all a bird can swallow, and takes rounds to find it", () => {
    const wide = lineOf([{ length: "3 m", pipe: { bore: "3 cm" }, drinkers: nipples(10) }], {
      sources: sources("1 m"),
    });
    const line = thin();
    const many = { batches: [batch(30)] };
    const [strong] = crowdOf(wide, flockOf(wide, [many]), NOTHING_STATED).pens;
    const [weak] = crowdOf(line, flockOf(line, [many]), NOTHING_STATED).pens;
    expect(weak!.load.load).toBeGreaterThan(strong!.load.load);
    expect(weak!.busiest).toBeGreaterThan(strong!.busiest);
    // Where a bird takes in no more the more it is given, the second round finds the crowd of the first.
    expect(strong!.rounds).toBe(2);
    expect(weak!.rounds).toBeGreaterThan(2);
  });

  it("says that birds come short where they want more than the line gives with every drinker at work", () => {
    const line = thin("20 cm");
    const [pen] = crowdOf(line, flockOf(line, [{ batches: [batch(400)] }]), NOTHING_STATED).pens;
    expect(pen!.load.saturates).toBe(true);
    expect(pen!.load.capacity).toBeLessThan(pen!.load.demand);
    expect(pen!.busiest).toBe(10);
  });

  it("puts the farthest drinkers of a pen to work, across its groups", () => {
    const line = lineOf(
      [
        { id: "near", length: "3 m", pipe: { bore: "2 cm" }, drinkers: nipples(6) },
        { id: "far", length: "3 m", pipe: { bore: "2 cm" }, drinkers: nipples(6) },
      ],
      { sources: sources("60 cm") },
    );
    const crowd = crowdOf(line, flockOf(line, [{ batches: [batch(30)] }]), NOTHING_STATED);
    const { busiest } = crowd.pens[0]!;
    expect(busiest).toBeGreaterThan(0);
    expect(busiest).toBeLessThan(6);
    expect(Array.from(crowd.atWork)).toEqual(
      Array.from({ length: 12 }, (_, d) => (d >= 12 - busiest ? 1 : 0)),
    );
  });

  it("puts the last of those to work that hang equally far away", () => {
    const line = lineOf(
      [{ length: "3 m", pipe: { bore: "2 cm" }, drinkers: nipples(6, { first: "2 m", every: "0 cm" }) }],
      { sources: sources("60 cm") },
    );
    const crowd = crowdOf(line, flockOf(line, [{ batches: [batch(20)] }]), NOTHING_STATED);
    const { busiest } = crowd.pens[0]!;
    expect(busiest).toBeGreaterThan(0);
    expect(busiest).toBeLessThan(6);
    expect(Array.from(crowd.atWork)).toEqual(Array.from({ length: 6 }, (_, d) => (d >= 6 - busiest ? 1 : 0)));
  });

  it("keeps the number a plan states of a group, and lets the others take the rest", () => {
    const line = lineOf(
      [
        { id: "near", length: "3 m", pipe: { bore: "2 cm" }, drinkers: nipples(6, { busiest: 2 }) },
        { id: "far", length: "3 m", pipe: { bore: "2 cm" }, drinkers: nipples(6) },
      ],
      { sources: sources("60 cm") },
    );
    const crowd = crowdOf(line, flockOf(line, [{ batches: [batch(60)] }]), new Set([0]));
    const atWork = (from: number) => crowd.atWork.slice(from, from + 6).reduce((sum, one) => sum + one, 0);
    expect(atWork(0)).toBe(2);
    expect(atWork(6)).toBe(crowd.pens[0]!.busiest - 2);
  });

  it("of birds that have not come yet puts nobody to work", () => {
    const line = thin();
    const crowd = crowdOf(line, flockOf(line, [{ batches: [batch(30, { ageDays: -3 })] }]), NOTHING_STATED);
    expect(crowd.pens[0]).toMatchObject({ busiest: 0, want: { birds: 0, busiestHour: undefined } });
    expect(crowd.atWork.every((one) => one === 0)).toBe(true);
  });

  it("puts one drinker to work for a few chicks, though fewer than one drinks at once", () => {
    const line = thin();
    const sip: BirdKind = { ...PLAIN_BIRD, size: [{ ...PLAIN_BIRD.size[0]!, intake: 1e-6 }] };
    const few = { batches: [batch(5, { kind: sip })] };
    const { pens, atWork } = crowdOf(line, flockOf(line, [few]), NOTHING_STATED);
    expect(pens[0]!.load.atOnce).toBe(0);
    expect(pens[0]!.busiest).toBe(1);
    expect(atWork.reduce((sum, one) => sum + one, 0)).toBe(1);
  });

  it("counts drinkers above the water as none, and so many as it takes beyond them as at work", () => {
    const line = lineOf(
      [
        { id: "low", length: "3 m", pipe: { bore: "2 cm" }, drinkers: nipples(4) },
        {
          id: "high",
          length: "5 m",
          fall: "-3 m",
          pipe: { bore: "2 cm" },
          drinkers: nipples(2, { first: "4.5 m" }),
        },
      ],
      { sources: sources("60 cm") },
    );
    const [pen] = crowdOf(line, flockOf(line, [{ batches: [batch(5)] }]), NOTHING_STATED).pens;
    expect(pen!.giving.map(({ drinker }) => drinker)).toEqual([0, 1, 2, 3]);
    expect(pen!.places).toBe(4);
  });
});

describe("putToWork", () => {
  it("passes over those that give nothing until enough give", () => {
    const atWork = new Uint8Array(5);
    putToWork(Int32Array.from([4, 3, 2, 1, 0]), Uint8Array.from([0, 1, 0, 1, 1]), 2, atWork);
    expect(Array.from(atWork)).toEqual([0, 1, 1, 1, 1]);
  });

  it("puts at least one to work, and sends the rest away", () => {
    const atWork = Uint8Array.from([1, 1, 1]);
    putToWork(Int32Array.from([2, 1, 0]), Uint8Array.from([1, 1, 1]), -1, atWork);
    expect(Array.from(atWork)).toEqual([0, 0, 1]);
  });
});
