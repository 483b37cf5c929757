import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  analyseSymmetric,
  factorSymmetric,
  type SymmetricPattern,
  solveSymmetric,
} from "../../../packages/hydraulics/src/numerics/symmetric-solve.js";
import {
  chainPairs,
  completePairs,
  firstEnds,
  gridPairs,
  type Pairs,
  ringPairs,
  secondEnds,
} from "../../arbitraries/network-pairs.js";
import {
  conductanceSystem,
  dominantSystem,
  pairsBelow,
  type SymmetricSystem,
} from "../../arbitraries/symmetric-system.js";

/** Analyse, factor and solve; fails the test when the factor is refused. */
function solve(system: SymmetricSystem): Float64Array {
  const pattern = analyseSymmetric(system.size, system.rows, system.columns);
  return solveAgain(pattern, system);
}

function solveAgain(pattern: SymmetricPattern, system: SymmetricSystem): Float64Array {
  expect(factorSymmetric(pattern, system.diagonal, system.offDiagonal)).toEqual({ ok: true });
  const x = system.rightSide.slice();
  solveSymmetric(pattern, x);
  return x;
}

/** A conductance network with some unknowns tied to ground, and an inflow at each. */
function networkOf(
  size: number,
  pairs: Pairs,
  conductance: (pair: number) => number,
  ground: Readonly<Record<number, number>>,
  inflow: Readonly<Record<number, number>>,
): SymmetricSystem {
  const diagonal = new Float64Array(size);
  const rightSide = new Float64Array(size);
  for (const [i, g] of Object.entries(ground)) diagonal[Number(i)] = g;
  for (const [i, q] of Object.entries(inflow)) rightSide[Number(i)] = q;
  const offDiagonal = Float64Array.from(pairs, (_, k) => -conductance(k));
  for (const [k, [i, j]] of pairs.entries()) {
    diagonal[i]! += conductance(k);
    diagonal[j]! += conductance(k);
  }
  return { size, rows: firstEnds(pairs), columns: secondEnds(pairs), diagonal, offDiagonal, rightSide };
}

/** Largest |b - A x| of a row, as a share of what rounding could leave: |A| |x| + |b| of that row. */
function backwardError(system: SymmetricSystem, x: Float64Array): number {
  const residual = system.rightSide.map((b, i) => b - system.diagonal[i]! * x[i]!);
  const scale = system.rightSide.map((b, i) => Math.abs(b) + Math.abs(system.diagonal[i]! * x[i]!));
  for (const [k, a] of system.offDiagonal.entries()) {
    const i = system.rows[k]!;
    const j = system.columns[k]!;
    residual[i]! -= a * x[j]!;
    residual[j]! -= a * x[i]!;
    scale[i]! += Math.abs(a * x[j]!);
    scale[j]! += Math.abs(a * x[i]!);
  }
  return residual.reduce((most, r, i) => Math.max(most, r === 0 ? 0 : Math.abs(r) / scale[i]!), 0);
}

const relabel = (system: SymmetricSystem, label: readonly number[], pairOrder: readonly number[]) => {
  const place = (values: Float64Array) => {
    const moved = new Float64Array(values.length);
    for (const [v, to] of label.entries()) moved[to] = values[v]!;
    return moved;
  };
  return {
    size: system.size,
    rows: Int32Array.from(pairOrder, (k) => label[system.columns[k]!]!),
    columns: Int32Array.from(pairOrder, (k) => label[system.rows[k]!]!),
    offDiagonal: Float64Array.from(pairOrder, (k) => system.offDiagonal[k]!),
    diagonal: place(system.diagonal),
    rightSide: place(system.rightSide),
  };
};

const shuffleOf = (length: number) =>
  fc.shuffledSubarray([...Array(length).keys()], { minLength: length, maxLength: length });

describe("solveSymmetric, closed forms", () => {
  // Resistances in series add: with inflow 1 at point j of a chain grounded at its head, the level at point i is
  // the sum of the resistances from ground to whichever of i and j comes first.
  it.each([1, 2, 7, 400])("a chain of %i points: resistances in series add", (size) => {
    const resistance = (k: number) => 1 + (k % 5);
    const at = Math.floor((2 * size) / 3);
    const x = solve(networkOf(size, chainPairs(size), (k) => 1 / resistance(k), { 0: 1 / 3 }, { [at]: 1 }));
    let expected = 3;
    for (let i = 0; i < size; i++) {
      if (i > 0 && i <= at) expected += resistance(i - 1);
      expect(Math.abs(x[i]! - expected)).toBeLessThan(1e-12 * size * expected);
    }
  });

  // Two ways round a ring are resistances in parallel: k steps one way, n - k the other: k (n - k) / n.
  it.each([1, 4, 9])("a ring of 18, %i steps apart: resistances in parallel", (steps) => {
    const x = solve(networkOf(18, ringPairs(18), () => 1, { 0: 1 }, { [steps]: 1 }));
    expect(x[steps]! - x[0]!).toBeCloseTo((steps * (18 - steps)) / 18, 12);
  });

  // Corner to corner: by symmetry the other diagonal of the grid is at one level, so its points may be joined:
  // side 2: 1/2 + 1/2; side 3: twice (1/2 + 1/4).
  it.each([
    [2, 1],
    [3, 1.5],
  ])("a grid of side %i has resistance %f from corner to corner", (side, resistance) => {
    const last = side * side - 1;
    const x = solve(networkOf(side * side, gridPairs(side), () => 1, { 0: 1 }, { [last]: 1 }));
    expect(x[last]! - x[0]!).toBeCloseTo(resistance, 12);
  });

  // Foster's theorem (1949, from memory): over all pairs of a connected network, conductance times the resistance
  // between the two ends adds up to the number of points less one.
  it("a grid of side 12 with conductances from 0.01 to 100 obeys Foster's theorem", () => {
    const pairs = gridPairs(12);
    const conductance = (k: number) => 10 ** (2 * Math.sin(7 * k));
    const network = networkOf(144, pairs, conductance, { 71: 1 }, {});
    const pattern = analyseSymmetric(144, network.rows, network.columns);
    factorSymmetric(pattern, network.diagonal, network.offDiagonal);
    let sum = 0;
    for (const [k, [i, j]] of pairs.entries()) {
      const x = new Float64Array(144);
      x[i] = 1;
      x[j] = -1;
      solveSymmetric(pattern, x);
      sum += conductance(k) * (x[i]! - x[j]!);
    }
    expect(sum).toBeCloseTo(143, 8);
  });
});

describe("solveSymmetric, laws", () => {
  it("leaves a residual of rounding only, conductances over 12 orders of magnitude", () => {
    fc.assert(
      fc.property(conductanceSystem, (system) => {
        expect(backwardError(system, solve(system))).toBeLessThan(system.size * 8 * Number.EPSILON);
      }),
      { numRuns: 300 },
    );
  });

  // A conductance matrix has a non-negative inverse: inflow nowhere negative leaves no level negative.
  it("raises every level with every inflow, conductances over 12 orders of magnitude", () => {
    fc.assert(
      fc.property(conductanceSystem, (system) => {
        const x = solve({ ...system, rightSide: system.rightSide.map(Math.abs) });
        expect(Math.min(...x)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it("gives each unknown the same value however unknowns and pairs are numbered", () => {
    const cases = dominantSystem.chain((system) =>
      fc.tuple(fc.constant(system), shuffleOf(system.size), shuffleOf(system.rows.length)),
    );
    fc.assert(
      fc.property(cases, ([system, label, pairOrder]) => {
        const x = solve(system);
        const moved = solve(relabel(system, label, pairOrder));
        const scale = Math.max(1, ...x.map(Math.abs));
        for (const [v, to] of label.entries()) {
          expect(Math.abs(moved[to]! - x[v]!)).toBeLessThan(1e-11 * scale);
        }
      }),
    );
  });

  it("adds repeated pairs: a pair given as two halves changes nothing", () => {
    fc.assert(
      fc.property(dominantSystem, (system) => {
        const halves = system.offDiagonal.map((a) => a / 2);
        const twice = {
          ...system,
          rows: Int32Array.from([...system.rows, ...system.columns]),
          columns: Int32Array.from([...system.columns, ...system.rows]),
          offDiagonal: Float64Array.from([...halves, ...halves]),
        };
        const x = solve(system);
        const y = solve(twice);
        const scale = Math.max(1, ...x.map(Math.abs));
        for (const [v, value] of x.entries()) expect(Math.abs(y[v]! - value)).toBeLessThan(1e-11 * scale);
      }),
    );
  });

  it("solves pieces apart as if each were alone", () => {
    fc.assert(
      fc.property(dominantSystem, dominantSystem, (one, other) => {
        const shifted = (ends: Int32Array) => ends.map((v) => v + one.size);
        const join = (a: Float64Array, b: Float64Array) => Float64Array.from([...a, ...b]);
        const both = solve({
          size: one.size + other.size,
          rows: Int32Array.from([...one.rows, ...shifted(other.rows)]),
          columns: Int32Array.from([...one.columns, ...shifted(other.columns)]),
          diagonal: join(one.diagonal, other.diagonal),
          offDiagonal: join(one.offDiagonal, other.offDiagonal),
          rightSide: join(one.rightSide, other.rightSide),
        });
        const alone = [...solve(one), ...solve(other)];
        for (const [v, value] of alone.entries()) expect(both[v]!).toBeCloseTo(value, 10);
      }),
    );
  });

  it.each([5, 8, 23, 64])("solves a full matrix of %i: one panel as wide as the matrix", (size) => {
    const system = networkOf(size, completePairs(size), (k) => 1 + (k % 7), { 0: 0.5 }, { 1: 2, 3: -1 });
    const x = solve(system);
    expect(backwardError(system, x)).toBeLessThan(size * 8 * Number.EPSILON);
    expect(0.5 * x[0]!).toBeCloseTo(1, 9); // all that flows in leaves by the ground
  });

  it.each([13, 40])(
    "leaves a residual of rounding only on a grid of side %i, 12 orders of magnitude",
    (side) => {
      const conductance = (k: number) => 10 ** (6 * Math.sin(7 * k + 1));
      const system = networkOf(
        side * side,
        gridPairs(side),
        conductance,
        { 0: 1, 50: 1e-3 },
        { 7: 1, 99: -2 },
      );
      expect(backwardError(system, solve(system))).toBeLessThan(side * side * Number.EPSILON);
    },
  );

  it("has nothing to do at size 0, and divides at size 1", () => {
    const none = new Int32Array(0);
    expect(
      solve({
        size: 0,
        rows: none,
        columns: none,
        diagonal: new Float64Array(0),
        offDiagonal: new Float64Array(0),
        rightSide: new Float64Array(0),
      }),
    ).toHaveLength(0);
    const one = solve({
      size: 1,
      rows: none,
      columns: none,
      diagonal: Float64Array.of(4),
      offDiagonal: new Float64Array(0),
      rightSide: Float64Array.of(6),
    });
    expect([...one]).toEqual([1.5]);
  });
});

describe("factorSymmetric", () => {
  it("gives the same bytes again, whatever was factored or refused in between", () => {
    fc.assert(
      fc.property(dominantSystem, fc.nat(), (system, pick) => {
        const pattern = analyseSymmetric(system.size, system.rows, system.columns);
        const first = solveAgain(pattern, system);
        factorSymmetric(
          pattern,
          system.diagonal.map((d) => 3 * d + 1),
          system.offDiagonal.map((a) => a / 7),
        );
        const broken = system.diagonal.slice();
        if (system.size > 0) broken[pick % system.size] = Number.NaN;
        expect(factorSymmetric(pattern, broken, system.offDiagonal).ok).toBe(system.size === 0);
        const again = solveAgain(pattern, system);
        expect(new Uint8Array(again.buffer)).toEqual(new Uint8Array(first.buffer));
      }),
    );
  });

  it("returns one and the same outcome when all is well, and leaves its arguments alone", () => {
    const system = networkOf(9, gridPairs(3), () => 2, { 4: 1 }, {});
    const before = structuredClone(system);
    const pattern = analyseSymmetric(9, system.rows, system.columns);
    const outcome = factorSymmetric(pattern, system.diagonal, system.offDiagonal);
    expect(factorSymmetric(pattern, system.diagonal, system.offDiagonal)).toBe(outcome);
    expect(system).toEqual(before);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    "reports a lone pivot of %f at its own unknown",
    (bad) => {
      const none = new Int32Array(0);
      const pattern = analyseSymmetric(3, none, none);
      const outcome = factorSymmetric(pattern, Float64Array.of(1, bad, 1), new Float64Array(0));
      expect(outcome).toEqual({ ok: false, at: 1 });
    },
  );

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses an entry of %f off the diagonal", (bad) => {
    const pattern = analyseSymmetric(2, Int32Array.of(0), Int32Array.of(1));
    expect(factorSymmetric(pattern, Float64Array.of(1, 1), Float64Array.of(bad)).ok).toBe(false);
  });

  it("refuses the matrix of a network tied to ground nowhere: a chain of unit conductances", () => {
    const floating = networkOf(4, chainPairs(4), () => 1, {}, {});
    const pattern = analyseSymmetric(4, floating.rows, floating.columns);
    const outcome = factorSymmetric(pattern, floating.diagonal, floating.offDiagonal);
    expect(outcome).toEqual({ ok: false, at: pattern.order[3] });
  });

  // Sylvester's criterion: positive definite when and only when every leading block of the order has a positive
  // determinant; the first that has not is where elimination must stop.
  it("stops exactly where a dense elimination in the same order meets a pivot not above zero", () => {
    const cases = fc.integer({ min: 1, max: 14 }).chain((size) =>
      fc.record({
        size: fc.constant(size),
        pairs: fc.oneof(pairsBelow(size, 3 * size), fc.constant(completePairs(size))),
        entries: fc.infiniteStream(fc.integer({ min: -3, max: 3 })),
        diagonal: fc.array(fc.integer({ min: 2, max: 30 }), { minLength: size, maxLength: size }),
      }),
    );
    let refused = 0;
    fc.assert(
      fc.property(cases, ({ size, pairs, entries, diagonal }) => {
        const offDiagonal = Float64Array.from(pairs, () => entries.next().value as number);
        const pattern = analyseSymmetric(size, firstEnds(pairs), secondEnds(pairs));
        const dense = denseOf(size, pairs, diagonal, offDiagonal);
        const stop = firstBadPivot(dense, [...pattern.order]);
        fc.pre(stop !== "unsure");
        const outcome = factorSymmetric(pattern, Float64Array.from(diagonal), offDiagonal);
        if (stop !== undefined) refused++;
        expect(outcome).toEqual(stop === undefined ? { ok: true } : { ok: false, at: stop });
      }),
      { numRuns: 400 },
    );
    expect(refused).toBeGreaterThan(40);
  });

  it("refuses arrays of the wrong length, and a solve without a factor", () => {
    const pattern = analyseSymmetric(2, Int32Array.of(0), Int32Array.of(1));
    const two = Float64Array.of(2, 2);
    expect(() => factorSymmetric(pattern, Float64Array.of(1), Float64Array.of(0))).toThrow(
      new RangeError("factorSymmetric: diagonal has 1 entries; it must have 2"),
    );
    expect(() => factorSymmetric(pattern, two, two)).toThrow(
      new RangeError("factorSymmetric: offDiagonal has 2 entries; it must have 1"),
    );
    const bare = "solveSymmetric: pattern holds no factor; factorSymmetric must have returned ok for it";
    expect(() => solveSymmetric(pattern, two)).toThrow(new RangeError(bare));
    factorSymmetric(pattern, two, Float64Array.of(-1));
    expect(() => solveSymmetric(pattern, Float64Array.of(1))).toThrow(
      new RangeError("solveSymmetric: rightSide has 1 entries; it must have 2"),
    );
    factorSymmetric(pattern, two, Float64Array.of(-5));
    expect(() => solveSymmetric(pattern, two)).toThrow(new RangeError(bare));
  });
});

function denseOf(size: number, pairs: Pairs, diagonal: readonly number[], offDiagonal: Float64Array) {
  const dense = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, j) => (i === j ? diagonal[i]! : 0)),
  );
  for (const [k, [i, j]] of pairs.entries()) {
    dense[i]![j]! += offDiagonal[k]!;
    dense[j]![i]! += offDiagonal[k]!;
  }
  return dense;
}

/** Plain elimination of a full matrix in the order given; "unsure" when a pivot is zero but for rounding. */
function firstBadPivot(dense: number[][], order: readonly number[]): number | undefined | "unsure" {
  for (const [k, p] of order.entries()) {
    const pivot = dense[p]![p]!;
    if (Math.abs(pivot) < 1e-9) return "unsure";
    if (pivot < 0) return p;
    for (const i of order.slice(k + 1)) {
      const factor = dense[i]![p]! / pivot;
      for (const j of order.slice(k + 1)) dense[i]![j]! -= factor * dense[p]![j]!;
    }
  }
  return undefined;
}
