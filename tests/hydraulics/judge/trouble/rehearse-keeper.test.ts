import { describe, expect, it } from "vitest";
import type { Seen } from "../../../../packages/hydraulics/src/judge/trouble/chances.js";
import type {
  Expectation,
  ExpectedSource,
  Leak,
} from "../../../../packages/hydraulics/src/judge/trouble/expectation.js";
import { answerOfKeeper } from "../../../../packages/hydraulics/src/judge/trouble/rehearse-keeper.js";
import type { Look } from "../../../../packages/hydraulics/src/judge/trouble/signs.js";
import type { Random } from "../../../../packages/hydraulics/src/numerics/random.js";

const HOUR = 3600;
const ML_MIN = 1e-6 / 60;

/** Chance without any noise: no mistake is made, the eye and the stick are right. */
const exact = (more: Partial<Random> = {}): Random =>
  ({ uniform: () => 0.5, normal: () => 0, integerBelow: (n: number) => n - 1, ...more }) as Random;

/** A nipple that needs 40 mL/min and should give 100, on a run of its own under a barrel last seen full a day ago. */
const seen: Seen = {
  usual: {
    flow: Float64Array.of(100 * ML_MIN),
    need: Float64Array.of(40 * ML_MIN),
    lastSeen: 24 * HOUR,
  },
  places: {
    drinker: new Map([["nipple", 0]]),
    run: new Map([["lane", 0]]),
    source: new Map([["barrel", 0]]),
  },
};
const barrel: ExpectedSource = {
  ...{ nightFall: 0.01, nightUsual: 0.01, dayFall: 0.05, dayUsual: 0.05 },
  ...{ timeToEmpty: 100 * HOUR, below: 0, isKeptFull: false },
};
const sound: Expectation = {
  ...{ flow: Float64Array.of(100 * ML_MIN), overSeal: Float64Array.of(-0.5), leaks: [], sources: [barrel] },
  ...{ endShare: () => 1, lidGain: () => 1 },
};

const sees = (look: Look["look"], truth: Partial<Expectation>, random = exact()) => {
  const at = ["gives", "drips"].includes(look) ? "drinker" : look === "end" ? "run" : "source";
  const id = { drinker: "nipple", run: "lane", source: "barrel" }[at];
  const sign = answerOfKeeper({ look, at, id } as Look, { ...sound, ...truth }, seen, random);
  return "sees" in sign ? sign.sees : undefined;
};
const source = (look: Look["look"], more: Partial<ExpectedSource>, random = exact()) =>
  sees(look, { sources: [{ ...barrel, ...more }] }, random);

describe("answerOfKeeper, who errs in nothing", () => {
  it("calls a drinker weak below three fifths of what it should give, and dry below a few drops of that", () => {
    const gives = (flow: number) => sees("gives", { flow: Float64Array.of(flow * ML_MIN) });
    expect([61, 59, 8, 7, 0].map(gives)).toEqual(["fine", "weak", "weak", "dry", "dry"]);
  });

  it("sees a drip where the seal is passed, and a fall at night from four millimetres more than usual", () => {
    expect(sees("drips", { overSeal: Float64Array.of(0.01) })).toBe("drips");
    expect(sees("drips", { overSeal: Float64Array.of(-0.01) })).toBe("holds");
    expect(source("night", { nightFall: 0.0145 })).toBe("falls");
    expect(source("night", { nightFall: 0.0135 })).toBe("holds");
  });

  it("tells a day's fall against the mark: still, less, as marked or faster", () => {
    const day = (share: number) => source("day", { dayFall: share * 0.05 });
    expect([0, 0.11, 0.13, 0.69, 0.71, 1.39, 1.41].map(day)).toEqual([
      "still",
      "still",
      "less",
      "less",
      "asMarked",
      "asMarked",
      "faster",
    ]);
  });

  it("finds the source empty if it lasts less than since it was seen, and low from six centimetres on", () => {
    expect(source("water", { timeToEmpty: 23 * HOUR })).toBe("empty");
    expect(source("water", { timeToEmpty: 25 * HOUR })).toBe("asThought");
    expect(source("water", { below: 0.061 })).toBe("low");
    expect(source("water", { below: 0.059 })).toBe("asThought");
  });

  it("sees plenty at an opened end from three fifths on, a little from a twentieth", () => {
    const end = (share: number) => sees("end", { endShare: () => share });
    expect([1, 0.61, 0.59, 0.051, 0.049, 0].map(end)).toEqual([
      "plenty",
      "plenty",
      "little",
      "little",
      "nothing",
      "nothing",
    ]);
  });

  it("finds that taking the lid off helps where a drinker gains three tenths", () => {
    expect(sees("lid", { lidGain: () => 1.31 })).toBe("helps");
    expect(sees("lid", { lidGain: () => 1.29 })).toBe("noChange");
  });

  it("finds the ground wet from 3 mL in a quarter of an hour on, at the very place", () => {
    const ground = (leak: Leak) => sees("ground", { leaks: [leak] });
    const at = (flow: number): Leak => ({ at: "source", index: 0, run: -1, flow });
    expect([ground(at(3.1e-9)), ground(at(2.9e-9))]).toEqual(["wet", "dry"]);
    expect(ground({ ...at(1e-6), index: 1 })).toBe("dry");
    expect(ground({ ...at(1e-6), at: "drinker" })).toBe("dry");
  });
});

describe("answerOfKeeper, who errs", () => {
  it("gives in one of fifty looks any answer instead", () => {
    const flow = { flow: Float64Array.of(0) };
    expect(sees("gives", flow, exact({ uniform: () => 0.019 }))).toBe("fine");
    expect(sees("gives", flow, exact({ uniform: () => 0.021 }))).toBe("dry");
  });

  it("reads a flow a quarter off and a level two millimetres, for each standard deviation", () => {
    const off = (normal: number) => exact({ normal: () => normal });
    // 60 mL/min is where weak ends: 50 looks like 64, 70 like 54.5.
    expect(sees("gives", { flow: Float64Array.of(50 * ML_MIN) }, off(1))).toBe("fine");
    expect(sees("gives", { flow: Float64Array.of(70 * ML_MIN) }, off(-1))).toBe("weak");
    expect(source("night", { nightFall: 0.0125 }, off(1))).toBe("falls");
    expect(source("night", { nightFall: 0.0155 }, off(-1))).toBe("holds");
    // A dipstick down a bung hole: five times as much.
    expect(source("water", { below: 0.051 }, off(1))).toBe("low");
    expect(source("water", { below: 0.069 }, off(-1))).toBe("asThought");
  });
});
