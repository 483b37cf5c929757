import fc from "fast-check";
import { lusolve } from "mathjs";
import { describe, expect, it } from "vitest";
import {
  analyseSymmetric,
  factorSymmetric,
  solveSymmetric,
} from "../../packages/hydraulics/src/numerics/symmetric-solve.js";
import { dominantSystem, type SymmetricSystem } from "../arbitraries/symmetric-system.js";

/** The same system solved as a full matrix, with row exchanges, by mathjs. */
function solveDense({ size, rows, columns, diagonal, offDiagonal, rightSide }: SymmetricSystem): number[] {
  const dense = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, j) => (i === j ? diagonal[i]! : 0)),
  );
  for (const [k, a] of offDiagonal.entries()) {
    dense[rows[k]!]![columns[k]!]! += a;
    dense[columns[k]!]![rows[k]!]! += a;
  }
  return (lusolve(dense, [...rightSide]) as number[][]).map(([x]) => x!);
}

describe("solveSymmetric against mathjs lusolve", () => {
  it("agrees to ten digits on random positive definite systems of up to 24 unknowns", () => {
    fc.assert(
      fc.property(
        dominantSystem.filter(({ size }) => size > 0),
        (system) => {
          const pattern = analyseSymmetric(system.size, system.rows, system.columns);
          expect(factorSymmetric(pattern, system.diagonal, system.offDiagonal)).toEqual({ ok: true });
          const x = system.rightSide.slice();
          solveSymmetric(pattern, x);
          const expected = solveDense(system);
          const scale = Math.max(1e-300, ...expected.map(Math.abs));
          for (const [v, value] of expected.entries()) {
            expect(Math.abs(x[v]! - value)).toBeLessThan(1e-10 * scale);
          }
        },
      ),
      { numRuns: 200 },
    );
  });
});
