import type { BuildSheet, CoopSheet } from "../../judge/build/build-sheet.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import { writeMarkLines } from "../time/mark-text.js";
import {
  gatherMarks,
  HOLES_NOTE,
  JUG_NOTE,
  writeBasis,
  writeHole,
  writeJug,
  writePart,
  writePrice,
  writePriceLine,
  writeStep,
} from "./build-words.js";
import { writeBar, writeCutLength, writeCutting } from "./cut-words.js";
import { BUILD_ROUNDS, writeBuildCautions, writeLoadLines } from "./load-words.js";

/** Everything for building a plan, as text for a terminal. */
export function writeBuildText(title: string, sheet: BuildSheet, system: UnitSystem, paint: Paint): string {
  const section = (name: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [`${paint(name, "title")}\n${lines.join("\n")}`];
  const bullets = (lines: readonly string[]) => lines.map((line) => `- ${line}`);
  const sections = [
    paint(`${title === "" ? "This plan" : title}: how to build it`, "title"),
    ...section("Parts", sheet.parts.length === 0 ? [] : [partsTable(sheet), ...writePriceLine(sheet)]),
    ...sheet.pipes.flatMap((pipe) =>
      section(`Cut: ${pipe.name}`, [
        ...writeCutting(pipe, system),
        ...bullets(pipe.bars.map((bar) => writeBar(bar, pipe, system))),
      ]),
    ),
    ...section(
      "Holes and threads",
      sheet.holes.length === 0
        ? []
        : [...bullets(sheet.holes.map((hole) => writeHole(hole, system))), HOLES_NOTE],
    ),
    ...section("Heights to mark", sheet.heights.length === 0 ? [] : [heightsTable(sheet, system)]),
    ...section(
      "In this order",
      sheet.steps.map((step, k) => `${k + 1}. ${writeStep(step, system)}`),
    ),
    ...section(
      "Jug and watch",
      sheet.jugs.length === 0 ? [] : [...bullets(sheet.jugs.map((jug) => writeJug(jug, system))), JUG_NOTE],
    ),
    ...sheet.loads.flatMap((load) =>
      section(`What can hurt: ${load.source}`, bullets(writeLoadLines(load, system))),
    ),
    ...section("To hang in the coop", coopLines(sheet.coop, system)),
    ...section("Cautions", bullets(writeBuildCautions(sheet, system))),
  ];
  return `${sections.join("\n\n")}\n`;
}

function partsTable({ parts, price }: BuildSheet): string {
  const hasPrices = parts.some((part) => part.price !== undefined);
  const cost = (each: number | undefined, count: number) =>
    each === undefined ? "" : writePrice(each * count, price.money);
  return writeTable({
    columns: ["count", "part", ...(hasPrices ? ["price"] : []), "for", "why"],
    alignRight: [true, false, ...(hasPrices ? [true] : []), false, false],
    rows: parts.map((part) => [
      String(part.count),
      writePart(part),
      ...(hasPrices ? [cost(part.price, part.count)] : []),
      few(part.where),
      writeBasis(part),
    ]),
  });
}

const FEW = 4;
const few = (where: readonly string[]): string =>
  where.length <= FEW
    ? where.join(", ")
    : `${where.slice(0, FEW - 1).join(", ")} and ${where.length - FEW + 1} more`;

function heightsTable({ heights }: BuildSheet, system: UnitSystem): string {
  return writeTable({
    columns: ["mark", "above the ground there", "above the ground at the first source"],
    alignRight: [false, true, true],
    rows: gatherMarks(heights).map(({ words, mark }) => [
      words,
      writeCutLength(mark.aboveGround, system),
      writeCutLength(mark.height, system),
    ]),
  });
}

/** The page that hangs in the coop, a line each. */
function coopLines({ marks, heights, contacts }: CoopSheet, system: UnitSystem): string[] {
  return [
    ...marks.flatMap((mark) => writeMarkLines(mark, system).map((line) => `- ${line}`)),
    ...heights.flatMap(({ run, weeks }) => writeHangWeeks(run, weeks, system)),
    ...BUILD_ROUNDS.map(([often, what]) => `- ${often}: ${what.join(" ")}`),
    ...(contacts.length === 0
      ? ["- Whom to call: nobody is named; say `contacts` in the plan."]
      : contacts.map((contact) => `- Call ${writeContact(contact)}`)),
  ];
}

/**
 * Whom to call, in one line.
 *
 * @example writeContact({ who: "Vet", phone: "555 0100" })   // "Vet, 555 0100"
 */
export const writeContact = ({ who, phone, note }: CoopSheet["contacts"][number]): string =>
  [who, phone, note].filter((part) => part !== undefined).join(", ");

function writeHangWeeks(
  run: string,
  weeks: CoopSheet["heights"][number]["weeks"],
  system: UnitSystem,
): string[] {
  return weeks.map(({ week, height, raise, low, high }) => {
    const cut = (metres: number) => writeQuantity(metres, "length", system, 3);
    const at =
      height === undefined ? `${cut(raise)} from where it is now` : `${cut(height)} above the ground`;
    return `- Week ${week}: drinkers of ${run} at ${at} (${cut(low)} to ${cut(high)} suits the birds).`;
  });
}
