import type { HowSubject } from "./subject.js";

/**
 * A formula as it is built: written in letters, written with this plan's numbers in it, and worked out, all three
 * from the one structure, so that what is shown is what was reckoned.
 */
export type Expression =
  | Term
  | { readonly kind: "constant"; readonly value: number; readonly text: string }
  | { readonly kind: "sum"; readonly parts: readonly Expression[] }
  | { readonly kind: "difference"; readonly parts: readonly Expression[] }
  | { readonly kind: "product"; readonly parts: readonly Expression[] }
  | { readonly kind: "quotient"; readonly parts: readonly [Expression, Expression] }
  | { readonly kind: "power"; readonly parts: readonly [Expression, Expression] }
  | { readonly kind: "applied"; readonly name: FunctionName; readonly parts: readonly Expression[] };

/** A number of this plan: its name in the formula, its value in the units the formula reckons in, and as it is shown. */
export interface Term {
  readonly kind: "term";
  readonly symbol: string;
  readonly value: number;
  readonly text: string;
  /** How this number was got in its turn. */
  readonly from?: HowSubject;
}

type FunctionName = "min" | "max" | "√" | "sin" | "arcsin";
const FUNCTIONS: Readonly<Record<FunctionName, (...values: number[]) => number>> = {
  min: Math.min,
  max: Math.max,
  "√": Math.sqrt,
  sin: Math.sin,
  arcsin: Math.asin,
};

export const term = (symbol: string, value: number, text: string, from?: HowSubject): Term => ({
  kind: "term",
  symbol,
  value,
  text,
  ...(from === undefined ? {} : { from }),
});
/** A number that stands in the law itself. */
export const constant = (value: number, text = String(value)): Expression => ({
  kind: "constant",
  value,
  text,
});
export const PI = constant(Math.PI, "π");

type Operand = Expression | number;
const operand = (part: Operand): Expression => (typeof part === "number" ? constant(part) : part);
const operands = (parts: readonly Operand[]): Expression[] => parts.map(operand);

export const sum = (...parts: Operand[]): Expression => ({ kind: "sum", parts: operands(parts) });
export const difference = (...parts: Operand[]): Expression => ({
  kind: "difference",
  parts: operands(parts),
});
export const product = (...parts: Operand[]): Expression => ({ kind: "product", parts: operands(parts) });
export const quotient = (over: Operand, under: Operand): Expression => ({
  kind: "quotient",
  parts: [operand(over), operand(under)],
});
export const power = (base: Operand, exponent: Operand): Expression => ({
  kind: "power",
  parts: [operand(base), operand(exponent)],
});
export const applied = (name: FunctionName, ...parts: Operand[]): Expression => ({
  kind: "applied",
  name,
  parts: operands(parts),
});

/** The value of an expression. */
export function evaluate(expression: Expression): number {
  if (expression.kind === "term" || expression.kind === "constant") return expression.value;
  const values = expression.parts.map(evaluate);
  switch (expression.kind) {
    case "sum":
      return values.reduce((all, value) => all + value, 0);
    case "difference":
      return values.slice(1).reduce((left, value) => left - value, values[0]!);
    case "product":
      return values.reduce((all, value) => all * value, 1);
    case "quotient":
      return values[0]! / values[1]!;
    case "power":
      return values[0]! ** values[1]!;
    case "applied":
      return FUNCTIONS[expression.name](...values);
  }
}

/** The numbers of this plan in an expression, in order, each once. */
export function termsOf(expression: Expression): readonly Term[] {
  if (expression.kind === "term") return [expression];
  if (expression.kind === "constant") return [];
  const terms = expression.parts.flatMap(termsOf);
  return terms.filter((one, at) => terms.findIndex(({ symbol }) => symbol === one.symbol) === at);
}

/** The formula in letters. */
export const inLetters = (expression: Expression): string => write(expression, ({ symbol }) => symbol, 0);

/** The formula with this plan's numbers in it. */
export const inNumbers = (expression: Expression): string => write(expression, ({ text }) => text, 0);

/** How tightly each kind binds: what binds less than what is around it stands in brackets. */
const BINDING = {
  sum: 1,
  difference: 1,
  product: 2,
  quotient: 2,
  power: 3,
  applied: 5,
  term: 5,
  constant: 5,
} as const;
const SIGNS = { sum: " + ", difference: " − ", product: " × ", quotient: " / ", power: "^" } as const;

function write(expression: Expression, name: (term: Term) => string, around: number): string {
  if (expression.kind === "constant") return expression.text;
  if (expression.kind === "term") return writeTerm(name(expression), around);
  if (expression.kind === "applied")
    return `${expression.name}(${expression.parts.map((part) => write(part, name, 0)).join(", ")})`;
  const binding = BINDING[expression.kind];
  const isOneSided = expression.kind !== "sum" && expression.kind !== "product";
  const text = expression.parts
    .map((part, at) =>
      write(part, name, binding + (expression.kind === "power" || (isOneSided && at > 0) ? 0.5 : 0)),
    )
    .join(SIGNS[expression.kind]);
  return binding < around ? `(${text})` : text;
}

/** A negative number, or one with a unit under a power, is bracketed; so are several words where they are multiplied. */
function writeTerm(text: string, around: number): string {
  const isNegative = /^[-−]/.test(text);
  const isWide = / /.test(text);
  return (isNegative && around > 0) || (isWide && around > BINDING.power) ? `(${text})` : text;
}
