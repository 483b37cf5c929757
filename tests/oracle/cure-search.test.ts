import { expect, it } from "vitest";
import { countPlans } from "../../packages/hydraulics/src/search/branch-and-bound.js";
import { searchByForce } from "../../packages/hydraulics/src/search/brute-force.js";
import { judgeOf, solveSpace } from "../../packages/hydraulics/src/search/solve-space.js";
import { searchedCase, unbounded } from "../arbitraries/searched-case.js";

/** Larger spaces are passed over here. */
const MOST_PLANS = 48;
/** More of them: `HEADFALL_CASES=3000 npx vitest run --config tests/vitest.config.ts --project node tests/oracle/cure-search.test.ts`. */
const CASES = Number(process.env["HEADFALL_CASES"] ?? 50);

it("solveSpace finds what judging every plan of a space finds, at the same cost, on random small plans", () => {
  const tally = { works: 0, none: 0, plans: 0, judged: 0 };
  for (let seed = 1; seed <= CASES; seed += 1) {
    const one = searchedCase(seed);
    if (one === undefined || countPlans(one.lines.space) > MOST_PLANS) continue;
    const { lines, requirement, compare } = one;
    const searched = solveSpace(lines, requirement, { compare, effort: unbounded() });
    const works = judgeOf(lines, requirement, unbounded());
    const forced = searchByForce({ space: lines.space, compare, works });
    expect([seed, searched.proven, searched.found === undefined]).toEqual([
      seed,
      true,
      forced.found === undefined,
    ]);
    if (searched.found !== undefined && forced.found !== undefined) {
      expect([seed, compare(searched.found.cost, forced.found.cost)]).toEqual([seed, 0]);
      tally.works += 1;
    } else tally.none += 1;
    tally.plans += forced.plans;
    tally.judged += searched.judged;
  }
  // Both outcomes are met, and most plans are never judged.
  expect(tally.works).toBeGreaterThan(3);
  expect(tally.none).toBeGreaterThan(3);
  expect(tally.judged).toBeLessThan(tally.plans / 4);
}, 3_600_000);
