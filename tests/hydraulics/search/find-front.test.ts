import { describe, expect, it } from "vitest";
import { compareBy } from "../../../packages/hydraulics/src/search/cost.js";
import { findFront, MARGIN_STEP } from "../../../packages/hydraulics/src/search/find-front.js";
import { planOf } from "./ailing.js";

/** A long hose to eight thirsty bells: the higher the barrel stands, the less wide the hose must be. */
const thirsty = planOf({
  sources: [
    { id: "barrel", vessel: "drum-55gal-plastic", stand: "0 cm", level: { full: "60 cm", lowest: "10 cm" } },
  ],
  points: [{ id: "end", ground: "0 cm", above: "10 cm" }],
  runs: [
    {
      ...{ id: "line", to: "end", length: "30 m", pipe: "hose-1/2" },
      drinkers: { kind: "bell", count: 8, busiest: 8, first: "25 m", every: "50 cm" },
    },
  ],
  shelf: [
    { pipe: "hose-1/2", price: 1 },
    { pipe: "hose-5/8", price: 2 },
    { pipe: "hose-3/4", price: 3 },
    { pipe: "hose-1", price: 4 },
  ],
  prices: { stand: 2 },
});
const finding = findFront(thirsty, { standMost: 0.8, standStep: 0.1 });
if (!finding.ok) throw new Error(JSON.stringify(finding.problems));
const { costAgainstMargin, heightAgainstSize, proven, by } = finding.front;
const compare = compareBy("money");

describe("findFront", () => {
  it("counts money where there are prices, and proves what it finds", () => {
    expect([by, proven]).toEqual(["money", true]);
  });

  it("tells each higher stand with which pipe costs less than with any lower one, and no other", () => {
    expect(heightAgainstSize.length).toBeGreaterThan(1);
    for (let k = 1; k < heightAgainstSize.length; k += 1) {
      const [before, point] = [heightAgainstSize[k - 1]!, heightAgainstSize[k]!];
      expect(point.stand).toBeGreaterThan(before.stand);
      expect(compare(point.cost, before.cost)).toBeLessThan(0);
    }
    // What the stand costs is left out: only pipe is paid for.
    for (const { cost } of heightAgainstSize) expect(cost.stand).toBe(0);
  });

  it("tells for more money more head to spare, by 5 mm or more", () => {
    expect(costAgainstMargin.length).toBeGreaterThan(2);
    for (let k = 1; k < costAgainstMargin.length; k += 1) {
      const [before, point] = [costAgainstMargin[k - 1]!, costAgainstMargin[k]!];
      expect(compare(point.cost, before.cost)).toBeGreaterThan(0);
      expect(point.margin).toBeGreaterThanOrEqual(before.margin + MARGIN_STEP);
    }
  });

  it("of sizes that cost the same tells the one with most to spare alone", () => {
    const shelf = ["hose-1/2", "hose-5/8", "hose-3/4"].map((pipe, k) => ({ pipe, price: k === 0 ? 1 : 2 }));
    const same = findFront({ ...thirsty, shelf }, { standMost: 0.3, standStep: 0.3 });
    if (!same.ok) throw new Error(JSON.stringify(same.problems));
    const points = same.front.costAgainstMargin;
    expect(points.length).toBeGreaterThan(0);
    for (let k = 1; k < points.length; k += 1)
      expect(compare(points[k]!.cost, points[k - 1]!.cost)).toBeGreaterThan(0);
    expect(points.flatMap(({ changes }) => changes)).not.toContainEqual(
      expect.objectContaining({ to: "hose-5/8" }),
    );
  });

  it("does so where water has two ways to go, and costs alone say where to begin", () => {
    const [line] = thirsty.runs;
    const ring = planOf({
      sources: thirsty.sources,
      points: [{ id: "far", ground: "0 cm", above: "10 cm" }],
      runs: [
        { id: "one", from: "barrel", to: "far", length: "30 m", pipe: "hose-1/2" },
        { id: "two", from: "barrel", to: "far", length: "30 m", pipe: "hose-1/2", drinkers: line!.drinkers },
      ],
      shelf: [
        { pipe: "hose-1/2", price: 1 },
        { pipe: "hose-5/8", price: 2 },
        { pipe: "hose-3/4", price: 2 },
      ],
      prices: { stand: 2 },
    });
    const found = findFront(ring, { standMost: 0.3, standStep: 0.3 });
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    const points = found.front.costAgainstMargin;
    expect(points.length).toBeGreaterThan(1);
    for (let k = 1; k < points.length; k += 1) {
      expect(compare(points[k]!.cost, points[k - 1]!.cost)).toBeGreaterThan(0);
      expect(points[k]!.margin).toBeGreaterThan(points[k - 1]!.margin);
    }
  });

  it("has one point without drinkers, which nothing can come short of", () => {
    const [run] = thirsty.runs;
    const { drinkers: _, ...bare } = run!;
    const none = findFront({ ...thirsty, runs: [bare] }, { standMost: 0.3, standStep: 0.3 });
    expect(none.ok && none.front.costAgainstMargin.map(({ margin }) => margin)).toEqual([
      Number.POSITIVE_INFINITY,
    ]);
  });

  it("that may judge nothing proves nothing", () => {
    const none = findFront(thirsty, { standMost: 0.8, standStep: 0.1, mostJudged: 0 });
    expect(none.ok && none.front.proven).toBe(false);
  });

  it("gives with each point the plan that it is, on the stand that it tells", () => {
    for (const { plan, stand } of [...costAgainstMargin, ...heightAgainstSize])
      expect(Number.parseFloat(plan.sources[0]!.stand!) / 100).toBeCloseTo(stand, 9);
  });
});
