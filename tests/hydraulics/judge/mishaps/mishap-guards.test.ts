import { describe, expect, it } from "vitest";
import { MORNING } from "../../../../packages/hydraulics/src/judge/asked-plan.js";
import { judgeLine } from "../../../../packages/hydraulics/src/judge/judge-line.js";
import { cheapestGuard } from "../../../../packages/hydraulics/src/judge/mishaps/cheapest-guard.js";
import { runDown } from "../../../../packages/hydraulics/src/judge/mishaps/draw-struck.js";
import type { GuardKind, GuardResult } from "../../../../packages/hydraulics/src/judge/mishaps/guard.js";
import { findLimiter, withDisc } from "../../../../packages/hydraulics/src/judge/mishaps/limiter.js";
import { endsOf } from "../../../../packages/hydraulics/src/judge/mishaps/mishap-ends.js";
import {
  guardingOf,
  guardsAgainst,
  lookEvery,
} from "../../../../packages/hydraulics/src/judge/mishaps/mishap-guards.js";
import { runMishap } from "../../../../packages/hydraulics/src/judge/mishaps/run-mishap.js";
import { strike } from "../../../../packages/hydraulics/src/judge/mishaps/strike.js";
import type { Mishap } from "../../../../packages/hydraulics/src/model/mishap.js";
import type { PlanData } from "../../../arbitraries/plans.js";
import { ASKED_ON, asked } from "../../../laws/asked-plans.js";

const HOUR = 3600;

/** Twenty hens; one lane of eight nipples, or two lanes of four on taps of their own. */
const hens = (more: PlanData = {}): PlanData => ({
  headfall: 1,
  sources: [
    {
      vessel: { shape: "upright", diameter: "50 cm", height: "1 m" },
      stand: "30 cm",
      outlet: "2 cm",
      level: { full: "75 cm" },
    },
  ],
  runs: [
    { id: "hose", length: "5 m", fall: "-10 cm", pipe: "pe-metric-sdr11-20" },
    { id: "lane", length: "4 m", fall: "0 cm", drinkers: { kind: "nipple-side-action", count: 8 } },
  ],
  pens: [{ id: "hens", birds: { kind: "hen", count: 20 } }],
  ...more,
});

const twoLanes: PlanData = hens({
  points: [{ id: "tee", ground: "0 cm", above: "10 cm" }],
  runs: [
    { id: "hose", length: "5 m", to: "tee", pipe: "pe-metric-sdr11-20" },
    ...["left", "right"].map((id) => ({
      id,
      from: "tee",
      length: "4 m",
      fall: "0 cm",
      drinkers: { id: `${id} nipples`, kind: "nipple-side-action", count: 4 },
    })),
  ],
  pens: [{ id: "hens", drinkers: ["left nipples", "right nipples"], birds: { kind: "hen", count: 20 } }],
});

function guarded(data: PlanData, mishap: Mishap) {
  const found = asked(data);
  const struck = strike(found, undefined);
  const nothing = endsOf(
    struck,
    runDown(struck, { start: found.fullVolumes, from: MORNING, lasts: struck.lasts }),
    MORNING,
  );
  const result = runMishap(found, mishap);
  const guards = guardsAgainst(guardingOf(found, ASKED_ON, nothing), result);
  const one = (kind: GuardKind): GuardResult | undefined => guards.find(({ guard }) => guard.kind === kind);
  return { found, nothing, result, guards, one };
}

describe("lookEvery", () => {
  it("is whole hours that leave four to mend, a day at most, and none where an hour is too long", () => {
    expect(lookEvery(undefined)).toBe(24 * HOUR);
    expect(lookEvery(100 * HOUR)).toBe(24 * HOUR);
    expect(lookEvery(27.9 * HOUR)).toBe(23 * HOUR);
    expect(lookEvery(5 * HOUR)).toBe(HOUR);
    expect(lookEvery(4.9 * HOUR)).toBeUndefined();
  });
});

describe("guards against a nipple stuck open", () => {
  const { result, one, guards } = guarded(twoLanes, { kind: "drinkerStuckOpen", drinker: 7 });

  it("a look loses what is lost by then and no more, and no bird goes without", () => {
    const look = one("look")!;
    expect(look.harmAfter).toBeUndefined();
    expect(look.lost).toBeGreaterThan(0.05);
    expect(look.lost).toBeLessThan(result.balance.lost);
    if (look.guard.kind === "look") expect(look.guard.every).toBe(lookEvery(result.firstWithout!.after));
  });

  it("a tap of its lane lets the other lane go on for days", () => {
    const tap = one("tap")!;
    expect(tap.guard).toMatchObject({ run: 2 });
    expect(tap.lost).toBeCloseTo(one("look")!.lost, 9);
    expect(tap.buysTime!).toBeGreaterThan(12 * HOUR);
  });

  it("a second vessel doubles the water, and about the time", () => {
    const second = one("secondBarrel")!;
    expect(second.harmAfter! / result.firstWithout!.after).toBeGreaterThan(1.8);
    expect(second.harmAfter! / result.firstWithout!.after).toBeLessThan(2.2);
    expect(second.savesWater).toBeLessThan(0);
  });

  it("an alarm rings with four hours left, at a level below full and above the outlet", () => {
    const alarm = one("alarm")!;
    expect(alarm.guard.kind === "alarm" && alarm.guard.level).toBeGreaterThanOrEqual(0.05);
    expect(alarm.guard.kind === "alarm" && alarm.guard.level).toBeLessThan(0.72);
    expect(alarm.isEnough).toBe(true);
  });

  it("are told from the cheapest; that chosen makes a look every day enough", () => {
    expect(guards.map(({ guard }) => guard.kind)).toEqual(
      ["look", "tap", "limiter", "alarm", "secondBarrel", "secondStation"].filter((kind) =>
        guards.some(({ guard }) => guard.kind === kind),
      ),
    );
    expect(cheapestGuard(guards)!.isEnough).toBe(true);
  });
});

describe("a tap behind which a nipple sticks open", () => {
  const tapOf = (full: string, diameter: string) => {
    const plan: PlanData = {
      ...twoLanes,
      sources: [
        {
          ...{ vessel: { shape: "upright", diameter, height: "1 m" }, stand: "30 cm", outlet: "2 cm" },
          level: { full },
        },
      ],
    };
    return guarded(plan, { kind: "drinkerStuckOpen", drinker: 7 }).one("tap")!;
  };
  const withinOf = ({ guard }: GuardResult) => (guard.kind === "tap" ? guard.within : 0);

  it("is not enough by itself where it must be shut before a day is over, long as the rest then lasts", () => {
    const tap = tapOf("75 cm", "50 cm");
    expect(withinOf(tap)).toBeLessThan(24 * HOUR);
    expect(tap.harmAfter ?? Number.POSITIVE_INFINITY).toBeGreaterThan(28 * HOUR);
    expect(tap.isEnough).toBe(false);
  });

  it("is enough where a day is soon enough to shut it", () => {
    // Sixteen times the water: the leak alone takes days.
    const tap = tapOf("75 cm", "2 m");
    expect(withinOf(tap)).toBe(24 * HOUR);
    expect(tap.isEnough).toBe(true);
  });
});

describe("an alarm where birds drink so little that four hours are no more than millimetres", () => {
  it("rings at 3 cm over the outlet, for a float needs that to ride on", () => {
    const plan = hens({
      sources: [
        {
          ...{ vessel: { shape: "upright", diameter: "50 cm", height: "1 m" }, stand: "60 cm" },
          ...{ outlet: "2 cm", level: { full: "20 cm", lowest: "2 cm" }, refill: { hose: "1 L/min" } },
        },
      ],
      runs: [
        { id: "lane", length: "4 m", fall: "60 cm", drinkers: { kind: "nipple-side-action", count: 8 } },
      ],
    });
    const { guard } = guarded(plan, { kind: "hoseOff", source: 0 }).one("alarm")!;
    expect(guard.kind === "alarm" && guard.level).toBeCloseTo(0.05, 9);
  });
});

describe("a second vessel and line", () => {
  it("is told against what breaks one of them, not against more birds or the hottest week", () => {
    const plan = hens({ weather: { high: "24 degC", hotSpell: { high: "36 degC", days: 5 } } });
    for (const mishap of [{ kind: "hottestWeek" }, { kind: "moreBirds", pen: 0, batch: 0 }] as const) {
      const { one, result, nothing } = guarded(plan, mishap);
      expect(result.firstWithout!.after).toBeLessThan(nothing.firstWithout!.after);
      expect([mishap.kind, one("secondStation")]).toEqual([mishap.kind, undefined]);
    }
    const blocked = guarded(plan, { kind: "drinkerStuckOpen", drinker: 0 });
    expect(blocked.one("secondStation")!.harmAfter).toBe(blocked.nothing.firstWithout!.after);
  });

  it("is none where no bird drinks", () => {
    const { one, guards } = guarded(hens({ pens: [] }), { kind: "jointApart", point: 2 });
    expect(guards.length).toBeGreaterThan(0);
    expect(one("secondStation")).toBeUndefined();
  });
});

describe("one more drinker of a group", () => {
  it("is of the very group of its run", () => {
    const lane = (second: number) =>
      hens({
        runs: [
          {
            ...{ id: "lane", length: "4 m", fall: "-10 cm" },
            drinkers: [
              { id: "near", kind: "nipple-side-action", count: 1, first: "1 m" },
              { id: "far", kind: "nipple-side-action", count: second, first: "2 m" },
            ],
          },
        ],
        pens: [
          { id: "one", drinkers: ["near"], birds: { kind: "hen", count: 2 } },
          { id: "other", drinkers: ["far"], birds: { kind: "hen", count: 2 } },
        ],
      });
    const { result, one } = guarded(lane(1), { kind: "drinkerBlocked", drinker: 1 });
    expect(result.firstWithout).toEqual({ after: 0, pen: "other" });
    expect(one("spareDrinker")!.guard).toMatchObject({ group: 1 });
    expect(one("spareDrinker")!.harmAfter).toBeUndefined();
  });
});

describe("a disc at the start of a run", () => {
  const { judged } = asked(hens());

  it("has the smallest hole that harms nobody: half a millimetre less does", () => {
    const limiter = findLimiter(judged, 0)!;
    const verdicts = (hole: number) =>
      judgeLine(withDisc(judged.line, 0, hole)).drinkers.map(({ verdict }) => verdict);
    const asItIs = judged.drinkers.map(({ verdict }) => verdict);
    expect(limiter.hole).toBeLessThan(judged.line.runs[0]!.bore);
    expect(verdicts(limiter.hole)).toEqual(asItIs);
    expect(verdicts(limiter.hole - 0.0005)).not.toEqual(asItIs);
  });

  it("bounds what an open end pours by the hole's own law, and makes it last longer", () => {
    const { result, one } = guarded(hens(), { kind: "jointApart", point: 2 });
    const limiter = one("limiter")!;
    if (limiter.guard.kind !== "limiter") throw new Error("a limiter is one");
    // The full head over the end, 75 cm of water, on a stand of 30, the end 10 cm up.
    const most = 0.61 * (Math.PI / 4) * limiter.guard.hole ** 2 * Math.sqrt(2 * 9.80665 * 0.95);
    expect(limiter.leakRate).toBeLessThanOrEqual(most);
    expect(limiter.leakRate).toBeGreaterThan(0.8 * most);
    expect(limiter.leakRate).toBeLessThan(result.leakRate / 4);
  });
});

describe("a tap against a joint apart", () => {
  it("is that of the run which ends there", () => {
    const vessel = { shape: "upright", diameter: "3 m", height: "1 m" };
    const large: PlanData = {
      ...twoLanes,
      sources: [{ vessel, stand: "30 cm", outlet: "2 cm", level: { full: "75 cm" } }],
    };
    const { line } = asked(large).judged;
    for (const run of [1, 2]) {
      const point = line.runs[run]!.points.at(-1)!;
      expect(guarded(large, { kind: "jointApart", point }).one("tap")!.guard).toMatchObject({ run });
    }
  });
});

describe("an alarm of two vessels apart", () => {
  it("hangs in the one that falls", () => {
    const apart: PlanData = {
      headfall: 1,
      sources: ["left", "right"].map((id) => ({ id, vessel: "bucket-5gal", stand: "60 cm" })),
      runs: ["left", "right"].map((from) => ({
        from,
        length: "2 m",
        fall: "30 cm",
        drinkers: { kind: "nipple-side-action", count: 1 },
      })),
      pens: [{ birds: { kind: "hen", count: 4 } }],
    };
    for (const drinker of [0, 1]) {
      const { one } = guarded(apart, { kind: "drinkerStuckOpen", drinker });
      expect(one("alarm")?.guard).toMatchObject({ kind: "alarm", source: drinker });
    }
  });
});

describe("other guards", () => {
  it("(vent blocked) a second opening leaves the plan as it is", () => {
    const { one, nothing, result } = guarded(hens(), { kind: "ventBlocked", source: 0 });
    expect(one("secondVent")).toMatchObject({ harmAfter: nothing.firstWithout!.after, isEnough: true });
    expect(one("secondVent")!.buysTime).toBeCloseTo(
      nothing.firstWithout!.after - result.firstWithout!.after,
      6,
    );
  });

  it("(the only drinker blocked) one more drinker of its group serves the pen", () => {
    const plan = hens({
      runs: [
        { id: "lane", length: "4 m", fall: "-10 cm", drinkers: { kind: "nipple-side-action", count: 1 } },
      ],
      pens: [{ id: "hens", birds: { kind: "hen", count: 2 } }],
    });
    const { result, one } = guarded(plan, { kind: "drinkerBlocked", drinker: 0 });
    expect(result.firstWithout).toEqual({ after: 0, pen: "hens" });
    expect(one("look")).toBeUndefined();
    // Two hens do not empty it in the 60 days it is followed.
    expect(one("spareDrinker")!.harmAfter).toBeUndefined();
    expect(one("spareDrinker")!.isEnough).toBe(true);
  });

  it("(the only run blocked) only a second vessel and line help", () => {
    const { guards, nothing } = guarded(hens(), { kind: "runBlocked", run: 0 });
    expect(guards.map(({ guard }) => guard.kind)).toEqual(["secondStation"]);
    expect(guards[0]!.harmAfter).toBe(nothing.firstWithout!.after);
  });
});

describe("birds of a pen with two vessels", () => {
  it("go to the other when one runs out: the pen is without only when both are, sooner than for ever", () => {
    const lane = (id: string, from: string) => ({
      id,
      from,
      length: "4 m",
      fall: "-10 cm",
      drinkers: { id: `${id} nipples`, kind: "nipple-side-action", count: 4 },
    });
    const vessel = { shape: "upright", diameter: "30 cm", height: "60 cm" };
    const plan = hens({
      sources: [
        { id: "a", vessel, stand: "30 cm", outlet: "2 cm" },
        { id: "b", vessel, stand: "30 cm", ground: "0 cm", outlet: "2 cm" },
      ],
      runs: [lane("left", "a"), lane("right", "b")],
      pens: [{ id: "hens", drinkers: ["left nipples", "right nipples"], birds: { kind: "hen", count: 10 } }],
    });
    const { nothing, result } = guarded(plan, {
      kind: "jointApart",
      point: asked(plan).judged.line.sources[1]!.point,
    });
    // Half of the water is lost at once. Each line has a drinker that drips 0.72 L a day, and ten hens take 2.8 L:
    // (2.8 + 2 x 0.72) / (2 (2.8 + 0.72)) = 0.60 of the time.
    expect(result.firstWithout!.after / nothing.firstWithout!.after).toBeGreaterThan(0.58);
    expect(result.firstWithout!.after / nothing.firstWithout!.after).toBeLessThan(0.62);
    const { start, poured, drunk, lost, left } = result.balance;
    expect(start + poured - drunk - lost - left).toBeCloseTo(0, 12);
  });
});
