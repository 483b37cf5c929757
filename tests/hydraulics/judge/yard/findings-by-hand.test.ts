import { describe, expect, it } from "vitest";
import { isGrave } from "../../../../packages/hydraulics/src/judge/yard/yard-finding.js";
import { findingsOf } from "../../../../packages/hydraulics/src/judge/yard/yard-findings.js";
import type {
  PenYard,
  Tilt,
  WatererReport,
} from "../../../../packages/hydraulics/src/judge/yard/yard-result.js";

const DAY = 86_400;
const LEVEL: Tilt = { works: "nipples", slope: 0 };
const SHIMS = { level: 0.03, enough: 0.01 };
const fount = (slope: number, more: object = {}): Tilt => ({
  ...{ works: "vacuum", slope, isDraining: slope >= 0.1, drainsAt: 0.1, wetShare: 1, shims: SHIMS },
  byHole: { uphill: 0.1, sideways: 0.2, downhill: undefined },
  ...more,
});

/** A waterer of ten litres of which two are drunk a day, four in heat. */
function waterer(more: Record<string, unknown> = {}, kind: Record<string, unknown> = {}): WatererReport {
  const { refillEvery, hang, ...rest } = more;
  return {
    ...{ id: "one", tilt: LEVEL, gives: 0.01, holds: 0.01, fullMass: 10, ownHeight: 0.1 },
    waterer: { kind: { fills: "top", ...kind }, refillEvery, hang },
    reach: { covers: 1, atOnce: 4 },
    weeks: [
      { draw: { size: 0.002 }, hotDraw: { size: 0.004 }, refills: 0.2, hotRefills: 0.4, hang: undefined },
    ],
    ...{ suits: [], depth: { depth: 0.02, mayDrown: [] }, warming: undefined },
    ...rest,
  } as unknown as WatererReport;
}
const penOf = (waterers: WatererReport[], more: Partial<PenYard> = {}) =>
  findingsOf(
    {
      ...{ pen: "coop", birds: 6, covered: 1, coveredByLine: 0, linePlaces: 0, loosePlaces: 4, waterers },
      ...more,
    } as PenYard,
    { most: undefined },
  );
const codes = (waterers: WatererReport[], more: Partial<PenYard> = {}) =>
  penOf(waterers, more).map(({ code }) => code);

describe("places to drink", () => {
  it("are none, or too few, or enough to a hair", () => {
    expect(codes([], { loosePlaces: 0 })).toEqual(["noWater"]);
    expect(codes([waterer()], { linePlaces: 1, loosePlaces: 0 })).toEqual([]);
    expect(codes([waterer()], { covered: 0.99 })).toEqual(["tooFewPlaces"]);
    expect(codes([waterer()], { covered: 1 - 1e-12 })).toEqual([]);
  });

  it("have no rule where none speaks of any of them and no line helps", () => {
    const silent = { reach: { covers: undefined, atOnce: 4 } };
    expect(codes([waterer(silent)])).toEqual(["noRule"]);
    expect(codes([waterer(silent), waterer()])).toEqual([]);
    expect(codes([waterer(silent)], { coveredByLine: 0.5 })).toEqual([]);
    expect(codes([waterer(silent)], { loosePlaces: 0 })).toEqual(["noWater"]);
    expect(codes([])).toEqual([]);
  });

  it("of a pen without birds are not asked for: only how things stand is told", () => {
    expect(codes([waterer({ tilt: fount(0.2) })], { birds: 0, covered: 0, loosePlaces: 0 })).toEqual([
      "drains",
    ]);
  });
});

describe("how one stands", () => {
  const tilted = (tilt: Tilt) => penOf([waterer({ tilt })]);

  it("drains from its limit on, with the turn of its hole that holds with three tenths to spare", () => {
    expect(tilted(fount(0.1))).toEqual([
      {
        ...{ code: "drains", waterer: "one", slope: 0.1, drainsAt: 0.1, turn: "sideways" },
        ...{ shimLevel: 0.03, shimEnough: 0.01 },
      },
    ]);
    // Sideways it drains at 0.2: from 0.14 on it is too near that.
    expect(tilted(fount(0.139))[0]).toMatchObject({ turn: "sideways" });
    expect(tilted(fount(0.141))[0]).toMatchObject({ turn: "downhill" });
    const byHole = { uphill: 0.1, sideways: 0.2, downhill: 0.3 };
    expect(tilted(fount(0.209, { byHole }))[0]).toMatchObject({ turn: "downhill" });
    expect(tilted(fount(0.211, { byHole }))[0]).toMatchObject({ turn: undefined });
  });

  it("nearly drains from seven tenths of that on, and may fall dry uphill", () => {
    expect(tilted(fount(0.069)).map(({ code }) => code)).toEqual([]);
    expect(tilted(fount(0.071))).toEqual([
      { code: "nearlyDrains", waterer: "one", slope: 0.071, drainsAt: 0.1, shimEnough: 0.01 },
    ]);
    expect(tilted(fount(0.01, { wetShare: 0.8 }))).toEqual([
      { code: "dryUphill", waterer: "one", wetShare: 0.8 },
    ]);
    expect(tilted(fount(0.01, { wetShare: 1 - 1e-12 }))).toEqual([]);
  });

  it("holds less, where it is open, from under three quarters on", () => {
    const pan = (share: number): Tilt => ({
      works: "pan",
      slope: 0.05,
      share,
      shareAcross: 0.9,
      halfAt: 0.3,
      shims: SHIMS,
    });
    expect(tilted(pan(0.75))).toEqual([]);
    expect(tilted(pan(0.74))).toEqual([
      { code: "holdsLess", waterer: "one", share: 0.74, across: 0.9, shimLevel: 0.03 },
    ]);
  });
});

describe("how often one is filled", () => {
  it("is too seldom where it does not last so long on a hot day: ten litres at four a day last two and a half", () => {
    expect(codes([waterer({ refillEvery: 2.5 * DAY })])).toEqual([]);
    expect(penOf([waterer({ refillEvery: 2.6 * DAY })])).toEqual([
      { code: "emptyBetween", waterer: "one", every: 2.6 * DAY, lasts: 5 * DAY, hotLasts: 2.5 * DAY },
    ]);
    expect(codes([waterer({ refillEvery: 9 * DAY, gives: 0 })])).toEqual([]);
  });

  it("is told where nobody says how often, and a hot day takes two fillings", () => {
    const often = (hotRefills: number) =>
      waterer({ weeks: [{ draw: { size: 0.002 }, hotDraw: { size: 0.02 }, refills: 1.5, hotRefills }] });
    expect(codes([often(1.99)])).toEqual([]);
    expect(penOf([often(2)])).toEqual([{ code: "oftenEmpty", waterer: "one", refills: 1.5, hotRefills: 2 }]);
  });
});

describe("how high one is", () => {
  const at = (height: number, hang?: number) => {
    const weeks = [
      {
        ...{ draw: { size: 0.002 }, hotDraw: { size: 0.004 }, refills: 0.2, hotRefills: 0.4 },
        hang: { low: 0.2, height: 0.22, high: 0.25, ageDays: 50 },
      },
    ];
    return penOf([waterer({ weeks, ownHeight: height, hang })]);
  };

  it("is told over the range for its birds, and more than two centimetres under it", () => {
    expect(at(0.25)).toEqual([]);
    expect(at(0.251)).toEqual([
      { code: "standsHigh", waterer: "one", height: 0.251, low: 0.2, best: 0.22, high: 0.25 },
    ]);
    expect(at(0.181)).toEqual([]);
    expect(at(0.179)[0]).toMatchObject({ code: "standsLow", height: 0.179 });
  });

  it("is that at which it hangs, where it does", () => {
    expect(at(0.1, 0.3)[0]).toMatchObject({ code: "hangsHigh", height: 0.3 });
    expect(at(0.3, 0.1)[0]).toMatchObject({ code: "hangsLow", height: 0.1 });
    expect(at(0.3, 0.22)).toEqual([]);
  });
});

describe("whom one suits", () => {
  const suit = (verdict: string, ageDays = 50) => ({
    ...{ kind: "hen", kindName: "hens", ageDays, verdict, fromDays: 10, toDays: 40 },
  });

  it("is told of each batch it does not suit, and grave unless another does, or the line", () => {
    const [old] = penOf([waterer({ suits: [suit("tooOld")] })]);
    expect(old).toEqual({
      ...{ code: "tooOld", waterer: "one", kindName: "hens", othersSuit: false, ageDays: 50, toDays: 40 },
    });
    expect(isGrave(old!)).toBe(true);
    const other = waterer({ id: "other", suits: [suit("suits")] });
    const [helped] = penOf([waterer({ suits: [suit("tooYoung", 50)] }), other]);
    expect(helped).toMatchObject({ code: "tooYoung", othersSuit: true, fromDays: 10 });
    expect(isGrave(helped!)).toBe(false);
    const dry = waterer({ id: "other", suits: [suit("suits")], reach: { covers: 1, atOnce: 0 } });
    expect(penOf([waterer({ suits: [suit("notForThem")] }), dry])[0]).toMatchObject({ othersSuit: false });
    const elsewhere = waterer({ id: "other", suits: [suit("suits", 51)] });
    expect(penOf([waterer({ suits: [suit("tooOld")] }), elsewhere])[0]).toMatchObject({ othersSuit: false });
    expect(penOf([waterer({ suits: [suit("tooOld")] })], { linePlaces: 2 })[0]).toMatchObject({
      othersSuit: true,
    });
  });
});

describe("what warmth and weight do", () => {
  it("is told from a hundredth of the water on, and of what must be turned over too heavy to carry", () => {
    const warming = (lost: number) => waterer({ warming: { lost, pushed: 0.001 } });
    expect(codes([warming(0.000099)])).toEqual([]);
    expect(penOf([warming(0.0001)])).toEqual([
      { code: "warmthSpills", waterer: "one", lost: 0.0001, pushed: 0.001 },
    ]);
    const heavy = (fills: string, most: number | undefined) =>
      findingsOf(
        {
          ...{ pen: "coop", birds: 6, covered: 1, coveredByLine: 0, linePlaces: 0, loosePlaces: 4 },
          waterers: [waterer({}, { fills })],
        } as unknown as PenYard,
        { most },
      );
    expect(heavy("turned over", 10)).toEqual([]);
    expect(heavy("turned over", 9.9)).toEqual([{ code: "tooHeavy", waterer: "one", mass: 10, most: 9.9 }]);
    expect(heavy("top", 9.9)).toEqual([]);
    expect(heavy("turned over", undefined)).toEqual([]);
  });
});
