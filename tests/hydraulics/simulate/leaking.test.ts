import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { timeToDrainUpright } from "../../../packages/hydraulics/src/physics/draining.js";
import { drawDown } from "../../../packages/hydraulics/src/simulate/drawdown.js";
import type { DrawnPool, PoolLeak, Refill } from "../../../packages/hydraulics/src/simulate/drawn-pool.js";
import { timeBetween } from "../../../packages/hydraulics/src/simulate/leak-pieces.js";
import { storeOf } from "../../../packages/hydraulics/src/simulate/store.js";
import { type PlanData, randomPlan } from "../../arbitraries/plans.js";
import { asked } from "../../laws/asked-plans.js";
import { cases } from "../../runner/cases.js";

const DAY = 86_400;
const AREA = 1e-5;

const tank = (source: PlanData = {}): PlanData => ({
  headfall: 1,
  sources: [
    {
      vessel: { shape: "upright", diameter: "50 cm", height: "1 m" },
      outlet: "0 cm",
      level: { full: "90 cm", lowest: "1 cm" },
      ...source,
    },
  ],
  runs: [{ length: "1 m", fall: "0 cm" }],
});

/** An opening in the bottom of the first source, or of another shape, with nobody drinking but what drips. */
function drained(
  data: PlanData,
  {
    area = AREA,
    drips = 0,
    refill = { kind: "none" } as Refill,
    lasts = 5 * DAY,
    height = 0,
    dryAt = 0,
  } = {},
) {
  const { judged, flock, fullVolumes } = asked(data);
  const { line } = judged;
  const [source] = line.sources;
  const k = area * 0.61 * Math.sqrt(2 * 9.80665);
  const leak: PoolLeak = {
    endsAt: source!.base + height,
    flowAt: (surface) => k * Math.sqrt(Math.max(0, surface - source!.base - height)),
  };
  const pool: DrawnPool = {
    stores: [storeOf(line, source!)],
    start: [fullVolumes[0]!],
    refills: [refill],
    drips,
    leak,
    pens: [],
    // A drinker at the bottom, so that what drips can take all.
    dryBelow: [{ drinker: 0, surface: source!.base + dryAt }],
    shortBelow: [],
  };
  return drawDown(line, { ...flock, pens: [] }, [pool], {
    figure: "size",
    from: 0,
    lasts,
    flockOn: () => flock,
  });
}

describe("a pool that leaks", () => {
  it("drains by Torricelli's law, to the last digits: an upright vessel through an opening in its bottom", () => {
    for (const area of [1e-6, 1e-5, 1e-4]) {
      const drawdown = drained(tank(), { area, lasts: 60 * DAY });
      const byLaw = timeToDrainUpright(
        { diameter: 0.5 },
        { area, dischargeCoefficient: 0.61 },
        { from: 0.9, to: 0 },
      );
      const empty = drawdown.events.find(({ kind }) => kind === "empty");
      expect(empty!.time / byLaw).toBeCloseTo(1, 9);
      expect(drawdown.lost).toBeCloseTo((Math.PI / 4) * 0.25 * 0.9, 12);
    }
  });

  it("drains with an even draw beside it in the time the integral of both gives", () => {
    const drips = 2e-6;
    const surface = (Math.PI / 4) * 0.25;
    const k = AREA * 0.61 * Math.sqrt(2 * 9.80665);
    const drawdown = drained(tank(), { drips });
    // dt = A dh / (b + k h^½): 2A/k [√h - (b/k) ln(1 + k √h / b)].
    const byHand =
      ((2 * surface) / k) * (Math.sqrt(0.9) - (drips / k) * Math.log(1 + (k * Math.sqrt(0.9)) / drips));
    expect(drawdown.events.find(({ kind }) => kind === "empty")!.time / byHand).toBeCloseTo(1, 7);
    expect(drawdown.lost).toBeCloseTo(drawdown.balance.drawn, 15);
  });

  it("with a hose comes to rest where what leaks is what the hose gives", () => {
    const k = AREA * 0.61 * Math.sqrt(2 * 9.80665);
    const flow = k * Math.sqrt(0.4);
    const drawdown = drained(tank(), { refill: { kind: "hose", flow }, lasts: 20 * DAY });
    const left = drawdown.levels.at(-1)!.volumes[0]!;
    expect(left / ((Math.PI / 4) * 0.25)).toBeCloseTo(0.4, 6);
    const { start, poured, drawn } = drawdown.balance;
    expect(start + poured - drawn - left).toBeCloseTo(0, 12);
  });

  it("with a hose that gives more stays full, and loses what leaks at the full level", () => {
    const k = AREA * 0.61 * Math.sqrt(2 * 9.80665);
    const drawdown = drained(tank(), { refill: { kind: "hose", flow: 1e-3 }, lasts: DAY });
    expect(drawdown.lost).toBeCloseTo(k * Math.sqrt(0.9) * DAY, 9);
    expect(drawdown.balance.left).toBeCloseTo(drawdown.balance.start, 12);
  });

  it("at rest under a hose, where in and out differ by rounding alone, stays a number", () => {
    for (let k = 1; k < 12; k += 1) {
      const flow = 1.0182e-5 * (1 + k / 100);
      const { balance } = drained(tank(), { drips: 2e-7, refill: { kind: "hose", flow }, lasts: 20 * DAY });
      expect(balance.start + balance.poured - balance.drawn - balance.left).toBeCloseTo(0, 9);
    }
  });

  it("stays at its last drinker where a hose gives more than leaks and less than is wanted: it is dry once", () => {
    const flow = 1e-6;
    const drawdown = drained(tank(), {
      area: 1e-7,
      drips: 2e-6,
      dryAt: 0.3,
      refill: { kind: "hose", flow },
      lasts: 30 * DAY,
    });
    const { balance, events, levels } = drawdown;
    expect(levels.at(-1)!.volumes[0]! / ((Math.PI / 4) * 0.25)).toBeCloseTo(0.3, 9);
    expect(events.filter(({ kind }) => kind === "drinkerDry")).toHaveLength(1);
    expect(balance.poured).toBeCloseTo(flow * 30 * DAY, 9);
    expect(balance.start + balance.poured - balance.drawn - balance.left).toBeCloseTo(0, 12);
  });

  it("with an opening that is larger never lasts longer, in any vessel; and keeps its litres", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 0x7fffffff }),
        fc.double({ min: 1.01, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 3e-6, noNaN: true }),
        (seed, factor, drips) => {
          const plan = randomPlan(seed);
          const [small, large] = [AREA, AREA * factor].map((area) =>
            drained(plan, { area, drips, lasts: 30 * DAY }),
          );
          for (const { balance, lost } of [small!, large!]) {
            expect(Math.abs(balance.start + balance.poured - balance.drawn - balance.left)).toBeLessThan(
              1e-12,
            );
            expect(lost).toBeLessThanOrEqual(balance.drawn + 1e-12);
          }
          const emptied = ({ events }: typeof small & object) =>
            events.find(({ kind }) => kind === "empty")?.time ?? Number.POSITIVE_INFINITY;
          expect(emptied(large!)).toBeLessThanOrEqual(emptied(small!) * (1 + 1e-9));
        },
      ),
      cases(6),
    );
  });
});

describe("timeBetween", () => {
  it("agrees with its integral by many small steps, where rates differ much, little, and not at all", () => {
    for (const [a, b] of [
      [3e-6, 1e-6],
      [2e-6, 1.999e-6],
      [2e-6, 2e-6],
      [1e-6, 5e-6],
      [-2e-6, -1e-6],
    ] as const) {
      const [from, to] = [
        { s: 0.8, rate: a },
        { s: a > 0 ? 0.3 : 0.95, rate: b },
      ];
      let sum = 0;
      const steps = 20_000;
      for (let i = 0; i < steps; i += 1) {
        const s = from.s + ((i + 0.5) / steps) * (to.s - from.s);
        const rate = a + ((s - from.s) / (to.s - from.s)) * (b - a);
        sum += ((2 * 0.1 * s) / rate) * ((from.s - to.s) / steps);
      }
      expect(timeBetween(0.1, from, to) / sum).toBeCloseTo(1, 7);
    }
  });

  it("is endless where the outflow comes to nothing before the end", () => {
    expect(timeBetween(0.1, { s: 0.8, rate: 1e-6 }, { s: 0.4, rate: 0 })).toBe(Number.POSITIVE_INFINITY);
    expect(timeBetween(0.1, { s: 0.8, rate: 0 }, { s: 0.4, rate: 0 })).toBe(Number.POSITIVE_INFINITY);
  });
});
