import { describe, expect, it } from "vitest";
import { createFrontFinder } from "../../../packages/hydraulics/src/search/fronts.js";
import { compare, forest, lines, space, whole } from "./starving-line.js";

describe("the fronts of what hangs on a source", () => {
  it("are in order of cost, each asking less head than all before it", () => {
    const { asks } = forest.standAt(0, 0);
    const labels = createFrontFinder(forest, lines, compare).atNode(0, whole, asks);
    expect(labels.length).toBeGreaterThan(2);
    for (let k = 1; k < labels.length; k += 1) {
      expect(compare(labels[k - 1]!.cost, labels[k]!.cost)).toBeLessThanOrEqual(0);
      expect(labels[k]!.head).toBeLessThan(labels[k - 1]!.head);
    }
  });

  it("leave out all that costs as much as a ceiling, and nothing else", () => {
    const { asks } = forest.standAt(0, space.sources[0]!.options.length - 1);
    const all = createFrontFinder(forest, lines, compare).atNode(0, whole, asks);
    const ceiling = all[Math.floor(all.length / 2)]!.cost;
    const under = createFrontFinder(forest, lines, compare).atNode(0, whole, asks, ceiling);
    const costs = (labels: typeof all) => labels.map(({ cost, head }) => [cost.money, head]);
    expect(costs(under)).toEqual(costs(all.filter(({ cost }) => compare(cost, ceiling) < 0)));
    expect(under.length).toBeGreaterThan(0);
  });
});
