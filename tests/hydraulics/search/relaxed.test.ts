import { describe, expect, it } from "vitest";
import { NO_COST } from "../../../packages/hydraulics/src/search/cost.js";
import { costOf } from "../../../packages/hydraulics/src/search/cure-space.js";
import { boundByCost, boundByDemand } from "../../../packages/hydraulics/src/search/relaxed.js";
import { compare, forest, lines, plans, space, whole, working } from "./starving-line.js";

describe("boundByDemand", () => {
  const bound = boundByDemand(forest, lines, compare);
  const leastOf = (fit: readonly number[][]) => fit.map((picks) => costOf(space, picks)).sort(compare)[0];

  it("is no more than the cheapest plan that works, of the whole and of each part; none where none works", () => {
    expect(working.length).toBeGreaterThan(0);
    expect(working.length).toBeLessThan(plans.length);
    for (const [v, domain] of whole.entries())
      for (const k of domain) {
        const part = whole.map((all, w) => (w === v ? [k] : all));
        const least = leastOf(working.filter((picks) => picks[v] === k));
        const found = bound(part);
        if (least === undefined) continue;
        expect(found).toBeDefined();
        expect(compare(found!.cost, least)).toBeLessThanOrEqual(0);
      }
  });

  it("points at a plan of the part it is asked about, and costs what that costs where nothing lies on the shelf", () => {
    for (const [v, domain] of whole.entries())
      for (const k of domain) {
        const part = whole.map((all, w) => (w === v ? [k] : all));
        const found = bound(part);
        if (found === undefined) continue;
        found.picks.forEach((pick, w) => {
          expect(part[w]).toContain(pick);
        });
        expect(compare(costOf(space, found.picks), found.cost)).toBe(0);
      }
  });

  it("finds nothing below what costs as much, and the same as without a limit below what costs a little more", () => {
    const { cost } = boundByDemand(forest, lines, compare)(whole)!;
    const below = (money: number) => boundByDemand(forest, lines, compare)(whole, { ...cost, money });
    expect(below(cost.money - 0.5)).toBeUndefined();
    expect(below(cost.money + 0.5)?.cost).toEqual(cost);
  });
});

describe("boundByCost", () => {
  const bound = boundByCost(space, compare, (option) => option !== 1);

  it("takes every choice at its cheapest that is left and allowed", () => {
    expect(bound(whole)).toEqual({ picks: [0, 0, 0, 0], cost: NO_COST });
    const { picks, cost } = bound([whole[0]!.slice(1), whole[1]!, whole[2]!, [1, 3]])!;
    // The stand that is left and allowed is the third option; of hoses the 5/8 is cheaper.
    expect([space.runs[0]!.options[picks[0]!]!.pipe, picks[1], picks[3]]).toEqual(["hose-5/8", 0, 3]);
    expect(compare(cost, costOf(space, picks))).toBe(0);
  });

  it("is none where nothing is left, or nothing that is allowed", () => {
    expect(bound([[], ...whole.slice(1)])).toBeUndefined();
    expect(bound([...whole.slice(0, 3), [1]])).toBeUndefined();
  });
});
