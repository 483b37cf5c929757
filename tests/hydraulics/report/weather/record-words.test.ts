import { describe, expect, it } from "vitest";
import {
  writeAirQuestion,
  writeFrostRecordAnswer,
  writeFrostRecordText,
} from "../../../../packages/hydraulics/src/report/weather/frost-record-text.js";
import {
  writeHeatRecordAnswer,
  writeHeatRecordText,
} from "../../../../packages/hydraulics/src/report/weather/heat-record-text.js";

type FrostOfRecord = Parameters<typeof writeFrostRecordText>[1];
type HeatOfRecord = Parameters<typeof writeHeatRecordText>[1];
/** The 4th of October 2024. */
const DAY = 20_000;
const plain = (text: string) => text;

describe("frost by a record", () => {
  const season = {
    year: 2024,
    known: 180,
    nights: 30,
    longest: 6,
    first: DAY,
    last: DAY + 150,
    coldest: -12,
  };
  const frost = (more: object = {}) =>
    ({
      ...{
        name: "",
        firstDay: DAY,
        days: 365,
        known: 360,
        nightsAYear: 30.4,
        coldest: { low: -12, day: DAY + 90 },
        refills: [],
      },
      seasons: [
        season,
        {
          ...season,
          year: 2025,
          nights: 0,
          longest: 0,
          first: undefined,
          last: undefined,
          coldest: undefined,
        },
      ],
      stops: [{ id: "lane", kind: "pin", surely: 12.4, atWorst: 3.14 }],
      ...more,
    }) as unknown as FrostOfRecord;
  const text = (more: object = {}) => writeFrostRecordText("", frost(more), "metric", plain);

  it("tells nights a year, the coldest, and the first and last of each winter that had any", () => {
    expect(writeFrostRecordAnswer(frost(), "metric")).toBe(
      "30 nights of frost a year, the coldest -12 °C on 2025-01-02. First frost: 2024-10-04; last: 2025-03-03.",
    );
    expect(writeFrostRecordAnswer(frost({ nightsAYear: 1.02 }), "metric")).toMatch(/^1 night of frost/);
    expect(writeFrostRecordAnswer(frost({ nightsAYear: 123.4 }), "metric")).toMatch(/^123 nights/);
    expect(writeFrostRecordAnswer(frost({ nightsAYear: 9.96 }), "metric")).toMatch(/^10 nights/);
    expect(writeFrostRecordAnswer(frost({ coldest: undefined }), "metric")).toMatch(/^No night/);
  });

  it("has a row for each winter and each part, rounded as far as such a count goes", () => {
    expect(text()).toMatch(
      /^This plan: frost by a daily record\n2024-10-04 to 2025-10-03, 360 of 365 days known\n/,
    );
    expect(text({ name: "Mill" })).toMatch(/a daily record of Mill\n/);
    expect(text()).toMatch(/\n2024 +180 +30 +6 +2024-10-04 +2025-03-03 +-12 °C\n2025 +180 +0 +0\n/);
    expect(text()).toMatch(/\nlane +drinker pins +12 +3\.1\n/);
    expect(text()).not.toMatch(/\n\n\n|Refills/);
    expect(text({ refills: [{ id: "jars", aYear: 40.6 }] })).toContain(
      "Refills for frost\n- jars: 41 a year",
    );
  });

  it("asks which place with eight choices at the most", () => {
    const choices = Array.from({ length: 9 }, (_, k) => `place ${k + 1}`);
    expect(writeAirQuestion({ ask: "place", choices })).toContain("place 8 ...?");
    expect(writeAirQuestion({ ask: "place", choices: choices.slice(1) })).toContain("place 9?");
  });
});

describe("heat by a record", () => {
  const season = {
    year: 2024,
    known: 180,
    summer: 40,
    hot: 12,
    longest: 5,
    first: DAY,
    last: DAY + 60,
    hottest: 34,
  };
  const often = [
    { id: "feed", expected: 3, atWorst: 5, refused: 0 },
    { id: "lane", expected: 20, atWorst: 30, refused: 2 },
  ];
  const heat = (more: object = {}) =>
    ({
      name: "",
      firstDay: DAY,
      days: 365,
      known: 360,
      hotAYear: 12,
      hottest: { high: 34, day: DAY + 30 },
      often,
      seasons: [season],
      ...more,
    }) as unknown as HeatOfRecord;
  const text = (more: object = {}) => writeHeatRecordText("Bank", heat(more), "metric", plain);

  it("tells hot days a year, the hottest, and the part that is too warm most often", () => {
    expect(writeHeatRecordAnswer(heat(), "metric")).toBe(
      "12 days a year of 30 °C and more, the hottest 34 °C on 2024-11-03. Water standing in lane is too warm on 20 days a year, at worst on 30.",
    );
    expect(writeHeatRecordAnswer(heat({ often: [], hotAYear: 1 }), "metric")).toMatch(
      /^1 day a year of .* on 2024-11-03\.$/,
    );
    expect(
      writeHeatRecordAnswer(heat({ often: [{ ...often[0], expected: 0, atWorst: 0 }] }), "metric"),
    ).not.toContain("Water");
    expect(writeHeatRecordAnswer(heat({ hottest: undefined }), "metric")).toContain(
      "no highest temperatures",
    );
  });

  it("has a row for each summer and each part, in the reader's degrees", () => {
    expect(text()).toMatch(
      /^Bank: heat by a daily record\n2024-10-04 to 2025-10-03, 360 of 365 days known\n/,
    );
    expect(text()).toMatch(/days of 25 °C +days of 30 °C/);
    expect(text()).toMatch(/\n2024 +180 +40 +12 +5 +2024-10-04 +2024-12-03 +34 °C\n/);
    expect(text()).toMatch(/above 30 °C +above 30 °C +above 44 °C/);
    expect(text()).toMatch(/\nlane +20 +30 +2\n/);
    expect(text({ often: [] })).not.toMatch(/above 44|\n\n\n/);
    expect(writeHeatRecordText("", heat({ name: "Mill" }), "us", plain)).toMatch(/^This plan: .* of Mill\n/);
  });
});
