import fc from "fast-check";
import { expect, test } from "vitest";
import {
  applied,
  difference,
  type Expression,
  evaluate,
  inLetters,
  inNumbers,
  PI,
  power,
  product,
  quotient,
  sum,
  term,
  termsOf,
} from "../../../../packages/ui/src/kernels/how-got/expression.js";

const a = term("a", 6, "6 cm");
const b = term("b", 2, "2 cm");

test("inLetters and inNumbers write one structure, the second with this plan's numbers", () => {
  const volume = quotient(product(PI, power(a, 2), b), 4);
  expect(inLetters(volume)).toBe("π × a^2 × b / 4");
  expect(inNumbers(volume)).toBe("π × (6 cm)^2 × 2 cm / 4");
  expect(evaluate(volume)).toBeCloseTo((Math.PI * 36 * 2) / 4, 12);
});

test("inLetters brackets what binds less than what is around it, and nothing else", () => {
  expect(inLetters(difference(a, sum(a, b)))).toBe("a − (a + b)");
  expect(inLetters(sum(difference(a, b), b))).toBe("a − b + b");
  expect(inLetters(quotient(a, product(2, b)))).toBe("a / (2 × b)");
  expect(inLetters(power(quotient(difference(a, b), b), 0.5))).toBe("((a − b) / b)^0.5");
  expect(inLetters(power(power(a, 2), 3))).toBe("(a^2)^3");
  expect(inLetters(applied("√", quotient(a, b)))).toBe("√(a / b)");
  expect(inLetters(applied("min", a, sum(b, 1)))).toBe("min(a, b + 1)");
});

test("inNumbers brackets a negative number where it stands in a sum", () => {
  const below = term("c", -3, "-3 cm");
  expect(inNumbers(difference(a, below))).toBe("6 cm − (-3 cm)");
  expect(evaluate(difference(a, below))).toBe(9);
});

test("termsOf names each number once, in the order of the formula", () => {
  expect(termsOf(quotient(product(b, a), sum(a, 1))).map(({ symbol }) => symbol)).toEqual(["b", "a"]);
});

const leaf = fc
  .integer({ min: 1, max: 9 })
  .map((value): Expression => term(`n${value}`, value, String(value)));
const { expression } = fc.letrec<{ expression: Expression }>((tie) => ({
  expression: fc.oneof(
    { maxDepth: 4 },
    leaf,
    fc.tuple(tie("expression"), tie("expression")).map(([x, y]) => sum(x, y)),
    fc.tuple(tie("expression"), tie("expression")).map(([x, y]) => difference(x, y)),
    fc.tuple(tie("expression"), tie("expression")).map(([x, y]) => product(x, y)),
    fc.tuple(tie("expression"), tie("expression")).map(([x, y]) => quotient(x, y)),
    fc.tuple(tie("expression"), fc.constantFrom(1, 2)).map(([x, y]) => power(x, y)),
  ),
}));

test("inNumbers, read back by another reckoner, comes to what evaluate says", async () => {
  const { evaluate: reckon } = await import("mathjs");
  fc.assert(
    fc.property(expression, (any) => {
      const value = evaluate(any);
      const text = inNumbers(any).replaceAll("×", "*").replaceAll("−", "-");
      const read = Number(reckon(text));
      if (!Number.isFinite(value)) expect(Number.isFinite(read)).toBe(false);
      else expect(Math.abs(read - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
    }),
    { numRuns: 500 },
  );
});
