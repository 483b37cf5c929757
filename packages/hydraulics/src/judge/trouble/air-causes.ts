import type { Line } from "../../model/line.js";
import { findLowestWays, type Ways } from "../lowest-ways.js";
import type { Bench } from "./bench.js";
import { runAt, type Supposition } from "./mishap-causes.js";
import type { Trial } from "./trial.js";

/** Air that a hump kept, all of its column or what is left after some was swept along. */
const KEPT = [
  { share: 1, weight: 0.6 },
  { share: 0.5, weight: 0.4 },
] as const;

/** How deep a run of pipe hangs through where nobody measured it [m]; common practice, no source. */
const SAGS = [
  { airHead: 0.03, weight: 0.4 },
  { airHead: 0.1, weight: 0.4 },
  { airHead: 0.25, weight: 0.2 },
] as const;
/** A shorter run hangs through by less than its bore [m]. */
const LEAST_SAGGING = 2;

/**
 * Air left at the humps of the plan when the line ran dry and was filled again, its bleeds not opened; undefined where
 * no hump would keep any.
 */
export function supposeAirAtHumps({ line, asked }: Bench): Supposition | undefined {
  const { fill, solved } = asked.judged;
  const closed = { ...line, points: { ...line.points, bleed: new Uint8Array(line.points.count) } };
  const filling = fill(closed, solved.darcyWeisbach.lowestBusiest.idle);
  let tallest = -1;
  filling.airHead.forEach((air, p) => {
    if (air > 0 && (tallest < 0 || air > filling.airHead[tallest])) tallest = p;
  });
  const hump = tallest < 0 ? -1 : filling.hump[tallest];
  if (hump < 0) return undefined;
  const trials = KEPT.map(({ share, weight }): Trial => {
    const airHead = filling.airHead.map((air) => share * air);
    return { weight, severity: { airHead: airHead[tallest] }, line, isAlike: true, airHead };
  });
  return { cause: { code: "airLocked", at: "point", id: line.points.id[hump], index: hump }, trials };
}

/** Runs that hang through between their supports and keep air behind the sag: its column is lost to all beyond. */
export function supposeSags({ line }: Bench): Supposition[] {
  const ways = findLowestWays(line);
  return line.runs.flatMap((run, r) => {
    if (run.length < LEAST_SAGGING) return [];
    const places = [...new Set([1, Math.ceil(run.points.length / 2)])].filter((k) => k < run.points.length);
    const trials = places.flatMap((k) =>
      SAGS.map(({ airHead, weight }): Trial => {
        const beyond = pointsBeyond(line, ways, run.points[k]);
        return {
          weight: weight / places.length,
          severity: { airHead, along: run.along[k - 1] },
          line,
          isAlike: true,
          airHead: Float64Array.from(beyond, (isBeyond) => isBeyond * airHead),
        };
      }),
    );
    return [{ cause: { code: "sagHoldsAir", ...runAt(line, r) }, trials }];
  });
}

/** 1 for the points to which water first comes through a point, itself among them. */
export function pointsBeyond(line: Line, ways: Ways, point: number): Uint8Array {
  const beyond = new Uint8Array(line.points.count);
  for (let i = 0; i < ways.nodeCount; i += 1) {
    const p = ways.point[i];
    const isPast = p === point || (i >= ways.rootCount && beyond[ways.point[ways.parent[i]]] === 1);
    if (isPast) beyond[p] = 1;
  }
  return beyond;
}
