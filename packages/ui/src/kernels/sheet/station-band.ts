import { placeLabels } from "../place-labels.js";
import type { StripRequest } from "./drawing.js";
import { writeMark } from "./part-words.js";
import { cropped } from "./printed-text.js";
import { line as lineOf, type Shape } from "./shapes.js";
import { type Station, stationsOf } from "./stations.js";

/** Rows of the band under a strip, each with words turned upright; height in mm. */
const ROWS = [
  { title: "place", height: 30, words: ({ name }: Station) => name },
  { title: "along the pipe", height: 15, words: undefined },
  { title: "pipe, above ground", height: 15, words: ({ pipe }: Station) => pipe },
  { title: "drinker, above ground", height: 15, words: ({ drinker }: Station) => drinker },
] as const;
const LEADERS = 5;
const COLUMN = 4.2;
const SIZE = 2.5;

export const BAND_HEIGHT = LEADERS + ROWS.reduce((sum, { height }) => sum + height, 0) + 3;

/** The heights to mark, place by place, each under its spot on the drawing. */
export function drawBand(
  { checked, way, system }: StripRequest,
  x: (along: number) => number,
  top: number,
  right: number,
): { shapes: readonly Shape[]; leftOut: number } {
  const stations = stationsOf(checked.line, way, system);
  const columns = placeLabels(
    stations.map(({ along, weight }) => ({ at: x(along), size: COLUMN, weight })),
    x(0) - COLUMN,
    right,
    0,
  );
  const shapes: Shape[] = [];
  let rowTop = top + LEADERS;
  for (const { title, height, words } of ROWS) {
    shapes.push(lineOf("rule", [0, rowTop], [right, rowTop]));
    shapes.push({ kind: "text", x: 0, y: rowTop + 3.4, text: title, size: SIZE });
    stations.forEach((station, i) => {
      const column = columns[i];
      if (column === undefined) return;
      const text = words === undefined ? writeMark(station.along, system) : words(station);
      if (text === "") return;
      const at = { x: column + SIZE * 0.35, y: rowTop + height - 1 };
      shapes.push({ kind: "text", ...at, text: cropped(text, SIZE, height - 2), size: SIZE, isTurned: true });
    });
    rowTop += height;
  }
  shapes.push(lineOf("rule", [0, rowTop], [right, rowTop]));
  stations.forEach(({ along }, i) => {
    const column = columns[i];
    if (column !== undefined) shapes.push(lineOf("leader", [x(along), top], [column, top + LEADERS]));
  });
  return { shapes, leftOut: columns.filter((column) => column === undefined).length };
}
