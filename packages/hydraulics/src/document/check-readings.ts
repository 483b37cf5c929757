import { fitDrinkerLaw } from "../physics/measured-drinker.js";
import { readQuantity } from "../units/quantity.js";
import { type PathStep, type Problem, writeFound, writePath } from "./problem.js";

/** Exponents beyond these are no drinker but a slip of the jug, the watch or the pen. */
const SANE_EXPONENT = { least: 0.2, greatest: 2 } as const;

/**
 * Whether readings of an own drinker can be a drinker's law: heads apart and above the opening head, more flow at
 * more head, and an exponent that nature has.
 */
export function checkReadings(own: Readonly<Record<string, unknown>>, path: readonly PathStep[]): Problem[] {
  const openingHead = own["opensAt"] === undefined ? 0 : siOf(own["opensAt"], "head");
  if (!Array.isArray(own["readings"]) || own["readings"].length < 2) return [];
  if (openingHead === undefined || openingHead < 0) return [];
  const readings = own["readings"].map((reading: unknown, i) => {
    const entry = typeof reading === "object" && reading !== null ? (reading as Record<string, unknown>) : {};
    return { i, head: siOf(entry["head"], "head"), flow: siOf(entry["flow"], "flow"), typed: entry };
  });
  const at = (i: number, key: string) => writePath([...path, "readings", i, key]);
  for (const { i, head, flow, typed } of readings) {
    if (head === undefined || flow === undefined || head <= 0 || flow <= 0) return [];
    if (head <= openingHead)
      return [
        problem(
          at(i, "head"),
          typed["head"],
          "A reading is taken above the head that opens the drinker.",
          "Leave it out, or correct opensAt.",
        ),
      ];
  }
  const rising = readings
    .map(({ i, head, flow }) => ({ i, head: head ?? 0, flow: flow ?? 0 }))
    .sort((a, b) => a.head - b.head || a.flow - b.flow);
  for (let k = 1; k < rising.length; k += 1) {
    const typed = readings[rising[k].i].typed;
    if (rising[k].flow < rising[k - 1].flow && rising[k].head > rising[k - 1].head) {
      return [
        problem(
          at(rising[k].i, "flow"),
          typed["flow"],
          "At more head a drinker gives more.",
          "Measure that one again.",
        ),
      ];
    }
  }
  if (rising[0].head === rising[rising.length - 1].head) {
    return [
      problem(
        writePath([...path, "readings"]),
        own["readings"],
        "At least two readings at different heads.",
        "Measure again with the water higher or lower.",
      ),
    ];
  }
  const { exponent } = fitDrinkerLaw(rising, { openingHead }).law;
  if (exponent >= SANE_EXPONENT.least && exponent <= SANE_EXPONENT.greatest) return [];
  return [
    problem(
      writePath([...path, "readings"]),
      own["readings"],
      `Flow grows as head to the power ${SANE_EXPONENT.least} to ${SANE_EXPONENT.greatest}; these give ${exponent.toFixed(2)}.`,
      "Measure again, with more time in the jug.",
    ),
  ];
}

const problem = (path: string, found: unknown, allowed: string, mend: string): Problem => ({
  code: "doesNotFit",
  path,
  found: writeFound(found),
  allowed,
  mend,
});

function siOf(typed: unknown, kind: "head" | "flow"): number | undefined {
  const read = readQuantity(typed, kind);
  return read.ok ? read.quantity.si : undefined;
}
