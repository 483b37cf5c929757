import type { AboveJoint, AboveLayout } from "./lay-above.js";
import type { PlacedDrinker } from "./place-drinkers.js";
import type { Ground } from "./spot.js";
import { distanceOf, nearestOnWay } from "./ways.js";

/** What lies under a finger. */
export type Hit =
  | { readonly kind: "joint"; readonly joint: AboveJoint }
  | { readonly kind: "corner"; readonly run: number; readonly corner: number; readonly place: Ground }
  | { readonly kind: "drinkers"; readonly drinker: PlacedDrinker }
  /** `along` the pipe from the run's start [m]; `piece` counts the straight pieces of the drawn run. */
  | {
      readonly kind: "run";
      readonly run: number;
      readonly along: number;
      readonly piece: number;
      readonly place: Ground;
    };

export interface HitRequest {
  readonly at: Ground;
  readonly layout: AboveLayout;
  readonly drinkers: readonly PlacedDrinker[];
  /** How near counts [m]. */
  readonly reach: number;
  /** Half the width of each source as drawn, by its place in the plan [m]: all of a vessel can be pressed. */
  readonly vesselReach?: readonly number[];
}

/** How near a press must come [px]: a finger covers what it aims at, a mouse does not. */
export const reachOf = (pointer: string): number => (pointer === "touch" ? 22 : 10);

/**
 * What lies under a press: the nearest joint, corner, drinker and run, in this order. A drinker at the end of a run
 * lies under its joint.
 */
export function hitsBeneath(request: HitRequest): readonly Hit[] {
  return [hitJoint(request), hitCorner(request), hitDrinker(request), hitRun(request)].filter(
    (found) => found !== undefined,
  );
}

/** The nearest of those within reach. */
function nearest<T>(all: Iterable<T>, reach: number, distance: (one: T) => number): T | undefined {
  let best: T | undefined;
  let least = reach;
  for (const one of all) {
    const away = distance(one);
    if (away > least || (away === least && best !== undefined)) continue;
    [best, least] = [one, away];
  }
  return best;
}

function hitJoint({ at, layout, reach, vesselReach }: HitRequest): Hit | undefined {
  const plain = nearest(layout.joints, reach, (joint) => distanceOf(joint, at));
  const inVessel = ({ source }: AboveJoint) => Math.max(0, vesselReach?.[source] ?? 0);
  const joint =
    plain ??
    nearest(layout.joints, 0, (each) =>
      distanceOf(each, at) <= inVessel(each) ? 0 : Number.POSITIVE_INFINITY,
    );
  return joint && { kind: "joint", joint };
}

function hitCorner({ at, layout, reach }: HitRequest): Hit | undefined {
  const corners = layout.runs.flatMap(({ index, spots }) =>
    spots.slice(1, -1).map((place, corner) => ({ kind: "corner" as const, run: index, corner, place })),
  );
  return nearest(corners, reach, ({ place }) => distanceOf(place, at));
}

function hitDrinker({ at, drinkers, reach }: HitRequest): Hit | undefined {
  const drinker = nearest(drinkers, reach, (each) => distanceOf(each.at, at));
  return drinker && { kind: "drinkers", drinker };
}

function hitRun({ at, layout, reach }: HitRequest): Hit | undefined {
  const near = layout.runs.map(({ index, spots, length }) => ({
    index,
    length,
    on: nearestOnWay(spots, at),
  }));
  const found = nearest(near, reach, ({ on }) => on.distance);
  if (found === undefined) return undefined;
  const { index, length, on } = found;
  return { kind: "run", run: index, along: on.share * length, piece: on.piece, place: on.place };
}
