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
  const first = placed.filter(({ handle }) => handle.key === inHand);
  const { left, right } = layout.plot;
  const kept = [...first];
  for (const candidate of placed) {
    const { handle, spot, grip } = candidate;
    const isAcross = handle.along === undefined || (spot.x >= left - 1 && spot.x <= right + 1);
    if (isAcross && kept.every((other) => distance(other.grip, grip) >= GRIP_ROOM)) kept.push(candidate);
  }
  return kept.sort((a, b) => a.grip.x - b.grip.x);
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
