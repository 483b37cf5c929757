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
/** What each spot of the drawing under the words costs, and each millimetre of distance. */
const COVERED = 3;
const FAR = 0.3;
/** What each spot of a leader costs that lies upon words; upon the drawing it costs 1. */
const CROSSING = 4;
/** So far from its spot a leader is among the lines it belongs to [mm]. */
const LEAVES = 3;
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
  for (const spot of thinned(obstacles)) lines.add(boxOfSpots([spot]), spot);
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
  let best: { box: Box; cost: number } | undefined;
  for (const distance of DISTANCES) {
    // From here on the leader alone would cost more.
    if (best !== undefined && best.cost <= FAR * distance) break;
    for (const box of boxesAt(note, distance)) {
      if (!isInside(box, bounds)) continue;
      if (taken.near(box).some((other) => doMeet(box, other))) continue;
      const cost = FAR * distance + costOf(note.at, box, taken, lines);
      if (best === undefined || cost < best.cost) best = { box, cost };
    }
  }
  return best?.box;
}

/** What a place costs besides its distance: spots of the drawing under the words, and what the leader runs through. */
function costOf(at: Spot, box: Box, taken: SpotMap<Box>, lines: SpotMap<Spot>): number {
  const covered = lines.near(box).filter((spot) => isIn(spot, box)).length;
  const leader = leaderOf(at, box);
  const crossed = leader.filter((spot) => taken.near(boxOfSpots([spot])).some((other) => isIn(spot, other)));
  return COVERED * covered + CROSSING * crossed.length + passedBy(leader, at, lines);
}

/** Where a leader from a spot ends: the nearest edge of its words. */
export const leaderEnd = (at: Spot, box: Box): Spot => ({
  x: Math.min(Math.max(at.x, box.left), box.right),
  y: Math.min(Math.max(at.y, box.top), box.bottom),
});

/** Spots of the drawing that a leader passes through, other than where it begins. */
function passedBy(leader: readonly Spot[], at: Spot, lines: SpotMap<Spot>): number {
  return leader.filter(({ x, y }) => {
    if (Math.hypot(x - at.x, y - at.y) < LEAVES) return false;
    const close = { left: x - 1, right: x + 1, top: y - 1, bottom: y + 1 };
    return lines.near(close).some((spot) => isIn(spot, close));
  }).length;
}

/** Spots along a leader, without its ends. */
function leaderOf(at: Spot, box: Box): Spot[] {
  const end = leaderEnd(at, box);
  const steps = Math.ceil(Math.hypot(end.x - at.x, end.y - at.y) / 1.5);
  return Array.from({ length: Math.max(0, steps - 1) }, (_, i) => ({
    x: at.x + ((end.x - at.x) * (i + 1)) / steps,
    y: at.y + ((end.y - at.y) * (i + 1)) / steps,
  }));
}

/** Boxes for a note at a distance from its spot, to every side. */
function boxesAt({ at, lines }: Note, distance: number): Box[] {
  const width = Math.max(...lines.map((text, i) => lengthOfText(text, NOTE_SIZE, i === 0))) + 2 * AROUND;
  const height = lines.length * NOTE_LEADING + AROUND;
  return SIDES.map(([across, down]) => {
    const middle = at.x + across * (distance + width / 2);
    const top = at.y + down * (distance + height / 2) - height / 2;
    return { left: middle - width / 2, right: middle + width / 2, top, bottom: top + height };
  });
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
  /** What may touch a box; what lies in several squares may come several times. */
  near(box: Box): readonly T[];
}

function createMap<T>(): SpotMap<T> {
  const squares = new Map<number, T[]>();
  const visit = (box: Box, use: (key: number) => void) => {
    const bottom = Math.floor(box.bottom / SQUARE);
    for (let x = Math.floor(box.left / SQUARE); x <= Math.floor(box.right / SQUARE); x += 1)
      for (let y = Math.floor(box.top / SQUARE); y <= bottom; y += 1) use(x * 1e6 + y);
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
      const found: T[] = [];
      visit(box, (key) => {
        for (const item of squares.get(key) ?? []) found.push(item);
      });
      return found;
    },
  };
}

/** One spot of each square millimetre is enough to know that something is drawn there. */
function thinned(spots: readonly Spot[]): Spot[] {
  const byMillimetre = new Map<number, Spot>();
  for (const spot of spots) byMillimetre.set(Math.floor(spot.x) * 1e6 + Math.floor(spot.y), spot);
  return [...byMillimetre.values()];
}
