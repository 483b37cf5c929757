import type { ProfileLayout } from "../profile-layout.js";
import type { Spot } from "../profile-request.js";
import type { SideHandle } from "./side-handle.js";
import { type SideScales, scalesOf } from "./side-scales.js";

/** A handle on the drawing: the spot it moves, and the grip a hand takes, which may stand a little off it. */
export interface PlacedHandle {
  readonly handle: SideHandle;
  readonly spot: Spot;
  readonly grip: Spot;
}

/** Grips of one kind closer together than this are thinned out [px]; others stay apart by where they stand. */
const GRIP_ROOM = 11;
/** How far the grips of ground and drop stand below what they move [px]. */
const BELOW = 15;

/**
 * Puts handles where they are on the drawing. Those beyond its edges are left out, and where two would lie on one
 * another only the first is kept, unless it is the one in hand.
 *
 * @param inHand  key of the handle that must be kept
 */
export function placeHandles(
  handles: readonly SideHandle[],
  layout: ProfileLayout,
  inHand?: string,
): PlacedHandle[] {
  const scales = scalesOf(layout);
  const placed = handles.map((handle) => placeHandle(handle, layout, scales));
  const { left, right } = layout.plot;
  const kept: PlacedHandle[] = [];
  const cells = new Map<string, PlacedHandle[]>();
  const keep = (one: PlacedHandle) => {
    const key = cellOf(one.grip.x, one.grip.y);
    cells.set(key, [...(cells.get(key) ?? []), one]);
    kept.push(one);
  };
  for (const one of placed) if (one.handle.key === inHand) keep(one);
  for (const one of placed) {
    const isAcross = one.handle.along === undefined || (one.spot.x >= left - 1 && one.spot.x <= right + 1);
    if (isAcross && isFree(one.grip, cells)) keep(one);
  }
  return kept.sort((a, b) => a.grip.x - b.grip.x);
}

/** Grips by squares of the room they take, so that only neighbours are compared. */
const cellOf = (x: number, y: number): string => `${Math.floor(x / GRIP_ROOM)} ${Math.floor(y / GRIP_ROOM)}`;

function isFree({ x, y }: Spot, cells: ReadonlyMap<string, readonly PlacedHandle[]>): boolean {
  for (const right of [-GRIP_ROOM, 0, GRIP_ROOM])
    for (const down of [-GRIP_ROOM, 0, GRIP_ROOM]) {
      const there = cells.get(cellOf(x + right, y + down)) ?? [];
      if (there.some(({ grip }) => distance(grip, { x, y }) < GRIP_ROOM)) return false;
    }
  return true;
}

function placeHandle(handle: SideHandle, { vessel }: ProfileLayout, scales: SideScales): PlacedHandle {
  const y = scales.y(handle.height);
  const x = handle.along === undefined ? vesselX(handle, vessel) : scales.x(handle.along);
  const grip = handle.kind === "ground" || handle.kind === "drop" ? { x, y: y + BELOW } : { x, y };
  return { handle, spot: { x, y }, grip };
}

/** Foot, water and outlet side by side, so that a thumb can tell them apart when they are at one height. */
function vesselX({ kind }: SideHandle, { left, right }: ProfileLayout["vessel"]): number {
  if (kind === "stand") return left;
  return kind === "outlet" ? right : (left + right) / 2;
}

/**
 * The handle whose grip is nearest to a spot.
 *
 * @param reach  farthest that counts [px]: half of a 44 px target
 */
export function nearestHandle(
  placed: readonly PlacedHandle[],
  spot: Spot,
  reach = 22,
): PlacedHandle | undefined {
  let nearest: PlacedHandle | undefined;
  let least = reach;
  for (const candidate of placed) {
    const away = distance(candidate.grip, spot);
    if (away > least || (away === least && nearest !== undefined)) continue;
    nearest = candidate;
    least = away;
  }
  return nearest;
}

export const distance = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, a.y - b.y);
