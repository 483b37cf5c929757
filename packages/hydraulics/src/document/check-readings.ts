import { fitDrinkerLaw } from "../physics/measured-drinker.js";
import { readQuantity } from "../units/quantity.js";
import { type PathStep, type Problem, writeFound, writePath } from "./problem.js";

/** Exponents beyond these are no drinker but a slip of the jug, the watch or the pen. */
const SANE_EXPONENT = { least: 0.2, greatest: 2 } as const;

/** A reading as numbers, beside what was typed. */
interface Reading {
  readonly at: number;
  readonly typed: Readonly<Record<string, unknown>>;
  readonly head: number;
  readonly flow: number;
}

/**
 * Whether readings of an own drinker can be a drinker's law: heads apart and above the opening head, more flow at
 * more head, and an exponent that nature has. What cannot be read is told elsewhere.
 */
export function checkReadings(own: Readonly<Record<string, unknown>>, path: readonly PathStep[]): Problem[] {
  const openingHead = own["opensAt"] === undefined ? 0 : siOf(own["opensAt"], "head");
  if (!Array.isArray(own["readings"]) || own["readings"].length < 2) return [];
  if (openingHead === undefined || openingHead < 0) return [];
  const all = [...path, "readings"];
  const readings: Reading[] = [];
  for (const [at, given] of own["readings"].entries()) {
    const reading = readReading(given, at);
    if (reading === undefined) return [];
    if (reading.head <= openingHead) return [tooLow(reading, all)];
    readings.push(reading);
  }
  readings.sort((a, b) => a.head - b.head || a.flow - b.flow);
  const fallen = readings.find(
    ({ head, flow }, k) => k > 0 && flow < readings[k - 1].flow && head > readings[k - 1].head,
  );
  if (fallen !== undefined) return [lessAtMore(fallen, all)];
  const fault = faultOfLaw(readings, openingHead);
  return fault === undefined ? [] : [problem({ path: writePath(all), found: own["readings"], ...fault })];
}

function readReading(given: unknown, at: number): Reading | undefined {
  const typed = typeof given === "object" && given !== null ? (given as Record<string, unknown>) : {};
  const [head, flow] = [siOf(typed["head"], "head"), siOf(typed["flow"], "flow")];
  if (head === undefined || flow === undefined || head <= 0 || flow <= 0) return undefined;
  return { at, typed, head, flow };
}

const tooLow = ({ at, typed }: Reading, path: readonly PathStep[]) =>
  problem({
    path: writePath([...path, at, "head"]),
    found: typed["head"],
    allowed: "A reading is taken above the head that opens the drinker.",
    mend: "Leave it out, or correct opensAt.",
  });

const lessAtMore = ({ at, typed }: Reading, path: readonly PathStep[]) =>
  problem({
    path: writePath([...path, at, "flow"]),
    found: typed["flow"],
    allowed: "At more head a drinker gives more.",
    mend: "Measure that one again.",
  });

/** What no law of a drinker could have given, of readings from the lowest head up. */
function faultOfLaw(
  readings: readonly Reading[],
  openingHead: number,
): Pick<Problem, "allowed" | "mend"> | undefined {
  const { least, greatest } = SANE_EXPONENT;
  if (readings[0].head === readings[readings.length - 1].head)
    return {
      allowed: "At least two readings at different heads.",
      mend: "Measure again with the water higher or lower.",
    };
  const { exponent } = fitDrinkerLaw(readings, { openingHead }).law;
  if (exponent >= least && exponent <= greatest) return undefined;
  return {
    allowed: `Flow grows as head to the power ${least} to ${greatest}; these give ${exponent.toFixed(2)}.`,
    mend: "Measure again, with more time in the jug.",
  };
}

const problem = ({
  found,
  ...more
}: Pick<Problem, "path" | "allowed" | "mend"> & { readonly found: unknown }): Problem => ({
  code: "doesNotFit",
  found: writeFound(found),
  ...more,
});

function siOf(typed: unknown, kind: "head" | "flow"): number | undefined {
  const read = readQuantity(typed, kind);
  return read.ok ? read.quantity.si : undefined;
}
