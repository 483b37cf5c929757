import type { HeadArrow, ProfileLayout } from "../profile-layout.js";
import type { Spot } from "../profile-request.js";

/** The room some words take [px]. */
export interface LabelBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What lies under words and how much it is missed when they cover it; the weights are ours. */
interface Obstacle {
  readonly spots: readonly Spot[];
  readonly weight: number;
}

/** Rows are tried at this distance from each other [px]. */
const ROW = 10;
/** Room round a grip that is kept free [px]. */
const GRIP = 11;
const GRIP_WEIGHT = 6;
const BAR_WEIGHT = 2;
/** Words far from their pipe say less: this much for each pixel. */
const FAR = 0.015;
/** Width of the words beside the head arrow [px]. */
const ARROW_WORDS = 95;

/** What words should not cover: the drawing's own lines, grips, and other lines drawn over it. */
export interface Crowd {
  readonly obstacles: readonly Obstacle[];
  readonly grips: readonly Spot[];
}

/**
 * @param grips  what a hand must find free
 * @param bars   other lines drawn over the drawing
 */
export function crowdOf(
  layout: ProfileLayout,
  grips: readonly Spot[],
  bars: readonly (readonly Spot[])[] = [],
): Crowd {
  const obstacles = [...obstaclesOf(layout), ...bars.map((spots) => ({ spots, weight: BAR_WEIGHT }))];
  return { obstacles, grips };
}

/**
 * The height on the drawing at which words of a given width cover the least of pipe, grade lines, ground and grips,
 * as near to the pipe as that allows.
 *
 * @param box    the words, at any height
 * @param near   where they would best stand [px]
 * @returns by how much the box is to be moved down [px]
 */
export function freeRow(box: LabelBox, near: number, { plot }: ProfileLayout, crowd: Crowd): number {
  let best = { shift: 0, cost: Number.POSITIVE_INFINITY };
  const height = box.bottom - box.top;
  for (let top = plot.top - 4; top + height <= plot.bottom + 5; top += ROW) {
    const moved = { ...box, top, bottom: top + height };
    const cost = costOf(moved, crowd) + FAR * Math.abs(top + height / 2 - near);
    if (cost < best.cost) best = { shift: top - box.top, cost };
  }
  return best.shift;
}

function obstaclesOf({ pipe, grade, ground, arrow, drinkers, width }: ProfileLayout): Obstacle[] {
  const stems = { spots: drinkers.map(({ x, y, pipeY }) => ({ x, y: Math.max(y, pipeY + 5) })), weight: 3 };
  const upright = arrow === undefined ? [] : arrowSpots(arrow, width);
  return [
    { spots: pipe, weight: 8 },
    { spots: grade.chosen, weight: 3 },
    { spots: grade.highest, weight: 1 },
    { spots: grade.lowest, weight: 2 },
    { spots: ground, weight: 1 },
    ...upright.map((spots) => ({ spots, weight: 5 })),
    stems,
  ];
}

/** The middle of the words beside the head arrow: half way up, or over an arrow that is shorter than they are. */
export const arrowWordsAt = ({ from, to }: HeadArrow): number =>
  Math.abs(to - from) > 26 ? (from + to) / 2 : Math.min(from, to) - 10;

/** The head arrow, and the words beside it. */
function arrowSpots(arrow: HeadArrow, width: number): Spot[][] {
  const { x, from, to } = arrow;
  const y = arrowWordsAt(arrow);
  const words = x > width * 0.6 ? x - ARROW_WORDS : x;
  return [
    [
      { x: x - 1, y: from },
      { x: x + 1, y: to },
    ],
    [
      { x: words, y },
      { x: words + ARROW_WORDS, y },
    ],
  ];
}

function costOf(box: LabelBox, { obstacles, grips }: Crowd): number {
  const crossed = obstacles
    .filter(({ spots }) => crosses(spots, box))
    .reduce((sum, { weight }) => sum + weight, 0);
  const covered = grips.filter(
    ({ x, y }) => x > box.left - GRIP && x < box.right + GRIP && y > box.top - GRIP && y < box.bottom + GRIP,
  );
  return crossed + GRIP_WEIGHT * covered.length;
}

/** Whether a line, whose x never falls, goes through a box. */
export function crosses(spots: readonly Spot[], { left, right, top, bottom }: LabelBox): boolean {
  for (let i = Math.max(1, firstFrom(spots, left)); i < spots.length; i++) {
    const [a, b] = [spots[i - 1]!, spots[i]!];
    if (a.x > right) return false;
    const yAt = (x: number) => a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x);
    const isUpright = b.x === a.x;
    const first = isUpright ? a.y : yAt(Math.max(a.x, left));
    const last = isUpright ? b.y : yAt(Math.min(b.x, right));
    if (Math.max(first, last) >= top && Math.min(first, last) <= bottom) return true;
  }
  return false;
}

/** The first spot that is not to the left of an edge. */
function firstFrom(spots: readonly Spot[], left: number): number {
  let [low, high] = [0, spots.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (spots[middle]!.x < left) low = middle + 1;
    else high = middle;
  }
  return low;
}
