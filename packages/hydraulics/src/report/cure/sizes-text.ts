import type { SizeComparison, SizeRow } from "../../search/compare-sizes.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeQuantity } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import { writeFlow, writeHead, writeVelocity, writeVolume } from "../words.js";

/** A comparison of sizes as text for a terminal; the smallest that works is marked. */
export function writeSizesText(comparison: SizeComparison, system: UnitSystem, paint: Paint): string {
  const hasCost = comparison.rows.some((row) => row.cost !== undefined);
  const table = writeTable({
    columns: [
      "",
      "pipe",
      "bore",
      "head, at the worst",
      "flow, at the worst",
      "velocity",
      "regime",
      "stands, in it",
      ...(hasCost ? ["cost"] : []),
      "verdict",
    ],
    alignRight: [false, false, true, true, true, true, false, true, ...(hasCost ? [true] : []), false],
    rows: comparison.rows.map((row) => [
      markOf(comparison, row),
      row.pipe,
      writeQuantity(row.bore, "length", system),
      ...worstCells(row, system),
      writeVelocity(row.busiest.velocity, system),
      row.busiest.regime,
      writeVolume(row.volume, system),
      ...(hasCost ? [costOf(row, comparison)] : []),
      paint(verdictOf(row), row.verdict),
    ]),
  });
  const runs =
    comparison.runs.length === 1 ? `in ${comparison.runs[0]}` : `in all of ${comparison.runs.join(", ")}`;
  return `${paint(`Each size ${runs}`, "title")}\n${table}\n\n${conclusion(comparison)}\n${paint("Head and flow at the worst drinker, lowest usable and busiest, the lower of the two friction laws; * smallest that works, > the pipe of the plan.", "quiet")}\n`;
}

function markOf(comparison: SizeComparison, row: SizeRow): string {
  return `${row.pipe === comparison.smallestThatWorks ? "*" : " "}${row.isPresent ? ">" : " "}`;
}

function worstCells(row: SizeRow, system: UnitSystem): [string, string] {
  if (row.worst === undefined) return ["", ""];
  const { hazenWilliams, darcyWeisbach } = row.worst.moments.lowestBusiest;
  const lower = darcyWeisbach.flow <= hazenWilliams.flow ? darcyWeisbach : hazenWilliams;
  return [writeHead(lower.flowingHead, system), writeFlow(lower.flow, system)];
}

function costOf(row: SizeRow, comparison: SizeComparison): string {
  return row.cost === undefined
    ? "?"
    : `${row.cost.toFixed(2)}${comparison.money === undefined ? "" : ` ${comparison.money}`}`;
}

function verdictOf(row: SizeRow): string {
  const { counts } = row;
  const parts = (["dry", "starves", "drips"] as const)
    .filter((name) => counts[name] > 0)
    .map((name) => `${counts[name]} ${name}`);
  return parts.length === 0 ? "all good" : parts.join(", ");
}

function conclusion(comparison: SizeComparison): string {
  if (comparison.smallestThatWorks !== undefined)
    return `The smallest that works is ${comparison.smallestThatWorks}.`;
  if (comparison.smallestThatFeeds !== undefined) {
    return `No size makes every drinker good: some drip, which pipe does not cure. The smallest that starves none is ${comparison.smallestThatFeeds}.`;
  }
  return "No size on the shelf feeds every drinker: level or air decides here, not pipe. Raise the source, or lower the drinkers.";
}
