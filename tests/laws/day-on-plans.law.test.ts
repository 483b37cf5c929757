import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../packages/hydraulics/src/document/plan-schema.js";
import { simulateDay } from "../../packages/hydraulics/src/judge/time/simulate-day.js";
import { groupOf, placesOf } from "../../packages/hydraulics/src/simulate/crowd-want.js";
import { DAY_EVENTS, type DayResult } from "../../packages/hydraulics/src/simulate/day-result.js";
import { BEHAVIOUR } from "../../packages/hydraulics/src/simulate/day-setting.js";
import { cases } from "../runner/cases.js";
import { ASKED_ON, asked, planWithPens } from "./asked-plans.js";

const seeds = fc.integer({ min: 0, max: 0x7fffffff });
/** Cases of each law; more by hand: HEADFALL_CASES=2000 HEADFALL_SEED=17. */
const RUNS = cases(10);

const known = new Map<string, DayResult>();

/** The laws try the same days, each simulated once. */
function dayOf(plan: number, seed: number): DayResult {
  const name = `${plan} ${seed}`;
  const day = known.get(name) ?? simulated(plan, seed);
  known.set(name, day);
  return day;
}

function simulated(plan: number, seed: number): DayResult {
  const made = simulateDay(planWithPens(plan) as unknown as Plan, { seed, day: ASKED_ON, record: true });
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.result;
}

/** Every number of it, to its last digit. */
const inFull = (day: DayResult) =>
  JSON.stringify(day, (_, value: unknown) =>
    ArrayBuffer.isView(value) ? Array.from(value as Float64Array) : value,
  );
const sumOf = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0);
/** Volumes may be off by a thousandth of a millilitre [m3]. */
const SAME_VOLUME = 1e-9;

describe("a simulated day of any plan", { timeout: 120_000 }, () => {
  it("has all that is drawn drunk or spilled, by some bird, at some drinker, from some source", () => {
    let drunk = 0;
    fc.assert(
      fc.property(seeds, seeds, (plan, seed) => {
        const { balance, birds, drinkers, sources, pens } = dayOf(plan, seed);
        const near = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(SAME_VOLUME);
        near(balance.drunk + balance.spilled, balance.drawn);
        near(balance.start + balance.poured - balance.drawn, balance.end);
        near(sumOf(birds.map((bird) => bird.drunk)), balance.drunk);
        near(sumOf(pens.map((pen) => pen.drunk)), balance.drunk);
        near(sumOf(drinkers.map((one) => one.drawn)), balance.drawn);
        near(sumOf(sources.map((one) => one.poured)), balance.poured);
        for (const { start, poured, drawn, end } of sources) near(start + poured - drawn, end);
        if (balance.drunk > 0) drunk += 1;
      }),
      RUNS,
    );
    expect(drunk).toBeGreaterThan(RUNS.numRuns / 4);
  });

  it("has every bout begin and end at one drinker, no more birds at a drinker than find place, and every wait end", () => {
    fc.assert(
      fc.property(seeds, seeds, (plan, seed) => {
        const result = dayOf(plan, seed);
        const { line } = asked(planWithPens(plan)).judged;
        const events = result.events!;
        const at = new Map<number, number>();
        const waiting = new Map<number, number>();
        const places = Array.from(line.drinkers.group, (_, d) => placesOf(groupOf(line, d)));
        const [begun, taken] = [new Int32Array(line.drinkers.count), new Int32Array(line.drinkers.count)];
        const bouts = new Int32Array(result.birds.length);
        for (let k = 0; k < events.count; k += 1) {
          const [kind, bird, drinker] = [events.kind[k]!, events.bird[k]!, events.drinker[k]!];
          if (kind === DAY_EVENTS.begins) {
            expect(at.has(bird)).toBe(false);
            waiting.delete(bird);
            at.set(bird, drinker);
            begun[drinker]! += 1;
            bouts[bird]! += 1;
            taken[drinker]! += 1;
            expect(taken[drinker]).toBeLessThanOrEqual(places[drinker]!);
          } else if (kind === DAY_EVENTS.ends) {
            expect(at.get(bird)).toBe(drinker);
            at.delete(bird);
            taken[drinker]! -= 1;
          } else if (kind === DAY_EVENTS.waits) {
            expect(at.has(bird) || waiting.has(bird)).toBe(false);
            waiting.set(bird, events.time[k]!);
          } else {
            // One that gives up without having waited found nothing at all.
            waiting.delete(bird);
          }
        }
        expect(result.drinkers.map((one) => one.bouts)).toEqual([...begun]);
        expect(result.birds.map((bird) => bird.bouts)).toEqual([...bouts]);
        // Nobody waits beyond its patience: at midnight only those who have just come.
        for (const since of waiting.values())
          expect(since).toBeGreaterThanOrEqual(86_400 - BEHAVIOUR.patience);
        // Those still at it at midnight are the ones that have not ended.
        expect(sumOf([...taken])).toBe(at.size);
        expect(Math.min(0, ...taken)).toBe(0);
      }),
      RUNS,
    );
  });

  it("gives no bird water at a drinker that gives none, nor at one of another pen, nor more than it can take in", () => {
    let dry = 0;
    fc.assert(
      fc.property(seeds, seeds, (plan, seed) => {
        const { drinkers, pens, birds, events } = dayOf(plan, seed);
        const { flock } = asked(planWithPens(plan));
        drinkers.forEach(({ drawn, busy, bouts }) => {
          if (drawn > 0) return;
          dry += 1;
          expect([busy, bouts > 0 && busy > 0]).toEqual([0, false]);
        });
        for (let k = 0; k < events!.count; k += 1) {
          if (events!.kind[k] !== DAY_EVENTS.begins) continue;
          expect(flock.pens[birds[events!.bird[k]!]!.pen]!.drinkers).toContain(events!.drinker[k]);
        }
        flock.pens.forEach(({ drinkers: reached }, p) => {
          if (reached.length === 0) expect(pens[p]!.drunk).toBe(0);
        });
        for (const { drunk, wanted, pen, batch } of birds) {
          const { kind } = flock.pens[pen]!.batches[batch]!;
          expect(drunk).toBeLessThanOrEqual(86_400 * kind.fastest);
          // Ahead of its thirst a bird drinks a bout of three usual ones at most.
          expect(drunk).toBeLessThanOrEqual(
            wanted * (1 + 3 / Math.min(kind.boutsClosed, kind.boutsOpen)) + SAME_VOLUME,
          );
        }
      }),
      RUNS,
    );
    expect(dry).toBeGreaterThan(0);
  });

  it("is the same to the bit by its seed", () => {
    fc.assert(
      fc.property(seeds, seeds, (plan, seed) => {
        expect(inFull(simulated(plan, seed)) === inFull(dayOf(plan, seed))).toBe(true);
      }),
      { numRuns: Math.ceil(RUNS.numRuns / 2) },
    );
  });
});
