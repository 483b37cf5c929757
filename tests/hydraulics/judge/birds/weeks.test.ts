import { describe, expect, it } from "vitest";
import { codesOf, flockOfPlan, penPlan, weeksOf } from "./pens.js";

const chicks = { kind: "pullet", count: 24, age: "1 week" };
const hung = (more: Record<string, unknown> = {}) =>
  penPlan({ birds: chicks, above: "12 cm", run: { hung: true }, more: { day: "2026-07-04", ...more } });

describe("judgeWeeks", () => {
  it("begins with the plan's day as the check has it, and goes on a week at a time", () => {
    const plan = hung();
    const { weeks } = weeksOf(plan, { weeks: 3 });
    expect(weeks.map(({ week, day }) => [week, day! - weeks[0]!.day!])).toEqual([
      [0, 0],
      [1, 7],
      [2, 14],
      [3, 21],
    ]);
    expect(weeks[0]!.pens).toEqual(flockOfPlan(plan).pens);
    expect(weeks.map(({ pens }) => pens[0]!.batches[0]!.ageDays)).toEqual([7, 14, 21, 28]);
    expect(weeks[3]!.intakeSize).toBeGreaterThan(weeks[0]!.intakeSize);
  });

  it("hangs a hung run at the height of each week's age; its head falls by as much as it is raised", () => {
    const { weeks } = weeksOf(hung(), { weeks: 6 });
    expect(weeks[0]!.raised).toMatchObject([{ run: "hen line", raise: 0 }]);
    for (const { raised, idleHead, groups } of weeks.slice(1)) {
      const [run] = raised;
      expect(run!.height).toBeCloseTo(groups[0]!.hangAt!.height, 9);
      expect(run!.height).toBeCloseTo(0.12 + run!.raise, 9);
      expect(groups[0]!.height).toBeCloseTo(run!.height!, 9);
      expect(weeks[0]!.idleHead.least - idleHead.least).toBeCloseTo(run!.raise, 9);
    }
    expect(weeks[6]!.raised[0]!.raise).toBeGreaterThan(weeks[1]!.raised[0]!.raise);
    expect(codesOf(weeks[6]!).filter((code) => code.startsWith("hangs"))).toEqual([]);
  });

  it("leaves a line that is not hung where it is, and finds it low for birds that have grown", () => {
    const { weeks } = weeksOf(penPlan({ birds: chicks, above: "12 cm" }), { weeks: 12 });
    expect(weeks.every(({ raised }) => raised.length === 0)).toBe(true);
    expect(weeks[12]!.idleHead).toEqual(weeks[0]!.idleHead);
    expect(codesOf(weeks[12]!)).toContain("hangsTooLow");
  });

  it("raises a hung run of unknown height by as much as the birds' own height grows", () => {
    const plan = penPlan({ birds: chicks, above: "0 cm", run: { hung: true } });
    const { weeks } = weeksOf(plan, { weeks: 4 });
    const target = (week: number) => weeks[week]!.groups[0]!.hangAt!.height;
    expect(weeks[4]!.raised[0]!.raise).toBeCloseTo(target(4) - target(0), 9);
  });

  it("finds the week in which a raised line no longer gives enough", () => {
    const plan = hung();
    const low = { ...plan, sources: [{ ...plan.sources[0], stand: "20 cm" }] };
    const { weeks } = weeksOf(low, { weeks: 12 });
    expect(weeks[12]!.verdict).not.toBe("good");
    expect(weeks[12]!.worst!.verdict).toBe(weeks[12]!.verdict);
    expect(weeks[12]!.counts.good).toBeLessThan(8);
  });

  it("judges the weeks in the heat of the plan's hot spell too: more is drunk, and no fewer are at work", () => {
    const { weeks, hotWeeks } = weeksOf(
      hung({ weather: { high: "21 degC", hotSpell: { high: "35 degC" } } }),
      {
        weeks: 2,
      },
    );
    expect(hotWeeks.map(({ week, hot }) => [week, hot])).toEqual([
      [0, true],
      [1, true],
      [2, true],
    ]);
    hotWeeks.forEach(({ intakeSize, pens }, w) => {
      expect(intakeSize).toBeGreaterThan(weeks[w]!.intakeSize);
      expect(pens[0]!.busiest).toBeGreaterThanOrEqual(weeks[w]!.pens[0]!.busiest);
    });
    expect(weeksOf(hung(), { weeks: 1 }).hotWeeks).toEqual([]);
  });

  it("refuses weeks that are no whole number from 0 to 104", () => {
    for (const weeks of [-1, 0.5, 105]) expect(() => weeksOf(hung(), { weeks })).toThrow(RangeError);
  });
});
