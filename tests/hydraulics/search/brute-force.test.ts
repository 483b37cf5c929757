import { expect, it } from "vitest";
import { searchByForce } from "../../../packages/hydraulics/src/search/brute-force.js";
import { compareBy } from "../../../packages/hydraulics/src/search/cost.js";
import { costOf } from "../../../packages/hydraulics/src/search/cure-space.js";
import { plans, space, works } from "./starving-line.js";

const compare = compareBy("money");

it("searchByForce judges each plan of a space once, and finds the cheapest that works", () => {
  const judged: string[] = [];
  const found = searchByForce({
    ...{ space, compare },
    works: (picks) => {
      judged.push(picks.join());
      return works(picks);
    },
  });
  expect(judged.sort()).toEqual(plans.map((picks) => picks.join()).sort());
  expect([found.plans, found.judged, found.proven]).toEqual([plans.length, plans.length, true]);
  const cheapest = plans
    .filter(works)
    .map((picks) => costOf(space, picks))
    .sort(compare)[0]!;
  expect(compare(found.found!.cost, cheapest)).toBe(0);
  expect(searchByForce({ space, compare, works: () => false }).found).toBeUndefined();
});
