import { describe, expect, it } from "vitest";
import type { RainRecord } from "../../../../packages/hydraulics/src/document/rain-record.js";
import type { RainSupply } from "../../../../packages/hydraulics/src/judge/rain/rain-answer.js";
import {
  writeRain,
  writeRainAnswer,
  writeRainCautions,
  writeRainFinding,
  writeRainQuestion,
  writeRainRun,
  writeRainText,
} from "../../../../packages/hydraulics/src/report/time/rain-text.js";

const plain = (text: string) => text;
const marked = (text: string, as: string) => `<${as}>${text}`;

describe("rain", () => {
  const balance = { shortDays: 0, sums: {} };
  const supply = (more: object = {}, short = 0) =>
    ({
      ...{ source: "barrel", days: 730.5, demandMost: 0.01, neverFails: 0.2, neverFailsDrawnFirst: 0.25 },
      runs: [{ balance: { ...balance, shortDays: short }, longestShort: 6 }],
      overflow: {
        diameter: 0.05,
        passes: 2e-3,
        downpour: 1e-3,
        isEnough: true,
        needed: 0.07,
        wettest: 0.04,
        wettestOver: 0.3,
      },
      ...more,
    }) as unknown as RainSupply;

  it("will do, or not by itself: on how many days, how often a year, how long, and what would have lasted", () => {
    expect(writeRainAnswer(supply(), "metric")).toBe(
      "Yes: in 2 years no day was short; 250 L of usable water would never have failed.",
    );
    expect(writeRainAnswer(supply({}, 30), "metric")).toMatch(
      /^Not by itself: 30 of 730\.5 days were short, about 15 a year, at most 6 in a row;/,
    );
    expect(writeRainAnswer(supply({ neverFailsDrawnFirst: undefined }), "metric")).toContain(
      "200 L of usable water",
    );
    expect(writeRainAnswer(supply({ neverFails: undefined }), "metric")).toContain(
      "no size lasts with this roof",
    );
    expect(writeRainAnswer(supply({ demandMost: 0 }), "metric")).toContain("nothing can come short");
  });

  it("warns of a downpour that the overflow does not pass", () => {
    const [passes, wettest] = writeRainCautions(supply(), "metric");
    expect(passes).toBe(
      "In a downpour of 100 mm an hour the roof sheds 60 L/min; the overflow (50 mm) passes 120 L/min.",
    );
    expect(wettest).toContain("(40 mm) up to 300 L run through or over");
    const narrow = { ...supply().overflow, isEnough: false, passes: 5e-4 };
    expect(writeRainCautions(supply({ overflow: narrow }), "metric")[0]).toMatch(
      /passes only 30 L\/min: fit 70 mm or more/,
    );
  });

  it("as text has what was reckoned with, each run, each year and season, and the sizes that last", () => {
    const part = (shortDays: number, days: number) => ({ days, shortDays, missing: 0, rain: 0 });
    const run = {
      ...{ convention: "drawnFirst", begins: "full", inTime: 0.95, inVolume: 0.876, longestShort: 6 },
      balance: { shortDays: 36, sums: { in: 0.02, given: 0.015, over: 0.004, end: 0.001 } },
      years: [{ year: 2024, ...part(30, 366) }],
      seasons: [part(1, 90), part(2, 92), part(33, 92), part(0, 91)],
    };
    const text = (more: object = {}) =>
      writeRainText(
        "",
        { name: "Mill", findings: [{ code: "flagged", days: 2 }] } as unknown as RainRecord,
        supply({
          ...{
            firstDay: 20_000,
            days: 730,
            figure: "size",
            heatFrom: "plan",
            usable: 0.2,
            demandMean: 0.008,
            runs: [run],
            roofNeeded: 12.3,
          },
          roof: { area: 20, runoff: 0.85, wetting: 5e-4, firstFlush: 0.01 },
          ...more,
        }),
        "metric",
        plain,
      );
    expect(text()).toMatch(/^This plan: will the rain do for barrel\?\nNot by itself: 36 of 730 days/);
    const painted = (shortDays: number) => {
      const dry = { ...run, balance: { ...run.balance, shortDays } };
      const one = supply({
        firstDay: 20_000,
        roof: { area: 20, runoff: 1, wetting: 0, firstFlush: 0 },
        usable: 1,
        demandMean: 0,
        runs: [dry],
      });
      return writeRainText("", { name: "", findings: [] } as unknown as RainRecord, one, "metric", marked);
    };
    expect([painted(0), painted(1)].map((words) => /<(good|starves)>/.exec(words)?.[1])).toEqual([
      "good",
      "starves",
    ]);
    expect(text()).toContain("- rain of Mill: 2024-10-04 to 2026-10-03, 730 days\n");
    expect(text()).toMatch(
      /- roof: 20 m.?, 85 % runs off, 0\.5 mm a wet day only wets it, the diverter keeps 10 L\n/,
    );
    expect(text()).toContain(
      "- birds: 8 L a day on average, 10 L on the hottest (the figure to size on; heat as in the plan)\n- 2 values failed",
    );
    expect(text()).toMatch(
      /\ndrawn before the day's rain, begun full +36 +6 +95\.0 % +87\.6 % +20 L +15 L +4 L +1 L\n/,
    );
    expect(text()).toMatch(/\n2024 +30 +366\nDecember to February +1 +90\n/);
    expect(text()).toContain(
      "- Never fails: 200 L usable with the rain of the day counted, 250 L without.\n- With this vessel the roof would have to be 12.3 m",
    );
    expect(text({ neverFailsDrawnFirst: undefined })).toContain("counted, none without.");
    const none = text({ neverFails: undefined, roofNeeded: undefined, figure: "expect", heatFrom: "record" });
    expect(none).toMatch(/- No vessel lasts with this roof\.\n- No roof is large enough/);
    expect(none).toContain("(the figure to expect; heat of each day of the record)");
  });

  it("speaks of one day as of one", () => {
    expect(writeRainFinding({ code: "daysMissing", days: 1, share: 0.003 }, "metric")).toBe(
      "1 day (0.3 %) is not known; it is taken as dry.",
    );
    expect(writeRainFinding({ code: "daysMissing", days: 3, share: 0.008 }, "metric")).toContain(
      "3 days (0.8 %) are not known",
    );
    expect(writeRainFinding({ code: "flagged", days: 1 }, "metric")).toMatch(
      /^1 value failed .* and is left out/,
    );
    expect(writeRainFinding({ code: "flagged", days: 4 }, "metric")).toMatch(
      /^4 values failed .* and are left out/,
    );
    expect([1, 2].map((days) => writeRainFinding({ code: "dayTwice", days }, "metric").slice(0, 13))).toEqual(
      ["1 day stands ", "2 days stand "],
    );
    expect(writeRainFinding({ code: "suspicious", day: 20_000, rain: 1.2 }, "metric")).toMatch(
      /^1200 mm on 2024-10-04/,
    );
  });

  it("has depths in mm or inches, and names how a run was reckoned", () => {
    expect([writeRain(0.0254, "us"), writeRain(0.0123, "metric")]).toEqual(["1 in", "12.3 mm"]);
    expect(writeRainRun({ convention: "drawnFirst", begins: "empty" })).toBe(
      "drawn before the day's rain, begun empty",
    );
    expect(writeRainRun({ convention: "rainFirst" as never, begins: "full" })).toBe(
      "rain of the day counted, begun full",
    );
  });

  it("asks which place with eight choices at the most", () => {
    const choices = Array.from({ length: 9 }, (_, k) => `place ${k + 1}`);
    expect(writeRainQuestion({ ask: "place", choices })).toContain("place 8 ...?");
    expect(writeRainQuestion({ ask: "place", choices: choices.slice(1) })).toContain("place 9?");
  });
});
