import { describe, expect, it } from "vitest";
import type { Carrying } from "../../../../packages/hydraulics/src/judge/time/carrying.js";
import type { Mark } from "../../../../packages/hydraulics/src/judge/time/daily-mark.js";
import type { Away } from "../../../../packages/hydraulics/src/judge/time/going-away.js";
import type { Lasting, LastingCase } from "../../../../packages/hydraulics/src/judge/time/lasting.js";
import {
  writeAwayAnswer,
  writeAwayText,
  writeFailure,
  writeLookEvery,
} from "../../../../packages/hydraulics/src/report/time/away-text.js";
import {
  writeDaysText,
  writeDayText,
  writePenDay,
  writeShare,
  writeWait,
} from "../../../../packages/hydraulics/src/report/time/day-text.js";
import { writeLastingText } from "../../../../packages/hydraulics/src/report/time/lasting-text.js";
import { writeMarkLines, writeMarkText } from "../../../../packages/hydraulics/src/report/time/mark-text.js";
import type { DayResult, PenDay } from "../../../../packages/hydraulics/src/simulate/day-result.js";
import type { DaysSummary } from "../../../../packages/hydraulics/src/simulate/day-summary.js";

const HOUR = 3600;
const DAY = 24 * HOUR;
const plain = (text: string) => text;
const marked = (text: string, as: string) => `<${as}>${text}`;

describe("going away", () => {
  const away = (more: Partial<Away> = {}): Away => ({
    ...{ days: 5, day: undefined, begins: 0, hotDays: 2, needed: 0.05, usable: 0.08, short: 0 },
    ...{
      lasts: undefined,
      pen: undefined,
      sources: [{ source: "barrel", full: 0.1 }],
      failures: [],
      lookEvery: undefined,
    },
    ...more,
  });

  it("lasts, with what is needed, what is there, and the hot days at the beginning", () => {
    expect(writeAwayAnswer(away(), "metric")).toBe(
      "It lasts: 50 L are needed on the cautious figure, 2 hot days at the beginning; 80 L of what stands there reach the birds.",
    );
    expect(writeAwayAnswer(away({ hotDays: 1 }), "metric")).toContain(", a hot day at the beginning;");
    expect(writeAwayAnswer(away({ hotDays: 0 }), "metric")).not.toContain("hot");
  });

  it("does not last: who goes without, when, and what is missing", () => {
    const short = away({ lasts: 2 * DAY, pen: "hens", short: 0.02 });
    expect(writeAwayAnswer(short, "metric")).toMatch(
      /^It does not last: the pen hens goes without after 2 days\. .* 20 L more must stand there/,
    );
    expect(writeAwayAnswer({ ...short, lasts: 0, pen: undefined, short: 0 }, "metric")).toMatch(
      /some pen goes without from the start\. [^.]*birds\.$/,
    );
  });

  it("tells each failure, and from them how often to look in", () => {
    const barrel = { kind: "source", what: "barrel", after: 3 * HOUR, pen: "hens" } as const;
    expect(writeFailure(barrel)).toBe("If barrel gives nothing: the pen hens goes without after 3 h.");
    expect(writeFailure({ ...barrel, kind: "drinkers", what: "lane", after: 0 })).toBe(
      "If the drinkers lane give nothing: the pen hens goes without at once.",
    );
    expect(writeFailure({ ...barrel, pen: "pen 1" })).toBe(
      "If barrel gives nothing: pen 1 goes without after 3 h.",
    );
    expect(writeFailure({ ...barrel, after: undefined })).toContain("the rest keeps up while you are away");
    expect(writeLookEvery(away())).toContain("no station that could fail");
    const failing = away({ failures: [barrel] });
    expect(writeLookEvery(failing)).toContain("is felt at once");
    expect(writeLookEvery({ ...failing, lookEvery: 2 * DAY })).toBe(
      "So somebody should look in at least every 2 days.",
    );
    expect(writeLookEvery({ ...failing, lookEvery: 5 * DAY })).toContain("No single failure");
    expect(writeLookEvery({ ...failing, lookEvery: 5 * DAY - 1 })).toContain("every 5 days");
  });

  it("has a title with its days, the vessels, and a colour by its answer", () => {
    expect(writeAwayText("", away({ days: 1 }), "metric", marked)).toMatch(
      /^<title>This plan: 1 day away\n<good>It lasts/,
    );
    const text = writeAwayText("Bank", away({ lasts: HOUR }), "metric", marked);
    expect(text).toMatch(/^<title>Bank: 5 days away\n<dry>It does not last/);
    expect(text).toContain("\n- barrel: 100 L\n");
  });
});

describe("how long the water lasts", () => {
  const one = (after: number | undefined): LastingCase =>
    ({
      ...{
        firstWithout: after === undefined ? undefined : { after },
        firstDry: { after: HOUR },
        halfDry: 2 * HOUR,
      },
      ...{ empty: undefined, firstDay: 0.012 },
    }) as unknown as LastingCase;
  const alone = {
    low: one(undefined),
    expect: one(3 * DAY),
    size: one(2 * DAY),
    hot: one(DAY),
    high: one(12 * HOUR),
  };
  const source = { source: "barrel", full: 0.1, usable: 0.09 };
  const lasting = (more: object = {}) =>
    ({
      ...{ cases: alone, alone, day: undefined, begins: 6 * HOUR, leavesOut: [] },
      sources: [{ ...source, refill: { kind: "none" } }],
      ...more,
    }) as unknown as Lasting;
  const carrying = (more: object = {}) =>
    ({ sources: [], each: 0.01, days: [], ...more }) as unknown as Carrying;
  const text = (more: object = {}, carried: object = {}) =>
    writeLastingText("", lasting(more), carrying(carried), "metric", plain);

  it("is a table by what the birds may drink, and the range between the least and the most", () => {
    expect(text()).toMatch(/\nfirst bird without +3 days +2 days +1 day\n/);
    expect(text()).toMatch(/\nnothing left to draw +not +not +not\n/);
    expect(text()).toMatch(/drawn on the first day +12 L +12 L +12 L\n/);
    expect(text()).toContain("every dripping drinker at its worst: 12 h to longer than it was followed.");
    expect(text()).toContain("Nobody fills it again");
    const filled = text({ cases: { ...alone } });
    expect(filled).toContain("Filled as the plan says");
    expect(filled).toContain("If nobody comes any more");
  });

  it("begins with each vessel, what can be drawn of it, and how it is filled", () => {
    const filled = (refill: object) => text({ sources: [{ ...source, refill }] });
    expect(filled({ kind: "none" })).toContain(
      "Full at 06:00:\n- barrel: 100 L, of which 90 L can be drawn; not filled again\n",
    );
    expect(filled({ kind: "hose", flow: 1e-4 })).toContain("kept full by a hose, 6 L/min at most");
    expect(filled({ kind: "hand", every: DAY })).toContain("filled up every day\n");
    expect(filled({ kind: "hand", every: 1.5 * DAY })).toContain("filled up every 1 day 12 h\n");
    expect(filled({ kind: "hand", every: 3 * DAY })).toContain("filled up every 3 days\n");
    expect(text({ day: 20_000 })).toContain("Full on 2024-10-04 at 06:00:");
  });

  it("tells trips now and in four and eight weeks, with weight and climb", () => {
    const day = (week: number, expect: number, size: number, hot = false) => ({
      ...{ week, hot, trips: { expect, size }, massPerTrip: 10, climb: week === 0 ? 0 : 6 },
    });
    const carried = text(
      {},
      {
        sources: ["barrel"],
        days: [day(0, 1, 1), day(0, 2, 3, true), day(1, 9, 9), day(4, 2, 2), day(8, 3, 4)],
      },
    );
    expect(carried).toContain(
      "To barrel, if what is drunk is carried:\n- now: 1 trip a day of 10 L (10 kg each)\n",
    );
    expect(carried).toContain("- now, hot: 2 to 3 trips a day of 10 L (10 kg each)\n");
    expect(carried).toContain("- in 4 weeks: 2 trips a day of 10 L (10 kg each), 6 m of climb\n");
    expect(carried).toContain("- in 8 weeks: 3 to 4 trips");
    expect(carried).not.toContain("9 trips");
    expect(text()).toContain("- Nothing is carried");
  });

  it("tells what is left out only where something is", () => {
    expect(text()).not.toContain("Left out");
    expect(text({ leavesOut: ["rain"] })).toMatch(/Left out\n- Rain is not counted/);
  });
});

describe("the daily mark", () => {
  const four = (low: number, expect: number, size: number, high: number) => ({ low, expect, size, high });
  const mark = (more: Partial<Mark> = {}): Mark => ({
    ...{ source: "barrel", index: 0, day: undefined, from: 0.7, full: 0.8, outlet: 0.05 },
    ...{ fall: four(0.03, 0.04, 0.045, 0.06), volume: four(0.006, 0.008, 0.009, 0.012) },
    ...{ nightFall: 0.005, stuckBelow: 0.025, leakAbove: 0.007, leakPerCentimetre: 0.002 },
    ...{ isTooSmallToRead: false, isKeptFull: false, marks: [], scale: [] },
    ...more,
  });

  it("tells the fall to expect, its range, and what less, more, or a fall overnight means", () => {
    const [fall, between, stuck, night, leak] = writeMarkLines(mark(), "metric");
    expect(fall).toBe(
      "From 70 cm it should fall 4 cm by tomorrow at the same hour (8 L); between 3 cm and 6 cm is as it should be.",
    );
    expect(between).toMatch(/^Between 2\.5 cm and 3 cm: .*Read it again/);
    expect(stuck).toMatch(/^Less than 2\.5 cm: something is stuck/);
    expect(night).toMatch(/no more than 0\.5 cm\. Up to 0\.7 cm may .* each centimetre about 2 L a day\.$/);
    expect(leak).toMatch(/^More than 6 cm in a day: a leak/);
    expect(writeMarkLines(mark({ day: 20_000 }), "metric")[0]).toContain("from 2024-10-04");
  });

  it("does not promise what cannot be read, nor of a vessel that is kept full", () => {
    expect(writeMarkLines(mark({ isTooSmallToRead: true }), "metric")[1]).toMatch(
      /^That is too little to be read/,
    );
    expect(writeMarkLines(mark({ isKeptFull: true }), "metric")).toHaveLength(1);
  });

  it("has a table of two weeks, of what is not kept full", () => {
    const marks = Array.from({ length: 20 }, (_, k) => ({
      day: k + 1,
      level: 0.6 - k / 100,
      volume: 0.1,
      low: 0.5,
      high: 0.65,
    }));
    const text = writeMarkText("Bank", mark({ marks }), "metric", plain);
    expect(text).toMatch(/^Bank: the daily mark of barrel\n/);
    expect(writeMarkText("", mark(), "metric", plain)).toMatch(/^This plan: the daily mark of barrel\n/);
    expect(text).toMatch(/\n +1 +60 cm +100 L +50 cm +65 cm\n/);
    expect(text).toMatch(/\n +14 +47 cm /);
    expect(text).not.toMatch(/\n +15 +46 cm /);
    for (const one of [mark(), mark({ marks, isKeptFull: true })])
      expect(writeMarkText("", one, "metric", plain)).not.toContain("holds");
  });
});

describe("a simulated day", () => {
  const pen = (more: Partial<PenDay> = {}): PenDay =>
    ({
      ...{
        pen: "hens",
        birds: 40,
        comers: 1500,
        drunk: 0.009,
        short: 0,
        gaveUp: 0,
        mostAtOnce: 6,
        mostAt: 17 * HOUR,
      },
      ...{
        allTaken: 0.012,
        foundDry: 0,
        longestWait: 90,
        meanWait: 4,
        wait95: 20,
        dry: 0,
        dryFrom: undefined,
      },
      ...more,
    }) as PenDay;

  it("tells who came, drank, waited and went without", () => {
    expect(writePenDay(pen(), "metric")).toBe(
      "hens: 40 birds came 1500 times and drank 9 L; every bird got its water. At most 6 drank at once (17:00); every place was taken 1.2 % of the light; they waited 4 s on average, 95 in 100 no more than 20 s, at worst 90 s.",
    );
    expect(writePenDay(pen({ longestWait: 0 }), "metric")).toContain("; nobody waited.");
    expect(writePenDay(pen({ short: 3, gaveUp: 5 }), "metric")).toMatch(
      /; 3 of them came short .*; 5 times a bird gave up and came back\.$/,
    );
    expect(writePenDay(pen({ birds: 0 }), "metric")).toBe("hens: no bird drinks at the line.");
    const dry = writePenDay(pen({ foundDry: 7, dry: 0.1, dryFrom: 12 * HOUR }), "metric");
    expect(dry).toMatch(
      /those who found water waited.* None of their drinkers gave water 10 % of the light, first at 12:00\. 7 times a bird found no water/,
    );
    expect(writePenDay(pen({ foundDry: 7 }), "metric")).not.toContain("None of their drinkers");
  });

  it("tells waits in seconds up to two minutes, and small shares as such", () => {
    expect([0.4, 0.5, 119, 120, 600].map(writeWait)).toEqual(["0 s", "1 s", "119 s", "2 min", "10 min"]);
    expect([0, 0.0004, 0.001, 0.128, 1].map(writeShare)).toEqual([
      "0 %",
      "under 0.1 %",
      "0.1 %",
      "13 %",
      "100 %",
    ]);
  });

  it("is told with its drinkers, its water and its levels", () => {
    const result = {
      ...{ day: 20_000, seed: 3, pens: [pen()], balance: { drunk: 0.009, spilled: 0.001, drawn: 0.01 } },
      drinkers: [
        { drinker: "lane 1", bouts: 12, drawn: 0.004, busy: 300, leastFlow: 1e-6 },
        { drinker: "lane 2", bouts: 0, drawn: 0, busy: 0, leastFlow: 0 },
      ],
      ...{
        sources: [
          { source: "barrel", poured: 0.02 },
          { source: "tub", poured: 0 },
        ],
        solver: { solves: 9, asked: 40, unsolved: 0 },
      },
      levels: {
        level: [
          [0.5, 0.4, 0.45],
          [0.3, 0.2],
        ],
      },
    } as unknown as DayResult;
    const text = writeDayText("Bank", result, "metric", plain);
    expect(text).toMatch(/^Bank: a simulated day on 2024-10-04 \(seed 3\)\n/);
    expect(text).toMatch(/\nlane 1 +12 +4 L +5 min +60 mL\/min\nlane 2 +0 +0 [a-zA-Z]+ +0 s\n/);
    expect(text).toContain(
      "- drunk 9 L, spilled 1 L, drawn 10 L\n- barrel: from 50 cm to 45 cm, 20 L poured in\n- tub: from 30 cm to 20 cm\n",
    );
    expect(text).toContain("solved for 9 sets of drinkers at work and asked 40 times. The same");
    const unsolved = { ...result, solver: { ...result.solver, unsolved: 2 } };
    expect(writeDayText("", unsolved, "metric", plain)).toContain(
      "; 2 sets could not be solved and gave nothing. The same",
    );
  });

  it("many days are told by what is seldom passed, and on how many days a bird came short", () => {
    const over = (scale: number) => ({ low: scale, middle: 2 * scale, high: 3 * scale, most: 4 * scale });
    const summary = {
      ...{ days: 30, seeds: { from: 1, to: 30 }, drawn: over(0.01) },
      pens: [
        {
          ...{
            pen: "hens",
            birds: 40,
            daysShort: 0.1,
            mostAtOnce: over(2),
            allTaken: over(0.01),
            meanWait: over(1),
            wait95: over(10),
          },
          ...{ longestWait: over(100), gaveUp: over(5), foundDry: over(0), dry: over(0), short: over(0.3) },
        },
      ],
    } as unknown as DaysSummary;
    const text = writeDaysText("", summary, "metric", plain);
    expect(text).toMatch(/^This plan: 30 simulated days \(seeds 1 to 30\)\n/);
    expect(text).toMatch(/\nmost at once +2 +4 +6 +8\n/);
    expect(text).toMatch(/\nevery place taken, of the light +1 % +2 % +3 % +4 %\n/);
    expect(text).toMatch(/\nlongest wait +100 s +3\.3 min +5 min +6\.7 min\n/);
    expect(text).toMatch(/\nbirds short +0 +1 +1 +1\n/);
    expect(text).toContain("Drawn a day: 10 L to 30 L\n- hens: some bird came short on 10 % of the days\n");
  });
});
