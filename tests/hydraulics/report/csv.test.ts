import { describe, expect, test } from "vitest";
import { writeCsv } from "../../../packages/hydraulics/src/report/csv.js";
import { writeDrinkersCsv } from "../../../packages/hydraulics/src/report/csv-drinkers.js";
import {
  writeHeightsCsv,
  writeRunsCsv,
  writeSourcesCsv,
} from "../../../packages/hydraulics/src/report/csv-line.js";
import { writeVerdict } from "../../../packages/hydraulics/src/report/verdict-sentences.js";
import { checkOf, yard } from "../judge/yard/yard.js";
import { readCsv, recordsOf } from "./read-csv.js";

/** What a spreadsheet runs as a formula when a cell begins with it. */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/u;

describe("writeCsv", () => {
  test("ends every line with CR LF and puts cells with comma, quote or line break in quotes", () => {
    const text = writeCsv([
      ["a", "b,c", 'd "e"'],
      ["f\r\ng", "", undefined],
    ]);
    expect(text).toBe('a,"b,c","d ""e"""\r\n"f\r\ng",,\r\n');
  });

  test("begins with the mark of UTF-8 only when asked to", () => {
    expect(writeCsv([["é"]], { mark: true })).toBe("\ufeffé\r\n");
    expect(writeCsv([["é"]])).toBe("é\r\n");
  });

  test.each(["=1+1", "+1", "-1", "@SUM(1)", "\t=1", "\r=1", "\n=1", "＝1", "＋1", "－1", "＠A1"])(
    "defuses the text %j with an apostrophe",
    (text) => {
      expect(readCsv(writeCsv([[text]]))).toEqual([[`'${text}`]]);
    },
  );

  test("never touches a number, and writes it without exponent, comma or minus nought", () => {
    const numbers = [-2.5, 0.1 + 0.2, 5e-7, -1.25e-9, 123456, -0, 1e9, 0.015798, 1e-30];
    expect(readCsv(writeCsv([numbers]))).toEqual([
      ["-2.5", "0.3", "0.0000005", "-0.00000000125", "123456", "0", "1000000000", "0.015798"].concat(
        `0.${"0".repeat(29)}1`,
      ),
    ]);
  });

  test("leaves a cell empty where there is no figure", () => {
    expect(writeCsv([[Number.NaN, Number.POSITIVE_INFINITY, undefined]])).toBe(",,\r\n");
  });

  test("keeps blanks at the ends of a text by quotes", () => {
    expect(writeCsv([[" a", "b "]])).toBe('" a","b "\r\n');
  });
});

const checked = checkOf(
  yard({ runs: [{ id: "feed", length: "6 m", fall: "5 cm", drinkers: { kind: "plain", count: 3 } }] }),
  { samples: 20 },
);

describe("writeDrinkersCsv", () => {
  const rows = recordsOf(writeDrinkersCsv(checked, "si"));

  test("has one row for each drinker, with what the check came to", () => {
    expect(rows).toHaveLength(3);
    rows.forEach((row, i) => {
      const verdict = checked.drinkers[i]!;
      expect(row["drinker"]).toBe(verdict.drinker);
      expect(row["verdict"]).toBe(verdict.verdict);
      expect(Number(row["margin of head [m]"])).toBeCloseTo(verdict.margin, 8);
      expect(Number(row["along the run [m]"])).toBe(2 * (i + 1));
      expect(row["sentence"]).toBe(writeVerdict(verdict, checked.line, "metric"));
    });
  });

  test("has head and flow at each moment by both laws, each from its own place", () => {
    const { lowestBusiest, fullIdle } = checked.drinkers[2]!.moments;
    const row = rows[2]!;
    const at = (title: string) => Number(row[title]);
    expect(at("lowest usable and busiest: flow by Darcy-Weisbach [m3/s]")).toBeCloseTo(
      lowestBusiest.darcyWeisbach.flow,
      13,
    );
    expect(at("lowest usable and busiest: head by Hazen-Williams [m]")).toBeCloseTo(
      lowestBusiest.hazenWilliams.flowingHead,
      8,
    );
    // 40 cm of stand and 70 cm of water over the ground, the drinker 5 cm below it at the end of its run.
    expect(at("full and idle: standing head [m]")).toBeCloseTo(fullIdle.hazenWilliams.staticHead, 8);
    expect(at("full and idle: standing head [m]")).toBeCloseTo(1.15, 8);
  });

  test("says the certainty in words with its share, which is empty when nothing was sampled", () => {
    for (const row of rows) expect(["sure", "close call"]).toContain(row["certainty"]);
    const { line, ...rest } = checked;
    const unsampled = rest.drinkers.map((each) => ({ ...each, certainty: { kind: "notSampled" as const } }));
    const [row] = recordsOf(writeDrinkersCsv({ ...rest, line, drinkers: unsampled }, "si"));
    expect([row!["certainty"], row!["share of samples [%]"]]).toEqual(["not sampled", ""]);
  });

  test("writes the same values in centimetres and inches, the unit in the title", () => {
    const head = checked.drinkers[0]!.moments.fullIdle.hazenWilliams.staticHead;
    const metric = recordsOf(writeDrinkersCsv(checked, "metric"))[0]!;
    const us = recordsOf(writeDrinkersCsv(checked, "us"))[0]!;
    expect(Number(metric["full and idle: standing head [cm]"])).toBeCloseTo(100 * head, 6);
    expect(Number(us["full and idle: standing head [in]"])).toBeCloseTo(head / 0.0254, 6);
    expect(Number(us["along the run [ft]"])).toBeCloseTo(2 / 0.3048, 6);
  });
});

describe("the other tables", () => {
  test("writeRunsCsv has length, flow and the head lost by both laws", () => {
    const [row] = recordsOf(writeRunsCsv(checked, "metric"));
    const [run] = checked.runs;
    expect(row!["run"]).toBe("feed");
    expect(Number(row!["length [m]"])).toBe(6);
    expect(Number(row!["flow [L/min]"])).toBeCloseTo(run!.busiest.flow * 60_000, 6);
    expect(Number(row!["head lost by Darcy-Weisbach [cm]"])).toBeCloseTo(
      100 * run!.busiest.loss.darcyWeisbach,
      6,
    );
  });

  test("writeSourcesCsv has the stand, the volumes, the weight, and nothing where the source has none", () => {
    const [row] = recordsOf(writeSourcesCsv(checked, "us"));
    expect(Number(row!["stand [ft]"])).toBeCloseTo(0.4 / 0.3048, 6);
    expect(Number(row!["held when full [gal]"])).toBeCloseTo(
      checked.sources[0]!.volumeFull / 3.785411784e-3,
      5,
    );
    expect(Number(row!["weighs when full [lb]"])).toBeCloseTo(checked.sources[0]!.massFull / 0.45359237, 5);
    expect(row!["float valve keeps up"]).toBe("");
  });

  test("writeHeightsCsv has outlet, ends of runs and drinkers with their heights above the ground", () => {
    const rows = recordsOf(writeHeightsCsv(checked.line, "si"));
    expect(rows.map((row) => row["part"])).toEqual([
      "outlet",
      "pipe",
      "pipe",
      "drinker",
      "drinker",
      "drinker",
    ]);
    for (const row of rows) {
      expect(Number(row["height above ground [m]"])).toBeCloseTo(
        Number(row["height above datum [m]"]) - Number(row["ground above datum [m]"]),
        8,
      );
    }
    expect(Number(rows[2]!["height above datum [m]"])).toBeCloseTo(-0.05, 8);
  });
});

/** A name that can have been typed into a plan, in every place a name can stand. */
const named = (name: string) =>
  checkOf({
    headfall: 1,
    sources: [{ id: name, vessel: "drum-55gal-plastic", stand: "50 cm" }],
    points: [{ id: `${name} p`, ground: "-10 cm" }],
    runs: [
      {
        id: `${name} r`,
        from: name,
        to: `${name} p`,
        length: "3 m",
        pipe: { name: `${name} pipe`, bore: "13 mm" },
        drinkers: { id: `${name} g`, kind: name, count: 2 },
      },
    ],
    ownDrinkers: {
      [name]: {
        readings: [
          { head: "25 cm", flow: "60 mL/min" },
          { head: "1 m", flow: "120 mL/min" },
        ],
        holdsUpTo: "3 m",
        need: "50 mL/min",
      },
    },
  });

test.each([
  "=HYPERLINK(1+1)",
  "+1-1",
  "-2+3+cmd|' /C calc'!A0",
  "@SUM(1+1)*cmd|' /C calc'!A0",
  '=1+1,"x"',
  '",=1+1,"',
  "＝1+1",
  "דלי ליד הלול",
  "🐔👩‍🌾 hens, many",
])(
  "a plan that calls everything %j gives tables in which no text is a formula and no cell is split",
  (name) => {
    const hostile = named(name);
    const tables = [
      writeDrinkersCsv(hostile, "us"),
      writeRunsCsv(hostile, "us"),
      writeSourcesCsv(hostile, "us"),
      writeHeightsCsv(hostile.line, "us"),
    ];
    for (const table of tables) {
      for (const row of recordsOf(table)) {
        for (const cell of Object.values(row)) {
          if (/^-?\d+(\.\d+)?$/.test(cell)) continue;
          expect(cell).not.toMatch(FORMULA);
        }
      }
    }
    const [drinker] = recordsOf(tables[0]!);
    expect(drinker!["run"]).toBe(FORMULA.test(name) ? `'${name} r` : `${name} r`);
  },
);
