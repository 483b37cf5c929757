import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { storeOf } from "../../packages/hydraulics/src/simulate/store.js";
import { readQuantity } from "../../packages/hydraulics/src/units/quantity.js";
import type { PlanData } from "../arbitraries/plans.js";
import { cases } from "../runner/cases.js";
import { asked, drawnDown, endsOf, planWithPens } from "./asked-plans.js";

/** A plan by its number, so that a failure is short to tell. */
const seeds = fc.integer({ min: 0, max: 0x7fffffff });
/** Cases of each law; more by hand: HEADFALL_CASES=2000 HEADFALL_SEED=17. */
const RUNS = cases(16);
/** Volumes may be off by a thousandth of a millilitre [m3]. */
const SAME_VOLUME = 1e-9;

/** No later than that, but for how finely the height is found at which a pen comes short. */
function expectNoLater(plan: PlanData, less: PlanData): void {
  const [at, before] = [endsOf(drawnDown(plan).drawdown), endsOf(drawnDown(less).drawdown)];
  for (const end of ["dry", "without", "empty"] as const)
    expect([end, before[end] <= at[end] * (1 + 1e-4) + 600 ? "no later" : [before[end], at[end]]]).toEqual([
      end,
      "no later",
    ]);
}

const sourcesIn = (plan: PlanData, change: (source: PlanData) => PlanData): PlanData => ({
  ...plan,
  sources: (plan["sources"] as PlanData[]).map(change),
});

describe("drawDown over any plan", { timeout: 120_000 }, () => {
  it("keeps its litres: what was there and poured in is drawn and left, to a thousandth of a millilitre", () => {
    fc.assert(
      fc.property(seeds, fc.boolean(), (seed, isFilled) => {
        const { balance, levels } = drawnDown(planWithPens(seed), { isFilled }).drawdown;
        const { start, poured, drawn, left } = balance;
        expect(Math.abs(start + poured - drawn - left)).toBeLessThan(SAME_VOLUME);
        expect(Math.min(start, poured, drawn, left)).toBeGreaterThanOrEqual(0);
        for (const { volumes } of levels) expect(Math.min(...volumes)).toBeGreaterThanOrEqual(-SAME_VOLUME);
      }),
      RUNS,
    );
  });

  it("never lets a level rise but by a hose, or when it is filled by hand; and never over full", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const plan = sourcesIn(planWithPens(seed), ({ refill, ...source }) =>
          refill !== undefined && typeof refill === "object" && refill !== null && "hose" in refill
            ? source
            : { ...source, ...(refill === undefined ? {} : { refill }) },
        );
        const { pools, drawdown } = drawnDown(plan, { isFilled: true });
        const filled = drawdown.events.flatMap((event) => (event.kind === "refilled" ? [event] : []));
        const full = new Map(
          pools.flatMap(({ stores }) => stores.map(({ source, full: most }) => [source, most])),
        );
        drawdown.levels.forEach(({ time, volumes }, k) => {
          const before = drawdown.levels[k - 1];
          volumes.forEach((volume, i) => {
            if (full.has(i)) expect(volume).toBeLessThanOrEqual(full.get(i)! + SAME_VOLUME);
            if (
              before === undefined ||
              filled.some((event) => event.time > before.time && event.time <= time)
            )
              return;
            expect(volume).toBeLessThanOrEqual(before.volumes[i]! + SAME_VOLUME);
          });
        });
      }),
      RUNS,
    );
  });

  it("has every drinker of a pool dry, and every pen on it short, no later than the pool is empty", () => {
    let emptied = 0;
    fc.assert(
      fc.property(seeds, (seed) => {
        const { pools, drawdown } = drawnDown(planWithPens(seed));
        for (const event of drawdown.events) {
          if (event.kind !== "empty") continue;
          emptied += 1;
          const { dryBelow, pens } = pools[event.pool]!;
          const timeOf = (kind: string, key: "drinker" | "pen", which: number) =>
            drawdown.events.find(
              (one) => one.kind === kind && (one as unknown as Record<string, unknown>)[key] === which,
            )?.time;
          for (const { drinker } of dryBelow)
            expect(timeOf("drinkerDry", "drinker", drinker)).toBeLessThanOrEqual(event.time + 1e-6);
          for (const { pen } of pens)
            expect(timeOf("penShort", "pen", pen)).toBeLessThanOrEqual(event.time + 1e-6);
        }
      }),
      RUNS,
    );
    expect(emptied).toBeGreaterThan(8);
  });
});

describe("the water of any plan never lasts longer", { timeout: 120_000 }, () => {
  it("in a smaller vessel of the same heights", () => {
    fc.assert(
      fc.property(seeds, fc.double({ min: 0.2, max: 1, noNaN: true }), (seed, share) => {
        const plan = planWithPens(seed);
        expectNoLater(
          plan,
          sourcesIn(plan, (source) => ({ ...source, vessel: narrower(source["vessel"], share) })),
        );
      }),
      RUNS,
    );
  });

  it("with more birds", () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: 1, max: 100 }), (seed, more) => {
        const plan = planWithPens(seed);
        const pens = (plan["pens"] as PlanData[]).map((pen) => ({
          ...pen,
          birds: (Array.isArray(pen["birds"]) ? pen["birds"] : [pen["birds"]]).map((batch: PlanData) => ({
            ...batch,
            count: (batch["count"] as number) + more,
          })),
        }));
        expectNoLater(plan, { ...plan, pens });
      }),
      RUNS,
    );
  });

  it("in more heat", () => {
    fc.assert(
      fc.property(
        seeds,
        fc.integer({ min: -10, max: 28 }),
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: 0, max: 14 }),
        (seed, low, swing, hotter) => {
          const air = (by: number) => ({ high: `${low + swing + by} degC`, low: `${low + by} degC` });
          const plan = planWithPens(seed);
          expectNoLater({ ...plan, weather: air(0) }, { ...plan, weather: air(hotter) });
        },
      ),
      RUNS,
    );
  });

  it("with its vessels sealed, which stall, than open to the air", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const [open, sealed] = ["open", "sealed"].map((vent) =>
          sourcesIn(planWithPens(seed), (source) => ({ ...source, vent })),
        );
        expectNoLater(open!, sealed!);
      }),
      RUNS,
    );
  });
});

describe("an air tube in any vessel", { timeout: 120_000 }, () => {
  it("holds the head at its foot until the level has come down to it, and from there it falls with the level", () => {
    let held = 0;
    fc.assert(
      fc.property(seeds, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (seed, share) => {
        const { line } = asked(planWithPens(seed)).judged;
        const [first] = line.sources;
        const foot = share * first!.levels.full;
        const source = { ...first!, vent: { kind: "airTube", foot } as never };
        const store = storeOf(line, source);
        for (let k = 0; k <= 20; k += 1) {
          const volume = store.dead + (k / 20) * (store.full - store.dead);
          const level = store.levelAt(volume);
          const above = store.surfaceAt(volume) - first!.base;
          if (level >= foot) held += 1;
          expect(above).toBeCloseTo(Math.min(level, foot), 9);
        }
      }),
      RUNS,
    );
    expect(held).toBeGreaterThan(100);
  });
});

/** The vessel with every area a share of what it was, and the same heights; a known one as it is. */
function narrower(vessel: unknown, share: number): unknown {
  if (typeof vessel === "string") return vessel;
  const data = vessel as PlanData;
  const times = (typed: unknown, factor: number, kind: "length" | "volume") => {
    const read = readQuantity(typed as string, kind);
    if (!read.ok) throw new Error(read.found);
    return `${(read.quantity.si * factor).toFixed(9)} ${kind === "length" ? "m" : "m3"}`;
  };
  const scaled = (key: string, factor: number) => ({ [key]: times(data[key], factor, "length") });
  switch (data["shape"]) {
    case "upright":
      return { ...data, ...scaled("diameter", Math.sqrt(share)) };
    case "tapered":
      return {
        ...data,
        ...scaled("bottomDiameter", Math.sqrt(share)),
        ...scaled("topDiameter", Math.sqrt(share)),
      };
    case "table":
      return {
        ...data,
        readings: (data["readings"] as PlanData[]).map(({ level, volume }) => ({
          level,
          volume: times(volume, share, "volume"),
        })),
      };
    default:
      return { ...data, ...scaled("length", share) };
  }
}
