import { type RainReading, readRainRecord } from "@headfall/hydraulics";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

const recordOf = (reading: RainReading) => {
  if (!reading.ok) throw new Error(JSON.stringify(reading));
  return reading.record;
};
const millimetres = (reading: RainReading) =>
  [...recordOf(reading).rain].map((rain, k) =>
    recordOf(reading).missing[k] === 1 ? undefined : Math.round(rain * 1e5) / 100,
  );
const problemOf = (reading: RainReading) =>
  !reading.ok && "problems" in reading ? reading.problems : undefined;
const questionOf = (reading: RainReading) =>
  !reading.ok && "question" in reading ? reading.question : undefined;

const fixed = (values: readonly string[]) =>
  `USW00024233201201PRCP${Array.from({ length: 31 }, (_, k) => values[k] ?? "-9999   ").join("")}`;

describe("a record of rain", () => {
  // Columns: GHCN-Daily readme, section III.
  it("is read from fixed columns, tenths of a millimetre, -9999 missing", () => {
    const line = fixed(["    0   ", "  109   ", "    8   ", "  203   "]);
    expect(line).toHaveLength(269);
    expect(millimetres(readRainRecord(line)).slice(0, 5)).toEqual([0, 10.9, 0.8, 20.3, undefined]);
  });

  it("leaves out what failed a check of quality, and says so", () => {
    const record = recordOf(readRainRecord(fixed(["   10   ", " 9000 X ", "   20   "])));
    expect(record.missing[1]).toBe(1);
    expect(record.findings).toContainEqual({ code: "flagged", days: 1 });
  });

  it("is refused where a station file has rain below nought, and where a month has no such day", () => {
    expect(problemOf(readRainRecord(fixed(["   10   ", " -999   "])))).toMatchObject([
      { code: "outOfRange", found: "rain of -99.9 mm on 2012-01-02" },
    ]);
    // Flagged, it counts for nothing.
    expect(recordOf(readRainRecord(fixed(["   10   ", " -999 X "]))).missing[1]).toBe(1);
    expect(problemOf(readRainRecord("USW00024233,20160231,PRCP,25,,,W,"))).toMatchObject([
      { code: "unreadableQuantity" },
    ]);
    expect(recordOf(readRainRecord("USW00024233,20160229,PRCP,25,,,W,")).rain[0]).toBeCloseTo(0.0025, 12);
  });

  it("is read from lines by station, days out of order and one left out", () => {
    const text = ["20160301", "20160228"].map((day) => `USW00024233,${day},PRCP,25,,,W,`).join("\n");
    expect(millimetres(readRainRecord(text))).toEqual([2.5, undefined, 2.5]);
  });

  it("is read from a station's table in tenths, its temperatures too", () => {
    const text =
      '"STATION","DATE","PRCP","PRCP_ATTRIBUTES","TMAX","TMIN"\n"USW00024233","2012-01-01","  109",",,W","128","50"';
    const record = recordOf(readRainRecord(text));
    expect(record.rain[0]).toBeCloseTo(0.0109, 12);
    expect(record.air?.high[0]).toBe(12.8);
  });

  it("takes temperatures as they are when a station's table is in millimetres", () => {
    const text =
      '"STATION","DATE","PRCP","PRCP_ATTRIBUTES","TMAX","TMIN"\n"USW00024233","2012-01-01","10.9",",,W","12.8","5.0"';
    expect(questionOf(readRainRecord(text))?.ask).toBe("unit");
    const record = recordOf(readRainRecord(text, { unit: "mm" }));
    expect(record.rain[0]).toBeCloseTo(0.0109, 12);
    expect(record.air?.high[0]).toBe(12.8);
  });

  it.each([
    ["date,rain mm\n2026-01-01,1.5\n2026-01-02,T", [1.5, 0]],
    ["date;rain mm\n13.1.2026;1,5\n14.1.2026;2", [1.5, 2]],
    ["date\train in\n1/13/2026\t0.5\n1/14/2026\t0", [12.7, 0]],
  ])("is read from a plain table: %j", (text, expected) => {
    expect(millimetres(readRainRecord(text))).toEqual(expected);
  });

  it("asks for the unit when no heading tells it", () => {
    const reading = readRainRecord("date,rain\n2026-01-01,1.5");
    expect(questionOf(reading)).toMatchObject({ ask: "unit", mostInDay: 1.5 });
    expect(millimetres(readRainRecord("date,rain\n2026-01-01,1.5", { unit: "in" }))).toEqual([38.1]);
  });

  it("asks which number is the day when both could be", () => {
    const text = "date,rain mm\n3/4/2026,1\n3/5/2026,2";
    expect(questionOf(readRainRecord(text))?.ask).toBe("dates");
    expect(millimetres(readRainRecord(text, { dates: "month first" }))).toEqual([1, 2]);
  });

  it("names the line that cannot be read", () => {
    expect(problemOf(readRainRecord("date,rain mm\n2026-01-01,1\n2026-02-30,2"))?.[0]).toMatchObject({
      line: 3,
    });
    expect(problemOf(readRainRecord("date,rain mm\n2026-01-01,wet"))?.[0]).toMatchObject({ line: 2 });
  });

  it("says days that come twice, years with too little known, and rain hardly right", () => {
    const { findings } = recordOf(readRainRecord("date,rain mm\n2026-01-01,1\n2026-01-01,2\n2026-03-01,450"));
    expect(findings.map(({ code }) => code)).toEqual([
      "daysMissing",
      "yearIncomplete",
      "dayTwice",
      "suspicious",
    ]);
  });

  it("takes 29 February in a leap year only", () => {
    expect(readRainRecord("date,rain mm\n2024-02-29,1").ok).toBe(true);
    expect(readRainRecord("date,rain mm\n2023-02-29,1").ok).toBe(false);
  });

  it("is refused when it is longer than a record may be", () => {
    expect(problemOf(readRainRecord("x".repeat(9_000_000)))).toHaveLength(1);
  });

  it("has a record, a question or one problem for any text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary-ascii", maxLength: 400 }), (text) => {
        const reading = readRainRecord(text);
        expect(reading.ok || questionOf(reading) !== undefined || problemOf(reading)?.length === 1).toBe(
          true,
        );
      }),
    );
  });
});
