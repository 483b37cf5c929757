import { describe, expect, it } from "vitest";
import { drawOfPen, spilledShareOfPen } from "../../../packages/hydraulics/src/simulate/pen-draw.js";
import { spilledShareOf } from "../../../packages/hydraulics/src/tables/spilled-share.js";
import { lineOf } from "../model/built.js";
import { batch, flockOf, MILD, PLAIN_BIRD } from "./made-birds.js";

const line = lineOf([
  { id: "near", length: "3 m", drinkers: { kind: "nipple-side-action", count: 3 } },
  { id: "far", length: "3 m", drinkers: { kind: "bell", count: 1 } },
]);
const [nipple, bell] = [spilledShareOf("nipple").spilled, spilledShareOf("bell").spilled];
const drawOf = (...batches: ReturnType<typeof batch>[]) => {
  const flock = flockOf(line, [{ batches, drinkers: [0, 1, 2] }]);
  return drawOfPen(line, flock, flock.pens[0]!, "size");
};

describe("spilledShareOfPen", () => {
  it("is the mean over the drinkers that a pen can reach, and nothing where it reaches none", () => {
    const [all, some, none] = flockOf(line, [
      { batches: [] },
      { batches: [], drinkers: [0, 3] },
      { batches: [], drinkers: [] },
    ]).pens;
    expect(bell).toBeGreaterThan(nipple);
    expect(spilledShareOfPen(line, all!)).toBeCloseTo((3 * nipple + bell) / 4, 12);
    expect(spilledShareOfPen(line, some!)).toBeCloseTo((nipple + bell) / 2, 12);
    expect(spilledShareOfPen(line, none!)).toBe(0);
  });
});

describe("drawOfPen", () => {
  it("draws what its birds drink and spill, and in no stretch anything else", () => {
    const { daily, edges, rates } = drawOf(batch(50));
    expect(daily).toBeCloseTo(50 * 270e-6 * (1 + nipple), 12);
    expect([edges[0], edges.at(-1), rates.length]).toEqual([0, 86_400, edges.length - 1]);
    const sum = rates.reduce((all, rate, i) => all + rate * (edges[i + 1]! - edges[i]!), 0);
    expect(sum).toBeCloseTo(daily, 12);
    // In the hour that ends an hour before dark, 15 % of the day.
    const busiest = edges.indexOf(MILD.dawn + 10 * 3600);
    expect(edges[busiest + 1]! - edges[busiest]!).toBe(3600);
    expect(rates[busiest]).toBeCloseTo((0.15 * daily) / 3600, 15);
    // In the dark, a hundredth in twelve hours.
    expect(rates[0]).toBeCloseTo((0.01 * daily) / 43_200, 15);
  });

  it("adds up batches of other habits stretch by stretch", () => {
    const other = batch(20, { kind: { ...PLAIN_BIRD, dayShape: "even" } });
    const [one, both, alone] = [drawOf(batch(50)), drawOf(batch(50), other), drawOf(other)];
    expect(both.daily).toBeCloseTo(one.daily + alone.daily, 12);
    const rateAt = ({ edges, rates }: typeof one, time: number) =>
      rates[edges.findIndex((edge) => edge > time) - 1]!;
    for (let time = 900; time < 86_400; time += 1800)
      expect(rateAt(both, time)).toBeCloseTo(rateAt(one, time) + rateAt(alone, time), 15);
  });

  it("draws nothing for birds that have not come", () => {
    expect(drawOf(batch(50, { ageDays: -1 }))).toMatchObject({ daily: 0 });
    expect(drawOf(batch(50), batch(70, { ageDays: -1 })).daily).toBeCloseTo(drawOf(batch(50)).daily, 15);
    expect(drawOf().daily).toBe(0);
  });
});
