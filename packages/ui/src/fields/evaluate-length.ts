import { create, evaluateDependencies, formatDependencies, unitDependencies } from "mathjs";
import { bareLengthUnit, typedLength, type UnitSystem } from "../kernels/typed-quantity.js";
import type { TypedReading } from "./typed-reading.js";

const math = create({ evaluateDependencies, unitDependencies, formatDependencies });

/**
 * Works out a sum of lengths, such as "3*24 cm", "2 ft + 30 cm" or "3*8" (in the field's own unit). Loaded only when
 * somebody types one.
 *
 * @param sum     what stands after the equals sign
 * @param system  units the result is written in
 */
export function evaluateLength(sum: string, system: UnitSystem): TypedReading {
  try {
    const length = lengthOf(math.evaluate!(sum), system);
    if (length === undefined || !Number.isFinite(length)) return fault(sum);
    return { ok: true, typed: typedLength(length, system), value: length };
  } catch {
    return fault(sum);
  }
}

function lengthOf(result: unknown, system: UnitSystem): number | undefined {
  if (typeof result === "number") return Number(math.unit!(result, bareLengthUnit(system)).toNumber("m"));
  if (isUnit(result) && result.equalBase(math.unit!("m"))) return result.toNumber("m");
  return undefined;
}

function isUnit(
  value: unknown,
): value is { toNumber(unit: string): number; equalBase(other: unknown): boolean } {
  return typeof value === "object" && value !== null && "equalBase" in value && "toNumber" in value;
}

const fault = (sum: string): TypedReading => ({
  ok: false,
  problem: `"=${sum}" does not come out as a length. Write for instance =3*24 cm or =2 ft + 6 in.`,
});
