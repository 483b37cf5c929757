import type { UnitSystem } from "../typed-quantity.js";
import { FOOT } from "../us-units.js";
import type { AboveLayout } from "./lay-above.js";
import type { Ground } from "./spot.js";
import { distanceOf, nearestOnWay } from "./ways.js";

/** What a place was drawn to, so that it can be shown. */
export type SnapTo =
  | { readonly kind: "joint"; readonly joint: string }
  | { readonly kind: "run"; readonly run: number; readonly along: number }
  /** In a sensible direction from the anchor, a sensible length away. */
  | { readonly kind: "direction"; readonly degrees: number }
  /** A sensible length from the anchor, in the hand's own direction. */
  | { readonly kind: "length" }
  /** On the grid of sensible lengths. */
  | { readonly kind: "grid" };

export interface Snapped {
  readonly place: Ground;
  readonly to: SnapTo;
}

export interface SnapRequest {
  readonly at: Ground;
  /** Joints and runs to snap to; left out to snap to directions and lengths alone. */
  readonly layout?: AboveLayout;
  /** How near counts as meant [m]. */
  readonly reach: number;
  /** Lengths are whole numbers of these [m]. */
  readonly step: number;
  /** What directions and lengths are measured from. */
  readonly anchor?: Ground;
  /** The joint in the hand: neither it nor its runs are snapped to. */
  readonly held?: string;
  /** Whether runs count: a joint where runs meet already crosses others more often than it is meant to join them. */
  readonly isOnRuns?: boolean;
}

/** Directions that are meant when the hand comes within so many degrees of them. */
const EIGHTH = 45;
const NEAR_DEGREES = 7;
/** A step is never drawn smaller than this [px]: finer ones cannot be aimed at. */
const LEAST_STEP = 4;
const STEPS: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [0.1, 0.5, 1, 5, 10, 50],
  us: [FOOT / 2, FOOT, 5 * FOOT, 10 * FOOT, 50 * FOOT, 100 * FOOT],
};

/** The length that places are snapped to at this scale [m]: 10 cm or 6 in near by, more from further off. */
export function snapStep(scale: number, system: UnitSystem): number {
  const steps = STEPS[system];
  return steps.find((step) => step * scale >= LEAST_STEP) ?? steps[steps.length - 1]!;
}

/**
 * Where a place is meant to be: on a joint, else on a run, else straight or at 45 degrees from its anchor and a
 * sensible length away. A place that was snapped once stays when it is snapped again.
 */
export function snap(request: SnapRequest): Snapped {
  return onPart(request, request.at) ?? afterSteps(request);
}

function afterSteps(request: SnapRequest): Snapped {
  const stepped = request.anchor === undefined ? onGrid(request) : fromAnchor(request, request.anchor);
  // A whole length may end beside a joint: then the joint is meant.
  return onPart(request, stepped.place) ?? stepped;
}

function onPart(request: SnapRequest, at: Ground): Snapped | undefined {
  const joint = onJoint(request, at);
  if (joint !== undefined || request.isOnRuns === false) return joint;
  const run = onRun(request, at);
  return run && (onJoint(request, run.place) ?? run);
}

function onJoint({ layout, reach, held }: SnapRequest, at: Ground): Snapped | undefined {
  let nearest: { name: string; place: Ground; distance: number } | undefined;
  for (const { name, x, y } of layout?.joints ?? []) {
    const distance = Math.hypot(x - at.x, y - at.y);
    if (name === held || distance > reach || distance >= (nearest?.distance ?? Infinity)) continue;
    nearest = { name, place: { x, y }, distance };
  }
  return nearest && { place: nearest.place, to: { kind: "joint", joint: nearest.name } };
}

function onRun({ layout, reach, held }: SnapRequest, at: Ground): Snapped | undefined {
  let nearest: { run: number; along: number; place: Ground; distance: number } | undefined;
  for (const { index, from, to, spots, length } of layout?.runs ?? []) {
    if (held !== undefined && (from === held || to === held)) continue;
    const { place, distance, share } = nearestOnWay(spots, at);
    if (distance > reach || distance >= (nearest?.distance ?? Infinity)) continue;
    nearest = { run: index, along: share * length, place, distance };
  }
  return nearest && { place: nearest.place, to: { kind: "run", run: nearest.run, along: nearest.along } };
}

function fromAnchor({ at, step }: SnapRequest, anchor: Ground): Snapped {
  const length = Math.round(distanceOf(anchor, at) / step) * step;
  if (length === 0) return { place: anchor, to: { kind: "length" } };
  const angle = (Math.atan2(at.y - anchor.y, at.x - anchor.x) * 180) / Math.PI;
  const eighth = Math.round(angle / EIGHTH) * EIGHTH;
  const isMeant = Math.abs(angle - eighth) <= NEAR_DEGREES;
  const place = away(anchor, isMeant ? eighth : angle, length);
  return { place, to: isMeant ? { kind: "direction", degrees: (eighth + 360) % 360 } : { kind: "length" } };
}

function away({ x, y }: Ground, degrees: number, length: number): Ground {
  const radians = (degrees * Math.PI) / 180;
  // A quarter turn is exact, so that a level run stays level in its last digit.
  const isLevel = degrees % 180 === 0;
  const isUpright = degrees % 180 !== 0 && degrees % 90 === 0;
  return {
    x: isUpright ? x : x + Math.cos(radians) * length,
    y: isLevel ? y : y + Math.sin(radians) * length,
  };
}

function onGrid({ at, step }: SnapRequest): Snapped {
  const place = { x: Math.round(at.x / step) * step, y: Math.round(at.y / step) * step };
  return { place, to: { kind: "grid" } };
}
