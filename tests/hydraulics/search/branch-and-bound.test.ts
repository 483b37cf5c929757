import { describe, expect, it } from "vitest";
import { randomFrom } from "../../../packages/hydraulics/src/numerics/random.js";
import { countPlans, searchSpace } from "../../../packages/hydraulics/src/search/branch-and-bound.js";
import { addCosts, compareBy, NO_COST } from "../../../packages/hydraulics/src/search/cost.js";
import type { CureSpace, Picks } from "../../../packages/hydraulics/src/search/cure-space.js";
import type { Searching } from "../../../packages/hydraulics/src/search/searching.js";

const compare = compareBy("money");

/** Three choices of two to four options each, which cost up to two in tenths; about one plan in six works. */
function drawn(seed: number): Searching & { readonly plans: readonly Picks[] } {
  const random = randomFrom(seed);
  const sources = [0, 1, 2].map((source) => ({
    ...{ source, id: `barrel ${source}` },
    options: Array.from({ length: 2 + random.integerBelow(3) }, (_, k) => ({
      height: k,
      stand: undefined,
      cost: { ...NO_COST, money: random.integerBelow(20) / 10 },
    })),
  }));
  // Nothing is asked of the plan itself: what works is drawn.
  const space = { plan: {}, runs: [], sources, spent: NO_COST } as unknown as CureSpace;
  const plans = sources.reduce<number[][]>(
    (all, { options }) => all.flatMap((picks) => options.map((_, k) => [...picks, k])),
    [[]],
  );
  const working = new Set(plans.filter(() => random.uniform() < 1 / 6).map((picks) => picks.join()));
  return {
    ...{ space, compare, plans, mostParts: 1e6, mayGoOn: () => true },
    works: (picks) => working.has(picks.join()),
    bound: (domains) => {
      const picks = domains.map((domain, s) => {
        const { options } = sources[s]!;
        return domain.reduce((a, b) => (options[b]!.cost.money < options[a]!.cost.money ? b : a));
      });
      return { picks, cost: costOf(space, picks) };
    },
  };
}

const costOf = ({ sources }: CureSpace, picks: Picks) =>
  sources.map(({ options }, s) => options[picks[s]!]!.cost).reduce(addCosts);

/** The least that any plan costs which works. */
const leastOf = ({ space, plans, works }: ReturnType<typeof drawn>) =>
  Math.min(...plans.filter(works).map((picks) => costOf(space, picks).money));

const SEEDS = Array.from({ length: 60 }, (_, k) => k + 1);

describe("searchSpace", () => {
  it("finds the cheapest plan that works, as looking at each does, and proves it", () => {
    for (const seed of SEEDS) {
      const searching = drawn(seed);
      const { found, proven, bound, plans, judged } = searchSpace(searching);
      const least = leastOf(searching);
      expect([seed, found?.cost.money.toFixed(6) ?? "none"]).toEqual([
        seed,
        Number.isFinite(least) ? least.toFixed(6) : "none",
      ]);
      if (found !== undefined) expect(searching.works(found.picks)).toBe(true);
      expect([proven, bound, plans]).toEqual([true, undefined, searching.plans.length]);
      // No plan is judged twice.
      expect(judged).toBeLessThanOrEqual(countPlans(searching.space));
    }
  });

  it("judges no plan that costs more than the cheapest that works", () => {
    for (const seed of SEEDS) {
      const searching = drawn(seed);
      const least = leastOf(searching);
      const works = (picks: Picks) => {
        expect(costOf(searching.space, picks).money).toBeLessThanOrEqual(least + 1e-9);
        return searching.works(picks);
      };
      searchSpace({ ...searching, works });
    }
  });

  it("stopped, proves nothing, and no plan that works costs less than its bound", () => {
    for (const seed of SEEDS) {
      const searching = drawn(seed);
      let judged = 0;
      const mayGoOn = () => {
        judged += 1;
        return judged < 3;
      };
      const { proven, bound, found } = searchSpace({ ...searching, mayGoOn });
      expect(proven).toBe(bound === undefined);
      if (bound !== undefined) expect(bound.money).toBeLessThanOrEqual(leastOf(searching) + 1e-9);
      else if (found !== undefined) expect(found.cost.money).toBeCloseTo(leastOf(searching), 9);
    }
  });

  it("looks for nothing that costs as much as what is known", () => {
    for (const seed of SEEDS) {
      const searching = drawn(seed);
      const least = leastOf(searching);
      if (!Number.isFinite(least)) continue;
      const below = (money: number) => searchSpace({ ...searching, below: { ...NO_COST, money } });
      expect(below(least).found).toBeUndefined();
      expect(below(least + 0.05).found?.cost.money).toBeCloseTo(least, 9);
    }
  });
});
