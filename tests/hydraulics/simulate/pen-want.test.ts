import { expect, test } from "vitest";
import { wantOfPen } from "../../../packages/hydraulics/src/simulate/pen-want.js";
import { lineOf } from "../model/built.js";
import { batch, flockOf, MILD, PLAIN_BIRD } from "./made-birds.js";

const nipples = lineOf([{ length: "3 m", drinkers: { kind: "nipple-side-action", count: 4 } }]);
const bells = lineOf([{ length: "3 m", drinkers: { kind: "bell", count: 2 } }]);
const wantOf = (line: typeof nipples, ...batches: ReturnType<typeof batch>[]) =>
  wantOfPen(line, flockOf(line, [{ batches }]).pens[0]!, MILD);

test("wantOfPen of evening drinkers has its busiest hour an hour before dark: 15 % of the day of 12 hours", () => {
  // The cautious default for 12 hours of light; from twice the rate in the last 3 hours (Leeson
  // and Summers) alone it would be 2 in 15.
  const { busiestHour, birds, batches } = wantOf(nipples, batch(50));
  expect(birds).toBe(50);
  expect(busiestHour!.share).toBeCloseTo(0.15, 9);
  expect(busiestHour!.from).toBeGreaterThanOrEqual(MILD.dawn + 9 * 3600);
  expect(busiestHour!.from + 3600).toBeLessThanOrEqual(MILD.dawn + MILD.light);
  expect(batches[0]!.demand).toBeCloseTo((270e-6 * 0.15) / 3600, 12);
});

test("wantOfPen has fewer and larger bouts at open water", () => {
  expect(wantOf(nipples, batch(5)).batches[0]!.boutVolume).toBeCloseTo(270e-6 / 40, 12);
  expect(wantOf(bells, batch(5)).batches[0]!.boutVolume).toBeCloseTo(270e-6 / 20, 12);
});

test("wantOfPen takes one hour for the pen: batches of other habits drink their own share of it", () => {
  const even = { ...PLAIN_BIRD, dayShape: "even" as const };
  const { busiestHour, batches } = wantOf(nipples, batch(10), batch(10, { kind: even }));
  expect(batches[1]!.demand).toBeLessThan(batches[0]!.demand);
  const total = batches.reduce((sum, one) => sum + one.count * one.demand * 3600, 0);
  expect(total / (20 * 270e-6)).toBeCloseTo(busiestHour!.share, 9);
});

test("wantOfPen counts for nothing the birds that have not come", () => {
  const { birds, batches } = wantOf(nipples, batch(10), batch(30, { ageDays: -1 }));
  expect(birds).toBe(10);
  expect(batches[1]).toMatchObject({ count: 0, demand: 0, boutVolume: 0 });
  expect(wantOf(nipples, batch(30, { ageDays: -1 }))).toMatchObject({ birds: 0, busiestHour: undefined });
});

test("wantOfPen counts chicks from the day they hatch", () => {
  expect(wantOf(nipples, batch(30, { ageDays: 0 })).birds).toBe(30);
});
