import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { LineSolution } from "../../packages/hydraulics/src/solve/solution.js";
import { type Chord, type DrawnLine, lineOf, RUNS, rings, solved, trees, withChord } from "./drawn-lines.js";

const chords = fc.record({
  a: fc.nat(),
  b: fc.nat(),
  length: fc.double({ min: 0.5, max: 40, noNaN: true }),
  bore: fc.double({ min: 0.008, max: 0.03, noNaN: true }),
}) as fc.Arbitrary<Chord>;
const none = fc.constant(0);

/**
 * The content that the flows of a line make least (Birkhoff and Diaz 1956, from memory): the integral of every loss
 * over its flow, less the head of the source times its draw. By Hazen-Williams with turbulent fittings, in closed form.
 */
function contentOf(drawn: DrawnLine, { flow, drinkerFlow, sourceFlow }: LineSolution): number {
  const { segments, drinkers } = lineOf(drawn);
  let content = -drawn.sourceHead[0]! * sourceFlow[0]!;
  flow.forEach((signed, s) => {
    const q = Math.abs(signed);
    const r =
      (10.67 * segments.length[s]!) / (segments.hazenWilliams[s]! ** 1.852 * segments.bore[s]! ** 4.8704);
    const area = (Math.PI / 4) * segments.bore[s]! ** 2;
    content += (r * q ** 2.852) / 2.852 + ((segments.kInfinity[s]! / (2 * 9.80665 * area ** 2)) * q ** 3) / 3;
  });
  drinkerFlow.forEach((q, d) => {
    const power = 1 / drinkers.exponent[d]!;
    content += (drinkers.height[d]! + drinkers.openingHead[d]!) * q;
    content += (drinkers.coefficient[d]! * (q / drinkers.coefficient[d]!) ** (power + 1)) / (power + 1);
  });
  return content;
}

describe("solveLine by Hazen-Williams with one pipe more", () => {
  it("never has a greater content: what could flow before still can", () => {
    fc.assert(
      fc.property(fc.oneof(trees({ k1: none }), rings({ k1: none })), chords, (drawn, chord) => {
        const wider = withChord(drawn, chord);
        const before = contentOf(drawn, solved(drawn, "hazenWilliams"));
        const after = contentOf(wider, solved(wider, "hazenWilliams"));
        expect(after).toBeLessThanOrEqual(before + 1e-7 * Math.abs(before) + 1e-15);
      }),
      RUNS,
    );
  });

  // With laws of different powers, or drinkers at different heights, the draw may fall (Calvert and Keady 1993, from
  // memory): one pipe more can starve. With one power and one height it cannot.
  it("never draws less where pipes and drinkers have one power and one height", () => {
    const alike = {
      exponent: fc.constant(1 / 1.852),
      k1: none,
      kInfinity: none,
      height: none,
      openingHead: none,
    };
    fc.assert(
      fc.property(fc.oneof(trees(alike), rings(alike)), chords, (drawn, chord) => {
        const before = solved(drawn, "hazenWilliams").sourceFlow[0]!;
        const after = solved(withChord(drawn, chord), "hazenWilliams").sourceFlow[0]!;
        expect(after).toBeGreaterThanOrEqual(before * (1 - 1e-7) - 1e-13);
      }),
      RUNS,
    );
  });

  it("may draw less in all where drinkers hang at different heights: the law above cannot be had without its terms", () => {
    // A big drinker just under the water is fed by one way, a small one far below by another; joined, the small one
    // takes from the big one.
    const line = (join: boolean): DrawnLine => ({
      parts: {
        heights: [0, 0.9, 0, 0],
        pipes: [
          { from: 0, to: 1, length: 40, bore: 0.012 },
          { from: 0, to: 2, length: 40, bore: 0.012 },
          ...(join ? [{ from: 1, to: 2, length: 1, bore: 0.012 }] : []),
        ],
        drinkers: [
          { point: 1, coefficient: 2e-3, exponent: 1 / 1.852 },
          { point: 2, coefficient: 3e-5, exponent: 1 / 1.852 },
        ],
        sources: [0],
      },
      sourceHead: [1],
      atWork: [true, true],
    });
    const draw = (join: boolean) => solved(line(join), "hazenWilliams").sourceFlow[0]!;
    expect(draw(true)).toBeLessThan(draw(false));
  });
});
