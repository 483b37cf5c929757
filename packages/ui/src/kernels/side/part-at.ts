import type { Line } from "@headfall/hydraulics";
import type { ProfileLayout } from "../profile-layout.js";
import type { ProfilePath } from "../profile-path.js";
import type { Spot } from "../profile-request.js";
import type { Selected } from "../selected.js";
import { placeInRun } from "./drop-handles.js";
import { jointsOn, stretchesOf } from "./path-stretches.js";
import { distance } from "./place-handles.js";
import { scalesOf } from "./side-scales.js";

/** What a press on the drawing means: the part by its place in the plan, and the drinker by its index in the line. */
export interface PressedPart {
  readonly part: Selected;
  readonly drinker?: number;
}

/** A press may miss by this much [px]. */
const REACH = 18;

/**
 * The part that is nearest to a press: a drinker (its valve, or its mark under the drawing), a joint, the vessel, or
 * the pipe; undefined for a press on nothing.
 */
export function partAt(
  layout: ProfileLayout,
  line: Line,
  path: ProfilePath,
  spot: Spot,
): PressedPart | undefined {
  const drinker = drinkerAt(layout, spot);
  if (drinker !== undefined) return { part: partOfDrinker(line, drinker), drinker };
  const joint = jointAt(layout, line, path, spot);
  if (joint !== undefined) return { part: joint };
  const { vessel } = layout;
  const isVessel =
    spot.x >= vessel.left - 6 &&
    spot.x <= vessel.right &&
    spot.y >= vessel.top - 6 &&
    spot.y <= vessel.ground;
  const source = line.sources[path.source];
  if (isVessel && source !== undefined) return { part: { kind: "source", source: source.index } };
  return runAt(layout, line, path, spot);
}

/** A drinker as a part of the plan. */
export function partOfDrinker({ drinkers, runs }: Line, drinker: number): Selected {
  const group = drinkers.group[drinker]!;
  return {
    kind: "drinkers",
    run: runs[drinkers.run[drinker]!]!.index,
    group: placeInRun(drinkers.groups, group),
    number: drinker - drinkers.groups[group]!.first,
  };
}

function drinkerAt({ drinkers, rail }: ProfileLayout, spot: Spot): number | undefined {
  const isOnRail = spot.y >= rail.top - 4 && spot.y <= rail.top + 60;
  return nearestWithin(drinkers, (drawn) => (isOnRail ? Math.abs(drawn.x - spot.x) : distance(drawn, spot)))
    ?.index;
}

function jointAt(layout: ProfileLayout, line: Line, path: ProfilePath, spot: Spot): Selected | undefined {
  const { x, y } = scalesOf(layout);
  const joints = jointsOn(line, stretchesOf(line, path));
  const sources = new Set(line.sources.map(({ point }) => point));
  const drawn = path.points.flatMap((point, i) => {
    const joint = joints.get(point);
    if (joint === undefined || sources.has(point)) return [];
    return [{ joint, x: x(path.along[i]!), y: y(line.points.height[point]!) }];
  });
  const nearest = nearestWithin(drawn, (candidate) => distance(candidate, spot) + 6);
  return nearest === undefined ? undefined : { kind: "joint", joint: nearest.joint };
}

function runAt(layout: ProfileLayout, line: Line, path: ProfilePath, spot: Spot): PressedPart | undefined {
  const { x, y } = scalesOf(layout);
  const pieces = path.points.slice(1).map((point, k) => ({
    run: line.segments.run[path.segments[k + 1]!]!,
    a: { x: x(path.along[k]!), y: y(line.points.height[path.points[k]!]!) },
    b: { x: x(path.along[k + 1]!), y: y(line.points.height[point]!) },
  }));
  const nearest = nearestWithin(pieces, ({ a, b }) => distanceToPiece(spot, a, b));
  const run = nearest === undefined ? undefined : line.runs[nearest.run];
  return run === undefined ? undefined : { part: { kind: "run", run: run.index } };
}

function nearestWithin<T>(candidates: readonly T[], away: (candidate: T) => number): T | undefined {
  let nearest: T | undefined;
  let least = REACH;
  for (const candidate of candidates) {
    const found = away(candidate);
    if (found > least) continue;
    nearest = candidate;
    least = found;
  }
  return nearest;
}

/** Distance from a spot to a straight piece [px]. */
export function distanceToPiece(spot: Spot, a: Spot, b: Spot): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((spot.x - a.x) * dx + (spot.y - a.y) * dy) / square;
  const along = Math.max(0, Math.min(1, share));
  return distance(spot, { x: a.x + along * dx, y: a.y + along * dy });
}
