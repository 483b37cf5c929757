import { describe, expect, it } from "vitest";
import type { Plan } from "../../../packages/hydraulics/src/document/plan-schema.js";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { writeProblem } from "../../../packages/hydraulics/src/document/write-problem.js";
import { checkPlan } from "../../../packages/hydraulics/src/judge/check-plan.js";
import { compareSizes, withPipe } from "../../../packages/hydraulics/src/search/compare-sizes.js";
import { pipeById, pipesOfFamily } from "../../../packages/hydraulics/src/tables/pipes.js";
import { yard } from "../judge/yard/yard.js";

/** A feed of PVC to a lane of eight drinkers, which is what starves where the pipe is narrow. */
function planOf(more: Record<string, unknown> = {}, lane: Record<string, unknown> = {}): Plan {
  const reading = checkDocument(
    yard({
      stand: "20 cm",
      runs: [
        { id: "feed", length: "30 m", fall: "0 cm", pipe: "pvc-sch40-1/2" },
        {
          id: "lane",
          length: "8 m",
          pipe: "pvc-sch40-1/2",
          drinkers: { kind: "plain", count: 8, busiest: 8 },
          ...lane,
        },
      ],
      more,
    }),
  );
  if (!reading.ok) throw new Error(reading.problems.map(writeProblem).join("\n"));
  return reading.plan;
}

function compared(plan: Plan, run?: string) {
  const comparing = compareSizes(plan, run === undefined ? {} : { run });
  if (!comparing.ok) throw new Error(comparing.problems.map(writeProblem).join("\n"));
  return comparing.comparison;
}

/** The verdict on the plan with one size in these runs, from the check itself. */
function verdictWith(plan: Plan, runs: readonly number[], pipe: string) {
  const checking = checkPlan(withPipe(plan, runs, pipe), { samples: 0 });
  if (!checking.ok) throw new Error(checking.problems.map(writeProblem).join("\n"));
  return checking.checked;
}

const NARROW_SHELF = {
  money: "crowns",
  shelf: [
    { pipe: "pvc-sch40-1", price: 12, per: "3 m" },
    { pipe: "pvc-sch40-1/2", price: 1.5 },
    { pipe: "pex-1/2" },
    { pipe: "pvc-sch40-3/4", price: 2.5, per: "1 m" },
  ],
};

describe("compareSizes", () => {
  it("takes every size of the runs' own family where the plan has no shelf, in order of bore", () => {
    const { rows, runs } = compared(planOf());
    expect(runs).toEqual(["feed", "lane"]);
    expect(rows.map(({ pipe }) => pipe).sort()).toEqual(
      pipesOfFamily("pvc-sch40")
        .map(({ id }) => id)
        .sort(),
    );
    const bores = rows.map(({ bore }) => bore);
    expect(bores).toEqual([...bores].sort((a, b) => a - b));
    expect(rows.filter(({ isPresent }) => isPresent).map(({ pipe }) => pipe)).toEqual(["pvc-sch40-1/2"]);
  });

  it("takes the plan's own shelf, whatever order it is written in", () => {
    const { rows } = compared(planOf(NARROW_SHELF));
    expect(rows.map(({ pipe }) => pipe)).toEqual([
      "pex-1/2",
      "pvc-sch40-1/2",
      "pvc-sch40-3/4",
      "pvc-sch40-1",
    ]);
  });

  it("gives in each row what a check of the plan with that size gives, and marks the smallest that works", () => {
    const plan = planOf({ ...NARROW_SHELF, water: "4 degC" }, { length: "120 m" });
    const { rows, smallestThatWorks, smallestThatFeeds } = compared(plan);
    const brute = rows.map(({ pipe }) => ({ pipe, checked: verdictWith(plan, [0, 1], pipe) }));
    rows.forEach((row, i) => {
      const { checked } = brute[i]!;
      expect(row.verdict).toBe(checked.verdict);
      expect(row.counts).toEqual(checked.counts);
      expect(row.busiest).toEqual(checked.runs[0]!.busiest);
      expect(row.volume).toBeCloseTo((Math.PI / 4) * row.bore ** 2 * 150, 12);
      const least = Math.min(
        ...checked.drinkers.map(({ moments: { lowestBusiest: at } }) =>
          Math.min(at.hazenWilliams.flow, at.darcyWeisbach.flow),
        ),
      );
      const { lowestBusiest } = row.worst!.moments;
      expect(Math.min(lowestBusiest.hazenWilliams.flow, lowestBusiest.darcyWeisbach.flow)).toBe(least);
    });
    const works = brute.filter(({ checked }) => checked.verdict === "good").map(({ pipe }) => pipe);
    expect(brute[0]?.checked.verdict).toBe("starves");
    expect(works.length).toBeGreaterThan(0);
    expect(smallestThatWorks).toBe(works[0]);
    expect(smallestThatFeeds).toBe(works[0]);
  });

  it("marks none as working where drinkers drip whatever the pipe, but says from which size on they are fed", () => {
    const dripping = planOf({ ownDrinkers: { plain: drips } });
    const { rows, smallestThatWorks, smallestThatFeeds } = compared(dripping);
    expect(rows.at(-1)?.verdict).toBe("drips");
    expect(smallestThatWorks).toBeUndefined();
    expect(smallestThatFeeds).toBe(rows.find(({ counts }) => counts.starves + counts.dry === 0)?.pipe);
    expect(smallestThatFeeds).toBeDefined();
  });

  it("prices the metres exchanged by the shelf: 38 m at 12 a piece of 3 m are 152, at 1.50 a metre 57", () => {
    const { rows, money } = compared(planOf(NARROW_SHELF));
    const costOf = (pipe: string) => rows.find((row) => row.pipe === pipe)?.cost;
    expect(money).toBe("crowns");
    expect(costOf("pvc-sch40-1")).toBeCloseTo(152, 9);
    expect(costOf("pvc-sch40-1/2")).toBeCloseTo(57, 9);
    expect(costOf("pvc-sch40-3/4")).toBeCloseTo(95, 9);
    expect(costOf("pex-1/2")).toBeUndefined();
  });

  it("exchanges one run alone when asked, and leaves the others as they are", () => {
    const plan = planOf(NARROW_SHELF);
    const { rows, runs } = compared(plan, "lane");
    expect(runs).toEqual(["lane"]);
    for (const row of rows) {
      expect(row.counts).toEqual(verdictWith(plan, [1], row.pipe).counts);
      expect(row.volume).toBeCloseTo((Math.PI / 4) * pipeById(row.pipe)!.bore ** 2 * 8, 12);
    }
    expect(rows.find(({ pipe }) => pipe === "pvc-sch40-1/2")?.cost).toBeCloseTo(12, 9);
  });

  it("counts the birds' ages from the day that is asked about", () => {
    const pens = { pens: [{ birds: { kind: "meat-chicken", count: 60, hatched: "2026-06-01" } }] };
    const plan = planOf({ ...NARROW_SHELF, ...pens }, { drinkers: { kind: "plain", count: 8 } });
    const worstFlows = (day: string) => {
      const comparing = compareSizes(plan, { day });
      return (
        comparing.ok &&
        comparing.comparison.rows.map(({ pipe, counts, busiest }) => [pipe, counts, busiest.flow])
      );
    };
    expect(worstFlows("2026-06-02")).toEqual(worstFlows("2026-06-02"));
    expect(worstFlows("2026-06-02")).not.toEqual(worstFlows("2026-07-15"));
  });

  it("refuses a run that the plan does not have, and names those it has", () => {
    const comparing = compareSizes(planOf(), { run: "lawn" });
    expect(comparing.ok).toBe(false);
    if (comparing.ok) return;
    expect(comparing.problems.map(writeProblem).join()).toMatch(/"lawn".*"feed", "lane"/);
  });
});

const drips = {
  readings: [
    { head: "25 cm", flow: "50 mL/min" },
    { head: "1 m", flow: "100 mL/min" },
  ],
  holdsUpTo: "50 cm",
  need: "40 mL/min",
};
