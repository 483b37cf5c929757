import { type QuantityKind, readQuantity } from "@headfall/hydraulics";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import type { KindRules, TypedReading } from "./typed-reading.js";

/**
 * Reads what was typed into a field: a quantity with its unit, a bare number (in the field's own unit), or after an
 * equals sign a sum with units. The part that works out sums is loaded when the first one is typed.
 */
export async function readTyped(text: string, rules: KindRules, system: UnitSystem): Promise<TypedReading> {
  const trimmed = text.trim();
  const unit = rules.bareUnit?.(system);
  if (unit === undefined || !trimmed.startsWith("=")) return rules.read(trimmed, system);
  const { evaluateSum } = await import("./evaluate-sum.js");
  const sum = evaluateSum(trimmed.slice(1), unit, (value) => rules.write(value, system));
  return sum.ok ? rules.read(sum.typed, system) : sum;
}

export function readCount(text: string): TypedReading {
  const value = Number(text);
  if (text !== "" && Number.isInteger(value) && value >= 0) return { ok: true, typed: String(value), value };
  return { ok: false, problem: `"${text}" is not a whole number. Write for instance 6.` };
}

/** A quantity; "70" becomes "70 cm" where that is the bare unit. */
export function readWithUnit(text: string, kind: QuantityKind, bareUnit: string): TypedReading {
  const isBare = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/.test(text);
  const typed = isBare ? `${text.replace(",", ".")} ${bareUnit}` : text;
  const read = readQuantity(typed, kind);
  if (read.ok) return { ok: true, typed, value: read.quantity.si };
  return { ok: false, problem: `Found ${read.found}. ${read.allowed} ${read.mend}` };
}
