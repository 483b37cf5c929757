import { describe, expect, it } from "vitest";
import type { YardFinding } from "../../../../packages/hydraulics/src/judge/yard/yard-finding.js";
import type {
  ChangeOver,
  PenYard,
  Tilt,
  WatererReport,
} from "../../../../packages/hydraulics/src/judge/yard/yard-result.js";
import {
  writeChangeOver,
  writeOpenings,
  writeShareOfLoose,
  writeTilt,
  writeYardFinding,
} from "../../../../packages/hydraulics/src/report/yard/yard-sentences.js";
import {
  writeMarks,
  writeRefills,
  writeSlope,
} from "../../../../packages/hydraulics/src/report/yard/yard-words.js";

describe("words of slopes, refills and marks", () => {
  it("a slope is told in per cent and by its angle, to a tenth under ten degrees", () => {
    // tan 45 degrees is 1; 5 in 100 are 2.86 degrees.
    expect([0, 0.05, 0.2, 1].map(writeSlope)).toEqual(["level", "5 % (2.9°)", "20 % (11°)", "100 % (45°)"]);
  });

  it("refills are so many a day, or one in so many days", () => {
    expect([undefined, 0, 1.44, 9.6, 0.96, 0.5, 0.1, 1 / 60, 0.01].map(writeRefills)).toEqual([
      "gives nothing",
      "none",
      "1.4 a day",
      "10 a day",
      "1.0 a day",
      "every 2.0 days",
      "every 10 days",
      "every 60 days",
      "less than every 60 days",
    ]);
  });

  it("a range of marks is told in one unit", () => {
    expect(writeMarks(0.08, 0.15, "metric")).toBe("8 cm to 15 cm");
  });
});

describe("writeYardFinding", () => {
  const finding = (one: YardFinding) => writeYardFinding(one, "metric");

  it("of one that drains tells the slope it stands on, the one it drains from, and both ways to help", () => {
    const drains = {
      code: "drains",
      waterer: "fount",
      slope: 0.08,
      drainsAt: 0.05,
      shimLevel: 0.02,
      shimEnough: 0.01,
    } as const;
    expect(finding({ ...drains, turn: "downhill" })).toBe(
      "fount: on 8 % (4.6°) it runs out; it drains from 5 % (2.9°) on. Turn its hole downhill, or shim the lower edge by 10 mm at least, 20 mm to make it level.",
    );
    expect(finding({ ...drains, turn: undefined })).toContain(
      "Turning it does not help: shim the lower edge by 10 mm",
    );
  });

  it("of one that holds less tells what stays, and across the slope where it can be turned", () => {
    const less = { code: "holdsLess", waterer: "trough", share: 0.4, shimLevel: 0.03 } as const;
    expect(finding({ ...less, across: 0.9 })).toBe(
      "trough: of a full one only 40 % stays on this slope. Turned across the slope 90 % stays. 30 mm under the lower end makes it level.",
    );
    expect(finding({ ...less, across: undefined })).toMatch(
      /only 40 % stays on this slope\. 30 mm under the lower edge/,
    );
  });

  it("speaks of one bird as of one", () => {
    expect(finding({ code: "noWater", pen: "hens", birds: 1 })).toContain("its bird has nothing");
    expect(finding({ code: "noWater", pen: "hens", birds: 2 })).toContain("its 2 birds have nothing");
  });

  it("of birds too young, outgrown, or of another kind says whether another in the pen serves them", () => {
    const birds = { waterer: "cup", kindName: "hen", ageDays: 21 } as const;
    expect(finding({ ...birds, code: "tooYoung", fromDays: 35, othersSuit: true })).toMatch(
      /of 3 weeks are too young for it; it suits them from 5 weeks on\. Another in the pen serves them\.$/,
    );
    expect(finding({ ...birds, code: "tooOld", toDays: 14, othersSuit: false })).toMatch(
      /of 3 weeks have outgrown it; it served until 2 weeks\. Nothing else in the pen serves them\.$/,
    );
    expect(finding({ code: "notForThem", waterer: "cup", kindName: "duck", othersSuit: false })).toContain(
      "Nothing else",
    );
  });

  it("tells how high one hangs or stands, and which height is right", () => {
    const marks = { waterer: "bell", low: 0.1, high: 0.15, best: 0.12 } as const;
    expect(finding({ ...marks, code: "hangsHigh", height: 0.3 })).toMatch(
      /at 30 cm it hangs too high .*: 10 cm to 15 cm is right\.$/,
    );
    expect(finding({ ...marks, code: "standsHigh", height: 0.3 })).toContain("it stands too high");
    expect(finding({ ...marks, code: "hangsLow", height: 0.05 })).toMatch(
      /at 50 mm it hangs low.*10 cm to 15 cm is right/,
    );
    // From 4 to 12 cm are 8.
    expect(finding({ ...marks, code: "standsLow", height: 0.04 })).toMatch(
      /40 mm over the ground: raised by 80 mm .*\(10 cm to 15 cm is right\)\.$/,
    );
  });

  it("tells what a round finds, weight, and what is pushed out", () => {
    const empty = {
      code: "emptyBetween",
      waterer: "pan",
      every: 86_400,
      lasts: 43_200,
      hotLasts: 21_600,
    } as const;
    expect(finding(empty)).toBe("pan: filled every day, it lasts 12 h, and 6 h on a hot day.");
    expect(finding({ code: "oftenEmpty", waterer: "pan", refills: 4, hotRefills: 8 })).toMatch(
      /filling 4\.0 a day, and 8\.0 a day in heat/,
    );
    expect(finding({ code: "tooHeavy", waterer: "fount", mass: 12.4, most: 8 })).toMatch(
      /full it weighs 12 kg .* most is 8\.0 kg\.$/,
    );
    expect(finding({ code: "dryUphill", waterer: "pan", wetShare: 0.25 })).toContain("on 25 % of its lip");
  });
});

const report = (tilt: unknown, more: Record<string, unknown> = {}) =>
  ({ id: "fount", tilt, stays: 0.003, holds: 0.004, openings: [], ...more }) as unknown as WatererReport;
const shims = { level: 0.02, enough: 0.01 };

describe("writeTilt", () => {
  const told = (tilt: Partial<Tilt>, more = {}) => writeTilt(report({ shims, ...tilt }, more), "metric");

  it("of a fount tells each turn of its hole, how it stands, and whether that holds", () => {
    const byHole = { uphill: 0.03, sideways: 0.05, downhill: undefined };
    const fount = { works: "vacuum", byHole, slope: 0.04, isDraining: true } as const;
    const text = told(fount, { waterer: { hole: "uphill" } });
    expect(text).toMatch(
      /^fount: drains from 3 % \(1\.7°\) with its hole uphill, 5 % \(2\.9°\) with its hole sideways, no slope with its hole downhill\. /,
    );
    expect(text).toMatch(
      /It stands on 4 % \(2\.3°\), its hole uphill: it runs out; 20 mm of shim under its lower edge makes it level\.$/,
    );
    expect(told({ ...fount, slope: 0, isDraining: false }, { waterer: { hole: "downhill" } })).toMatch(
      /It stands level, its hole downhill: it holds\.$/,
    );
  });

  it("of a pan or trough tells what stays, across the slope too where that is another thing", () => {
    const trough = { works: "trough", slope: 0.05, share: 0.75, shareAcross: 0.9, halfAt: 0.2 } as const;
    expect(told(trough)).toBe(
      "fount: on 5 % (2.9°) it keeps 3 L of 4 L (across the slope 90 %); half of a full one stays on 20 % (11°); 20 mm of shim makes it level.",
    );
    expect(told({ ...trough, works: "pan", shareAcross: undefined })).not.toContain("across");
    expect(told({ ...trough, slope: 0 })).toBe(
      "fount: level it keeps 3 L of 4 L; half of a full one stays on 20 % (11°).",
    );
  });

  it("of a bell tells how far it may be held aside, or how it stands", () => {
    const bell = { works: "bell", slope: 0.05, drainsAt: 0.1, isDraining: false } as const;
    expect(told({ ...bell, swing: 0.15 }, { waterer: { cord: 1.5 } })).toMatch(
      /runs over from 10 % .*; hung by 1\.5 m of cord, it may be held 15 cm aside/,
    );
    expect(told({ ...bell, swing: undefined })).toMatch(/; it stands on 5 % \(2\.9°\)\.$/);
    expect(told({ works: "nipples", slope: 0.05 })).toBe("fount: hangs plumb on any ground.");
  });
});

describe("writeOpenings", () => {
  const warming = { from: 15, to: 35, isTaken: false, pushed: 3e-4, room: 1e-4, lost: 2e-4, airShare: 0.5 };
  const warm = (more: Partial<typeof warming>, system: "metric" | "us" = "metric") =>
    writeOpenings(report({ works: "nipples" }, { warming: { ...warming, ...more } }), system).at(-1)!;

  it("tells what warm air pushes out, what of it the ring takes, and what runs over", () => {
    expect(warm({})).toMatch(
      /from 15 °C to 35 °C, at worst 300 mL is pushed out, of which its ring takes 100 mL and 200 mL runs over\. .* 50 % of it is air\.$/,
    );
    expect(warm({ room: 5e-4, lost: 0 })).toMatch(/takes 300 mL and none runs over/);
    expect(warm({ isTaken: true })).toContain("(taken: the plan's hot day has no cool night)");
    expect(warm({}, "us")).toContain("from 59 °F to 95 °F");
  });

  it("tells what is lost when it is opened, or kept when it is shut", () => {
    const openings = [
      { code: "capOff", lost: 0.002 },
      { code: "ventShut", gives: 0.0005, stays: 0.0035 },
    ];
    expect(writeOpenings(report({ works: "nipples" }, { openings }), "metric")).toEqual([
      "fount: cap off or its seal gone, air gets in above and 2 L runs out.",
      "fount: lid airtight (no vent), it gives 500 mL and stops, with 3.5 L still in it.",
    ]);
  });
});

describe("writeChangeOver", () => {
  const change: ChangeOver = {
    ...{ from: "jar", to: "fount", kindName: "hen", kind: "hen", bothFromDays: 21, untilDays: 35 },
    ...{ bothFromDay: undefined, untilDay: undefined },
  } as ChangeOver;

  it("tells from which age both serve, and when the first goes; by the day where that is known", () => {
    expect(writeChangeOver(change)).toMatch(
      /^jar to fount: .* have both from 3 weeks, and the first goes at 5 weeks\.$/,
    );
    expect(writeChangeOver({ ...change, bothFromDay: 20_000, untilDay: 20_014 })).toMatch(
      /have both from 2024-10-04 \(3 weeks\), and the first goes on 2024-10-18 \(5 weeks\)\.$/,
    );
  });

  it("says so where there is a gap, or nothing comes after", () => {
    expect(writeChangeOver({ ...change, bothFromDays: 36 })).toMatch(
      /outgrow the first at 5 weeks, before the second suits them at 5 weeks\.$/,
    );
    expect(writeChangeOver({ ...change, bothFromDays: 35 })).toContain("have both from 5 weeks");
    expect(writeChangeOver({ ...change, to: undefined })).toMatch(
      /outgrow it at 5 weeks, and nothing else in the pen suits them then\.$/,
    );
  });
});

it("writeShareOfLoose counts places of both, and says nothing where one of them has none", () => {
  const pen = { pen: "hens", looseShare: 0.25, linePlaces: 6, loosePlaces: 2 } as PenYard;
  expect(writeShareOfLoose(pen)).toMatch(/^hens: 25 % of the drinking .* as 2 of 8 places to drink/);
  expect(writeShareOfLoose({ ...pen, linePlaces: 0 })).toBeUndefined();
  expect(writeShareOfLoose({ ...pen, loosePlaces: 0 })).toBeUndefined();
});
