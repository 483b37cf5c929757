import { describe, expect, it } from "vitest";
import { DRIP, MORNING } from "../../../../packages/hydraulics/src/judge/asked-plan.js";
import { runDown } from "../../../../packages/hydraulics/src/judge/mishaps/draw-struck.js";
import { endsOf, nightOf } from "../../../../packages/hydraulics/src/judge/mishaps/mishap-ends.js";
import { runMishap } from "../../../../packages/hydraulics/src/judge/mishaps/run-mishap.js";
import { strike } from "../../../../packages/hydraulics/src/judge/mishaps/strike.js";
import type { PlanData } from "../../../arbitraries/plans.js";
import { asked } from "../../../laws/asked-plans.js";

const HOUR = 3600;

/** A tank of half a square metre or so, and four nipples on each of two runs that leave it. */
const twoLanes = (pens: readonly unknown[], source: PlanData = {}): PlanData => ({
  headfall: 1,
  day: "2026-07-04",
  sources: [
    {
      ...{ id: "tank", vessel: { shape: "upright", diameter: "80 cm", height: "1 m" } },
      ...{ stand: "60 cm", outlet: "2 cm", level: { full: "90 cm" }, ...source },
    },
  ],
  runs: ["left", "right"].map((id) => ({
    ...{ id, from: "tank", length: "2 m", fall: "20 cm" },
    drinkers: { id: `${id} nipples`, kind: "nipple-side-action", count: 4 },
  })),
  pens,
});
const pen = (id: string, birds: PlanData) => ({ id, drinkers: [`${id} nipples`], birds });
const hens = (more: PlanData = {}) => ({ kind: "hen", count: 10, ...more });

function endsAfter(plan: PlanData, lasts = 60 * 24 * HOUR) {
  const found = asked(plan);
  const struck = strike(found, undefined);
  return endsOf(struck, runDown(struck, { start: found.fullVolumes, from: MORNING, lasts }), MORNING);
}

describe("endsOf", () => {
  it("has birds only where some are there: not those that come later, but those that hatch that day", () => {
    const has = (birds: PlanData) => endsAfter(twoLanes([pen("left", birds)]), HOUR).hasBirds;
    expect(has(hens())).toBe(true);
    expect(has(hens({ hatched: "2026-07-20" }))).toBe(false);
    expect(has(hens({ hatched: "2026-07-05" }))).toBe(false);
    expect(has(hens({ hatched: "2026-07-04" }))).toBe(true);
    expect(has(hens({ leaves: "2026-07-01" }))).toBe(false);
    expect(has(hens({ count: 1 }))).toBe(true);
  });

  it("(a run shut) leaves the birds of its pen without at once, if any are there", () => {
    const shut = (right: PlanData) =>
      runMishap(asked(twoLanes([pen("left", hens()), pen("right", right)])), { kind: "runBlocked", run: 1 });
    expect(shut(hens()).firstWithout).toEqual({ after: 0, pen: "right" });
    expect(shut(hens({ hatched: "2027-07-20" })).firstWithout?.pen).not.toBe("right");
    expect(shut(hens({ leaves: "2026-07-01" })).firstWithout?.pen).not.toBe("right");
  });

  it("(a run shut) has half of all drinkers dry at once, and one fewer only when water is drunk", () => {
    const { firstDry, halfDry } = runMishap(asked(twoLanes([pen("left", hens()), pen("right", hens())])), {
      kind: "runBlocked",
      run: 1,
    });
    expect(firstDry).toEqual({ after: 0, drinker: "right nipples 1" });
    expect(halfDry).toBe(0);
    const one = runMishap(asked(twoLanes([pen("left", hens()), pen("right", hens())])), {
      kind: "drinkerBlocked",
      drinker: 6,
    });
    expect(one.firstDry).toEqual({ after: 0, drinker: "right nipples 3" });
    expect(one.halfDry).toBeGreaterThan(24 * HOUR);
  });

  it("is empty only when both of two vessels are, and then when the later is", () => {
    const apart = (left: string, right: string): PlanData => {
      const plan = twoLanes([pen("left", hens()), pen("right", hens())]);
      const vessel = { shape: "upright", diameter: "40 cm", height: "1 m" };
      const source = (id: string, full: string) => ({
        ...{ id, vessel, stand: "20 cm", outlet: "2 cm", level: { full, lowest: "2 cm" } },
      });
      return {
        ...plan,
        sources: [source("a", left), source("b", right)],
        runs: (plan["runs"] as PlanData[]).map((run, r) => ({ ...run, from: r === 0 ? "a" : "b" })),
      };
    };
    const both = endsAfter(apart("12 cm", "22 cm"));
    const less = endsAfter(apart("12 cm", "12 cm"));
    const short = endsAfter(apart("12 cm", "22 cm"), less.empty! + HOUR);
    expect(short.empty).toBeUndefined();
    // 20 cm of water stand over the outlet, not 10, and no seal drips; each pen drinks alike.
    const days = (time: number) => Math.round(time / (24 * HOUR));
    expect(days(both.empty!)).toBe(2 * days(less.empty!));
    expect(both.firstDry!.after).toBeCloseTo(less.firstDry!.after, 0);
  });
});

describe("the night after a mishap", () => {
  it("that loses nothing new is not told; what drips anyway, and the little drunk by night, are in the fall", () => {
    const found = asked(twoLanes([pen("left", hens())]));
    const drips = found.judged.drinkers.filter(({ verdict }) => verdict === "drips").length;
    expect(drips).toBe(8);
    expect(runMishap(found, { kind: "hoseOff", source: 0 }).night).toEqual({ lost: 0, falls: [0] });
    const struck = strike(found, undefined);
    const { pools } = runDown(struck, { start: found.fullVolumes, from: MORNING, lasts: HOUR });
    const { falls } = nightOf(found, struck, pools);
    const dark = 24 * HOUR - found.flock.weather.light;
    const drunk = (falls[0]! * Math.PI * 0.8 ** 2) / 4 - drips * DRIP.expect * dark;
    // Of 2.8 L a day, spills counted, at the most a tenth.
    expect(drunk).toBeGreaterThanOrEqual(-1e-12);
    expect(drunk).toBeLessThan(0.28e-3);
  });

  it("of a joint apart empties what stands over the outlet, and no more", () => {
    const found = asked(twoLanes([], { refill: { hose: "1 L/min" } }));
    const point = found.judged.line.sources[0]!.point;
    const { night } = runMishap(found, { kind: "jointApart", point });
    // 88 cm of water over the outlet; nothing is filled in the night, though a hose could.
    expect(night.falls[0]).toBeCloseTo(0.88, 6);
    expect(night.lost).toBeCloseTo(0.88 * (Math.PI / 4) * 0.8 ** 2, 6);
  });
});
