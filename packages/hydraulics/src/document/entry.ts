import { readQuantity } from "../units/quantity.js";
import { type PathStep, type Problem, writeFound, writePath } from "./problem.js";

/** Parts of a document that may be wrong in any way, looked at with care. */
export type Entry = Readonly<Record<string, unknown>>;
/** Where a check puts what it finds. */
export type Report = (problem: Problem | undefined) => void;

/** A problem of figures that do not fit each other. */
export function fitProblem(
  path: readonly PathStep[],
  value: unknown,
  allowed: string,
  mend: string,
): Problem {
  return { code: "doesNotFit", path: writePath(path), found: writeFound(value), allowed, mend };
}

export const isEntry = (value: unknown): value is Entry =>
  typeof value === "object" && value !== null && !Array.isArray(value);
export const entries = (value: unknown): Entry[] =>
  Array.isArray(value) ? value.map((one: unknown) => (isEntry(one) ? one : {})) : [];
export const lengthOf = (typed: unknown) => siOf(typed, "length");

/** SI of what was typed; undefined where it cannot be read. */
export function siOf(typed: unknown, kind: "length" | "volume" | "temperature"): number | undefined {
  const read = readQuantity(typed, kind);
  return read.ok ? read.quantity.si : undefined;
}
