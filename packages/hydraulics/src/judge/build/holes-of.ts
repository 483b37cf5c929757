import type { Line } from "../../model/line.js";
import { holeById, threadById } from "../../tables/building.js";
import type { HoleToDrill, Part } from "./part-list.js";
import { screwsIntoPipe } from "./parts-of.js";

/** Rows of the table of holes by size of pipe; metric pipe goes with the nearest inch fitting. */
const BULKHEADS: Readonly<Record<string, string>> = {
  "3/8 in": "bulkhead-1/2",
  "1/2 in": "bulkhead-1/2",
  "3/4 in": "bulkhead-3/4",
  "1 in": "bulkhead-1",
  "16 mm": "bulkhead-1/2",
  "20 mm": "bulkhead-1/2",
  "25 mm": "bulkhead-3/4",
  "32 mm": "bulkhead-1",
};

/** What is drilled: outlets of vessels, and a hole for each drinker that screws into its pipe. */
export function holesOf(line: Line, parts: readonly Part[]): HoleToDrill[] {
  const outlets = parts.flatMap(({ kind, size, count, where }) => {
    const row = kind === "bulkhead" && size !== undefined ? BULKHEADS[size] : undefined;
    return row === undefined ? [] : [{ row, count, where }];
  });
  const nipples = line.drinkers.groups
    .filter(({ kindId }) => screwsIntoPipe(kindId))
    .map(({ count, run }) => ({ row: "screw-nipple", count, where: [line.runs[run].id] }));
  const rows = new Map<string, { count: number; where: string[] }>();
  for (const { row, count, where } of [...outlets, ...nipples]) {
    const before = rows.get(row) ?? { count: 0, where: [] };
    rows.set(row, { count: before.count + count, where: [...new Set([...before.where, ...where])] });
  }
  return [...rows].flatMap(([row, { count, where }]) => {
    const hole = holeById(row);
    return hole === undefined ? [] : [{ hole, thread: threadById(hole.thread), count, where }];
  });
}
