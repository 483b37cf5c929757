import { describe, expect, it } from "vitest";
import type { Checked } from "../../../../packages/hydraulics/src/judge/check-result.js";
import type {
  CloseCall,
  Measuring,
  Worthwhile,
} from "../../../../packages/hydraulics/src/judge/sureness/measuring.js";
import { writeMeasureText } from "../../../../packages/hydraulics/src/report/sureness/measure-text.js";
import {
  MEASURED_AS_WRITTEN,
  writeMeasuring,
  writeRemedy,
  writeSways,
  writeWorthwhile,
} from "../../../../packages/hydraulics/src/report/sureness/measure-words.js";

const wall = { input: { kind: "height", place: "wall" }, doubt: 0.01, needed: 0.005 } as const;
const rough = { input: { kind: "roughness" }, doubt: 0.02, needed: 0 } as const;
const close = (more: Partial<CloseCall> = {}): CloseCall => ({
  ...{ drinker: "lane 1", index: 0, verdict: "good", otherwise: "starves", share: 0.859, samples: 200 },
  ...{ remedy: { kind: "none" }, sways: [], moreHead: 0, lessHead: 0 },
  ...more,
});

describe("writeRemedy", () => {
  const told = (more: Partial<CloseCall>) => writeRemedy(close(more), "metric");

  it("tells one measurement and how well, others that would do, or two together", () => {
    expect(told({ remedy: { kind: "one", better: wall, or: [] } })).toBe(
      "Measure the height of wall within 5 mm (now 10 mm).",
    );
    expect(told({ remedy: { kind: "one", better: wall, or: [rough] } })).toMatch(
      /\. Or: settle the roughness of the pipe \(now within 2 %\)\.$/,
    );
    expect(told({ remedy: { kind: "two", better: [wall, rough] } })).toMatch(
      /^No one measurement is enough\. Measure the height of wall .*, and settle the rough/,
    );
    const count = { input: { kind: "takenIn" }, doubt: 0.3, needed: 0 } as const;
    expect(told({ remedy: { kind: "one", better: count, or: [] } })).toMatch(/^Count how many drink at once/);
  });

  it("tells how far the water must come up or go down where nothing makes it sure", () => {
    expect(told({ moreHead: 0.05 })).toMatch(/With 50 mm more head/);
    expect(told({ lessHead: 0.05 })).toMatch(/With 50 mm less head/);
    expect(told({ moreHead: 0.05, lessHead: 0.02 })).toMatch(/wants 50 mm more head, and 20 mm less/);
    expect(told({})).toContain("Its head is enough as it is");
    expect(told({ moreHead: undefined })).toContain("no water comes at all");
    expect(told({ lessHead: undefined })).toContain("no water comes at all");
  });
});

describe("what moves a verdict, and what is worth measuring", () => {
  it("tells what moves its head, the most first, and nothing that hardly does", () => {
    const sways = [
      { ...rough, head: 0.004 },
      { ...wall, head: 0.01 },
      { ...wall, input: { kind: "height", place: "tee" }, head: 9e-5 },
      { ...wall, input: { kind: "height", place: "end" }, head: undefined },
    ] as const;
    expect(writeSways(close({ sways }), "metric")).toBe(
      "Its head to spare is moved most by the height of wall (10 mm) by 10 mm, the roughness of the pipe (2 %) by 4 mm.",
    );
    expect(writeSways(close(), "metric")).toBe("");
  });

  const worth = (more: Partial<Worthwhile> = {}): Worthwhile => ({
    ...wall,
    drinkers: ["a", "b"],
    with: [],
    ...more,
  });

  it("names up to six drinkers, and what has to be measured beside it", () => {
    expect(writeWorthwhile(worth(), "metric")).toBe(
      "Measure the height of wall within 5 mm (now 10 mm): makes sure of a, b.",
    );
    const seven = ["a", "b", "c", "d", "e", "f", "g"];
    expect(writeWorthwhile(worth({ drinkers: seven }), "metric")).toMatch(/of a, b, c, d, e and 2 more\.$/);
    expect(writeWorthwhile(worth({ drinkers: seven.slice(1) }), "metric")).toMatch(/of b, c, d, e, f, g\.$/);
    expect(writeWorthwhile(worth({ with: [rough] }), "metric")).toMatch(
      /of a, b, for some of them together with the roughness of the pipe\.$/,
    );
    expect(writeWorthwhile(worth({ with: [rough], drinkers: ["a"] }), "metric")).toMatch(
      /of a, together with the roughness of the pipe\.$/,
    );
  });

  const measuring = (more: Partial<Measuring>): Measuring => ({
    sure: 3,
    close: [],
    measurements: [],
    samples: 200,
    ...more,
  });

  it("tells those that nothing makes sure together, with what the worst of them needs", () => {
    const hopeless = [close({ drinker: "x", moreHead: 0.02 }), close({ drinker: "y", moreHead: 0.05 })];
    const lines = writeMeasuring(measuring({ close: hopeless, measurements: [worth()] }), "metric");
    expect(lines).toHaveLength(3);
    expect(lines[1]).toBe(
      "No measurement makes sure of x, y. With 50 mm more head it would be good, and sure of that.",
    );
    expect(lines[2]).toBe(MEASURED_AS_WRITTEN);
    expect(writeMeasuring(measuring({ close: hopeless }), "metric")).toHaveLength(1);
    const unknown = [...hopeless, close({ drinker: "z", moreHead: undefined })];
    expect(writeMeasuring(measuring({ close: unknown }), "metric")[0]).toContain("no water comes at all");
    expect(writeMeasuring(measuring({ measurements: [worth()] }), "metric")).toEqual([]);
    const one = close({ remedy: { kind: "one", better: wall, or: [] } });
    expect(writeMeasuring(measuring({ close: [one], measurements: [worth()] }), "metric")).toHaveLength(2);
  });

  it("as text counts close calls among all, each with the share that agrees, rounded down", () => {
    const checked = { line: { name: "" }, drinkers: [{}] } as unknown as Checked;
    const text = (one: Measuring, of = checked) => writeMeasureText(of, one, "metric", (words) => words);
    expect(text(measuring({ close: [close()] }))).toMatch(
      /^This plan: what to measure again\n1 of 4 verdicts is a close call\.\n/,
    );
    expect(text(measuring({ close: [close()] }))).toContain(
      "\n  lane 1 (good, else starves; 85 % agree): No measurement",
    );
    expect(text(measuring({ close: [close(), close()] }))).toContain("2 of 5 verdicts are close calls.");
    expect(text(measuring({}))).toContain("every verdict is sure");
    expect(text(measuring({ sure: 0 }))).toContain("how sure its verdicts are is open");
    expect(text(measuring({ sure: 0 }), { ...checked, drinkers: [] })).toContain("no drinkers yet");
  });
});
