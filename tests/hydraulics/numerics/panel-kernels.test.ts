import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  factorTriangle,
  solveTriangle,
  subtractRows,
} from "../../../packages/hydraulics/src/numerics/panel-kernels.js";

const number = fc.double({ min: -2, max: 2, noNaN: true });
const listOf = (length: number) => fc.array(number, { minLength: length, maxLength: length });

/** A unit lower triangle L and a diagonal D above zero, every width that meets the blocks of four otherwise. */
const triangles = fc.integer({ min: 1, max: 14 }).chain((width) =>
  fc.record({
    width: fc.constant(width),
    lower: listOf(width * width).map((list) =>
      Array.from({ length: width }, (_, i) =>
        Array.from({ length: width }, (_, j) => (i === j ? 1 : j < i ? list[i * width + j]! : 0)),
      ),
    ),
    diagonal: fc.array(fc.double({ min: 0.5, max: 4, noNaN: true }), { minLength: width, maxLength: width }),
    x: listOf(width),
  }),
);

/** Rows 1 .. width - 1 one after another behind `lead` places, as a panel keeps them; Infinity where none is read. */
function storeRows(rows: readonly (readonly number[])[], lead: number): Float64Array {
  const width = rows.length;
  const stored = new Float64Array(lead + width * (width - 1)).fill(Number.POSITIVE_INFINITY);
  for (let i = 1; i < width; i++) {
    for (let j = 0; j < i; j++) stored[lead + (i - 1) * width + j] = rows[i]![j]!;
  }
  return stored;
}

const product = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, j) => sum + value * b[j]!, 0);

describe("factorTriangle", () => {
  it("finds again the L and D that a triangle was multiplied from", () => {
    fc.assert(
      fc.property(triangles, ({ width, lower, diagonal }) => {
        const scaled = lower.map((row) => row.map((value, j) => value * diagonal[j]!));
        const full = scaled.map((row) => lower.map((other) => product(row, other)));
        const values = storeRows(full, 5);
        const pivots = Float64Array.from([-1, -1, ...full.map((row, i) => row[i]!)]);
        expect(factorTriangle(values, 5, width, pivots, 2)).toBe(-1);
        // What L and D stand for is compared, not L and D: they may be ill-determined, their product is not.
        const found = lower.map((_, i) =>
          lower.map((_, j) => (i === j ? 1 : j < i ? values[5 + (i - 1) * width + j]! : 0)),
        );
        const scale = Math.max(...full.flat().map(Math.abs));
        for (const [i, row] of full.entries()) {
          for (const [j, value] of row.entries()) {
            const again = product(
              found[i]!.map((entry, c) => entry * pivots[2 + c]!),
              found[j]!,
            );
            expect(Math.abs(again - value)).toBeLessThan(1e-10 * scale);
          }
        }
      }),
    );
  });

  it.each([1, 2, 5, 9, 12])("stops at the row of a triangle of %i whose pivot is not above zero", (width) => {
    for (let bad = 0; bad < width; bad++) {
      const values = storeRows(
        Array.from({ length: width }, () => Array<number>(width).fill(0)),
        0,
      );
      const pivots = new Float64Array(width).fill(1);
      pivots[bad] = 0;
      expect(factorTriangle(values, 0, width, pivots, 0)).toBe(bad);
    }
  });
});

describe("factorTriangle, numbers that are none", () => {
  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1])("stops at a pivot of %f", (bad) => {
    const pivots = Float64Array.of(1, 1, bad, 1, 1);
    expect(factorTriangle(new Float64Array(20), 0, 5, pivots, 0)).toBe(2);
  });
});

describe("solveTriangle", () => {
  it("undoes the product of the triangle with a vector, and touches nothing beside it", () => {
    fc.assert(
      fc.property(triangles, ({ width, lower, x }) => {
        const values = storeRows(lower, 3);
        const rows = Int32Array.from({ length: 1 + width }, (_, t) => 2 + t);
        const dense = Float64Array.from([7, 7, ...lower.map((row) => product(row, x)), 7]);
        solveTriangle(values, 3, width, width, rows, 1, dense, 2);
        expect([dense[0], dense[1], dense[2 + width]]).toEqual([7, 7, 7]);
        const again = lower.map((row) => product(row, [...dense.slice(2, 2 + width)]));
        const size = lower.map((row) =>
          product(row.map(Math.abs), [...dense.slice(2, 2 + width)].map(Math.abs)),
        );
        for (const [i, row] of lower.entries()) {
          expect(Math.abs(again[i]! - product(row, x))).toBeLessThan(1e-13 * (1 + size[i]!));
        }
      }),
    );
  });
});

describe("subtractRows", () => {
  it("takes each row's product with the vector from its own place only", () => {
    const cases = fc
      .tuple(fc.integer({ min: 0, max: 11 }), fc.integer({ min: 1, max: 6 }), fc.integer({ min: 0, max: 2 }))
      .chain(([count, length, gap]) =>
        fc.record({
          count: fc.constant(count),
          length: fc.constant(length),
          gap: fc.constant(gap),
          values: listOf(4 + count * (length + gap)),
          x: listOf(length + 2 * count),
        }),
      );
    fc.assert(
      fc.property(cases, ({ count, length, gap, values, x }) => {
        const stride = length + gap;
        const rows = Int32Array.from({ length: count }, (_, t) => length + 2 * t);
        const dense = Float64Array.from(x);
        subtractRows(Float64Array.from(values), 4, stride, length, rows, 0, count, dense, 0);
        const expected = [...x];
        for (const [t, row] of rows.entries()) {
          const stored = values.slice(4 + t * stride, 4 + t * stride + length);
          expected[row]! -= product(stored, x.slice(0, length));
        }
        for (const [i, value] of expected.entries()) expect(dense[i]!).toBeCloseTo(value, 12);
      }),
    );
  });
});
