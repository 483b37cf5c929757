import { describe, expect, it } from "vitest";
import type { Plan } from "../../../packages/hydraulics/src/document/plan-schema.js";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildFlock } from "../../../packages/hydraulics/src/model/build-flock.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import type { Flock } from "../../../packages/hydraulics/src/model/flock.js";
import { birdById } from "../../../packages/hydraulics/src/tables/birds.js";

const HENS = { birds: { kind: "hen", count: 6 } };

/** Two runs: one with a group of two and a group of three, one with four that go by the run's name. */
const planOf = (more: Record<string, unknown>): Plan => {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic" }],
    runs: [
      {
        id: "hen line",
        length: "6 m",
        drinkers: [
          { id: "front", kind: "nipple-side-action", count: 2 },
          { kind: "nipple-side-action", count: 3, first: "3 m" },
        ],
      },
      { id: "yard", length: "3 m", drinkers: { kind: "cup-float", count: 4 } },
    ],
    ...more,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
};

function build(more: Record<string, unknown>, day?: string) {
  const plan = planOf(more);
  const built = buildLine(plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  return buildFlock(plan, built.line, day);
}

function flockOf(more: Record<string, unknown>, day?: string): Flock {
  const built = build(more, day);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  return built.flock;
}

function problemsOf(more: Record<string, unknown>, day?: string) {
  const built = build(more, day);
  return built.ok ? [] : built.problems;
}

const reach = (flock: Flock) => flock.pens.map(({ id, drinkers }) => [id, drinkers]);

describe("which drinkers a pen reaches", () => {
  it("are all of them, for the one pen that names none", () => {
    expect(reach(flockOf({ pens: [HENS] }))).toEqual([["pen 1", [0, 1, 2, 3, 4, 5, 6, 7, 8]]]);
  });

  it("are those of a run, of a group by its own name, of a group by its place", () => {
    const pens = [
      { id: "a", ...HENS, drinkers: ["yard"] },
      { id: "b", ...HENS, drinkers: ["front"] },
      { id: "c", ...HENS, drinkers: ["hen line group 2"] },
    ];
    expect(reach(flockOf({ pens }))).toEqual([
      ["a", [5, 6, 7, 8]],
      ["b", [0, 1]],
      ["c", [2, 3, 4]],
    ]);
  });

  it("named twice by one pen, by the run and by its group, count once", () => {
    const pens = [{ ...HENS, drinkers: ["front", "hen line", "front"] }];
    expect(reach(flockOf({ pens }))).toEqual([["pen 1", [0, 1, 2, 3, 4]]]);
  });

  it("are the rest for the pen that names none, wherever it stands in the list", () => {
    const pens = [{ ...HENS }, { id: "yard pen", ...HENS, drinkers: ["yard"] }];
    expect(reach(flockOf({ pens }))).toEqual([
      ["pen 1", [0, 1, 2, 3, 4]],
      ["yard pen", [5, 6, 7, 8]],
    ]);
  });

  it("are none for a pen that names none when the others have them all, and none on a line without drinkers", () => {
    const taken = [{ ...HENS, drinkers: ["hen line", "yard"] }, HENS];
    expect(reach(flockOf({ pens: taken })).at(-1)).toEqual(["pen 2", []]);
    const dry = flockOf({ runs: [{ length: "3 m" }], pens: [HENS] });
    expect(reach(dry)).toEqual([["pen 1", []]]);
  });

  it("are all of them for the one of two pens that name none which has no loose waterers", () => {
    const loose = { id: "loose", waterers: [{ kind: "pan-40cm" }], ...HENS };
    const all = [0, 1, 2, 3, 4, 5, 6, 7, 8];
    expect(problemsOf({ pens: [loose, { id: "hens", ...HENS }] })).toEqual([]);
    expect(reach(flockOf({ pens: [loose, { id: "hens", ...HENS }] }))).toEqual([
      ["loose", []],
      ["hens", all],
    ]);
    // Alone, it takes them though it has waterers too.
    expect(reach(flockOf({ pens: [loose] }))).toEqual([["loose", all]]);
  });

  it("cannot be shared by two pens: the second is told which has them, once for each name", () => {
    const pens = [
      { id: "old hens", ...HENS, drinkers: ["hen line"] },
      { ...HENS, drinkers: ["yard", "front", "hen line group 2"] },
    ];
    expect(problemsOf({ pens })).toEqual([
      {
        code: "doesNotFit",
        path: "pens[1].drinkers[1]",
        found: '"front"',
        allowed: 'Each drinker serves one pen; pen "old hens" has it already.',
        mend: "Give each pen its own group of drinkers, or put the birds into one pen.",
      },
      expect.objectContaining({ path: "pens[1].drinkers[2]", found: '"hen line group 2"' }),
    ]);
  });

  it("must be named by all pens but one", () => {
    expect(problemsOf({ pens: [HENS, HENS, { ...HENS, drinkers: ["yard"] }] })).toEqual([
      {
        code: "missing",
        path: "pens[1].drinkers",
        found: "nothing",
        allowed: "Only one pen may leave out which drinkers it reaches.",
        mend: "Name its groups of drinkers, or its runs.",
      },
    ]);
  });
});

describe("how old birds are", () => {
  const ages = (birds: unknown, more: Record<string, unknown> = {}, day?: string) =>
    flockOf({ pens: [{ birds }], ...more }, day).pens[0]!.batches.map(({ ageDays }) => ageDays);
  const hatched = (on: string) => ({ kind: "pullet", count: 5, hatched: on });

  it("is as typed, in any unit of time", () => {
    const batch = (age: string) => ({ kind: "hen", count: 1, age });
    expect(ages([batch("6 weeks"), batch("10 days"), batch("36 h"), batch("0 days")])).toEqual([
      42, 10, 1.5, 0,
    ]);
  });

  it("is grown where nothing is said", () => {
    expect(ages({ kind: "meat-chicken", count: 1 })).toEqual([birdById("meat-chicken")!.grownDays]);
  });

  // By the calendar: June has 30 days; 2028 is a leap year.
  it.each([
    ["2026-06-04", "2026-07-04", 30],
    ["2026-07-04", "2026-07-04", 0],
    ["2028-02-28", "2028-03-01", 2],
    ["2025-07-04", "2026-07-04", 365],
  ])("hatched on %s is counted to %s: %i days", (on, day, days) => {
    expect(ages(hatched(on), { day })).toEqual([days]);
    expect(ages(hatched(on), {}, day)).toEqual([days]);
  });

  it("is below nothing for those that are still to hatch, and they are kept in the list", () => {
    expect(
      ages([hatched("2026-07-10"), { kind: "hen", count: 2, age: "30 weeks" }], { day: "2026-07-04" }),
    ).toEqual([-6, 210]);
  });

  it("is counted on the plan's own day, whatever day is asked on", () => {
    expect(ages(hatched("2026-06-04"), { day: "2026-06-11" }, "2026-07-04")).toEqual([7]);
    expect(flockOf({ day: "2026-06-11", pens: [HENS] }, "2026-07-04").day).toBe(20_615);
  });

  it("cannot be counted without a day: the batch is named, and how to mend it", () => {
    const pens = [{ birds: [{ kind: "hen", count: 1 }, hatched("2026-06-01")] }];
    expect(problemsOf({ pens })).toEqual([
      {
        code: "missing",
        path: "day",
        found: "nothing",
        allowed:
          "The birds at pens[0].birds[1] hatched on 2026-06-01: their age needs a day to be counted on.",
        mend: 'Add for instance "day": "2026-07-04", or say the day when asking.',
      },
    ]);
  });

  it("needs no day where an age is said, and the flock then has none", () => {
    expect(flockOf({ pens: [{ birds: { kind: "hen", count: 1, age: "3 weeks" } }] }).day).toBeUndefined();
  });
});

describe("batches", () => {
  it("keep their order, kind and count, one or a list", () => {
    const birds = [
      { kind: "laying hens", count: 12 },
      { kind: "coturnix", count: 30 },
    ];
    const [pen] = flockOf({ pens: [{ birds }] }).pens;
    expect(pen!.batches.map(({ kind, count, index }) => [kind.id, count, index])).toEqual([
      ["hen", 12, 0],
      ["coturnix", 30, 1],
    ]);
  });

  it("lay as typed; as in full lay where nothing is said, which is told; and not at all where the kind's lay does not matter", () => {
    const built = build({
      pens: [
        {
          birds: [
            { kind: "hen", count: 1, lay: "55 %" },
            { kind: "hen", count: 1 },
            { kind: "meat-chicken", count: 1, lay: "55 %" },
          ],
        },
      ],
    });
    if (!built.ok) throw new Error("no flock");
    expect(built.flock.pens[0]!.batches.map(({ lay }) => lay)).toEqual([0.55, 0.9, 0]);
    expect(built.defaults.map(({ path, value }) => [path, value])).toContainEqual([
      "pens[0].birds[1].lay",
      "90 %",
    ]);
  });

  it("of a kind that no table has are the caller's mistake: reading would have told it", () => {
    const plan = planOf({ pens: [HENS] });
    const built = buildLine(plan);
    if (!built.ok) throw new Error("no line");
    const unread = { ...plan, pens: [{ birds: { kind: "dragon", count: 1 } }] };
    expect(() => buildFlock(unread, built.line)).toThrow(
      new TypeError(
        'buildFlock: no bird is called "dragon"; only plans from readPlan or checkDocument can be built',
      ),
    );
  });
});

describe("the weather", () => {
  it("is what is typed", () => {
    const weather = { high: "77 °F", low: "12 degC", light: "16 h", dawn: "04:30" };
    expect(flockOf({ pens: [HENS], weather }).weather).toEqual({
      high: expect.closeTo(25, 9),
      low: 12,
      light: 16 * 3600,
      dawn: 4.5 * 3600,
      hotSpell: undefined,
    });
  });

  it("left out is a mild day of twelve hours from six, told as taken; a night left out is as warm as the day", () => {
    const built = build({ pens: [HENS] });
    if (!built.ok) throw new Error("no flock");
    expect(built.flock.weather).toEqual({
      high: 21,
      low: 21,
      light: 43_200,
      dawn: 21_600,
      hotSpell: undefined,
    });
    expect(built.defaults.map(({ path }) => path)).toEqual(
      expect.arrayContaining(["weather.high", "weather.light", "weather.dawn"]),
    );
    expect(flockOf({ pens: [HENS], weather: { high: "30 degC" } }).weather.low).toBe(30);
  });

  it("of a hot spell has nights as far below its days as others, and lasts three days, unless said otherwise", () => {
    const usual = { high: "24 degC", low: "14 degC" };
    const spell = (hotSpell: unknown) =>
      flockOf({ pens: [HENS], weather: { ...usual, hotSpell } }).weather.hotSpell;
    expect(spell({ high: "35 degC" })).toEqual({ high: 35, low: 25, days: 3 });
    expect(spell({ high: "35 degC", low: "19 degC", days: 7 })).toEqual({ high: 35, low: 19, days: 7 });
  });

  it("needs no defaults where nobody drinks", () => {
    const built = build({});
    if (!built.ok) throw new Error("no flock");
    expect(built.flock.pens).toEqual([]);
    expect(built.defaults).toEqual([]);
  });
});
