import type { Spot } from "../profile-request.js";
import { lengthOfText } from "./printed-text.js";
import { type Box, boxOfSpots, doMeet } from "./shapes.js";

/** Words that belong to a spot of the drawing; the first line is the bold one. */
export interface Note {
  readonly at: Spot;
  readonly lines: readonly string[];
  /** Heavier notes choose their place first. */
  readonly weight: number;
}

/** Where a note went; undefined when no room was left. */
export type PlacedNote = Box | undefined;

export const NOTE_SIZE = 2.5;
export const NOTE_LEADING = 3.1;
const AROUND = 0.6;
/** How far from its spot a note may stand [mm], nearest first, and to which sides: right and left first. */
const DISTANCES = [2.6, 5, 8, 12, 17, 23, 31, 42];
const SIDES = [
  [1, -0.6],
  [-1, -0.6],
  [1, 0.6],
  [-1, 0.6],
  [0, -1],
  [0, 1],
  [0.5, -1],
  [-0.5, -1],
  [0.5, 1],
  [-0.5, 1],
] as const;
/** How much worse it is that a leader crosses words than that words cover a spot of the drawing. */
const CROSSING = 4;
/** Side of a square of the map that finds what is near [mm]. */
const SQUARE = 12;

/**
 * Finds a place for each note so that none covers another, within bounds, clear of the drawing's own lines where that
 * can be had.
 *
 * @param notes     in any order
 * @param obstacles spots of the drawing that had better stay free
 * @param bounds    edges of the drawing [mm]
 * @returns boxes in the order of the notes
 */
export function placeNotes(
  notes: readonly Note[],
  obstacles: readonly Spot[],
  bounds: Box,
): readonly PlacedNote[] {
  const lines = createMap<Spot>();
  for (const spot of obstacles) lines.add(boxOfSpots([spot]), spot);
  const taken = createMap<Box>();
  const placed: PlacedNote[] = notes.map(() => undefined);
  const order = notes.map((_, i) => i).sort((a, b) => notes[b]!.weight - notes[a]!.weight || a - b);
  for (const i of order) {
    const box = bestBox(notes[i]!, bounds, taken, lines);
    if (box === undefined) continue;
    placed[i] = box;
    taken.add(box, box);
    for (const spot of leaderOf(notes[i]!.at, box)) lines.add(boxOfSpots([spot]), spot);
  }
  return placed;
}

function bestBox(note: Note, bounds: Box, taken: SpotMap<Box>, lines: SpotMap<Spot>): PlacedNote {
  let best: { box: Box; covered: number } | undefined;
  for (const box of candidates(note)) {
    if (!isInside(box, bounds)) continue;
    if (taken.near(box).some((other) => doMeet(box, other))) continue;
    const crossed = leaderOf(note.at, box).filter((spot) =>
      taken.near(boxOfSpots([spot])).some((other) => isIn(spot, other)),
    ).length;
    const covered = lines.near(box).filter((spot) => isIn(spot, box)).length + CROSSING * crossed;
    if (covered === 0) return box;
    if (best === undefined || covered < best.covered) best = { box, covered };
  }
  return best?.box;
}

function* candidates({ at, lines }: Note): Generator<Box> {
  const width = Math.max(...lines.map((text, i) => lengthOfText(text, NOTE_SIZE, i === 0))) + 2 * AROUND;
  const height = lines.length * NOTE_LEADING + AROUND;
  for (const distance of DISTANCES) {
    for (const [across, down] of SIDES) {
      const middle = at.x + across * (distance + width / 2);
      const top = at.y + down * (distance + height / 2) - height / 2;
      yield { left: middle - width / 2, right: middle + width / 2, top, bottom: top + height };
    }
  }
}

/** Where a leader from a spot ends: the nearest edge of its words. */
export const leaderEnd = (at: Spot, box: Box): Spot => ({
  x: Math.min(Math.max(at.x, box.left), box.right),
  y: Math.min(Math.max(at.y, box.top), box.bottom),
});

/** Spots along a leader, without its ends. */
function leaderOf(at: Spot, box: Box): Spot[] {
  const end = leaderEnd(at, box);
  const steps = Math.ceil(Math.hypot(end.x - at.x, end.y - at.y) / 1.5);
  return Array.from({ length: Math.max(0, steps - 1) }, (_, i) => ({
    x: at.x + ((end.x - at.x) * (i + 1)) / steps,
    y: at.y + ((end.y - at.y) * (i + 1)) / steps,
  }));
}

const isInside = (box: Box, bounds: Box): boolean =>
  box.left >= bounds.left &&
  box.right <= bounds.right &&
  box.top >= bounds.top &&
  box.bottom <= bounds.bottom;

const isIn = ({ x, y }: Spot, box: Box): boolean =>
  x > box.left && x < box.right && y > box.top && y < box.bottom;

/** What lies where, by squares, so that a large plan does not look at everything for every note. */
interface SpotMap<T> {
  add(box: Box, item: T): void;
  near(box: Box): readonly T[];
}

function createMap<T>(): SpotMap<T> {
  const squares = new Map<string, T[]>();
  const visit = (box: Box, use: (key: string) => void) => {
    for (let x = Math.floor(box.left / SQUARE); x <= Math.floor(box.right / SQUARE); x += 1)
      for (let y = Math.floor(box.top / SQUARE); y <= Math.floor(box.bottom / SQUARE); y += 1)
        use(`${x} ${y}`);
  };
  return {
    add(box, item) {
      visit(box, (key) => {
        const square = squares.get(key);
        if (square === undefined) squares.set(key, [item]);
        else square.push(item);
      });
    },
    near(box) {
      const found = new Set<T>();
      visit(box, (key) => {
        for (const item of squares.get(key) ?? []) found.add(item);
      });
      return [...found];
    },
  };
}
