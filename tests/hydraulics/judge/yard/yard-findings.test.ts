import { describe, expect, it, test } from "vitest";
import { readPlan } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { countOf, findingsOf } from "../../../../packages/hydraulics/src/judge/yard/yard-findings.js";
import { yardForPlan } from "../../../../packages/hydraulics/src/judge/yard/yard-for-plan.js";
import type { Batch, Pen } from "../../../../packages/hydraulics/src/model/flock.js";
import { birdById } from "../../../../packages/hydraulics/src/tables/birds.js";

test("countOf a pen is the birds of all batches that have come", () => {
  const batch = (count: number, ageDays: number): Batch => ({
    ...{ kind: birdById("hen")!, index: 0, lay: 0.9 },
    count,
    ageDays,
  });
  const penOf = (...batches: Batch[]): Pen => ({ id: "pen", index: 0, batches, drinkers: [] });
  expect(countOf(penOf(batch(12, 200), batch(5, 0), batch(30, -1)))).toBe(17);
  expect(countOf(penOf())).toBe(0);
});

test("findingsOf a pen speak of no water only where neither line nor waterers have a place", () => {
  const pen = { pen: "hens", birds: 12, covered: 1, coveredByLine: 1, waterers: [] };
  const codes = (linePlaces: number, loosePlaces: number) =>
    findingsOf({ ...pen, linePlaces, loosePlaces } as never, { most: undefined }).map(({ code }) => code);
  expect([codes(4, 4), codes(4, 0), codes(0, 4), codes(0, 0)]).toEqual([[], [], [], ["noWater"]]);
});

describe("findingsOf a pen", () => {
  const yardOf = (pens: readonly Record<string, unknown>[], line = false) => {
    const plan = readPlan(
      JSON.stringify({
        headfall: 1,
        day: "2026-07-04",
        sources: line ? [{ vessel: "drum-55gal-plastic", stand: "60 cm" }] : [],
        runs: line ? [{ id: "lane", length: "3 m", drinkers: { kind: "nipple-side-action", count: 6 } }] : [],
        pens,
      }),
    );
    if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
    const answer = yardForPlan(plan.plan, { weeks: 0 });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.yard.pens;
  };
  const codes = (pen: Parameters<typeof findingsOf>[0]) =>
    findingsOf(pen, { most: undefined }).map(({ code }) => code);
  const hens = (count: number, more: Record<string, unknown> = {}) => ({
    ...{
      id: "hens",
      birds: { kind: "hen", count, age: "40 weeks" },
      waterers: [{ kind: "pan-40cm" }],
      ...more,
    },
  });

  it("tells of an empty pen only how its waterers stand, and of one with a single bird all", () => {
    const [pen] = yardOf([hens(1)]);
    const starved = { ...pen!, loosePlaces: 0, linePlaces: 0 };
    expect(codes(starved)).toContain("noWater");
    expect(codes({ ...starved, birds: 0 })).not.toContain("noWater");
  });

  it("says that no rule speaks where none does of anything there, and keeps quiet where the line has one", () => {
    const [pen] = yardOf([hens(6)]);
    const silent = {
      ...pen!,
      coveredByLine: 0,
      waterers: pen!.waterers.map((one) => ({ ...one, reach: { ...one.reach, covers: undefined } })),
    };
    expect(codes(silent)).toContain("noRule");
    expect(codes({ ...silent, coveredByLine: 0.5 })).not.toContain("noRule");
    expect(codes({ ...silent, loosePlaces: 0 })).not.toContain("noRule");
  });

  it("counts another waterer that suits them if a single bird finds room at it, and not if none does", () => {
    const [pen] = yardOf([
      {
        ...{ id: "quail", birds: { kind: "coturnix", count: 20, age: "3 days" } },
        waterers: [
          { id: "pan", kind: "pan-40cm" },
          { id: "fount", kind: "quail-fount-1qt" },
        ],
      },
    ]);
    const others = (atOnce: number) => {
      const waterers = pen!.waterers.map((one) =>
        one.id === "fount" ? { ...one, reach: { ...one.reach, atOnce } } : one,
      );
      return findingsOf({ ...pen!, waterers }, { most: undefined }).flatMap((found) =>
        found.code === "notForThem" ? [found.othersSuit] : [],
      );
    };
    expect([others(1), others(0)]).toEqual([[true], [false]]);
  });

  it("has a line cover nothing of a pen that reaches none of its drinkers", () => {
    const pens = yardOf(
      [hens(6, { id: "near", drinkers: ["lane"] }), hens(6, { id: "hill", drinkers: [] })],
      true,
    );
    expect(pens[0]!.coveredByLine).toBeGreaterThan(0);
    expect(pens[1]!.coveredByLine).toBe(0);
  });
});
