import { describe, expect, it } from "vitest";
import type { Mishaps } from "../../../../packages/hydraulics/src/judge/mishaps/mishaps-of-plan.js";
import { writeMishapsDocument } from "../../../../packages/hydraulics/src/report/mishaps/mishaps-document.js";
import {
  writeMishapCautions,
  writeMishapsText,
} from "../../../../packages/hydraulics/src/report/mishaps/mishaps-text.js";

const HOUR = 3600;
const none = {
  hasBirds: true,
  firstWithout: undefined,
  firstDry: undefined,
  halfDry: undefined,
  empty: undefined,
};
const guard = (kind: object, more: object = {}) => ({
  ...{ guard: kind, harmAfter: 9 * HOUR, lost: 0, buysTime: 0, savesWater: 0, leakRate: 0, isEnough: true },
  ...more,
});
const limiter = guard({ kind: "limiter", run: 0, hole: 0.004 });
const row = (mishap: object, more: object = {}, rest: object = {}) => ({
  worst: {
    ...none,
    ...{
      mishap,
      leakRate: 0,
      dripRate: 0,
      balance: { lost: 0 },
      dry: [],
      starve: [],
      drip: [],
      night: { lost: 0, falls: [0] },
      followed: 0,
    },
    ...more,
  },
  ...{
    kinds: [(mishap as { kind: string }).kind],
    count: 1,
    run: 0,
    lost: { least: 0, most: 0 },
    guards: [limiter],
    cheapest: limiter,
  },
  ...rest,
});
const burst = row(
  { kind: "jointApart", point: 1 },
  {
    firstWithout: { after: 2 * HOUR, pen: "hens" },
    balance: { lost: 0.1 },
    empty: 3 * HOUR,
    dry: [0, 1],
    starve: [1],
  },
  { count: 2 },
);
const stuck = row({ kind: "drinkerStuckOpen", drinker: 1 }, { empty: 5 * HOUR, drip: [0] });
const mishaps = (more: object = {}) =>
  ({
    ...{ day: 20_000, begins: 6 * HOUR, nothing: none, rows: [burst, stuck], waterers: [], leavesOut: [] },
    line: {
      ...{ sources: [{ id: "barrel", point: 0 }], points: { id: ["barrel", "tee", "end"] } },
      runs: [
        { id: "feed", points: [0, 1] },
        { id: "lane", points: [1, 2] },
      ],
      drinkers: { id: ["lane 1", "lane 2"], groups: [{ id: "lane" }] },
    },
    flock: { pens: [{ id: "hens", batches: [] }] },
    ...more,
  }) as unknown as Mishaps;
const text = (more: object = {}, most = 9) =>
  writeMishapsText("", mishaps(more), { system: "metric", paint: (words) => words, most });

describe("writeMishapsText", () => {
  it("says when it happens, and has the worst first, each with what it does", () => {
    expect(text()).toMatch(
      /^This plan: what any one mishap does\nEverything is full on 2024-10-04 at 06:00 when it happens;/,
    );
    expect(text()).toMatch(/\n1 +joint apart at tee \(the worst of 2\) +2 h +100 L +3 h +2 +1\n/);
    const little = { ...burst, worst: { ...burst.worst, balance: { lost: 5e-4 } } };
    expect(text({ rows: [little] })).toMatch(/\n1 +joint apart at tee \(the worst of 2\) +2 h +500 mL +3 h /);
    // What pours nothing away empties nothing either.
    expect(text()).toMatch(/\n2 +lane 2 stuck open +not +1\n/);
    expect(text()).toContain("\n1. Joint apart at tee (the worst of 2). A disc with a hole");
    expect(text()).toMatch(/\n2\. Lane 2 stuck open\. One drinker drips/);
    expect(text({ nothing: { ...none, hasBirds: false } })).toContain("half");
  });

  it("shows as many as are asked for, and counts the others", () => {
    const one = text({}, 1);
    expect(one).toContain("\n1 more that do less: headfall mishaps --all");
    expect(one).not.toMatch(/\n2[. ]/);
    expect(text()).not.toContain("more that do less");
  });

  it("tells what is left out, but not twice that nobody drinks", () => {
    const lines = text({ leavesOut: ["rain", "nobodyDrinks"] });
    expect(lines).toContain("Rain is not counted");
    expect(lines).not.toContain("nobody drinks. Add pens");
  });

  it("has loose waterers beside the line, or alone", () => {
    const waterer = {
      worst: {
        ...{
          mishap: { kind: "kickedOver", pen: 0, waterer: 0 },
          pen: "hens",
          waterer: "pan",
          count: 1,
          birds: 12,
          lost: 0.004,
          gives: 0,
          gave: 0.004,
        },
        ...{
          slope: 0,
          drainsAt: undefined,
          goesOnAtLine: false,
          harmAfter: 0,
          birdHours: 30,
          covered: { before: 1, after: 1 },
          comesAfter: 0,
        },
      },
      ...{ nothing: { harmAfter: undefined, birdHours: 0 }, guards: [], cheapest: undefined },
    };
    const both = text({ waterers: [waterer, waterer] });
    expect(both).toMatch(/Loose waterers\n[\s\S]*\n1 +pan in hens kicked over +12 +at once +30 +4 L +\S/);
    expect(both).toContain("If nothing goes wrong");
    const calm = { ...waterer, worst: { ...waterer.worst, birdHours: 0.4 } };
    expect(text({ waterers: [calm] })).toMatch(/\n1 +pan in hens kicked over +12 +at once +4 L +\S/);
    expect(both).toMatch(/\n1\. Pan in hens kicked over\. 4 L run out/);
    expect(text({ waterers: [waterer, waterer] }, 1)).toContain("1 more that do less");
    const alone = text({ rows: [], waterers: [waterer] });
    expect(alone).not.toMatch(/If nothing goes wrong|what guards against it/);
    expect(text({ rows: [] })).toContain("If nothing goes wrong");
  });
});

describe("cautions of guards", () => {
  it("are those of the guards that are told, and one that is always said", () => {
    const of = (...kinds: string[]) => writeMishapCautions(kinds.map((kind) => guard({ kind })) as never);
    expect(of()).toHaveLength(1);
    expect(of("limiter").join()).toContain("strainer");
    expect(of("alarm").join()).toContain("each month");
    expect(of("secondVent").join()).toContain("fine screen");
    for (const kind of ["secondBarrel", "secondStation"])
      expect(of(kind).join()).toContain("as heavy as the first");
    expect(of("look", "tap")).toHaveLength(1);
  });
});

describe("writeMishapsDocument", () => {
  const document = writeMishapsDocument("Bank", mishaps(), "metric");

  it("ranks mishaps from 1 on, with names in the place of numbers", () => {
    expect(document.mishaps.map(({ rank, what, at }) => [rank, what, at])).toEqual([
      [1, "joint apart at tee (the worst of 2)", { point: "tee" }],
      [2, "lane 2 stuck open", { drinker: "lane 2" }],
    ]);
    expect(document.mishaps[0]).toMatchObject({
      dry: ["lane 1", "lane 2"],
      starve: ["lane 2"],
      night: { falls: [{ source: "barrel", fall: 0 }] },
    });
    expect(document.mishaps[0]!.guards).toMatchObject([{ kind: "limiter", run: "feed", isCheapest: true }]);
    const kinds = [
      { kind: "alarm", source: 0, level: 0.3 },
      { kind: "spareDrinker", group: 0 },
      { kind: "look", every: 3600 },
    ];
    const guards = writeMishapsDocument(
      "",
      mishaps({ rows: [{ ...stuck, guards: kinds.map((kind) => guard(kind)) }] }),
      "metric",
    ).mishaps[0]!.guards!;
    expect(guards).toMatchObject([
      { kind: "alarm", source: "barrel" },
      { kind: "spareDrinker", group: "lane" },
      { kind: "look", every: 3600 },
    ]);
    expect(guards.map((one) => "run" in one)).toEqual([false, false, false]);
    const places = [
      { kind: "hoseOff", source: 0 },
      { kind: "tapLeftShut", run: 1 },
      { kind: "hottestWeek" },
    ].map((mishap) => row(mishap, {}, { guards: undefined }));
    const told = writeMishapsDocument("", mishaps({ rows: places }), "metric").mishaps;
    expect(told.map(({ at }) => at)).toEqual([{ source: "barrel" }, { run: "lane" }, {}]);
    expect(told[0]).not.toHaveProperty("guards");
  });
});
