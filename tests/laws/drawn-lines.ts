import fc from "fast-check";
import { prepareLine } from "../../packages/hydraulics/src/solve/prepare-line.js";
import type { FrictionLaw, LineSolution } from "../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../packages/hydraulics/src/solve/solve-line.js";
import {
  type DrinkerPart,
  type LineParts,
  makeLine,
  makeMoment,
  type PipePart,
} from "../arbitraries/make-line.js";

/** A line, the head at its sources, and which of its drinkers are at work. */
export interface DrawnLine {
  readonly parts: LineParts;
  readonly sourceHead: readonly number[];
  readonly atWork: readonly boolean[];
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** What a line is drawn from; every limit may be narrowed for a law that holds only there. */
export interface Limits {
  readonly exponent?: fc.Arbitrary<number>;
  readonly openingHead?: fc.Arbitrary<number>;
  readonly coefficient?: fc.Arbitrary<number>;
  readonly height?: fc.Arbitrary<number>;
  readonly k1?: fc.Arbitrary<number>;
  readonly kInfinity?: fc.Arbitrary<number>;
  readonly bore?: fc.Arbitrary<number>;
}

/**
 * Trees of plain pipe fed by one source at point 0, as keepers build them: bores of 8 to 30 mm, falls and rises of
 * a metre, up to 24 pipes. They shrink to fewer pipes and rounder figures.
 */
export function trees(limits: Limits = {}): fc.Arbitrary<DrawnLine> {
  const drinker = fc.record({
    coefficient: limits.coefficient ?? between(1e-6, 3e-5),
    exponent: limits.exponent ?? fc.constantFrom(0.5, 0.5, 0.6, 0.8),
    openingHead: limits.openingHead ?? fc.constantFrom(0, 0, 0.04),
    isAtWork: fc.boolean(),
  });
  const branch = fc.record({
    parent: fc.nat(),
    length: between(0.1, 40),
    bore: limits.bore ?? between(0.008, 0.03),
    height: limits.height ?? between(-1, 0.5),
    k1: limits.k1 ?? fc.constantFrom(0, 0, 800),
    kInfinity: limits.kInfinity ?? fc.constantFrom(0, 0, 1.5, 10),
    drinker: fc.option(drinker, { nil: undefined, freq: 4 }),
  });
  return fc
    .record({
      branches: fc.array(branch, { minLength: 1, maxLength: 24 }),
      head: between(0.05, 2),
      temperatureC: between(1, 40),
    })
    .map(({ branches, head, temperatureC }) => {
      const pipes = branches.map(({ parent, length, bore, k1, kInfinity }, i): PipePart => {
        const from = parent % (i + 1);
        return { from, to: i + 1, length, bore, k1, kInfinity };
      });
      const hung = branches.flatMap(({ drinker: one }, i) =>
        one === undefined ? [] : [{ ...one, point: i + 1 }],
      );
      return {
        parts: {
          heights: [0, ...branches.map(({ height }) => height)],
          pipes,
          drinkers: hung.map(({ isAtWork: _, ...part }): DrinkerPart => part),
          sources: [0],
          temperatureC,
        },
        sourceHead: [head],
        atWork: hung.map(({ isAtWork }) => isAtWork),
      };
    });
}

/** The same with one to three pipes that close rings. */
export function rings(limits: Limits = {}): fc.Arbitrary<DrawnLine> {
  const chord = fc.record({ a: fc.nat(), b: fc.nat(), length: between(0.5, 40), bore: between(0.008, 0.03) });
  return fc
    .record({ tree: trees(limits), chords: fc.array(chord, { minLength: 1, maxLength: 3 }) })
    .map(({ tree, chords }) => chords.reduce(withChord, tree));
}

export interface Chord {
  readonly a: number;
  readonly b: number;
  readonly length: number;
  readonly bore: number;
}

/** The line with a pipe more, between two of its points. */
export function withChord(drawn: DrawnLine, { a, b, length, bore }: Chord): DrawnLine {
  const count = drawn.parts.heights.length;
  const [from, to] = [a % count, b % count];
  return withPipes(
    drawn,
    from === to ? drawn.parts.pipes : [...drawn.parts.pipes, { from, to, length, bore }],
  );
}

/** The line with other pipes between the same points. */
export const withPipes = (drawn: DrawnLine, pipes: readonly PipePart[]): DrawnLine => ({
  ...drawn,
  parts: { ...drawn.parts, pipes },
});

/** The line with one of its pipes changed. */
export const withPipe = (drawn: DrawnLine, which: number, change: Partial<PipePart>): DrawnLine =>
  withPipes(
    drawn,
    drawn.parts.pipes.map((pipe, s) => (s === which ? { ...pipe, ...change } : pipe)),
  );

export const lineOf = ({ parts }: DrawnLine) => makeLine(parts);

export const momentOf = (drawn: DrawnLine) => makeMoment(lineOf(drawn), drawn.sourceHead, drawn.atWork);

/** The solution from a cold start; fails where there is none. */
export function solved(drawn: DrawnLine, friction: FrictionLaw): LineSolution {
  const solution = solveLine(prepareLine(lineOf(drawn), friction), momentOf(drawn));
  if (solution.outcome !== "solved") throw new Error(`${solution.outcome}: ${JSON.stringify(drawn)}`);
  return solution;
}

/** Greatest difference between two lists of numbers. */
export function farthestApart(a: ArrayLike<number>, b: ArrayLike<number>): number {
  if (a.length !== b.length) throw new Error(`${a.length} numbers against ${b.length}`);
  let most = 0;
  for (let i = 0; i < a.length; i += 1) most = Math.max(most, Math.abs((a[i] as number) - (b[i] as number)));
  return most;
}

/** Flows may differ by this much and be the same: a hundredth of a millilitre an hour [m3/s]. */
export const SAME_FLOW = 3e-12;
/** Heads may differ by this much and be the same [m]. */
export const SAME_HEAD = 1e-9;

/** How often each law is tried. */
export const RUNS = { numRuns: 150 } as const;
