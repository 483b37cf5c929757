import type { Pixel } from "./viewport.js";

/** A rectangle on the drawing [px]. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** One way of writing a label: its lines, and the middles it may stand at, best first. */
export interface TextForm {
  readonly lines: readonly string[];
  readonly middles: readonly Pixel[];
}

/** A label with its forms, fullest first. A heavier one is placed first and is the last to be left out. */
export interface WantedText {
  readonly id: string;
  readonly weight: number;
  readonly forms: readonly TextForm[];
}

export interface PlacedText {
  readonly id: string;
  readonly lines: readonly string[];
  readonly at: Pixel;
  readonly box: Box;
}

/** Width of one character, on the wide side, and height of one line [px]. */
export const LETTER = 7.2;
export const LINE = 15;
const GAP = 3;

/** Width and height that lines of text take [px]. */
export function sizeOfText(lines: readonly string[]): { readonly width: number; readonly height: number } {
  return {
    width: Math.max(...lines.map((line) => [...line].length)) * LETTER,
    height: lines.length * LINE,
  };
}

/**
 * Places labels so that none lies on another or on what must stay visible, each in its fullest form that finds room;
 * those that find none are left out, the lightest first.
 *
 * @param wanted   labels, in any order
 * @param covered  what no label may lie on
 * @param within   the drawing's rectangle; labels that stick out are left out
 */
export function placeTexts(
  wanted: readonly WantedText[],
  covered: readonly Box[],
  within: Box,
): readonly PlacedText[] {
  const taken = new Crowd(covered);
  const placed: PlacedText[] = [];
  const byWeight = wanted.map((label, order) => ({ label, order }));
  byWeight.sort((a, b) => b.label.weight - a.label.weight || a.order - b.order);
  for (const { label } of byWeight) {
    const found = firstRoom(label, taken, within);
    if (found === undefined) continue;
    placed.push(found);
    taken.add(grown(found.box, GAP));
  }
  return placed;
}

function firstRoom({ id, forms }: WantedText, taken: Crowd, within: Box): PlacedText | undefined {
  for (const { lines, middles } of forms) {
    const size = sizeOfText(lines);
    for (const at of middles) {
      const box = boxAround(at, size.width, size.height);
      if (isInside(box, within) && !taken.meets(box)) return { id, lines, at, box };
    }
  }
  return undefined;
}

/** Side of the cells that boxes are looked up by [px]. */
const CELL = 48;

/** Boxes that are taken, by the cells they touch, so that a label asks its neighbours only. */
class Crowd {
  readonly #cells = new Map<string, Box[]>();

  constructor(boxes: readonly Box[]) {
    for (const box of boxes) this.add(box);
  }

  add(box: Box): void {
    for (const cell of cellsOf(box)) {
      const there = this.#cells.get(cell);
      if (there === undefined) this.#cells.set(cell, [box]);
      else there.push(box);
    }
  }

  meets(box: Box): boolean {
    return cellsOf(box).some((cell) => this.#cells.get(cell)?.some((other) => doMeet(box, other)) ?? false);
  }
}

function cellsOf({ left, right, top, bottom }: Box): string[] {
  const cells: string[] = [];
  for (let x = Math.floor(left / CELL); x <= Math.floor(right / CELL); x++)
    for (let y = Math.floor(top / CELL); y <= Math.floor(bottom / CELL); y++) cells.push(`${x} ${y}`);
  return cells;
}

export const boxAround = ({ x, y }: Pixel, width: number, height: number): Box => ({
  left: x - width / 2,
  right: x + width / 2,
  top: y - height / 2,
  bottom: y + height / 2,
});

const grown = ({ left, right, top, bottom }: Box, by: number): Box => ({
  left: left - by,
  right: right + by,
  top: top - by,
  bottom: bottom + by,
});

export const doMeet = (one: Box, other: Box): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

const isInside = (box: Box, within: Box): boolean =>
  box.left >= within.left &&
  box.right <= within.right &&
  box.top >= within.top &&
  box.bottom <= within.bottom;
