import { describe, expect, it } from "vitest";
import { dailyMark } from "../../../../packages/hydraulics/src/judge/time/daily-mark.js";
import { headerTank } from "../header-tank.js";
import { AREA, read, tubPlan } from "./tub.js";

function markOf(document: unknown, options: Parameters<typeof dailyMark>[1] = {}) {
  const answer = dailyMark(read(document), options);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.mark;
}

describe("dailyMark", () => {
  it("falls by what twenty hens draw in a day over half a square metre, and tells the litres of it", () => {
    const { fall, volume } = markOf(tubPlan("60 cm"));
    // 270 mL each, a twentieth spilled at nipples: 5.67 L are 11.3 mm.
    expect(volume.size).toBeCloseTo(20 * 270e-6 * 1.05, 9);
    for (const figure of ["low", "expect", "size", "high"] as const)
      expect(volume[figure]).toBeCloseTo(fall[figure] * AREA, 9);
    expect(fall.low).toBeLessThan(fall.expect);
    expect(fall.size).toBeLessThan(fall.high);
  });

  it("falls by a whole day's draw where the day's hours begin at no full hour, too", () => {
    const weather = { high: "21 degC", light: "16 h", dawn: "06:20" };
    const answer = dailyMark(read(tubPlan("60 cm", { weather })));
    expect(answer.ok).toBe(true);
    expect(answer.ok && answer.mark.volume.size).toBeCloseTo(20 * 270e-6 * 1.05, 9);
  });

  it("tells what a leak takes in the dark for each centimetre: a day's worth at that rate over eight hours", () => {
    const per = (light: string) =>
      markOf(tubPlan("60 cm", { weather: { high: "21 degC", light }, pens: [] })).leakPerCentimetre;
    expect(per("16 h")).toBeCloseTo(AREA * 0.01 * 3, 9);
    expect(per("12 h")).toBeCloseTo(AREA * 0.01 * 2, 9);
    expect(per("24 h")).toBe(0);
  });

  it("takes the vessel's own width where the water stands: of a taper not that of its rim", () => {
    const taper = (level: number) =>
      markOf(
        {
          ...tubPlan("40 cm", { pens: [] }),
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
    const steps = (full: string) => markOf(tubPlan(full, { pens: [] })).scale.map(({ level }) => level);
    expect(steps("20 cm")).toHaveLength(21);
    expect(steps("20 cm")[1]).toBeCloseTo(0.01, 12);
    expect(steps("22 cm")).toHaveLength(12);
    expect(steps("60 cm")[1]).toBeCloseTo(0.02, 12);
    expect(steps("60 cm")).toHaveLength(31);
    expect(steps("60.5 cm")[1]).toBeCloseTo(0.05, 12);
    for (const { level, volume } of markOf(tubPlan("22 cm", { pens: [] })).scale)
      expect(volume).toBeCloseTo(level * AREA, 9);
  });

  it("falls by nothing in a vessel that is empty, and no farther than its outlet", () => {
    const { fall, volume, marks } = markOf(tubPlan("60 cm"), { level: 0 });
    expect([fall.expect, volume.expect, marks]).toEqual([0, 0, []]);
    const { marks: few } = markOf(tubPlan("60 cm"), { level: 0.03 });
    expect(few.length).toBeLessThanOrEqual(3);
    for (const { level } of few) expect(level).toBeGreaterThanOrEqual(0);
  });
});

describe("dailyMark of a header tank, which its float valve keeps full", () => {
  it("has no fall to mark, wherever its water is said to stand", () => {
    for (const level of [0.2, 0.1]) {
      const mark = markOf({ ...headerTank, day: "2026-07-04" }, { source: 1, level });
      expect(mark).toMatchObject({ isKeptFull: true, marks: [], nightFall: 0 });
      expect(Object.values(mark.fall)).toEqual([0, 0, 0, 0]);
      expect(Object.values(mark.volume)).toEqual([0, 0, 0, 0]);
    }
  });
});
