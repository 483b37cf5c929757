import { expect, it } from "vitest";
import { countPlans } from "../../packages/hydraulics/src/search/branch-and-bound.js";
import { searchByForce } from "../../packages/hydraulics/src/search/brute-force.js";
import { judgeOf, solveSpace } from "../../packages/hydraulics/src/search/solve-space.js";
import { type SearchedCase, searchedCase, unbounded } from "../arbitraries/searched-case.js";

/** Larger spaces are passed over here. */
const MOST_PLANS = 48;
/** More of them: `HEADFALL_CASES=3000 npx vitest run --config tests/vitest.config.ts --project node tests/oracle/cure-search.test.ts`. */
const CASES = Number(process.env["HEADFALL_CASES"] ?? 50);

const ofPlans = (low: number, high: number) => (seed: number) => {
  const one = searchedCase(seed);
  if (one === undefined) return undefined;
  const plans = countPlans(one.lines.space);
  return plans > low && plans <= high ? one : undefined;
};

/** The search and judging every plan come to the same cost, or both to none. */
function expectSame(seed: number, { lines, requirement, compare }: SearchedCase) {
  const searched = solveSpace(lines, requirement, { compare, effort: unbounded() });
  const works = judgeOf(lines, requirement, unbounded());
  const forced = searchByForce({ space: lines.space, compare, works });
  expect([seed, searched.proven, searched.found === undefined]).toEqual([
    seed,
    true,
    forced.found === undefined,
  ]);
  if (searched.found !== undefined && forced.found !== undefined)
    expect([seed, compare(searched.found.cost, forced.found.cost)]).toEqual([seed, 0]);
  return { works: forced.found !== undefined, plans: forced.plans, judged: searched.judged };
}

it("solveSpace finds what judging every plan of a space finds, at the same cost, on random small plans", () => {
  const tally = { works: 0, none: 0, plans: 0, judged: 0 };
  for (let seed = 1; seed <= CASES; seed += 1) {
    const one = ofPlans(0, MOST_PLANS)(seed);
    if (one === undefined) continue;
    const { works, plans, judged } = expectSame(seed, one);
    tally[works ? "works" : "none"] += 1;
    tally.plans += plans;
    tally.judged += judged;
  }
  // Both outcomes are met, and most plans are never judged.
  expect(tally.works).toBeGreaterThan(3);
  expect(tally.none).toBeGreaterThan(3);
  expect(tally.judged).toBeLessThan(tally.plans / 4);
}, 3_600_000);

it("solveSpace does so where it begins with a plan that likely works, and drops what costs as much", () => {
  const larger = ofPlans(200, 700);
  let left = CASES / 25;
  for (let seed = 1; left > 0; seed += 1) {
    const one = larger(seed);
    if (one === undefined || one.requirement.now.pens.length > 0) continue;
    expectSame(seed, one);
    left -= 1;
  }
}, 3_600_000);
