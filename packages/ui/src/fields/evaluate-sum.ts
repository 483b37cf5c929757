import {
  create,
  divideDependencies,
  evaluateDependencies,
  formatDependencies,
  subtractDependencies,
  unaryMinusDependencies,
  unitDependencies,
} from "mathjs";
import type { TypedReading } from "./typed-reading.js";

const math = create({
  divideDependencies,
  evaluateDependencies,
  formatDependencies,
  subtractDependencies,
  unaryMinusDependencies,
  unitDependencies,
});

interface MathUnit {
  toNumber(unit: string): number;
  equalBase(other: unknown): boolean;
}

/** Units by what a bare one is of: the SI unit a sum must come out in, and what it is called. */
const KINDS = [
  { of: ["cm", "m", "mm", "in", "ft"], si: "m", word: "length", instance: "=3*24 cm or =2 ft + 6 in" },
  { of: ["mL/min", "fl oz/min"], si: "m^3/s", word: "flow", instance: "=2 L / (5 min)" },
  { of: ["L", "gal"], si: "m^3", word: "volume", instance: "=3*20 L" },
  { of: ["°C", "°F"], si: "degC", word: "temperature", instance: "=(8+12)/2" },
] as const;

/** Units as the part that reckons calls them. */
const spelt = (text: string) => text.replaceAll("fl oz", "floz").replace(/° ?(?=[CF])/g, "deg");

/**
 * Works out a sum of quantities, such as "3*24 cm", "2 ft + 30 cm" or "3*8" (in the field's own unit). Loaded only
 * when somebody types one.
 *
 * @param sum       what stands after the equals sign
 * @param bareUnit  unit of a result that is a mere number; it also says what kind of quantity is wanted
 * @param write     writes a value in SI as the text to keep
 */
export function evaluateSum(sum: string, bareUnit: string, write: (value: number) => string): TypedReading {
  const kind = KINDS.find(({ of }) => (of as readonly string[]).includes(bareUnit)) ?? KINDS[0];
  try {
    const value = siOf(math.evaluate!(spelt(sum)), spelt(bareUnit), kind.si);
    if (value !== undefined && Number.isFinite(value)) return { ok: true, typed: write(value), value };
  } catch {
    // Told below, in words of the field.
  }
  return {
    ok: false,
    problem: `"=${sum}" does not come out as a ${kind.word}. Write for instance ${kind.instance}.`,
  };
}

function siOf(result: unknown, bareUnit: string, si: string): number | undefined {
  if (typeof result === "number") return Number(math.unit!(result, bareUnit).toNumber(si));
  return isUnit(result) && result.equalBase(math.unit!(1, si)) ? result.toNumber(si) : undefined;
}

const isUnit = (value: unknown): value is MathUnit =>
  typeof value === "object" && value !== null && "equalBase" in value && "toNumber" in value;
