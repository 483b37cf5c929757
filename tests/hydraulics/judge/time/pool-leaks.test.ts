import { describe, expect, it } from "vitest";
import { poolsOf } from "../../../../packages/hydraulics/src/judge/time/give-out.js";
import {
  isLeaky,
  outletsOf,
  type SolvedLeak,
  withoutLeaks,
} from "../../../../packages/hydraulics/src/judge/time/pool-leaks.js";
import { type Leak, type Line, STUCK } from "../../../../packages/hydraulics/src/model/line.js";
import { withMishap } from "../../../../packages/hydraulics/src/model/with-mishap.js";
import type { PlanData } from "../../../arbitraries/plans.js";
import { asked } from "../../../laws/asked-plans.js";
import { headerTank } from "../header-tank.js";

/** So small a hole that the pipe before it loses nothing: its flow is its own law's [m³/s at 1 m]. */
const PINHOLE = 1e-8;

/** Two tanks with nothing in common, each 40 cm up with 60 cm of water over its outlet. */
const apart: PlanData = {
  headfall: 1,
  sources: ["left", "right"].map((id) => ({
    ...{ id, vessel: { shape: "upright", diameter: "40 cm", height: "80 cm" }, outlet: "5 cm" },
    ...{ stand: "40 cm", level: { full: "65 cm" } },
  })),
  runs: ["left", "right"].map((from) => ({
    ...{ id: `lane ${from}`, from, length: "3 m", fall: "-20 cm" },
    drinkers: { kind: "nipple-side-action", count: 2 },
  })),
};

function leaksOf(plan: PlanData, leaking: (line: Line) => Line) {
  const { judged, flock, fullVolumes: start, refills } = asked(plan);
  const supply = { refills, start, failed: new Set<number>(), dripRate: 0, leaking: leaking(judged.line) };
  return poolsOf(judged, flock, supply).map(({ leak }) => leak as SolvedLeak | undefined);
}
/** A pinhole at the far end of each lane, at a height of its own [m above datum]. */
const holes =
  (...heights: readonly number[]) =>
  (line: Line): Line => ({
    ...line,
    leaks: heights.map(
      (height, r): Leak => ({
        ...{ point: line.runs[r]!.points.at(-1)!, height, coefficient: PINHOLE },
      }),
    ),
  });

describe("the leak of a pool", () => {
  // The outlets are at 45 cm, the water stands at 1.05 m.
  it("ends at the height of its own hole, though the other vessel leaks from lower", () => {
    const [left, right] = leaksOf(apart, holes(0.6, 0.9));
    expect(left!.endsAt).toBeCloseTo(0.6, 7);
    // To a tenth of a micrometre, by halving.
    expect(Math.abs(right!.endsAt - 0.9)).toBeLessThan(1e-7);
  });

  it("flows as the root of the height over its hole, and takes nothing from the heads", () => {
    const [, right] = leaksOf(apart, holes(0.6, 0.9));
    for (const over of [0.15, 0.1, 0.04, 0.003])
      expect(right!.flowAt(0.9 + over) / (PINHOLE * Math.sqrt(over))).toBeCloseTo(1, 4);
    expect(right!.flowAt(0.9)).toBeLessThan(1e-3 * PINHOLE);
    expect(right!.flowAt(0.7)).toBe(0);
    expect(right!.takenAt(0, 1.05)).toBeLessThan(1e-4);
    expect(right!.takenAt(0, 0.8)).toBe(0);
  });

  it("goes on until the vessel gives no more where its hole lies lower than that", () => {
    const [left] = leaksOf(apart, holes(0.2, 0.9));
    expect(left!.endsAt).toBeCloseTo(0.45, 9);
    expect(left!.flowAt(0.45) / (PINHOLE * Math.sqrt(0.25))).toBeCloseTo(1, 4);
    expect(left!.flowAt(1.05) / (PINHOLE * Math.sqrt(0.85))).toBeCloseTo(1, 4);
  });

  it("is none of a vessel whose water stands below every hole it reaches", () => {
    const [left, right] = leaksOf(apart, holes(1.2, 0.9));
    expect(left).toBeUndefined();
    expect(right).toBeDefined();
  });

  it("of several holes ends with the lowest, and flows as all that are under water", () => {
    const [left] = leaksOf(apart, (line) => ({
      ...line,
      leaks: [0.6, 0.8].map((height) => ({ point: line.runs[0]!.points[0]!, height, coefficient: PINHOLE })),
    }));
    expect(left!.endsAt).toBeCloseTo(0.6, 7);
    expect(left!.flowAt(0.7) / (PINHOLE * Math.sqrt(0.1))).toBeCloseTo(1, 3);
    const both = PINHOLE * (Math.sqrt(0.45) + Math.sqrt(0.25));
    expect(left!.flowAt(1.05) / both).toBeCloseTo(1, 4);
  });
});

describe("the leak of a header tank", () => {
  const [tank] = asked(headerTank).judged.line.sources.filter(({ feed }) => feed !== undefined);

  it("is a pinhole's own flow while its float valve lets in more, and takes from the tote that fills it", () => {
    const leaks = leaksOf(headerTank, (line) => ({
      ...line,
      leaks: [{ point: tank!.point, height: 0.63, coefficient: PINHOLE }],
    }));
    expect(leaks).toHaveLength(1);
    // The tank stands full, 20 cm over its bottom at 60 cm, whatever the tote has.
    const [leak] = leaks;
    expect(leak!.flowAt(2) / (PINHOLE * Math.sqrt(0.17))).toBeCloseTo(1, 4);
  });

  it("is what its float valve lets in where the hole would pour more", () => {
    const wide = 1e-2;
    const [leak] = leaksOf(headerTank, (line) => ({
      ...line,
      leaks: [{ point: tank!.point, height: 0.63, coefficient: wide }],
    }));
    const { coefficient, height } = tank!.feed!;
    const most = coefficient * Math.sqrt(2 - height);
    expect(leak!.flowAt(2)).toBeLessThanOrEqual(most);
    // Six metres of pipe take little from the head at a 4 mm valve.
    expect(leak!.flowAt(2)).toBeGreaterThan(0.6 * most);
  });
});

describe("withoutLeaks", () => {
  const { line } = asked(apart).judged;

  it("is the line itself where nothing leaks", () => {
    expect(isLeaky(line)).toBe(false);
    expect(withoutLeaks(line)).toBe(line);
  });

  it("stops what pours and leaves cut off what is cut off", () => {
    const stuck = Uint8Array.of(STUCK.open, STUCK.shut, STUCK.not, STUCK.open);
    const still = withoutLeaks({ ...line, drinkers: { ...line.drinkers, stuck } });
    expect([...still.drinkers.stuck!]).toEqual([STUCK.not, STUCK.shut, STUCK.not, STUCK.not]);
    const open = Uint8Array.of(STUCK.open, STUCK.not, STUCK.not, STUCK.not);
    expect(
      withoutLeaks({ ...line, drinkers: { ...line.drinkers, stuck: open } }).drinkers,
    ).not.toHaveProperty("stuck");
    expect(withoutLeaks(holes(0.6, 0.9)(line))).not.toHaveProperty("leaks");
  });

  it("gives a float valve that sticks its law back, and no more", () => {
    const { line: fed } = asked(headerTank).judged;
    const struck = withMishap(fed, { kind: "feedStuckDown", source: 1 });
    expect(isLeaky(struck)).toBe(true);
    expect(withoutLeaks(struck).sources).toEqual(fed.sources);
  });
});

describe("outletsOf", () => {
  it("has a stuck drinker pour from where it opens", () => {
    const { line } = asked(apart).judged;
    const { drinkers } = line;
    const stuck = Uint8Array.of(STUCK.not, STUCK.open, STUCK.shut, STUCK.not);
    expect(outletsOf({ ...line, drinkers: { ...drinkers, stuck } })).toEqual([
      { point: drinkers.point[1], height: drinkers.height[1]! + drinkers.openingHead[1]! },
    ]);
  });
});
