import { MISHAP_KINDS, type MishapKind, type MishapRow } from "@headfall/hydraulics";

/** What mishaps of some kinds come to, for choosing among them. */
export type MishapFamily = "runsOut" | "nothingComes" | "noAir" | "tooMuch" | "notFilled" | "moreDrunk";

/** Of every kind, what it comes to. */
export const FAMILY_OF: Readonly<Record<MishapKind, MishapFamily>> = {
  ventBlocked: "noAir",
  lidOff: "noAir",
  drinkerStuckOpen: "runsOut",
  drinkerBlocked: "nothingComes",
  floatStuckDown: "runsOut",
  floatStuckUp: "nothingComes",
  cupTipped: "runsOut",
  jointApart: "runsOut",
  runBlocked: "nothingComes",
  tapLeftShut: "nothingComes",
  tapLeftOpen: "tooMuch",
  regulatorGone: "tooMuch",
  regulatorShut: "nothingComes",
  oneWayOpen: "tooMuch",
  oneWayShut: "nothingComes",
  feedStuckDown: "runsOut",
  feedStuckUp: "notFilled",
  refillMissed: "notFilled",
  hoseOff: "notFilled",
  moreBirds: "moreDrunk",
  hottestWeek: "moreDrunk",
};

export const FAMILY_WORDS: Readonly<Record<MishapFamily, string>> = {
  runsOut: "Water runs out",
  nothingComes: "Nothing comes",
  noAir: "Air: a vent or a lid",
  tooMuch: "Something lets too much through",
  notFilled: "Not filled",
  moreDrunk: "More is drunk",
};

const familyOfRow = ({ worst }: MishapRow): MishapFamily => FAMILY_OF[worst.mishap.kind];

/** The families that a plan's mishaps belong to, in the order in which kinds are told, with how many rows each has. */
export function familiesOf(
  rows: readonly MishapRow[],
): readonly { readonly family: MishapFamily; readonly rows: number }[] {
  return [...new Set(MISHAP_KINDS.map((kind) => FAMILY_OF[kind]))].flatMap((family) => {
    const count = rows.filter((row) => familyOfRow(row) === family).length;
    return count === 0 ? [] : [{ family, rows: count }];
  });
}

/** Rows of one family, or all, each with its place among all: the worst is the first. */
export function rowsOfFamily(
  rows: readonly MishapRow[],
  family: MishapFamily | undefined,
): readonly { readonly row: MishapRow; readonly at: number }[] {
  return rows
    .map((row, at) => ({ row, at }))
    .filter(({ row }) => family === undefined || familyOfRow(row) === family);
}
