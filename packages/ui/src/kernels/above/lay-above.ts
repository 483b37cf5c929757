import { type Plan, runEnds, runNames, sourceNames } from "@headfall/hydraulics";
import { metresOf } from "../typed-metres.js";
import { layUnplaced } from "./lay-unplaced.js";
import type { Ground } from "./spot.js";

/** A place where runs meet, start or end; sources are joints too. */
export interface AboveJoint extends Ground {
  readonly name: string;
  /** Position in the plan's sources, or -1. */
  readonly source: number;
  /** Position in the plan's list of points, or -1 for an end that only its run names. */
  readonly point: number;
  /** Whether the plan says where it is; else the layout has put it there. */
  readonly isPlaced: boolean;
}

export interface AboveRun {
  /** Position in the plan's runs. */
  readonly index: number;
  readonly name: string;
  readonly from: string;
  readonly to: string;
  /** Start, corners, end [m]. */
  readonly spots: readonly Ground[];
  /** As the plan says, and as drawn [m]. */
  readonly length: number;
  readonly drawnLength: number;
  /** Whether the drawing is as long as the plan says, within 2 % or 5 cm. */
  readonly isToScale: boolean;
}

/** The plan from above, in metres. */
export interface AboveLayout {
  readonly joints: readonly AboveJoint[];
  readonly jointByName: ReadonlyMap<string, AboveJoint>;
  readonly runs: readonly AboveRun[];
}

/**
 * Lays a plan out from above: what it places is kept, the rest is put to scale beside it. Needs the plan alone, so
 * that a drawing follows the hand even while the plan is being checked.
 */
export function layAbove(plan: Plan): AboveLayout {
  const ends = runEnds(plan);
  const names = runNames(plan);
  const placed = placesOf(plan);
  const lengths = plan.runs.map(({ length }) => metresOf(length));
  const at = layUnplaced({ sources: sourceNames(plan), ends, lengths, placed, fedFrom: feedsOf(plan) });
  const joints = jointsOf(plan, ends, at, placed);
  const runs = plan.runs.map((run, index): AboveRun => {
    const { from, to } = ends[index]!;
    const corners = (run.corners ?? []).map(groundOf);
    const spots = [at.get(from)!, ...corners, at.get(to)!];
    const length = lengths[index]!;
    const drawnLength = lengthOf(spots);
    const isToScale = Math.abs(drawnLength - length) <= Math.max(0.05, 0.02 * length);
    return { index, name: names[index]!, from, to, spots, length, drawnLength, isToScale };
  });
  return { joints, jointByName: new Map(joints.map((joint) => [joint.name, joint])), runs };
}

/** Length of a way from spot to spot [m]. */
export function lengthOf(spots: readonly Ground[]): number {
  let sum = 0;
  for (let i = 1; i < spots.length; i++)
    sum += Math.hypot(spots[i]!.x - spots[i - 1]!.x, spots[i]!.y - spots[i - 1]!.y);
  return sum;
}

/** The spot that lies a share of the way along, from 0 to 1. */
export function spotAt(spots: readonly Ground[], share: number): Ground {
  let left = lengthOf(spots) * Math.min(1, Math.max(0, share));
  for (let i = 1; i < spots.length; i++) {
    const [a, b] = [spots[i - 1]!, spots[i]!];
    const piece = Math.hypot(b.x - a.x, b.y - a.y);
    if (left <= piece && piece > 0)
      return { x: a.x + ((b.x - a.x) * left) / piece, y: a.y + ((b.y - a.y) * left) / piece };
    left -= piece;
  }
  return spots[spots.length - 1]!;
}

type Place = { readonly x: string; readonly y: string };

/** A typed place in metres. */
export const groundOf = ({ x, y }: Place): Ground => ({ x: metresOf(x), y: metresOf(y) });

/** Header tanks by name, each with the joint that fills it. */
function feedsOf(plan: Plan): Map<string, string> {
  const names = sourceNames(plan);
  return new Map(
    plan.sources.flatMap(({ feed }, i): [string, string][] =>
      feed === undefined ? [] : [[names[i]!, feed.from]],
    ),
  );
}

function placesOf(plan: Plan): Map<string, Ground> {
  const placed = new Map<string, Ground>();
  sourceNames(plan).forEach((name, i) => {
    const { place } = plan.sources[i]!;
    if (place !== undefined) placed.set(name, groundOf(place));
  });
  for (const { id, place } of plan.points ?? []) if (place !== undefined) placed.set(id, groundOf(place));
  return placed;
}

function jointsOf(
  plan: Plan,
  ends: readonly { readonly from: string; readonly to: string }[],
  at: ReadonlyMap<string, Ground>,
  placed: ReadonlyMap<string, Ground>,
): AboveJoint[] {
  const points = new Map((plan.points ?? []).map(({ id }, index) => [id, index]));
  const sources = sourceNames(plan);
  const names = new Set([...sources, ...ends.flatMap(({ from, to }) => [from, to])]);
  const sourceOf = new Map(sources.map((name, index) => [name, index]));
  return [...names].map((name) => ({
    name,
    ...at.get(name)!,
    source: sourceOf.get(name) ?? -1,
    point: points.get(name) ?? -1,
    isPlaced: placed.has(name),
  }));
}
