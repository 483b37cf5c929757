import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { carryingOf } from "../../../../packages/hydraulics/src/judge/time/carrying.js";
import { dailyMark } from "../../../../packages/hydraulics/src/judge/time/daily-mark.js";
import { howLongItLasts } from "../../../../packages/hydraulics/src/judge/time/lasting.js";
import { simulateDay } from "../../../../packages/hydraulics/src/judge/time/simulate-day.js";

/** An upright tub of half a square metre (79.8 cm across), and nipples so low under it that all of it is drunk. */
const AREA = (Math.PI / 4) * 0.798 ** 2;
const plan = (full: string, more: Record<string, unknown> = {}) => ({
  headfall: 1,
  day: "2026-07-04",
  sources: [
    {
      ...{ id: "tub", vessel: { shape: "upright", diameter: "79.8 cm", height: "1 m" }, stand: "40 cm" },
      ...{ outlet: "0 cm", level: { full, lowest: "0 cm" } },
    },
  ],
  runs: [{ id: "lane", length: "2 m", fall: "30 cm", drinkers: { kind: "nipple-side-action", count: 6 } }],
  weather: { high: "21 degC", light: "16 h" },
  pens: [{ id: "hens", birds: { kind: "hen", count: 20, age: "60 weeks", lay: "90 %" } }],
  ...more,
});
function read(document: unknown) {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}
function markOf(document: unknown, options: Parameters<typeof dailyMark>[1] = {}) {
  const answer = dailyMark(read(document), options);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.mark;
}

describe("dailyMark", () => {
  it("falls by what twenty hens draw in a day over half a square metre, and tells the litres of it", () => {
    const { fall, volume } = markOf(plan("60 cm"));
    // 270 mL each, a twentieth spilled at nipples: 5.67 L are 11.3 mm.
    expect(volume.size).toBeCloseTo(20 * 270e-6 * 1.05, 9);
    for (const figure of ["low", "expect", "size", "high"] as const)
      expect(volume[figure]).toBeCloseTo(fall[figure] * AREA, 9);
    expect(fall.low).toBeLessThan(fall.expect);
    expect(fall.size).toBeLessThan(fall.high);
  });

  it("tells what a leak takes in the dark for each centimetre: a day's worth at that rate over eight hours", () => {
    const per = (light: string) =>
      markOf(plan("60 cm", { weather: { high: "21 degC", light }, pens: [] })).leakPerCentimetre;
    expect(per("16 h")).toBeCloseTo(AREA * 0.01 * 3, 9);
    expect(per("12 h")).toBeCloseTo(AREA * 0.01 * 2, 9);
    expect(per("24 h")).toBe(0);
  });

  it("takes the vessel's own width where the water stands: of a taper not that of its rim", () => {
    const taper = (level: number) =>
      markOf(
        {
          ...plan("40 cm", { pens: [] }),
          sources: [
            {
              ...{ id: "tub", stand: "40 cm", outlet: "0 cm", level: { full: "40 cm", lowest: "0 cm" } },
              vessel: { shape: "tapered", topDiameter: "60 cm", bottomDiameter: "20 cm", height: "40 cm" },
            },
          ],
        },
        { level },
      ).leakPerCentimetre;
    // 60 cm across at the rim, 40 halfway: the centimetre under the water.
    expect(taper(0.2) / ((Math.PI / 4) * 0.395 ** 2 * 0.01 * 3)).toBeCloseTo(1, 3);
    expect(taper(0.4) / ((Math.PI / 4) * 0.595 ** 2 * 0.01 * 3)).toBeCloseTo(1, 3);
  });

  it("has a scale in steps that are easily read: 1, 2 or 5 cm by how high the water stands", () => {
    const steps = (full: string) => markOf(plan(full, { pens: [] })).scale.map(({ level }) => level);
    expect(steps("20 cm")).toHaveLength(21);
    expect(steps("20 cm")[1]).toBeCloseTo(0.01, 12);
    expect(steps("22 cm")).toHaveLength(12);
    expect(steps("60 cm")[1]).toBeCloseTo(0.02, 12);
    expect(steps("60 cm")).toHaveLength(31);
    expect(steps("60.5 cm")[1]).toBeCloseTo(0.05, 12);
    for (const { level, volume } of markOf(plan("22 cm", { pens: [] })).scale)
      expect(volume).toBeCloseTo(level * AREA, 9);
  });

  it("falls by nothing in a vessel that is empty, and no farther than its outlet", () => {
    const { fall, volume, marks } = markOf(plan("60 cm"), { level: 0 });
    expect([fall.expect, volume.expect, marks]).toEqual([0, 0, []]);
    const { marks: few } = markOf(plan("60 cm"), { level: 0.03 });
    expect(few.length).toBeLessThanOrEqual(3);
    for (const { level } of few) expect(level).toBeGreaterThanOrEqual(0);
  });
});

describe("carryingOf", () => {
  const chicks = (day: string) => {
    const answer = carryingOf(
      read(
        plan("60 cm", {
          day,
          pens: [{ id: "chicks", birds: { kind: "pullet", count: 40, hatched: "2026-07-01" } }],
        }),
      ),
      { weeks: 3 },
    );
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.carrying.days;
  };

  it("carries in the third week what is carried on that day", () => {
    const now = chicks("2026-07-04");
    expect(now.map(({ week }) => week)).toEqual([0, 1, 2, 3]);
    for (const [week, day] of [
      [1, "2026-07-11"],
      [2, "2026-07-18"],
      [3, "2026-07-25"],
    ] as const)
      expect(now[week]!.volume.size).toBeCloseTo(chicks(day)[0]!.volume.size, 12);
    expect(now[3]!.volume.size).toBeGreaterThan(1.5 * now[0]!.volume.size);
  });
});

describe("howLongItLasts", () => {
  const lasting = (hot: boolean) => {
    const weather = { high: "21 degC", ...(hot ? { hotSpell: { high: "36 degC", days: 5 } } : {}) };
    const answer = howLongItLasts(read(plan("10 cm", { weather })));
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.lasting.alone;
  };

  it("is shorter in the hot spell than in usual weather, on the same figure", () => {
    const { size, hot } = lasting(true);
    expect(hot.empty!).toBeLessThan(0.9 * size.empty!);
    expect(hot.firstDay).toBeGreaterThan(1.2 * size.firstDay);
  });
});

describe("simulateDay", () => {
  it("tells what contradicts itself in the plan, as all questions do", () => {
    const points = [{ id: "end", ground: "0 cm", above: "0 cm" }];
    const runs = [
      { to: "end", length: "3 m", fall: "10 cm", drinkers: { kind: "nipple-side-action", count: 2 } },
    ];
    const answer = simulateDay(read(plan("60 cm", { points, runs })));
    expect(answer.ok ? [] : answer.problems.map(({ code }) => code)).toEqual(["heightsDisagree"]);
  });
});
