import { describe, expect, it } from "vitest";
import { searchByForce } from "../../../packages/hydraulics/src/search/brute-force.js";
import { compareBy } from "../../../packages/hydraulics/src/search/cost.js";
import { buildCureLines } from "../../../packages/hydraulics/src/search/cure-lines.js";
import { buildCureSpace } from "../../../packages/hydraulics/src/search/cure-space.js";
import { buildRequirement } from "../../../packages/hydraulics/src/search/requirement.js";
import { judgeOf, solveSpace } from "../../../packages/hydraulics/src/search/solve-space.js";
import { unbounded } from "../../arbitraries/searched-case.js";
import { barrel, nipples, planOf } from "./ailing.js";

const compare = compareBy("money");

/** Growing meat birds at a long thin hose of nipples, asked about for the weeks to come. */
function growing(weeks: number) {
  const plan = planOf({
    sources: [barrel({ stand: "0 cm" })],
    points: [{ id: "end", ground: "0 cm", above: "10 cm" }],
    runs: [
      {
        ...{ id: "line", to: "end", length: "30 m", pipe: "hose-1/2" },
        drinkers: nipples(20, { first: "22 m", every: "30 cm" }),
      },
    ],
    pens: [{ birds: { kind: "meat-chicken", count: 300, age: "1 week" } }],
    shelf: [
      { pipe: "hose-1/2", price: 1 },
      { pipe: "hose-5/8", price: 2 },
      { pipe: "hose-3/4", price: 3 },
    ],
    prices: { stand: 2 },
  });
  const space = buildCureSpace(plan, { standMost: 1.2, standStep: 0.3 }, { pipes: true, stands: true });
  const building = buildCureLines(space);
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  const { lines } = building;
  const requiring = buildRequirement(plan, lines.present, { weeks });
  if (!requiring.ok) throw new Error(JSON.stringify(requiring.problems));
  return { lines, requirement: requiring.requirement };
}

function costs(weeks: number) {
  const { lines, requirement } = growing(weeks);
  const { found, proven } = solveSpace(lines, requirement, { compare, effort: unbounded() });
  const forced = searchByForce({
    ...{ space: lines.space, compare },
    works: judgeOf(lines, requirement, unbounded()),
  });
  return { found: found?.cost, forced: forced.found?.cost, proven };
}

describe("solveSpace, for birds that grow", () => {
  const [now, later] = [costs(0), costs(4)];

  it("finds what trying every plan finds, on the day alone and for the weeks to come", () => {
    expect([now.proven, later.proven]).toEqual([true, true]);
    expect(compare(now.found!, now.forced!)).toBe(0);
    expect(compare(later.found!, later.forced!)).toBe(0);
  });

  it("pays more for what must do in four weeks too", () => {
    expect(compare(later.found!, now.found!)).toBeGreaterThan(0);
  });
});

describe("judgeOf", () => {
  it("counts each state of affairs that it judges, up to the first that fails, which it then asks first", () => {
    const { lines, requirement } = growing(4);
    const told: number[] = [];
    const effort = { judged: 0, progress: (judged: number) => void told.push(judged) };
    const works = judgeOf(lines, requirement, effort);
    // The cheapest that does in all five, and the cheapest of the day alone.
    expect([works([1, 1]), effort.judged]).toEqual([true, 5]);
    expect(told).toEqual([1, 2, 3, 4, 5]);
    expect(works([0, 1])).toBe(false);
    expect(effort.judged).toBeGreaterThan(6);
    const before = effort.judged;
    expect(works([0, 1])).toBe(false);
    expect(effort.judged).toBe(before + 1);
  });
});
