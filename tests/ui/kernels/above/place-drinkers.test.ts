import { describe, expect, test } from "vitest";
import { drinkersAlong } from "../../../../packages/ui/src/kernels/above/drinkers-along.js";
import { fitDrinkers } from "../../../../packages/ui/src/kernels/above/fit-drinkers.js";
import { gatherMarks } from "../../../../packages/ui/src/kernels/above/gather-marks.js";
import { layAbove } from "../../../../packages/ui/src/kernels/above/lay-above.js";
import { placeDrinkers } from "../../../../packages/ui/src/kernels/above/place-drinkers.js";
import { checkedOf, PLACED, planOf } from "../../fixtures/placed-plan.js";
import { EXAMPLES, examplePlan } from "./example-plans.js";

describe("placeDrinkers", () => {
  test.each(EXAMPLES)("puts the drinkers of %s where the library hangs them, with its verdicts", (name) => {
    const plan = examplePlan(name);
    const checked = checkedOf(plan);
    const placed = placeDrinkers(plan, layAbove(plan), checked);
    expect(placed.map(({ run }) => run)).toEqual([...checked.line.drinkers.run]);
    expect(placed.map(({ verdict }) => verdict)).toEqual(checked.drinkers.map(({ verdict }) => verdict));
    placed.forEach(({ along }, i) => {
      expect(along).toBeCloseTo(checked.line.drinkers.along[i]!, 9);
    });
  });

  test("follows the pipe around its corners", () => {
    const placed = placeDrinkers(PLACED, layAbove(PLACED), undefined);
    expect(placed[0]!.at).toEqual({ x: 11, y: 0 });
    const far = planOf({
      ...PLACED,
      runs: PLACED.runs.map((run) =>
        run.id === "pen line"
          ? { ...run, drinkers: { kind: "nipple-side-action", count: 2, first: "5 m", every: "1 m" } }
          : run,
      ),
    });
    expect(placeDrinkers(far, layAbove(far), undefined).map(({ at }) => at)).toEqual([
      { x: 14, y: 1 },
      { x: 14, y: 2 },
    ]);
  });

  test("says no verdict while the check is of another number of drinkers, and keeps those of other groups", () => {
    const plan = examplePlan("rain-barrel");
    const checked = checkedOf(plan);
    const fewer = planOf({
      ...plan,
      runs: plan.runs.map((run) =>
        run.id === "shed hose" ? { ...run, drinkers: { ...run.drinkers, count: 1 } } : run,
      ),
    });
    const placed = placeDrinkers(fewer, layAbove(fewer), checked);
    expect(placed.filter(({ run }) => run === 0).map(({ verdict }) => verdict)).toEqual([undefined]);
    expect(placed.filter(({ run }) => run > 0).every(({ verdict }) => verdict !== undefined)).toBe(true);
  });

  test("knows a run by its name when another is put before it", () => {
    const plan = examplePlan("hen-house");
    const checked = checkedOf(plan);
    const shifted = planOf({
      ...plan,
      runs: [
        { id: "other", from: "barrel", length: "1 m" },
        { ...plan.runs[0], from: "barrel" },
        ...plan.runs.slice(1),
      ],
    });
    const placed = placeDrinkers(shifted, layAbove(shifted), checked);
    expect(placed.map(({ verdict }) => verdict)).toEqual(checked.drinkers.map(({ verdict }) => verdict));
  });
});

test("drinkersAlong spreads drinkers evenly to the end when the plan says no spacing", () => {
  expect(drinkersAlong({ kind: "cup-float", count: 4 }, 8)).toEqual([2, 4, 6, 8]);
  expect(drinkersAlong({ kind: "cup-float", count: 4, first: "2 m" }, 8)).toEqual([2, 4, 6, 8]);
  expect(drinkersAlong({ kind: "cup-float" }, 8)).toEqual([8]);
});

describe("gatherMarks", () => {
  const drinkers = [0, 0.1, 0.2, 0.9].map((along, number) => ({
    run: 0,
    group: 0,
    number,
    along,
    at: { x: along, y: 0 },
    verdict: (["good", "starves", "drips", "good"] as const)[number],
  }));

  test("gives neighbours too close to be told apart one mark, with the worst verdict", () => {
    const marks = gatherMarks(drinkers, 0.5);
    expect(marks.map(({ verdict }) => verdict)).toEqual(["starves", "good"]);
    expect(marks.map((mark) => mark.drinkers.length)).toEqual([3, 1]);
  });

  test("leaves those with room alone", () => {
    expect(gatherMarks(drinkers, 0.1)).toHaveLength(4);
  });

  test("never gathers drinkers of two groups", () => {
    const two = drinkers.map((each) => ({ ...each, group: each.number % 2 }));
    expect(
      gatherMarks(two, 5).every((mark) => new Set(mark.drinkers.map(({ group }) => group)).size === 1),
    ).toBe(true);
  });
});

describe("fitDrinkers", () => {
  test("hangs ten around the press when the run is long enough", () => {
    expect(fitDrinkers(10, 5, "metric")).toEqual({
      kind: "nipple-side-action",
      count: 10,
      first: "365 cm",
      every: "30 cm",
    });
    expect(fitDrinkers(10, 5, "us")).toMatchObject({ count: 10, every: "12 in", first: "11 ft 11 in" });
  });

  test("keeps all of them on the run when the press is near its end", () => {
    expect(fitDrinkers(4, 3.9, "metric")).toMatchObject({ count: 10, first: "130 cm" });
    expect(fitDrinkers(4, 0.1, "metric")).toMatchObject({ count: 10, first: "0 cm" });
  });

  test("hangs as many as fit on a short run, and one at least", () => {
    expect(fitDrinkers(1, 0.5, "metric").count).toBe(3);
    expect(fitDrinkers(0.2, 0.1, "metric")).toMatchObject({ count: 1, first: "10 cm" });
  });
});
