import { describe, expect, it } from "vitest";
import type { BirdsOfPlan } from "../../../../packages/hydraulics/src/judge/birds/birds-for-plan.js";
import type {
  DeviceNeeded,
  DrinkersAsked,
  PenDrinkers,
} from "../../../../packages/hydraulics/src/judge/birds/drinkers-needed.js";
import type { WeekReport } from "../../../../packages/hydraulics/src/judge/birds/week-report.js";
import {
  writeAllowance,
  writeBirdFinding,
} from "../../../../packages/hydraulics/src/report/birds/bird-sentences.js";
import { birdCautions, writeBirdsText } from "../../../../packages/hydraulics/src/report/birds/birds-text.js";
import {
  writeAsks,
  writeForce,
  writeNeedReason,
  writePenDrinkers,
  writeSilences,
} from "../../../../packages/hydraulics/src/report/birds/drinkers-needed-text.js";
import { writeWeeksText } from "../../../../packages/hydraulics/src/report/birds/weeks-text.js";

const plain = (text: string) => text;
/** The 4th of October 2024. */
const DAY = 20_000;

describe("words of what birds need", () => {
  const rule = {
    counts: "birds",
    figure: 10,
    bindsFrom: 350,
    toBirds: undefined,
    status: "practice",
    citation: { source: "x", where: "p. 1", seen: "seen" },
  };
  const asked = (more: object = {}, isBinding = false) =>
    ({ rule: { ...rule, ...more }, isBinding, needed: 4 }) as unknown as DrinkersAsked;
  const device = (more: Partial<DeviceNeeded> = {}): DeviceNeeded =>
    ({
      ...{
        device: "nipple",
        birds: 40,
        needed: 5,
        because: "advice",
        byRule: 0,
        byAdvice: 5,
        inReach: 2,
        byCrowd: 3,
      },
      ...{ asked: [asked()], ruleOfRegion: "binds", isSilent: false, silentOn: [], has: 3 },
      ...more,
    }) as DeviceNeeded;
  const pen = (devices: DeviceNeeded[], more: object = {}) =>
    writePenDrinkers(
      { pen: "hens", index: 0, devices, isSuggestion: false, covered: 0.6, ...more } as PenDrinkers,
      "EU",
      "metric",
    );

  it("tells how many, why, what is there, and how many are too few", () => {
    const [first, reach, crowd, rules] = pen([device()]);
    expect(first).toBe("hens: 5 nipples for 40 birds, by advice; it has 3, 2 too few.");
    expect(reach).toContain("in reach: 2");
    expect(crowd).toMatch(/busiest minutes: 3$/);
    expect(rules).toBe(
      "- 4: rule that binds from 350 birds on, here advice: one nipple for 10 birds [x, p. 1; seen]",
    );
    expect(pen([device({ has: 5 })])[0]).toMatch(/it has 5\.$/);
    expect(pen([device()], { isSuggestion: true })[0]).toContain("nipples are a suggestion");
    const few = {
      code: "tooFewDrinkers",
      pen: "hens",
      birds: 12,
      needed: 3,
      binding: false,
      counts: "birds",
      figure: 4,
    } as const;
    const asks = (drinkers: number) =>
      writeBirdFinding({ ...few, drinkers, device: "nipple" } as never, "metric");
    expect([asks(1), asks(2)].map((text) => /(\d nipples?) for 12/.exec(text)?.[1])).toEqual([
      "1 nipple",
      "2 nipples",
    ]);
    expect(pen([device({ needed: 1, has: 1 })])[0]).toContain("1 nipple for");
  });

  it("tells of several kinds whether they are enough together, rounded down", () => {
    const two = [device(), device({ device: "cup" })];
    expect(pen(two, { covered: 0.999 }).at(-1)).toMatch(
      /together its drinkers are 99 % of what is needed\.$/,
    );
    expect(pen(two, { covered: 1 }).at(-1)).toMatch(/are enough\.$/);
    expect(pen([device()]).at(-1)).not.toContain("together");
  });

  it("says where nobody is there yet, or drinks elsewhere", () => {
    expect(pen([device({ birds: 0 })])).toEqual(["hens: no bird is there yet."]);
    expect(pen([device({ birds: 0 }), device()]).length).toBeGreaterThan(1);
    expect(pen([device()], { isElsewhere: true })[0]).toContain("loose waterers");
  });

  it("tells a range of heights as fine as one can be kept", () => {
    const low = {
      code: "hangsTooLow",
      pen: "hens",
      group: "lane",
      height: 0.1234,
      low: 0.2345,
      high: 0.3456,
      ageDays: 30,
    } as const;
    expect(writeBirdFinding(low, "metric")).toContain(
      "12 cm above the ground, low for birds of 4 weeks: 23 cm to 35 cm",
    );
    expect(writeBirdFinding({ ...low, code: "hangsTooHigh" }, "metric")).toContain(
      "too high for birds of 4 weeks: 23 cm to 35 cm",
    );
  });

  it("tells whether a rule binds, and what it asks", () => {
    expect(writeForce(asked({}, true))).toBe("rule that binds");
    expect(writeForce(asked({ bindsFrom: 0 }))).toBe("advice (practice)");
    expect(writeAsks(asked({ toBirds: 50 }), "nipple", "metric")).toBe(
      "one nipple for 10 birds of the first 50",
    );
    expect(writeAllowance({ counts: "edge", figure: 0.025, device: "trough" }, "metric")).toBe(
      "25 mm of edge a bird",
    );
    expect(writeAllowance({ counts: "least", figure: 2, device: "cup" }, "metric")).toBe(
      "at least 2 within reach of each bird",
    );
    const reasons = (["rule", "advice", "inReach", "crowd", "nobody"] as const).map((because) =>
      writeNeedReason({ because }),
    );
    expect(new Set(reasons).size).toBe(5);
  });

  it("says where no rule speaks, so that nothing looks met that was not asked", () => {
    expect(writeSilences(device(), "EU")).toEqual([]);
    expect(writeSilences(device({ isSilent: true, silentOn: ["hen"] }), "EU")[0]).toMatch(
      /^no rule and no advice .* at nipples: whether/,
    );
    expect(writeSilences(device({ silentOn: ["hen"] }), "EU")[0]).toMatch(
      /^none of these speaks of .*, who are counted as no one$/,
    );
    expect(writeSilences(device({ ruleOfRegion: "none" }), "EU")[0]).toMatch(/no rule in EU that binds/);
    expect(writeSilences(device({ ruleOfRegion: "none" }), "none" as never)).toEqual([]);
  });
});

describe("writeBirdsText", () => {
  const intake = (size: number) => ({ size, expect: size / 2, low: size / 4, high: size * 2 });
  const batch = (more: object = {}) => ({
    ...{ kindName: "Laying hen", count: 12, ageDays: 21, drownsFor: 0 },
    intake: { ...intake(2e-4), heat: 1, confidence: "good", sizeFrom: [], expectFrom: [] },
    hot: { heat: 2 },
    ...more,
  });
  const birds = (more: object = {}, batches = [batch()]) =>
    ({
      ...{
        day: DAY,
        region: "EU",
        weather: { high: 21, low: 21 },
        hotDay: { high: 35, low: 20, isTaken: true },
      },
      pens: [
        {
          pen: "hens",
          batches,
          now: intake(0.004),
          hot: intake(0.008),
          spilled: 0.05,
          spilledFrom: [],
          drinkers: { pen: "hens", devices: [], isSuggestion: false, covered: 1 },
          hangs: [{ device: "nipple", weeks: [{ low: 0.1, high: 0.12 }] }],
        },
      ],
      weeks: [0, 1].map((week) => ({
        week,
        day: DAY + 7 * week,
        ages: [{ ageDays: 21 + 7 * week }],
        now: intake(0.004),
        hot: intake(0.008),
      })),
      ...more,
    }) as unknown as BirdsOfPlan;
  const text = (one = birds()) => writeBirdsText("", one, "metric", plain);

  it("tells each pen's day, to size on and to expect, and the air it is for", () => {
    expect(text()).toMatch(/^This plan: its birds, 2024-10-04\n/);
    expect(text()).toMatch(/\nhens +12: Laying hen, 3 weeks +4 L +2 L +8 L +4 L\n/);
    expect(text()).toContain("Air 21 °C; hot day 20 °C to 35 °C (the plan names no hot spell).");
    expect(text(birds({ hotDay: { high: 35, low: 20, isTaken: false } }))).toContain(
      "(the plan's hot spell)",
    );
    expect(text(birds({ pens: [] }))).toContain("nobody drinks");
  });

  it("counts those to come as to come, and tells nothing of those that have left", () => {
    const mixed = birds({}, [
      batch(),
      batch({ count: 5, ageDays: -14 }),
      batch({ count: 0, kindName: "Duck" }),
    ]);
    expect(text(mixed)).toContain("12: Laying hen, 3 weeks; 5: Laying hen, come in 2 weeks");
    expect(text(mixed)).not.toContain("Duck");
    // Only of those that are there it is told what one drinks, and where that comes from.
    expect(text(mixed).match(/one drinks/g)).toHaveLength(1);
    expect(text(mixed)).toContain(
      "one drinks 200 mL to size on, 100 mL to expect, 50 mL to 400 mL at the ends",
    );
    expect(text(mixed)).toContain("heat: 1 times a mild day; 2 times on the hot day");
    expect(text()).toContain("hens: 5 % more is spilled.");
  });

  it("tells each week with its day and age, and heights where a table has them", () => {
    expect(text()).toMatch(/\n +0 +2024-10-04 +3 weeks +4 L +2 L +1 L +8 L +8 L\n/);
    expect(text()).toMatch(/\n +1 +2024-10-11 +4 weeks /);
    const coming = { ...birds().weeks[0], ages: [{ ageDays: -7 }, { ageDays: 0 }] };
    expect(text(birds({ weeks: [coming] }))).toMatch(/\n +0 +2024-10-04 +not yet, 0 days +4 L/);
    expect(text()).toMatch(/\n +0 +10 cm to 12 cm\n +1 +no table has it/);
  });

  it("adds up several pens", () => {
    const [pen] = birds().pens;
    expect(text()).not.toMatch(/\nall +/);
    expect(text(birds({ pens: [pen, { ...pen!, pen: "more" }] }))).toMatch(/\nall +4 L +2 L +8 L +4 L\n/);
  });

  it("warns of open water until the youngest are old enough", () => {
    const drowning = (more: object) => birdCautions(birds({}, [batch({ drownsFor: 7, ...more })]))[0];
    expect(drowning({})).toMatch(/^hens \(laying hens\): .* until they are 4 weeks old/);
    expect(drowning({ ageDays: -30 })).toContain("until they are 7 days old");
    expect(drowning({ drownsFor: 0 })).not.toContain("drown");
  });
});

describe("writeWeeksText", () => {
  const counts = { good: 4, drips: 0, starves: 0, dry: 0 };
  const week = (more: object = {}) =>
    ({
      ...{
        week: 0,
        hot: false,
        day: DAY,
        raised: [],
        verdict: "good",
        counts,
        worst: undefined,
        findings: [],
      },
      ...{
        idleHead: { least: 0.5, most: 0.5 },
        flowingHead: { least: 0.2, most: 0.3 },
        intakeSize: 0.004,
        intakeExpect: 0.003,
      },
      pens: [
        {
          atOnce: 3,
          busiest: 2,
          batches: [
            { count: 12, ageDays: 21 },
            { count: 0, ageDays: 90 },
          ],
        },
      ],
      ...more,
    }) as unknown as WeekReport;
  const text = (weeks: WeekReport[], hotWeeks: WeekReport[] = []) =>
    writeWeeksText("", { weeks, hotWeeks }, "metric", plain);

  it("has a line for each week, and one head where all are alike", () => {
    expect(text([week()])).toMatch(
      /\n +0 +2024-10-04 +3 weeks +4 L +3 L +3 +2 +50 cm +20 cm to 30 cm +all good\n/,
    );
    expect(text([week({ counts: { ...counts, dry: 1, drips: 2 } })])).toMatch(/1 dry, 2 drips\n/);
    expect(text([week()])).not.toMatch(/Lines to raise|hot spell|Worst drinker|\nBirds\n|\n\n\n/);
    expect(text([week()], [week({ hot: true })])).toContain("The same on days of the hot spell");
  });

  it("has the plan's name where it has one", () => {
    const named = writeWeeksText("Bank", { weeks: [week()], hotWeeks: [] }, "metric", plain);
    expect(named).toMatch(/^Bank, week by week\n/);
    expect(text([week()])).toMatch(/^This plan, week by week\n/);
  });

  it("tells how far hung runs go up or down", () => {
    const run = { run: "lane", low: 0.1, high: 0.14, height: 0.12, raise: 0.05 };
    const raised = (more: object) => text([week({ raised: [{ ...run, ...more }] })]);
    expect(raised({})).toMatch(/\n +0 +lane +10 cm to 14 cm +12 cm +up 50 mm\n/);
    expect(raised({ raise: -0.02 })).toContain("down 20 mm");
    expect(raised({ raise: 0, height: undefined })).toMatch(/10 cm to 14 cm +as it is\n/);
  });

  it("tells weeks that read alike together, and each finding once", () => {
    const worst = {
      drinker: "lane 4",
      verdict: "starves",
      moment: "lowestBusiest",
      margin: -0.1,
      because: { code: "blocked" },
    };
    const bad = (n: number, hot = false) => week({ week: n, hot, worst });
    const told = text(
      [bad(0), week({ week: 1, worst: { ...worst, verdict: "good" } }), bad(2)],
      [bad(2, true)],
    );
    expect(told).toContain("  Week 0, 2: lane 4 starves");
    expect(told).toContain("  Week 2, hot: lane 4 starves");
    expect(told).not.toContain("Week 1:");
    const finding = { code: "noDrinkers", pen: "hens", birds: 12 };
    const other = { ...finding, pen: "ducks" };
    const found = text([
      week({ findings: [finding] }),
      week({ week: 1, findings: [finding, finding, other] }),
    ]);
    expect(found).toContain("  Every week: hens: its 12 birds");
    expect(found).toContain("  Week 1: ducks: its 12 birds");
    const kinds = ["Duck", "Goose"].map((kind) => ({ code: "notYetCome", pen: "hens", kind, days: 7 }));
    expect(text([week({ findings: kinds })]).match(/come in 7 days/g)).toHaveLength(2);
    expect(text([week({ pens: [] })])).toContain("every week is alike");
  });
});
