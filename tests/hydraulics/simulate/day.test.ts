import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { erlangB, meanWait } from "../../../packages/hydraulics/src/birds/queue.js";
import type { Plan } from "../../../packages/hydraulics/src/document/plan-schema.js";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { settingOfPlan, simulateDay } from "../../../packages/hydraulics/src/judge/time/simulate-day.js";
import { runDay } from "../../../packages/hydraulics/src/simulate/day.js";
import { createDayFlows } from "../../../packages/hydraulics/src/simulate/day-flows.js";
import { DAY_EVENTS } from "../../../packages/hydraulics/src/simulate/day-result.js";
import { BIRD_HABITS, type DaySetting } from "../../../packages/hydraulics/src/simulate/day-setting.js";
import { rowOf, summariseDays } from "../../../packages/hydraulics/src/simulate/day-summary.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { penPlan } from "../judge/birds/pens.js";

function planOf(document: unknown): Plan {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function settingOf(document: unknown, options = {}): DaySetting {
  const set = settingOfPlan(planOf(document), { day: "2026-07-04", ...options });
  if (!set.ok) throw new Error(JSON.stringify(set.problems));
  return set.setting;
}

const dayOf = (document: unknown, seed: number, more = {}) =>
  runDay(settingOf(document), { seed, figure: "expect", record: true, ...more });

describe("a simulated day", () => {
  test("drunk and spilled is drawn, and what stood there and was poured in is drawn and left", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e6 }),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 1, max: 8 }),
        fc.constantFrom({}, { refill: { hose: "3 L/h" } }, { refill: { every: "12 h" } }, { vent: "sealed" }),
        fc.constantFrom("nipple-side-action", "bell", "cup-float"),
        (seed, birds, drinkers, source, kind) => {
          const plan = penPlan({
            birds: { kind: "hen", count: Math.max(1, birds) },
            drinkers: { kind, count: drinkers },
          });
          const {
            balance,
            birds: each,
            drinkers: at,
          } = dayOf({ ...plan, sources: [{ ...plan.sources[0], ...source }] }, seed);
          expect(balance.drunk + balance.spilled - balance.drawn).toBeCloseTo(0, 14);
          expect(balance.start + balance.poured - balance.drawn - balance.end).toBeCloseTo(0, 12);
          expect(each.reduce((sum, bird) => sum + bird.drunk, 0)).toBeCloseTo(balance.drunk, 14);
          expect(at.reduce((sum, one) => sum + one.drawn, 0)).toBeCloseTo(balance.drawn, 14);
          for (const bird of each)
            expect(Number.isFinite(bird.drunk) && bird.drunk >= 0 && bird.waited >= 0).toBe(true);
        },
      ),
      { numRuns: 25 },
    );
  });

  test("the same seed gives the same day to the bit, whatever days came before it; another seed another day", () => {
    const setting = settingOf(penPlan());
    const options = { figure: "expect", record: true } as const;
    const first = runDay(setting, { seed: 5, ...options });
    runDay(setting, { seed: 6, ...options });
    expect(runDay(setting, { seed: 5, ...options })).toEqual(first);
    expect(runDay(setting, { seed: 6, ...options }).balance).not.toEqual(first.balance);
  });

  test("events come in order; who begins ends, and nobody is at two drinkers", () => {
    const { events } = dayOf(penPlan({ birds: { kind: "hen", count: 60 }, drinkers: { count: 3 } }), 3);
    const at = new Map<number, number>();
    for (let k = 0; k < events!.count; k += 1) {
      if (k > 0) expect(events!.time[k]!).toBeGreaterThanOrEqual(events!.time[k - 1]!);
      const bird = events!.bird[k]!;
      if (events!.kind[k] === DAY_EVENTS.begins) {
        expect(at.has(bird)).toBe(false);
        at.set(bird, events!.drinker[k]!);
      }
      if (events!.kind[k] === DAY_EVENTS.ends) {
        expect(at.get(bird)).toBe(events!.drinker[k]);
        at.delete(bird);
      }
    }
  });

  test("with water enough and places enough every bird gets what it wants, near enough", () => {
    const { pens } = dayOf(penPlan({ birds: { kind: "hen", count: 20 } }), 11);
    expect(pens[0]!.drunk / pens[0]!.wanted).toBeGreaterThan(0.97);
    expect(pens[0]!.drunk / pens[0]!.wanted).toBeLessThan(1.05);
    expect(pens[0]!.short).toBeLessThanOrEqual(3);
  });

  test("birds at drinkers that are dry get nothing, and it is told", () => {
    const { pens, balance } = dayOf(penPlan({ above: "2 m" }), 2);
    expect(balance.drawn).toBe(0);
    expect(pens[0]!.short).toBe(pens[0]!.birds);
    expect(pens[0]!.foundDry).toBe(pens[0]!.comers);
    expect(pens[0]!.gaveUp).toBe(0);
    expect(pens[0]!.dry).toBeGreaterThan(0.9);
  });

  test("one drinker for many: they wait, give up, come short; with more drinkers they wait less", () => {
    const wait = (drinkers: number) =>
      dayOf(penPlan({ birds: { kind: "hen", count: 150 }, drinkers: { count: drinkers, every: "20 cm" } }), 4)
        .pens[0]!;
    const [one, two, six] = [wait(1), wait(2), wait(6)];
    expect(one.gaveUp).toBeGreaterThan(0);
    expect(one.meanWait).toBeGreaterThan(two.meanWait);
    expect(two.meanWait).toBeGreaterThan(six.meanWait);
    expect(one.allTaken).toBeGreaterThan(six.allTaken);
  });

  test("a barrel that runs dry in the day leaves birds short from then on", () => {
    const plan = penPlan({ birds: { kind: "hen", count: 80 } });
    const small = {
      vessel: { shape: "upright", diameter: "20 cm", height: "40 cm" },
      stand: "60 cm",
      level: { full: "38 cm", lowest: "7 cm" },
    };
    const { pens, sources } = dayOf({ ...plan, sources: [small] }, 1);
    expect(pens[0]!.short).toBeGreaterThan(40);
    expect(sources[0]!.end).toBeLessThan(sources[0]!.start / 2);
    expect(pens[0]!.foundDry).toBeGreaterThan(0);
    expect(pens[0]!.dryFrom).toBeGreaterThan(0);
  });

  test("birds that find no water are no waits of 0 s: they change neither the mean nor the wait of 95 in 100", () => {
    const plan = penPlan({ birds: { kind: "hen", count: 150 }, drinkers: { count: 1 } });
    const setting = settingOf(plan);
    const options = { seed: 4, figure: "expect", record: true } as const;
    const [wet] = runDay(setting, options).pens;
    expect(wet!.foundDry).toBe(0);
    const vessel = { shape: "upright", diameter: "20 cm", height: "40 cm" };
    const small = { vessel, stand: "60 cm", level: { full: "38 cm", lowest: "7 cm" } };
    const { pens, events } = runDay(settingOf({ ...plan, sources: [small] }), options);
    const [dry] = pens;
    expect(dry!.foundDry).toBeGreaterThan(1000);
    // Waits of those that drank or gave up, from the events alone.
    const since = new Map<number, number>();
    const waits: number[] = [];
    for (let k = 0; k < events!.count; k += 1) {
      const [bird, kind, time] = [events!.bird[k]!, events!.kind[k]!, events!.time[k]!];
      if (kind === DAY_EVENTS.waits) since.set(bird, time);
      else if (kind === DAY_EVENTS.begins || (kind === DAY_EVENTS.givesUp && since.has(bird))) {
        waits.push(time - (since.get(bird) ?? time));
        since.delete(bird);
      }
    }
    waits.sort((a, b) => a - b);
    expect(dry!.meanWait).toBeCloseTo(waits.reduce((sum, one) => sum + one, 0) / waits.length, 9);
    expect(dry!.wait95).toBe(waits[Math.floor(0.95 * waits.length)]);
  });

  test("flows remembered for a set are those the line gives when solved at that very level", () => {
    const { line } = settingOf(penPlan());
    const flows = createDayFlows(line);
    const prepared = prepareLine(line, "darcyWeisbach");
    const flow = new Float64Array(line.drinkers.count);
    const base = line.sources[0]!.base;
    let worst = 0;
    for (const working of [[0], [3, 7], [0, 1, 2, 3, 4, 5, 6, 7], [1, 5, 6]]) {
      const set = Int32Array.from(working);
      for (let level = 0.1; level <= 0.4; level += 0.007) {
        flows.find(set, set.length, Float64Array.of(base + level), flow);
        const atWork = new Uint8Array(line.drinkers.count);
        for (const d of working) atWork[d] = 1;
        const solved = solveLine(prepared, {
          name: "ordinary",
          sourceHead: Float64Array.of(base + level),
          atWork,
        });
        expect(solved.outcome).toBe("solved");
        for (const d of working) worst = Math.max(worst, Math.abs(flow[d]! / solved.drinkerFlow[d]! - 1));
      }
    }
    expect(worst).toBeLessThan(0.002);
  });

  test("simulateDay refuses what cannot be run, with the plan's problems", () => {
    const simulated = simulateDay(
      planOf(penPlan({ birds: { kind: "hen", count: 3, hatched: "2026-01-01" } })),
    );
    expect(simulated.ok ? [] : simulated.problems.map(({ code, path }) => `${path}: ${code}`)).toEqual([
      "day: missing",
    ]);
  });
});

describe("a day held against theory", () => {
  /** Birds that come at random all day, never tire of waiting or never wait, at cups that all give alike. */
  const theoretical = (places: number, load: number): { setting: DaySetting; seconds: number } => {
    const plan = penPlan({
      birds: { kind: "hen", count: 1500 },
      drinkers: { kind: "cup-float", count: places, every: "10 cm" },
    });
    // Kept full, so that no drinker gives out.
    const built = settingOf({ ...plan, sources: [{ ...plan.sources[0], refill: { hose: "50 L/min" } }] });
    const [batch] = built.batches;
    const rate = batch!.fastest;
    // Bouts a day so that birds times bouts times seconds a bout is the load over a day.
    const seconds = 20;
    const bouts = (load * 86_400) / (1500 * seconds);
    const curve = { edges: [0, 86_400], drunk: [0, 1] };
    return {
      seconds,
      setting: {
        ...built,
        batches: [{ ...batch!, bouts, wanted: bouts * seconds * rate, curve }],
        light: { dawn: 0, lasts: 86_400 },
      },
    };
  };

  // Erlang's loss formula holds for any spread of stays: fixed ones here. Birds come at random, though one that drinks
  // does not come again meanwhile: with 1500 birds that takes about one part in a thousand off the load.
  test.each([
    [2, 1],
    [3, 2],
    [5, 3],
  ])("%i places, load %f: the share of comers turned away is Erlang's B", (places, load) => {
    const { setting } = theoretical(places, load);
    const habits = { ...BIRD_HABITS, bouts: "fixed", patience: 0, retry: 0, spread: 0 } as const;
    let [comers, away] = [0, 0];
    for (let seed = 1; seed <= 12; seed += 1) {
      const [pen] = runDay(setting, { seed, figure: "expect", record: false, habits }).pens;
      comers += pen!.comers;
      away += pen!.gaveUp;
    }
    const expected = erlangB(places, load);
    // Four standard deviations of a share of that many, doubled since neighbours in time are alike.
    const doubt = 8 * Math.sqrt((expected * (1 - expected)) / comers);
    expect(Math.abs(away / comers - expected)).toBeLessThan(doubt + 0.01 * expected);
  });

  test.each([
    [1, 0.5],
    [2, 1.2],
    [4, 2.8],
  ])(
    "%i places, load %f: with stays spread exponentially and endless patience the mean wait is Erlang's",
    (places, load) => {
      const { setting, seconds } = theoretical(places, load);
      const habits = { ...BIRD_HABITS, bouts: "exponential", patience: 1e9, retry: 0, spread: 0 } as const;
      let [waits, comers] = [0, 0];
      for (let seed = 1; seed <= 16; seed += 1) {
        const [pen] = runDay(setting, { seed, figure: "expect", record: false, habits }).pens;
        waits += pen!.meanWait * pen!.comers;
        comers += pen!.comers;
      }
      const expected = meanWait({ places, load, meanSeconds: seconds });
      expect(Math.abs(waits / comers / expected - 1)).toBeLessThan(0.08);
    },
  );

  test("birds at drinkers on average are how often they come times how long they stay (Little)", () => {
    const { setting, seconds } = theoretical(6, 2);
    const habits = { ...BIRD_HABITS, bouts: "fixed", patience: 0, retry: 0, spread: 0 } as const;
    const { pens, drinkers } = runDay(setting, { seed: 3, figure: "expect", record: false, habits });
    const busy = drinkers.reduce((sum, one) => sum + one.busy, 0);
    expect(busy / 86_400).toBeCloseTo(((pens[0]!.comers - pens[0]!.gaveUp) * seconds) / 86_400, 1);
  });
});

test("many days in a few figures: the same whatever order their rows come in", () => {
  const setting = settingOf(penPlan({ birds: { kind: "hen", count: 40 }, drinkers: { count: 2 } }));
  const rows = [1, 2, 3, 4, 5].map((seed) =>
    rowOf(runDay(setting, { seed, figure: "expect", record: false })),
  );
  const summary = summariseDays(rows);
  expect(summariseDays([...rows].reverse())).toEqual(summary);
  expect(summary.days).toBe(5);
  expect(summary.pens[0]!.mostAtOnce.low).toBeLessThanOrEqual(summary.pens[0]!.mostAtOnce.most);
  expect(() => summariseDays([])).toThrow(RangeError);
});
