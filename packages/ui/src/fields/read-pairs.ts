import type { UnitSystem } from "../kernels/typed-quantity.js";
import { type FieldKind, TEXT_KINDS } from "./text-kinds.js";

/** Two quantities read off one line, as typed and in SI. */
export interface TypedPair {
  readonly first: { readonly typed: string; readonly value: number };
  readonly second: { readonly typed: string; readonly value: number };
}

export type PairsReading =
  | { readonly ok: true; readonly pairs: readonly TypedPair[] }
  | { readonly ok: false; readonly problem: string };

/** Lines read at most: what a survey may hold. */
const MOST_PAIRS = 1000;

/**
 * Reads pairs of quantities, one pair a line: "2 m, 15 cm", "2 m; 15 cm", or two columns of a spreadsheet (a tab
 * between). Bare numbers take the unit of their kind. Empty lines, and a first line of headings, are passed over.
 */
export function readPairs(
  text: string,
  kinds: readonly [FieldKind, FieldKind],
  system: UnitSystem,
): PairsReading {
  const lines = text.split(/\r?\n/).map((line) => line.trim());
  const filled = lines.filter((line, index) => line !== "" && !(index === 0 && !/\d/.test(line)));
  if (filled.length === 0) return { ok: false, problem: "Nothing is written here yet." };
  if (filled.length > MOST_PAIRS) return { ok: false, problem: `At most ${MOST_PAIRS} pairs.` };
  const pairs: TypedPair[] = [];
  for (const line of filled) {
    const read = readPair(line, kinds, system);
    if (typeof read === "string") return { ok: false, problem: read };
    pairs.push(read);
  }
  return { ok: true, pairs };
}

function readPair(
  line: string,
  kinds: readonly [FieldKind, FieldKind],
  system: UnitSystem,
): TypedPair | string {
  const parts = partsOf(line);
  if (parts.length !== 2) return `"${line}": one pair a line, with a comma or a tab between.`;
  const [first, second] = parts.map((part, i) => TEXT_KINDS[kinds[i]!].read(part, system));
  if (!first!.ok) return `"${line}": ${first!.problem}`;
  if (!second!.ok) return `"${line}": ${second!.problem}`;
  return { first: first!, second: second! };
}

/** A tab parts before a semicolon, that before a comma; a comma between figures may be a decimal comma. */
function partsOf(line: string): string[] {
  for (const mark of [/\t+/, /;/, /,(?=\s)/, /,/]) {
    const parts = line.split(mark).map((part) => part.trim());
    if (parts.length === 2) return parts;
    if (parts.length > 2) break;
  }
  return [line];
}
