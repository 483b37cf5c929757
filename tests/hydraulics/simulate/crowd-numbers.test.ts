import { expect, test } from "vitest";
import { crowdOf } from "../../../packages/hydraulics/src/simulate/crowd.js";
import {
  atWorkVaried,
  countByGroup,
  intakeSpread,
  ordinaryOf,
  shareOrdinary,
} from "../../../packages/hydraulics/src/simulate/crowd-numbers.js";
import { lineOf } from "../model/built.js";
import { batch, flockOf } from "./made-birds.js";

const nipples = (count: number) => ({ kind: "nipple-side-action", count, every: "20 cm" });
const line = lineOf(
  [
    { id: "near", length: "3 m", drinkers: nipples(6) },
    { id: "far", length: "3 m", drinkers: nipples(12) },
  ],
  { sources: [{ vessel: "drum-55gal-plastic", stand: "60 cm" }] },
);
const crowdFor = (birds: number) => crowdOf(line, flockOf(line, [{ batches: [batch(birds)] }]), new Set());
const sum = (atWork: Uint8Array) => atWork.reduce((total, one) => total + one, 0);

test("atWorkVaried (nothing varied) is the crowd's own", () => {
  const crowd = crowdFor(50);
  expect(atWorkVaried(line, crowd, { intake: [1], flow: [1, 1], takenIn: 1 })).toEqual(crowd.atWork);
});

test("atWorkVaried puts more to work where birds drink more or drinkers give less, and fewer the other way", () => {
  const crowd = crowdFor(50);
  const varied = (intake: number, flow: number, takenIn = 1) =>
    sum(atWorkVaried(line, crowd, { intake: [intake], flow: [flow, flow], takenIn }));
  expect(varied(1.8, 1)).toBeGreaterThan(sum(crowd.atWork));
  expect(varied(1, 0.5)).toBeGreaterThan(sum(crowd.atWork));
  expect(varied(1, 1, 0.5)).toBe(varied(1, 0.5));
  expect(varied(0.4, 1)).toBeLessThan(sum(crowd.atWork));
  expect(varied(0.001, 1)).toBeGreaterThan(0);
});

test("intakeSpread goes from the least table to the greatest, over the figure to size on", () => {
  const { low, high } = intakeSpread(crowdFor(50).pens[0]!);
  // The bird made for these tests is sized on 270 mL and expected to drink 200.
  expect(low).toBeLessThanOrEqual(200 / 270 + 1e-9);
  expect(high).toBeGreaterThanOrEqual(1);
});

test("intakeSpread weighs batches by how much they drink, and is 1 where nobody has come", () => {
  const [pen] = crowdFor(50).pens;
  const intake = (low: number, size: number, high: number) => ({ ...pen!.want.intakes[0]!, low, size, high });
  const of = (counts: readonly number[], intakes: readonly ReturnType<typeof intake>[]) =>
    intakeSpread({
      ...pen!,
      want: { ...pen!.want, intakes, batches: counts.map((count) => ({ ...pen!.want.batches[0]!, count })) },
    });
  const two = [intake(1, 2, 3), intake(10, 40, 50)];
  expect(of([10, 1], two)).toEqual({ low: 20 / 60, high: 80 / 60 });
  expect(of([1, 0], [intake(1, 2, 1.5), intake(1, 1, 9)])).toEqual({ low: 0.5, high: 1 });
  expect(of([0, 0], two)).toEqual({ low: 1, high: 1 });
});

test("ordinaryOf is nothing where nobody drinks, and never more drinkers than give", () => {
  const [pen] = crowdFor(300).pens;
  expect(ordinaryOf({ ...pen!, load: { ...pen!.load, demand: 0 } })).toBe(0);
  expect(ordinaryOf({ ...pen!, load: { ...pen!.load, load: 1e9 } })).toBe(pen!.giving.length);
  expect(ordinaryOf({ ...pen!, load: { ...pen!.load, load: 0 } })).toBe(1);
});

test("shareOrdinary takes drinkers evenly spaced, each from the middle of its share", () => {
  const [pen] = crowdFor(300).pens;
  const counts = [9, 9];
  // Of 18, of which the first six are near: with three, the 4th, the 10th and the 16th.
  shareOrdinary(line, { ...pen!, load: { ...pen!.load, load: 3 / pen!.want.ordinaryShare } }, counts);
  expect(counts).toEqual([1, 2]);
  shareOrdinary(line, { ...pen!, load: { ...pen!.load, load: 1 / pen!.want.ordinaryShare } }, counts);
  expect(counts).toEqual([0, 1]);
});

test("atWorkVaried leaves a pen alone that has no birds or no water", () => {
  const crowd = crowdFor(50);
  const factors = { intake: [9], flow: [1, 1], takenIn: 1 };
  const [pen] = crowd.pens;
  const empty = { ...crowd, pens: [{ ...pen!, want: { ...pen!.want, birds: 0 } }] };
  expect(atWorkVaried(line, empty, factors)).toEqual(crowd.atWork);
  expect(atWorkVaried(line, { ...crowd, pens: [{ ...pen!, giving: [] }] }, factors)).toEqual(crowd.atWork);
});

test("ordinaryOf is the load scaled to a mean hour of light, rounded up, and at least one where any bird drinks", () => {
  const [pen] = crowdFor(300).pens;
  // A twelfth of the day in a mean hour against 15 % in the busiest: 5 in 9 of its load.
  expect(ordinaryOf(pen!)).toBe(Math.ceil((pen!.load.load * 5) / 9));
  expect(ordinaryOf(crowdFor(1).pens[0]!)).toBe(1);
});

test("shareOrdinary spreads the ordinary number over the groups by their drinkers", () => {
  const [pen] = crowdFor(300).pens;
  const counts = [9, 9];
  shareOrdinary(line, pen!, counts);
  expect(counts[0]! + counts[1]!).toBe(ordinaryOf(pen!));
  expect(counts[1]!).toBeGreaterThanOrEqual(counts[0]!);
});

test("countByGroup counts those at work in each group", () => {
  const atWork = new Uint8Array(18);
  atWork.fill(1, 4, 9);
  expect(countByGroup(line, atWork)).toEqual([2, 3]);
});
