import { describe, expect, it } from "vitest";
import type {
  BuildSheet,
  HeightMark,
  JugTest,
} from "../../../../packages/hydraulics/src/judge/build/build-sheet.js";
import type { PipeToCut } from "../../../../packages/hydraulics/src/judge/build/part-list.js";
import { writeBuildPage } from "../../../../packages/hydraulics/src/report/build/build-page.js";
import { writeBuildText } from "../../../../packages/hydraulics/src/report/build/build-text.js";
import {
  gatherMarks,
  writeDrill,
  writeJug,
  writePart,
  writePriceLine,
  writeStep,
} from "../../../../packages/hydraulics/src/report/build/build-words.js";
import { writePartsCsv } from "../../../../packages/hydraulics/src/report/build/csv-parts.js";
import {
  writeBar,
  writeCutLength,
  writeCutting,
} from "../../../../packages/hydraulics/src/report/build/cut-words.js";

const INCH = 0.0254;

describe("sizes to drill and to cut", () => {
  it("a drill is told in millimetres, or in inches to a sixty-fourth, as small as its fraction goes", () => {
    expect(writeDrill(0.0127, "metric")).toBe("12.7 mm");
    const inches = [1 / 64, 1 / 2, 3 / 4, 1, 1 + 5 / 32, 2].map((size) => writeDrill(size * INCH, "us"));
    expect(inches).toEqual(["1/64 in", "1/2 in", "3/4 in", "1 in", "1 5/32 in", "2 in"]);
  });

  it("a cut is told in whole millimetres, or in feet and inches to a sixteenth; what lies below with its sign", () => {
    expect([0.9994, 1, 1.2346, -0.05, -1.5].map((one) => writeCutLength(one, "metric"))).toEqual([
      "999 mm",
      "1.000 m",
      "1.235 m",
      "-50 mm",
      "-1.500 m",
    ]);
    const us = [3 / 16, 11.5, 12, 12 + 1 / 4, 30, -6].map((size) => writeCutLength(size * INCH, "us"));
    expect(us).toEqual(["3/16 in", "11 1/2 in", "1 ft", "1 ft 1/4 in", "2 ft 6 in", "-6 in"]);
  });
});

const cutting = { bought: 6, bound: 6, isProven: true, leftoverUsed: 0, isLeastLeftover: true };
const pipe = (more: object = {}) =>
  ({
    ...{
      pipe: "p",
      name: "PVC",
      form: "stick",
      sold: [3],
      soldFrom: "plan",
      needed: 5,
      uncut: [],
      chips: 0.004,
      rests: 0.9,
      untold: 0,
      price: 12,
      cutting,
    },
    bars: [
      { from: "sold", length: 3, pieces: [{ run: "lane", part: 1, parts: 2, length: 2.5 }], rest: 0.5 },
      { from: "sold", length: 3, pieces: [{ run: "lane", part: 2, parts: 2, length: 2.5 }], rest: 0.4 },
      { from: "leftover", length: 1, pieces: [{ run: "feed", part: 1, parts: 1, length: 0.8 }], rest: 0.2 },
    ],
    ...more,
  }) as unknown as PipeToCut;

describe("writeCutting", () => {
  const told = (more: object = {}) => writeCutting(pipe(more), "metric");

  it("tells what is needed and bought, how far that is proven, and what cuts take", () => {
    expect(told()).toEqual([
      "5.000 m needed; buy 2 of 3.000 m, 6.000 m together.",
      "No cutting buys less: the bound is 6.000 m too.",
      "Cuts take 4 mm; 900 mm is left over.",
    ]);
    expect(told({ cutting: { ...cutting, bound: 5.5 } })[1]).toContain("every other way was looked at");
    expect(told({ cutting: { ...cutting, bound: 5.5, isProven: false } })[1]).toMatch(
      /^No plan buys less than 5\.500 m; whether/,
    );
    expect(told({ cutting: { ...cutting, leftoverUsed: 1 } })[2]).toMatch(
      /^1\.000 m of what is on hand is cut into; nothing that buys as little/,
    );
    expect(told({ cutting: { ...cutting, leftoverUsed: 1, isLeastLeftover: false } })[2]).toMatch(
      /cut into\.$/,
    );
  });

  it("tells what cannot be cut, what nobody told of, and a length that is from memory", () => {
    const uncut = [{ run: "lane", part: 1, parts: 1, length: 4 }];
    expect(told({ uncut })).toContain("Nothing is long enough for lane, 4.000 m.");
    expect(told({ uncut, sold: [] }).join()).toContain(
      "Nobody says in what length it is sold: pieces of lane, 4.000 m.",
    );
    expect(told({ soldFrom: "usual" }).at(-1)).toContain("from memory");
    expect(told({ untold: 2 }).at(-1)).toMatch(/^2\.000 m lies there in pieces that nobody told/);
    const nothing = told({ bars: [], soldFrom: "usual" });
    expect(nothing).toEqual(["5.000 m needed; nothing to buy."]);
  });

  it("tells each bar with its pieces and what is left", () => {
    const [first, , hand] = pipe().bars.map((bar) => writeBar(bar, pipe(), "metric"));
    expect(first).toBe("New stick, 3.000 m: lane 1 of 2, 2.500 m; 500 mm left");
    expect(hand).toBe("On hand, 1.000 m: feed, 800 mm; 200 mm left");
    expect(writeBar(pipe().bars[0]!, pipe({ form: undefined }), "metric")).toMatch(/^New length,/);
  });
});

describe("parts, prices, marks and steps", () => {
  const price = { sum: 12.5, unpriced: 2, money: "EUR" };
  const line = (more: object) => writePriceLine({ price, strayPrices: [], ...more } as unknown as BuildSheet);

  it("adds up what has a price, and counts what has none", () => {
    expect(line({})).toEqual([
      "All that is to be bought: 12.50 EUR, without 2 that have no price in the plan. What is advised is not in it.",
    ]);
    expect(line({ price: { ...price, unpriced: 1 } })[0]).toContain("without 1 that has no price");
    expect(line({ price: { ...price, unpriced: 0 } })[0]).toContain("12.50 EUR. What");
    expect(line({ strayPrices: ["hat"] })[1]).toMatch(/^No part of this plan is called hat/);
    expect(line({ price: { ...price, sum: 0 } })).toEqual([]);
    expect(line({ price: { ...price, sum: 0 }, strayPrices: ["hat"] })).toHaveLength(1);
  });

  it("names a coupling that reduces as one", () => {
    const part = (id: string) => writePart({ kind: "joiner", id, name: undefined, size: "1/2 in" } as never);
    expect([part("reducer-1"), part("joiner-1")]).toEqual(["reducing coupling, 1/2 in", "coupling, 1/2 in"]);
  });

  it("puts drinkers of one run and one height on one line, and nothing else", () => {
    const mark = (kind: HeightMark["kind"], name: string, height: number): HeightMark => ({
      kind,
      name,
      run: "lane",
      along: 0,
      height,
      aboveGround: height,
    });
    const marks = gatherMarks([
      mark("drinker", "lane 1", 0.3),
      mark("drinker", "lane 2", 0.3002),
      mark("drinker", "lane 3", 0.302),
      mark("end", "tee 1", 0.3),
      mark("end", "tee 1", 0.3001),
    ]);
    expect(marks.map(({ words }) => words)).toEqual([
      "drinkers lane 1 and 2",
      "drinker lane 3",
      "pipe at tee 1",
    ]);
  });

  it("tells each step with what it takes", () => {
    const step = (one: object) => writeStep(one as never, "metric");
    expect(step({ code: "setStand", source: "barrel", stand: 0.4, feet: 4 })).toMatch(
      /40 cm high, on 4 feet\./,
    );
    expect(step({ code: "setStand", source: "barrel", stand: 0.4, feet: 0 })).toMatch(/40 cm high\. /);
    expect(step({ code: "drillVessel", source: "barrel", outlet: 0.05, outlets: 2 })).toContain(
      "(2 outlets)",
    );
    expect(step({ code: "drillVessel", source: "barrel", outlet: 0.05, outlets: 1 })).not.toContain(
      "outlets)",
    );
    const lay = {
      code: "layRun",
      run: "lane",
      from: "a",
      to: "b",
      pipe: "PVC",
      length: 5,
      pieces: 2,
      devices: ["tap"],
      fittings: [{ name: "elbow", count: 3 }],
    };
    expect(step(lay)).toBe("Lay lane from a to b: 5 m of PVC in 2 pieces, with tap; 3 of elbow.");
    expect(step({ ...lay, pieces: 1, devices: [], fittings: [{ name: "elbow", count: 1 }] })).toBe(
      "Lay lane from a to b: 5 m of PVC, with elbow.",
    );
    expect(step({ code: "rinse", ends: [] })).toContain("Leave the ends open");
    expect(step({ code: "bleed", point: "wall", hasBleed: false })).toMatch(/^Let the air out at wall/);
  });

  it("tells of jug and watch what comes, in which time, and what is needed", () => {
    const jug: JugTest = {
      drinker: "lane 1",
      roles: ["first", "worst"],
      verdict: "good",
      seconds: 120,
      volume: 2e-4,
      low: 1.5e-4,
      high: 2.5e-4,
      needed: 1e-4,
      samples: 100,
    };
    expect(writeJug(jug, "metric")).toBe(
      "lane 1 (nearest, worst): 200 mL in 2 min; between 150 mL and 250 mL is as it should be. It needs 100 mL.",
    );
    expect(writeJug({ ...jug, seconds: 60 }, "metric")).toContain("in 60 s;");
    expect(writeJug({ ...jug, needed: 0 }, "metric")).toMatch(/should be\.$/);
    expect(writeJug({ ...jug, volume: 0 }, "metric")).toContain("nothing comes");
  });
});

describe("the sheet as text, and its parts as a table", () => {
  const part = {
    kind: "tee",
    id: "tee",
    name: undefined,
    size: undefined,
    count: 3,
    price: 1.5,
    where: ["a", "b", "c", "d", "e"],
    basis: "implied",
  };
  const sheet = (more: object = {}) =>
    ({
      ...{
        parts: [part],
        pipes: [],
        holes: [],
        heights: [],
        steps: [],
        jugs: [],
        loads: [],
        coop: { marks: [], heights: [], contacts: [] },
      },
      ...{
        price: { sum: 4.5, unpriced: 0, money: "EUR" },
        strayPrices: [],
        openWater: [],
        deepWater: [],
        hasRoof: false,
        kerf: 0,
        day: undefined,
      },
      ...more,
    }) as unknown as BuildSheet;
  const text = (more: object = {}) => writeBuildText("", sheet(more), "metric", (words) => words);

  it("has only what there is, prices by the count, and few of many places", () => {
    expect(text()).toMatch(/^This plan: how to build it\n/);
    expect(text()).toMatch(/\n +3 +tee +4\.50 EUR +a, b, c and 2 more +the line needs it\n/);
    expect(text()).not.toMatch(/Heights to mark|Holes and threads|In this order|Jug and watch\n|\n\n\n/);
    expect(text({ parts: [{ ...part, price: undefined, where: ["a", "b", "c", "d"] }] })).toMatch(
      /\n +3 +tee +a, b, c, d +the line needs it\n/,
    );
    const heights = [{ kind: "end", name: "tee", run: "lane", along: 0, height: 0.35, aboveGround: 0.25 }];
    expect(text({ heights })).toMatch(/Heights to mark\n.*\npipe at tee +250 mm +350 mm\n/);
    const steps = [{ code: "letBirdsIn" }, { code: "closeRing", run: "lane" }];
    expect(text({ steps })).toMatch(/In this order\n1\. Only then .*\n2\. lane closes a ring/);
  });

  it("as a page has no table without rows, and what a plan is called as text", () => {
    const page = (title: string, more: object = {}) => writeBuildPage(title, sheet(more), "metric", "a4");
    expect(page("")).not.toContain("<table");
    const heights = [{ kind: "end", name: "tee", run: "lane", along: 0, height: 0.35, aboveGround: 0.25 }];
    expect(page("", { heights })).toMatch(/<td>pipe at tee<\/td><td>250 mm<\/td><td>350 mm<\/td>/);
    expect(page("")).toContain(">3 tee, for a, b, c, d, e (");
    expect(page("<b>&")).toContain("<h1>&lt;b&gt;&amp;: to build it</h1>");
    expect(page("")).toContain("<h1>This plan: to build it</h1>");
  });

  it("tells heights by the week, and whom to call", () => {
    const weeks = [
      { week: 1, height: 0.12, raise: 0.02, low: 0.1, high: 0.14 },
      { week: 2, height: undefined, raise: 0.05, low: 0.13, high: 0.17 },
    ];
    const coop = {
      marks: [],
      heights: [{ run: "lane", weeks }],
      contacts: [{ who: "Vet", phone: "555 0100" }],
    };
    expect(text({ coop })).toContain(
      "- Week 1: drinkers of lane at 12 cm above the ground (10 cm to 14 cm suits the birds).\n- Week 2: drinkers of lane at 50 mm from where it is now (13 cm to 17 cm",
    );
    expect(text({ coop })).toContain("- Call Vet, 555 0100\n");
    expect(text()).toContain("nobody is named");
  });

  it("shares the price of what is bought among its bars by their length, and prices nothing on hand", () => {
    const rows = writePartsCsv(sheet({ pipes: [pipe()] }), "metric").split("\r\n");
    const prices = rows.slice(2, 5).map((row) => row.split(",").slice(-3));
    expect(prices).toEqual([
      ["to buy", "6", "6"],
      ["to buy", "6", "6"],
      ["on hand", "", ""],
    ]);
    expect(rows[2]!.split(",").slice(0, 5)).toEqual(["p", "PVC", "", "1", "3"]);
    expect(rows[1]!.split(",").slice(-2)).toEqual(["1.5", "4.5"]);
  });
});
