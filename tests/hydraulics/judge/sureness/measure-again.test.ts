import { describe, expect, it, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { checkPlan } from "../../../../packages/hydraulics/src/judge/check-plan.js";
import type { InputName } from "../../../../packages/hydraulics/src/judge/sureness/doubted-inputs.js";
import { measureAgain } from "../../../../packages/hydraulics/src/judge/sureness/measure-again.js";
import type { CloseCall, Measuring } from "../../../../packages/hydraulics/src/judge/sureness/measuring.js";
import { type Yard, yard } from "../yard/yard.js";

function measuringOf(document: unknown, samples?: number): Measuring {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = measureAgain(reading.plan, samples === undefined ? {} : { samples });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.measuring;
}

function certaintyOf(document: unknown, d: number) {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const checking = checkPlan(reading.plan);
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
  return checking.checked.drinkers[d]!.certainty;
}

/** A drinker of no need that opens at 6 cm: good or dry by head alone, which hangs on heights and level only. */
const OPENS = {
  opensAt: "6 cm",
  need: "0 mL/min",
  readings: [
    { head: "31 cm", flow: "50 mL/min" },
    { head: "106 cm", flow: "100 mL/min" },
  ],
};

interface Told {
  /** Head over what opens it, at the lowest level [mm]. */
  readonly over: number;
  readonly heights?: string;
  readonly level?: string;
  readonly source?: Yard["source"];
  readonly run?: Record<string, unknown>;
}

const opening = ({ over, heights = "0 cm", level = "2 cm", source, run }: Told) =>
  yard({
    stand: "0 cm",
    lowest: `${60 + over} mm`,
    ...(source === undefined
      ? {}
      : {
          source: {
            ...source,
            level: { full: "70 cm", lowest: `${60 + over} mm`, ...(source["level"] as object) },
          },
        }),
    drinker: OPENS,
    runs: [
      { length: "3 m", fall: "0 cm", pipe: { bore: "10 cm" }, drinkers: { kind: "plain", count: 1 }, ...run },
    ],
    more: { doubts: { heights, level } },
  });

const only = ({ close }: Measuring): CloseCall => {
  expect(close).toHaveLength(1);
  return close[0]!;
};
const better = (close: CloseCall) => {
  if (close.remedy.kind !== "one") throw new Error(JSON.stringify(close.remedy));
  return close.remedy.better;
};

describe("measureAgain", () => {
  it("finds nothing where all is sure, nothing was tried, or nobody drinks", () => {
    expect(measuringOf(opening({ over: 60 }))).toMatchObject({ sure: 1, close: [], measurements: [] });
    expect(measuringOf(opening({ over: 5 }), 0)).toMatchObject({ sure: 0, close: [], measurements: [] });
    expect(measuringOf(yard({ runs: [{ length: "3 m" }] }))).toMatchObject({ sure: 0, close: [] });
  });

  // Good in a share Φ(m / (D/2)) of the plans, with m the head over the edge and D the doubt: 95 % at D = 2 m / 1.645.
  it.each([2, 4, 8, 12])("asks for the level as well as the normal law does, %d mm from the edge", (over) => {
    const close = only(measuringOf(opening({ over, level: "3 cm" })));
    const { input, doubt, needed } = better(close);
    expect([input, doubt]).toEqual([{ kind: "level", source: "barrel" }, 0.03]);
    const greatest = (2 * over) / 1000 / 1.645;
    expect(needed).toBeLessThanOrEqual(1.03 * greatest);
    // The next figure a person would ask for is at most two thirds larger.
    expect(needed * 1.7).toBeGreaterThan(greatest);
  });

  it("tells by how much each thing in doubt moves the head: a level by all of it", () => {
    const close = only(measuringOf(opening({ over: 3, heights: "1 cm" })));
    const level = close.sways.find(({ input }) => input.kind === "level")!;
    expect(level.head).toBeCloseTo(0.02, 6);
    for (const { input, head } of close.sways) if (input.kind === "height") expect(head).toBeCloseTo(0.01, 6);
    const heads = close.sways.map(({ head }) => head ?? 0);
    expect(heads.length).toBeGreaterThan(2);
    expect(heads).toEqual([...heads].sort((a, b) => b - a));
  });

  it("tells how much more head makes it sure, as the normal law does", () => {
    // One deviation of the level is 1 cm, of stand and end 5 mm each.
    const { moreHead, lessHead } = only(measuringOf(opening({ over: 3, heights: "1 cm" })));
    expect(lessHead).toBe(0);
    expect(moreHead).toBeGreaterThan(1.645 * Math.hypot(0.01, 0.005, 0.005) - 0.003 - 0.003);
    expect(moreHead).toBeLessThan(1.645 * Math.hypot(0.01, 0.005, 0.005) - 0.003 + 0.003);
  });

  it("names two where one is not enough, and none where no two are", () => {
    // The stand and the end are doubted alike; the level hardly.
    const two = only(measuringOf(opening({ over: 6, heights: "2 cm", level: "1 mm" })));
    expect(two.remedy.kind).toBe("two");
    const none = only(measuringOf(opening({ over: 1, heights: "3 cm", level: "3 cm" })));
    expect(none.remedy).toEqual({ kind: "none" });
    expect(none.moreHead).toBeGreaterThan(0.02);
  });

  it("ranks by how many drinkers a measurement decides, as good as the most demanding needs it", () => {
    const runs = [
      {
        id: "near",
        from: "barrel",
        length: "3 m",
        fall: "0 cm",
        pipe: { bore: "10 cm" },
        drinkers: { kind: "plain", count: 2 },
      },
      {
        id: "low",
        from: "barrel",
        length: "3 m",
        fall: "4 mm",
        pipe: { bore: "10 cm" },
        drinkers: { kind: "plain", count: 1 },
      },
    ];
    const found = measuringOf(
      yard({
        stand: "0 cm",
        lowest: "64 mm",
        drinker: OPENS,
        runs,
        more: { doubts: { heights: "1 mm", level: "3 cm" } },
      }),
    );
    expect(found.close).toHaveLength(3);
    const [first] = found.measurements;
    expect(first).toMatchObject({ input: { kind: "level", source: "barrel" }, doubt: 0.03 });
    expect(first!.drinkers).toHaveLength(3);
    const needs = found.close.map((close) => better(close).needed);
    expect(first!.needed).toBe(Math.min(...needs));
    expect(Math.max(...needs)).toBeGreaterThan(first!.needed);
  });
});

describe("a doubt that measureAgain finds enough, typed into the plan,", () => {
  const millimetres = (metres: number) => `${(1000 * metres).toFixed(3)} mm`;
  const level = (doubt: string): Partial<Told> => ({ source: { level: { doubt } } });
  const cases: readonly (readonly [InputName["kind"], string, Told, (doubt: string) => Partial<Told>])[] = [
    ["level", "barrel", { over: 5, level: "3 cm" }, level],
    [
      "height",
      "run 1 end",
      { over: 6, heights: "1 mm", level: "1 mm", run: { doubt: "3 cm" } },
      (doubt) => ({ run: { doubt } }),
    ],
    [
      "height",
      "barrel",
      { over: 6, heights: "1 mm", level: "1 mm", source: { doubt: "3 cm" } },
      (doubt) => ({ source: { doubt } }),
    ],
  ];

  it.each(cases)(
    "%s of %s, makes its verdict sure; one figure more would not",
    (kind, whose, told, typed) => {
      const { input, needed } = better(only(measuringOf(opening(told))));
      expect(Object.values(input)).toEqual([kind, whose]);
      expect(certaintyOf(opening({ ...told, ...typed(millimetres(needed)) }), 0).kind).toBe("sure");
      const next = [1, 1.5, 2, 3, 5, 7, 10, 15, 20, 30, 50].find((figure) => figure > 1000 * needed * 1.01)!;
      expect(certaintyOf(opening({ ...told, ...typed(`${next} mm`) }), 0).kind).toBe("closeCall");
    },
  );
});

describe("the doubt of one place", () => {
  it("counts in place of the plan's for a surveyed place, a point and an end; of two the better", () => {
    const plan = (doubts: { survey?: string; end?: string; point?: string }) =>
      yard({
        stand: "0 cm",
        lowest: "30 cm",
        runs: [
          { length: "2 m", fall: "0 cm" },
          {
            id: "lane",
            to: "wall",
            length: "12 m",
            ...(doubts.end === undefined ? {} : { doubt: doubts.end }),
            survey: [
              {
                along: "2 m",
                fall: "-29 cm",
                bleed: true,
                ...(doubts.survey === undefined ? {} : { doubt: doubts.survey }),
              },
              { along: "4 m", fall: "0 cm" },
            ],
            drinkers: { kind: "plain", count: 1 },
          },
        ],
        more: {
          points: [
            { id: "wall", ground: "0 cm", ...(doubts.point === undefined ? {} : { doubt: doubts.point }) },
          ],
          doubts: { heights: "5 mm", level: "5 mm" },
        },
      });
    const share = (doubts: Parameters<typeof plan>[0]) => {
      const certainty = certaintyOf(plan(doubts), 0);
      return certainty.kind === "notSampled" ? Number.NaN : certainty.share;
    };
    // The hump stands 1 cm under the water: it decides, the end does not.
    expect(share({ survey: "5 cm" })).toBeLessThan(0.75);
    expect(share({ survey: "1 mm" })).toBeGreaterThan(0.98);
    expect(share({ end: "5 cm", point: "1 mm" })).toBe(share({ point: "1 mm" }));
    expect(share({ end: "1 mm", point: "5 cm" })).toBe(share({ end: "1 mm" }));
  });

  it("is refused with a clear problem where it is none", () => {
    const reading = checkDocument(
      opening({ over: 5, run: { doubt: "much" }, source: { doubt: "-1 cm", level: { doubt: "9 m" } } }),
    );
    expect(reading.ok ? [] : reading.problems.map(({ path, code }) => `${path}: ${code}`)).toEqual([
      "runs[0].doubt: unreadableQuantity",
      "sources[0].doubt: outOfRange",
      "sources[0].level.doubt: outOfRange",
    ]);
  });
});

test("measureAgain tells how far it is done: the check to a fifth, then what is tried, never less than before", () => {
  const reading = checkDocument(
    yard({
      stand: "6 cm",
      runs: [{ length: "3 m", pipe: { bore: "10 cm" }, drinkers: { kind: "plain", count: 1 } }],
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const told: number[] = [];
  const answer = measureAgain(reading.plan, { samples: 40, progress: (share) => told.push(share) });
  expect(answer.ok && answer.measuring.close.length).toBe(1);
  expect(told).toEqual([...told].sort((a, b) => a - b));
  expect(told.filter((share) => share >= 0.2).length).toBeGreaterThan(1);
  for (const share of told) expect(share >= 0 && share <= 1).toBe(true);
});
