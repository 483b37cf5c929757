import { describe, expect, it } from "vitest";
import type {
  DrawdownEvent,
  DrawnPool,
  PoolLeak,
} from "../../../packages/hydraulics/src/simulate/drawn-pool.js";
import { leakThrough } from "../../../packages/hydraulics/src/simulate/leaking.js";
import {
  crossBetween,
  fillTo,
  forget,
  noteCrossings,
  standingOf,
} from "../../../packages/hydraulics/src/simulate/standing.js";
import { storeOf } from "../../../packages/hydraulics/src/simulate/store.js";
import { lineOf } from "../model/built.js";

/** A vessel of plumb walls, 0.5 m2, filled to 0.8 m; a drinker dry at 0.6 m, one at 0.3 m; a pen short at 0.5 m. */
const AREA = 0.5;
const poolOf = (more: Partial<DrawnPool> = {}): DrawnPool => ({
  stores: [
    {
      ...{ source: 0, full: 0.5, dead: 0, top: 1, bottom: 0 },
      surfaceAt: (volume) => volume / AREA,
      volumeAt: (surface) => surface * AREA,
      levelAt: (volume) => volume / AREA,
    },
  ],
  start: [0.4],
  refills: [{ kind: "none" }],
  drips: 0,
  pens: [{ pen: 0, share: 1 }],
  dryBelow: [
    { drinker: 7, surface: 0.6 },
    { drinker: 8, surface: 0.3 },
  ],
  shortBelow: [{ pen: 0, surface: 0.5 }],
  ...more,
});

/** Drawn on from what was drawn before at an even rate, from a time; what happens on the way. */
function drawOn(one: ReturnType<typeof standingOf>, to: number, rate: number, from: number) {
  const events: DrawdownEvent[] = [];
  const before = one.drawn;
  one.drawn = to;
  crossBetween(one, { before, rate, from }, events);
  return events.map(({ kind, time }) => [kind, time]);
}

describe("a pool that is drawn down", () => {
  it("gives no more than stands over its last drinker, and tells each height at its own time", () => {
    const one = standingOf(poolOf(), 0);
    expect(one.all).toBeCloseTo(AREA * 0.5, 12);
    expect(drawOn(one, 0.2, 0.01, 100)).toEqual([
      ["drinkerDry", expect.closeTo(110, 9)],
      ["penShort", expect.closeTo(115, 9)],
    ]);
    expect(drawOn(one, 0.25, 0.01, 120)).toEqual([
      ["drinkerDry", expect.closeTo(125, 9)],
      ["empty", expect.closeTo(125, 9)],
    ]);
    expect(drawOn(one, 0.25, 0.01, 130)).toEqual([]);
  });

  it("tells again what its water stood above again, and only that", () => {
    const one = standingOf(poolOf(), 0);
    drawOn(one, 0.2, 0.01, 0);
    one.drawn = 0.12;
    forget(one);
    expect(drawOn(one, 0.2, 0.01, 0)).toEqual([["penShort", expect.closeTo(3, 9)]]);
    fillTo(one, [0.45]);
    expect(drawOn(one, 0.16, 0.01, 0).map(([kind]) => kind)).toEqual(["drinkerDry"]);
  });

  it("tells at once of a drinker above the water, and never that the water came down to it", () => {
    const high = { drinker: 9, surface: 0.9 };
    const one = standingOf(poolOf({ dryBelow: [high, ...poolOf().dryBelow] }), 0);
    expect(drawOn(one, 0.05, 0.01, 0)).toEqual([]);
    const events: DrawdownEvent[] = [];
    noteCrossings([standingOf(poolOf({ dryBelow: [high, ...poolOf().dryBelow] }), 0)], 60, events);
    expect(events).toEqual([{ kind: "drinkerDry", drinker: 9, time: 60 }]);
  });
});

describe("a pool that leaks above its last drinker, at that drinker", () => {
  /** A leak that ends at 0.5 m: over the drinker that is dry at 0.3 m. */
  const leak: PoolLeak = { endsAt: 0.5, flowAt: (surface) => 1e-5 * Math.sqrt(Math.max(0, surface - 0.5)) };
  function drunkDry() {
    const one = standingOf(poolOf({ leak }), 0);
    leakThrough(one, one.leak!, { rate: 1e-3, hose: 0, from: 0, to: 1000 }, []);
    expect(one.drawn).toBeCloseTo(AREA * 0.5, 12);
    return one;
  }

  it("has all of a hose drunk that gives less than is wanted", () => {
    const one = drunkDry();
    const moved = leakThrough(one, one.leak!, { rate: 2e-4, hose: 1e-4, from: 1000, to: 1500 }, []);
    expect(moved).toEqual({ drawn: expect.closeTo(0.05, 12), poured: expect.closeTo(0.05, 12), lost: 0 });
    expect(one.drawn).toBeCloseTo(AREA * 0.5, 12);
  });

  it("fills up again by a hose that gives more than is wanted, while its birds drink", () => {
    const one = drunkDry();
    const moved = leakThrough(one, one.leak!, { rate: 1e-5, hose: 1e-4, from: 1000, to: 1500 }, []);
    expect(moved).toEqual({ drawn: expect.closeTo(0.005, 12), poured: expect.closeTo(0.05, 12), lost: 0 });
    expect(one.drawn).toBeCloseTo(AREA * 0.5 - 500 * 9e-5, 6);
  });
});

describe("storeOf", () => {
  it("keeps what stands below its outlet, however low the surface that is asked for", () => {
    const line = lineOf([{ length: "1 m", drinkers: { kind: "bell", count: 1 } }]);
    const [source] = line.sources;
    const store = storeOf(line, source!);
    expect(store.dead).toBeGreaterThan(0);
    expect(store.volumeAt(store.bottom - 0.02)).toBe(store.dead);
    expect(store.volumeAt(store.top + 1)).toBe(store.full);
  });
});
