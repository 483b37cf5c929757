import { readQuantity } from "@headfall/hydraulics";
import { bareLengthUnit, type UnitSystem } from "../kernels/typed-quantity.js";
import type { FieldKind } from "./field-kinds.js";
import type { TypedReading } from "./typed-reading.js";

/**
 * Reads what was typed into a field: a quantity with its unit, a bare number (in the field's own unit), or after an
 * equals sign a sum with units. The part that works out sums is loaded when the first one is typed.
 */
export async function readTyped(text: string, kind: FieldKind, system: UnitSystem): Promise<TypedReading> {
  const trimmed = text.trim();
  if (kind === "count") return readCount(trimmed);
  if (!trimmed.startsWith("=")) return readLength(withUnit(trimmed, system));
  const { evaluateLength } = await import("./evaluate-length.js");
  const sum = evaluateLength(trimmed.slice(1), system);
  return sum.ok ? readLength(sum.typed) : sum;
}

function readCount(text: string): TypedReading {
  const value = Number(text);
  if (text !== "" && Number.isInteger(value) && value >= 0) return { ok: true, typed: String(value), value };
  return { ok: false, problem: `"${text}" is not a whole number. Write for instance 6.` };
}

function readLength(typed: string): TypedReading {
  const read = readQuantity(typed, "length");
  if (read.ok) return { ok: true, typed, value: read.quantity.si };
  return { ok: false, problem: `Found ${read.found}. ${read.allowed} ${read.mend}` };
}

/** "70" becomes "70 cm" or "70 in". */
function withUnit(text: string, system: UnitSystem): string {
  return /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/.test(text)
    ? `${text.replace(",", ".")} ${bareLengthUnit(system)}`
    : text;
}
