import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { wholeOf } from "../../../packages/hydraulics/src/search/branch-and-bound.js";
import { compareBy, NO_COST } from "../../../packages/hydraulics/src/search/cost.js";
import { buildCureLines } from "../../../packages/hydraulics/src/search/cure-lines.js";
import { buildCureSpace, costOf } from "../../../packages/hydraulics/src/search/cure-space.js";
import { buildDemandForest } from "../../../packages/hydraulics/src/search/demand-forest.js";
import { createFrontFinder } from "../../../packages/hydraulics/src/search/fronts.js";
import { boundByCost, boundByDemand } from "../../../packages/hydraulics/src/search/relaxed.js";
import { buildRequirement, judgeScene } from "../../../packages/hydraulics/src/search/requirement.js";

const compare = compareBy("money");

/** A low barrel, a thin hose of 20 m and a thin lane of 6 m with four thirsty bells: it starves as it is. */
function starving() {
  const reading = checkDocument({
    headfall: 1,
    sources: [
      {
        id: "barrel",
        vessel: "drum-55gal-plastic",
        stand: "20 cm",
        level: { full: "60 cm", lowest: "10 cm" },
      },
    ],
    points: [{ id: "tee", ground: "0 cm", above: "10 cm" }],
    runs: [
      { id: "feed", to: "tee", length: "20 m", pipe: "hose-1/2" },
      {
        ...{ id: "lane", from: "tee", length: "6 m", fall: "0 cm", pipe: "hose-1/2" },
        drinkers: { kind: "bell", count: 4, busiest: 4, every: "1 m" },
      },
    ],
    shelf: [
      { pipe: "hose-1/2", price: 1 },
      { pipe: "hose-5/8", price: 2 },
      { pipe: "hose-3/4", price: 3 },
    ],
    prices: { stand: 2 },
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const options = { standMost: 1.2, standStep: 0.4 };
  const space = buildCureSpace(reading.plan, options, { pipes: true, stands: true });
  const building = buildCureLines(space);
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  const { lines } = building;
  const requiring = buildRequirement(reading.plan, lines.present, {});
  if (!requiring.ok) throw new Error(JSON.stringify(requiring.problems));
  const { requirement } = requiring;
  const forest = buildDemandForest(lines, requirement, requirement.scenes[0]!)!;
  const works = (picks: readonly number[]) => {
    const line = lines.lineOf(picks);
    return line !== undefined && judgeScene(requirement, line, requirement.scenes[0]!).meets;
  };
  return { space, lines, forest, works };
}
const { space, lines, forest, works } = starving();
const whole = wholeOf(space);
const plans = whole.reduce<number[][]>(
  (all, domain) => all.flatMap((picks) => domain.map((k) => [...picks, k])),
  [[]],
);
const working = plans.filter(works);

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
    expect(bound(whole)).toEqual({ picks: [0, 0, 0], cost: NO_COST });
    const { picks, cost } = bound([whole[0]!.slice(1), whole[1]!, [1, 3]])!;
    // The stand that is left and allowed is the third option; of hoses the 5/8 is cheaper.
    expect([space.runs[0]!.options[picks[0]!]!.pipe, picks[1], picks[2]]).toEqual(["hose-5/8", 0, 3]);
    expect(compare(cost, costOf(space, picks))).toBe(0);
  });

  it("is none where nothing is left, or nothing that is allowed", () => {
    expect(bound([[], whole[1]!, whole[2]!])).toBeUndefined();
    expect(bound([whole[0]!, whole[1]!, [1]])).toBeUndefined();
  });
});

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
