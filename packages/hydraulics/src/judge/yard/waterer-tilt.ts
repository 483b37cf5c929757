import { FACING, HOLE_WAYS, type LooseWaterer } from "../../model/yard.js";
import { slopeThatOverflows, swingForgiven } from "../../physics/swung-bell.js";
import {
  decidingHole,
  type FountRing,
  shareOfRimWet,
  shimFor,
  slopeThatDrains,
  waterInTiltedRing,
} from "../../physics/tilted-fount.js";
import { waterInTiltedTaper, waterInTiltedTrough, waterOverSlopingFloor } from "../../physics/tilted-pan.js";
import { volumeAtLevel } from "../../physics/vessel.js";
import { vesselById } from "../../tables/vessels.js";
import type { OpenPan, OpenTrough, VacuumFount } from "../../tables/waterer-types.js";
import type { Shims, Tilt } from "./yard-result.js";

/**
 * Of the slope at which a waterer drains, what a shim should leave it: half, since a bump, a settling foot and the
 * ruler all take their part.
 *
 * @source common-practice, half of the limit, from memory
 */
export const LEAVE = 0.5;

const finite = (slope: number): number | undefined => (Number.isFinite(slope) ? slope : undefined);

/** The ring of a fount, its first hole looking one way. */
export function ringOf(kind: VacuumFount, facing: number): FountRing {
  const { rim, hole, lipOverHole, holes } = kind;
  return { rim, hole, lipOverHole, holes, facing, hasSpouts: kind.lip === "spouts" };
}

/** How far off level a waterer may stand, and how it stands. */
export function tiltOf(waterer: LooseWaterer): Tilt {
  const { kind, slope } = waterer;
  switch (kind.works) {
    case "vacuum":
      return fountTilt(waterer, kind);
    case "bell": {
      const bowl = { rim: kind.rim, lipOverLevel: kind.lipOverHole };
      const drainsAt = slopeThatOverflows(bowl);
      return {
        works: "bell",
        slope,
        isDraining: slope >= drainsAt,
        drainsAt,
        swing: kind.hangs ? swingForgiven(bowl, waterer.cord) : undefined,
        shims: shims({ base: kind.base, slope }, drainsAt),
      };
    }
    case "pan":
    case "trough":
      return openTilt(kind, slope);
    case "nipples":
      return { works: "nipples", slope };
  }
}

function fountTilt({ slope, hole }: LooseWaterer, kind: VacuumFount): Tilt {
  const limits = HOLE_WAYS.map((way) => slopeThatDrains(ringOf(kind, FACING[way])));
  const drainsAt = slopeThatDrains(ringOf(kind, FACING[hole]));
  return {
    works: "vacuum",
    slope,
    isDraining: slope >= drainsAt,
    drainsAt: finite(drainsAt),
    byHole: { uphill: finite(limits[0]), sideways: finite(limits[1]), downhill: finite(limits[2]) },
    wetShare: shareOfRimWet(ringOf(kind, FACING[hole]), { pool: kind.pool, slope, least: kind.left }),
    shims: shims({ base: kind.base, slope }, drainsAt),
  };
}

function openTilt(kind: OpenPan | OpenTrough, slope: number): Tilt {
  const across = kind.works === "trough" ? turned(kind) : undefined;
  const halfAt = slopeThatHalves(kind);
  return {
    works: kind.works,
    slope,
    share: waterOn(kind, slope) / waterOn(kind, 0),
    shareAcross: across === undefined ? undefined : waterOn(across, slope) / waterOn(kind, 0),
    halfAt,
    // A pan may stand anyhow: half of a full one is what a shim must at least leave.
    shims: shims({ base: kind.base, slope }, halfAt),
  };
}

const turned = (trough: OpenTrough): OpenTrough => ({
  ...trough,
  length: trough.width,
  width: trough.length,
});

/** Water that stays in a full pan or trough on a slope [m³]. */
function waterOn(kind: OpenPan | OpenTrough, slope: number): number {
  return kind.works === "pan"
    ? waterInTiltedTaper({ floor: kind.floor, rim: kind.rim, depth: kind.depth, slope })
    : waterInTiltedTrough({ length: kind.length, width: kind.width, depth: kind.depth, slope });
}

/** Slope on which half of it stays, to a ten-thousandth: it only falls with slope, so by halving. */
function slopeThatHalves(kind: OpenPan | OpenTrough): number {
  const half = waterOn(kind, 0) / 2;
  let [low, high] = [0, 4];
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (waterOn(kind, middle) > half) low = middle;
    else high = middle;
  }
  return low;
}

/** @param limit  slope that it must not come to */
function shims(stands: { readonly base: number; readonly slope: number }, limit: number): Shims {
  const leave = Number.isFinite(limit) ? limit * LEAVE : Number.POSITIVE_INFINITY;
  return {
    level: shimFor(stands),
    enough: Number.isFinite(leave) ? shimFor({ ...stands, leave }) : 0,
  };
}

/**
 * Water that stays in one on its slope, filled as it holds when level [m³]. A fount that does not drain keeps all: what
 * its ring gains or loses its jar loses or gains.
 */
export function staysIn({ kind, slope, holds }: LooseWaterer, tilt: Tilt): number {
  if ("isDraining" in tilt && tilt.isDraining) return 0;
  // Less than brim full, a pan loses nothing until the slope leaves no room for it.
  return kind.works === "pan" || kind.works === "trough" ? Math.min(holds, waterOn(kind, slope)) : holds;
}

/** Of what stays in one, the water no bird can drink: a film in ring or pan, what is below the nipples [m³]. */
export function waterLeft({ kind, slope, hole }: LooseWaterer, tilt: Tilt): number {
  switch (kind.works) {
    case "nipples": {
      const shape = vesselById(kind.vessel)?.shape;
      return shape === undefined ? 0 : volumeAtLevel(shape, kind.left);
    }
    case "bell":
      return Math.PI * (kind.rim ** 2 - kind.jar ** 2) * kind.left;
    case "vacuum": {
      if (tilt.works !== "vacuum" || tilt.isDraining) return 0;
      // The last pool falls until it is too shallow everywhere: at the lip on the lower side.
      const ring = ringOf(kind, FACING[hole]);
      const lowest = decidingHole(ring) * slope + kind.left - kind.rim * slope;
      return waterInTiltedRing(ring, { jar: kind.jar, pool: kind.pool, slope, above: lowest - kind.pool });
    }
    case "pan": {
      const wide = kind.floor * slope;
      return waterOverSlopingFloor({ radius: kind.floor, depth: kind.left - wide, slope });
    }
    case "trough":
      return waterInTiltedTrough({ length: kind.length, width: kind.width, depth: kind.left, slope });
  }
}
