import { placeLabels } from "../place-labels.js";
import type { StripRequest } from "./drawing.js";
import { cropped, lengthOfText } from "./printed-text.js";
import { line as lineOf, type Shape } from "./shapes.js";
import { type Station, stationsOf } from "./stations.js";

/** Rows of the band under a strip, each with its words turned upright. */
const ROWS: readonly { readonly title: string; readonly words: (station: Station) => string }[] = [
  { title: "place", words: ({ name }) => name },
  { title: "along the pipe", words: ({ along }) => along },
  { title: "pipe, above ground", words: ({ pipe }) => pipe },
  { title: "drinker, above ground", words: ({ drinker }) => drinker },
];
const LEADERS = 5;
const COLUMN = 4.2;
const SIZE = 2.5;
/** Names longer than the longest row are cropped [mm]. */
const SHORTEST_ROW = 7;
const LONGEST_ROW = 42;

const rowHeights = (stations: readonly Station[]): number[] =>
  ROWS.map(({ words }) => {
    const longest = Math.max(0, ...stations.map((station) => lengthOfText(words(station), SIZE)));
    return Math.min(LONGEST_ROW, Math.max(SHORTEST_ROW, longest + 4));
  });

/** How high the band is for these places [mm]. */
export const bandHeight = (stations: readonly Station[]): number =>
  LEADERS + rowHeights(stations).reduce((sum, height) => sum + height, 0) + 2;

/** The heights to mark, place by place, each under its spot on the drawing. */
export function drawBand(
  { checked, way, system }: StripRequest,
  x: (along: number) => number,
  top: number,
  right: number,
): { shapes: readonly Shape[]; leftOut: number } {
  const stations = stationsOf(checked.line, way, system);
  const columns = placeLabels(
    stations.map(({ at, weight }) => ({ at: x(at), size: COLUMN, weight })),
    x(0) - COLUMN,
    right,
    0,
  );
  const shapes: Shape[] = [];
  let rowTop = top + LEADERS;
  const heights = rowHeights(stations);
  ROWS.forEach(({ title, words }, row) => {
    const height = heights[row]!;
    shapes.push(lineOf("rule", [0, rowTop], [right, rowTop]));
    shapes.push({ kind: "text", x: 0, y: rowTop + 3.4, text: title, size: SIZE });
    stations.forEach((station, i) => {
      const column = columns[i];
      if (column === undefined) return;
      const text = words(station);
      if (text === "") return;
      const at = { x: column + SIZE * 0.35, y: rowTop + height - 1 };
      shapes.push({ kind: "text", ...at, text: cropped(text, SIZE, height - 2), size: SIZE, isTurned: true });
    });
    rowTop += height;
  });
  shapes.push(lineOf("rule", [0, rowTop], [right, rowTop]));
  stations.forEach(({ at }, i) => {
    const column = columns[i];
    if (column !== undefined) shapes.push(lineOf("leader", [x(at), top], [column, top + LEADERS]));
  });
  return { shapes, leftOut: columns.filter((column) => column === undefined).length };
}
