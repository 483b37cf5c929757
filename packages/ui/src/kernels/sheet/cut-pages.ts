import type { Drawing } from "./drawing.js";
import { type Box, line, rectangle, type Shape } from "./shapes.js";

/** What two neighbouring pages both show, to be laid upon each other [mm]. */
export const OVERLAP = 10;

/** One page's part of a drawing. */
export interface Tile {
  /** Row by letter, column by number: "B2". */
  readonly name: string;
  readonly row: number;
  readonly column: number;
  /** The part of the drawing, in its own millimetres. */
  readonly part: Box;
}

interface Room {
  readonly width: number;
  readonly height: number;
}

/** Cuts a drawing into parts that each fit a page: a strip is kept whole where it can be, the rest overlaps. */
export function tilesOf(drawing: Omit<Drawing, "shapes" | "notes">, room: Room): Tile[] {
  const rows =
    drawing.strips.length > 0
      ? rowsOfStrips(drawing.strips, room.height)
      : pieces(0, drawing.height, room.height);
  const columns = pieces(0, drawing.width, room.width);
  return rows.flatMap(([top, bottom], row) =>
    columns.map(([left, right], column) => ({
      name: nameOfTile(row, column),
      row,
      column,
      part: { left, right, top, bottom },
    })),
  );
}

/** A stretch in overlapping pieces, each as long as there is room. */
function pieces(from: number, to: number, room: number): [number, number][] {
  // A hundredth of a millimetre is rounding, not a reason for another page.
  if (to - from <= room + 0.01) return [[from, to]];
  const step = room - OVERLAP;
  const count = Math.ceil((to - from - OVERLAP - 0.01) / step);
  return Array.from({ length: count }, (_, i) => [from + i * step, Math.min(to, from + i * step + room)]);
}

/** As many whole strips on a page as it holds; one that is higher than a page is cut by itself. */
function rowsOfStrips(strips: Drawing["strips"], room: number): [number, number][] {
  const rows: [number, number][] = [];
  let current: [number, number] | undefined;
  for (const { top, bottom } of strips) {
    if (current !== undefined && bottom - current[0] <= room) {
      current[1] = bottom;
      continue;
    }
    if (bottom - top > room) {
      rows.push(...pieces(top, bottom, room));
      current = undefined;
    } else {
      current = [top, bottom];
      rows.push(current);
    }
  }
  return rows;
}

function nameOfTile(row: number, column: number): string {
  const letter = String.fromCharCode(65 + (row % 26));
  return `${letter.repeat(1 + Math.floor(row / 26))}${column + 1}`;
}

/** Marks where a page is laid upon its neighbours, and which those are. */
export function overlapMarks(tile: Tile, all: readonly Tile[], window: Box): Shape[] {
  const { row, column, part } = tile;
  const shapes: Shape[] = [];
  const upright = (x: number, name: string) => {
    for (const [from, to] of [
      [window.top, window.top + 6],
      [window.bottom - 6, window.bottom],
    ] as const)
      shapes.push(line("frame", [x, from], [x, to]));
    const isLeft = x < (window.left + window.right) / 2;
    const beside = isLeft ? { x: x + 1 } : { x: x - 1, anchor: "end" as const };
    shapes.push({ kind: "text", ...beside, y: window.top + 4, text: name, size: 2.4, isBold: true });
  };
  const level = (y: number, name: string) => {
    for (const [from, to] of [
      [window.left, window.left + 6],
      [window.right - 6, window.right],
    ] as const)
      shapes.push(line("frame", [from, y], [to, y]));
    shapes.push({ kind: "text", x: window.left + 1, y: y - 1, text: name, size: 2.4, isBold: true });
  };
  const right = window.left + (part.right - part.left);
  const bottom = window.top + (part.bottom - part.top);
  const [before, after] = [at(all, row, column - 1), at(all, row, column + 1)];
  if (before !== undefined) upright(window.left + OVERLAP, `${before.name} to here`);
  if (after !== undefined) upright(right - OVERLAP, `${after.name} from here`);
  const [over, under] = [at(all, row - 1, column), at(all, row + 1, column)];
  if (over !== undefined && over.part.bottom > part.top) level(window.top + OVERLAP, `${over.name} to here`);
  if (under !== undefined && under.part.top < part.bottom) level(bottom - OVERLAP, `${under.name} from here`);
  return shapes.length === 0 ? [] : [rectangle("rule", window), ...shapes];
}

const at = (tiles: readonly Tile[], row: number, column: number): Tile | undefined =>
  tiles.find((tile) => tile.row === row && tile.column === column);
