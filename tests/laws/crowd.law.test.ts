import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Line } from "../../packages/hydraulics/src/model/line.js";
import { type Crowd, crowdOf } from "../../packages/hydraulics/src/simulate/crowd.js";
import { lineOf } from "../hydraulics/model/built.js";
import { batch, flockOf, PLAIN_BIRD } from "../hydraulics/simulate/made-birds.js";
import { RUNS } from "./drawn-lines.js";

const NOTHING_STATED: ReadonlySet<number> = new Set();

interface Yard {
  readonly bore: number;
  readonly feed: number;
  readonly nipples: number;
  readonly cups: number;
  readonly stand: number;
  readonly birds: number;
}

/** A thin feed, long enough to come down to the ground, a line of nipples and a branch of float cups, all well below the water; from too many drinkers to too few. */
const yards = fc.record({
  bore: fc.integer({ min: 4, max: 20 }),
  feed: fc.integer({ min: 5, max: 60 }),
  nipples: fc.integer({ min: 1, max: 24 }),
  cups: fc.integer({ min: 1, max: 6 }),
  stand: fc.integer({ min: 20, max: 200 }),
  birds: fc.integer({ min: 1, max: 300 }),
});

const lineOfYard = ({ bore, feed, nipples, cups, stand }: Yard): Line =>
  lineOf(
    [
      { id: "feed", to: "tee", length: `${feed} m`, pipe: { bore: `${bore} mm` } },
      {
        id: "hen line",
        from: "tee",
        length: "6 m",
        pipe: { bore: `${bore} mm` },
        drinkers: { kind: "nipple-side-action", count: nipples },
      },
      {
        id: "yard",
        from: "tee",
        length: "4 m",
        pipe: { bore: `${bore} mm` },
        drinkers: { kind: "cup-float", count: cups },
      },
    ],
    {
      sources: [
        { vessel: "drum-55gal-plastic", stand: `${stand} cm`, level: { full: "70 cm", lowest: "10 cm" } },
      ],
    },
  );

const crowdIn = (yard: Yard, birds = yard.birds): Crowd => {
  const line = lineOfYard(yard);
  return crowdOf(line, flockOf(line, [{ batches: [batch(birds)] }]), NOTHING_STATED);
};
const busiest = (crowd: Crowd) => crowd.pens[0]!.busiest;

describe("crowdOf", () => {
  it("never has fewer at work for more birds, nor a smaller load", () => {
    fc.assert(
      fc.property(yards, fc.integer({ min: 1, max: 200 }), (yard, more) => {
        const [few, many] = [crowdIn(yard), crowdIn(yard, yard.birds + more)];
        expect(busiest(many)).toBeGreaterThanOrEqual(busiest(few));
        expect(many.pens[0]!.load.load).toBeGreaterThanOrEqual(few.pens[0]!.load.load * (1 - 1e-9));
      }),
      RUNS,
    );
  });

  it("never has more at work for more head, nor a greater load", () => {
    fc.assert(
      fc.property(yards, fc.integer({ min: 1, max: 200 }), (yard, more) => {
        const [low, high] = [crowdIn(yard), crowdIn({ ...yard, stand: yard.stand + more })];
        expect(busiest(high)).toBeLessThanOrEqual(busiest(low));
        expect(high.pens[0]!.load.load).toBeLessThanOrEqual(low.pens[0]!.load.load * (1 + 1e-9));
      }),
      RUNS,
    );
  });

  it("never has more at work than there are drinkers, nor than birds", () => {
    fc.assert(
      fc.property(yards, (yard) => {
        expect(busiest(crowdIn(yard))).toBeLessThanOrEqual(Math.min(yard.birds, yard.nipples + yard.cups));
      }),
      RUNS,
    );
  });

  it("is the same whichever way round batches and drinkers are listed, and for one batch told as two", () => {
    fc.assert(
      fc.property(yards, fc.integer({ min: 1, max: 200 }), (yard, others) => {
        const line = lineOfYard(yard);
        const all = Array.from({ length: line.drinkers.count }, (_, d) => d);
        const slow = { ...PLAIN_BIRD, fastest: PLAIN_BIRD.fastest / 2 };
        const one = [batch(yard.birds), batch(others, { kind: slow })];
        const asked = (batches: typeof one, drinkers: readonly number[]) =>
          crowdOf(line, flockOf(line, [{ batches, drinkers }]), NOTHING_STATED);
        const told = asked(one, all);
        const turned = asked([...one].reverse(), [...all].reverse());
        const split = asked([batch(others, { kind: slow }), batch(yard.birds - 1), batch(1)], all);
        for (const crowd of [turned, split]) {
          expect(Array.from(crowd.atWork)).toEqual(Array.from(told.atWork));
          expect(crowd.pens[0]!.load.load).toBeCloseTo(told.pens[0]!.load.load, 9);
        }
      }),
      RUNS,
    );
  });

  it("of two pens on lines of their own is that of each alone", () => {
    fc.assert(
      fc.property(yards, (yard) => {
        const line = lineOf(
          [
            {
              id: "one",
              from: "a",
              length: "6 m",
              drinkers: { kind: "nipple-side-action", count: yard.nipples },
            },
            { id: "two", from: "b", length: "4 m", drinkers: { kind: "cup-float", count: yard.cups } },
          ],
          {
            sources: ["a", "b"].map((id) => ({
              id,
              vessel: "drum-55gal-plastic",
              stand: `${yard.stand} cm`,
            })),
          },
        );
        const first = Array.from({ length: yard.nipples }, (_, d) => d);
        const second = Array.from({ length: yard.cups }, (_, k) => yard.nipples + k);
        const pens = [
          { batches: [batch(yard.birds)], drinkers: first },
          { batches: [batch(7)], drinkers: second },
        ];
        const both = crowdOf(line, flockOf(line, pens), NOTHING_STATED);
        const alone = crowdOf(line, flockOf(line, pens.slice(0, 1)), NOTHING_STATED);
        expect(busiest(both)).toBe(busiest(alone));
        expect(both.pens[0]!.load.load).toBeCloseTo(alone.pens[0]!.load.load, 9);
      }),
      RUNS,
    );
  });
});
