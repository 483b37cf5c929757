import { requireFinite, requireNotNegative, requirePositive } from "../numerics/require-number.js";
import { waterOverSlopingFloor } from "./tilted-pan.js";

/** The ring, or the spouts, of a fount whose water is held up by shut-in air. Lengths [m]. */
export interface FountRing {
  /** Lip, from the middle, > 0. */
  readonly rim: number;
  /** Air holes, from the middle, >= 0. */
  readonly hole: number;
  /** Lip above the top of the air holes, > 0. */
  readonly lipOverHole: number;
  /** Air holes, evenly round, >= 1. */
  readonly holes: number;
  /** Where the first hole looks, from downhill [rad]: 0 downhill, π/2 sideways, π uphill. */
  readonly facing: number;
  /** Whether each hole has a lip of its own (a spout), and no ring joins them. */
  readonly hasSpouts: boolean;
}

/** Cosines, from downhill, of the directions of the holes. */
function cosines(owner: string, { rim, hole, lipOverHole, holes, facing }: FountRing): number[] {
  requirePositive(owner, { "fount.rim": rim, "fount.lipOverHole": lipOverHole, "fount.holes": holes });
  requireNotNegative(owner, { "fount.hole": hole });
  requireFinite(owner, { "fount.facing": facing });
  return Array.from({ length: Math.floor(holes) }, (_, k) => Math.cos(facing + (2 * Math.PI * k) / holes));
}

/**
 * How far downhill of the middle the hole that decides the level lies [m]: the highest, so the one most uphill. Keepers
 * turn it downhill.
 *
 * @source keeper-hole-downhill, the hole downhill is safest, seen
 */
export function decidingHole(fount: FountRing): number {
  return fount.hole * Math.min(...cosines("decidingHole", fount));
}

/** How far downhill of the middle the lowest lip lies [m]. */
export function lowestLip(fount: FountRing): number {
  const directions = cosines("lowestLip", fount);
  return fount.rim * (fount.hasSpouts ? Math.max(...directions) : 1);
}

/**
 * Slope at which a fount's water reaches its lip, and all of it runs out: air then enters at the hole for ever.
 *
 *   tan θ = f / (R cos ψ − rₐ cos φ)                                                                         (1)
 *
 * The pool stands level at the top of the highest hole (φ from downhill); it first runs over the lowest lip (ψ; 0 on a
 * ring).
 *
 * @param fount  see FountRing; f lipOverHole, R rim, rₐ hole
 * @returns tan θ; infinite where no slope brings the water to a lip
 * @valid still water; surface tension forgives 2 to 3 mm of it, a bump or a swing uses them up
 * @throws RangeError when a size is not finite and positive
 * @source closed-form, hydrostatics, derived
 * @example slopeThatDrains({ rim: 0.115, hole: 0.075, lipOverHole: 0.012, holes: 1, facing: Math.PI, hasSpouts: false })   // 0.06316
 */
export function slopeThatDrains(fount: FountRing): number {
  const reach = lowestLip(fount) - decidingHole(fount);
  return reach <= 1e-12 ? Number.POSITIVE_INFINITY : fount.lipOverHole / reach;
}

/**
 * Share of a fount's ring at which birds still find water on a slope: round the uphill side the floor falls dry.
 *
 *   depth at direction ψ = h + (R cos ψ − rₐ cos φ) tan θ                                                   (1)
 *
 * @param fount       see FountRing
 * @param place.pool  h, depth of the level pool, floor to the top of the hole [m], > 0
 * @param place.slope tan θ, >= 0
 * @param place.least depth a bird can drink from [m]; 0 if left out
 * @returns share from 0 to 1; of spouts the share that holds water
 * @valid until the slope drains it
 * @throws RangeError when pool is not finite and positive or slope negative
 * @source closed-form, hydrostatics, derived
 * @example shareOfRimWet({ rim: 0.115, hole: 0.075, lipOverHole: 0.012, holes: 1, facing: 0, hasSpouts: false }, { pool: 0.018, slope: 0 })   // 1
 */
export function shareOfRimWet(
  fount: FountRing,
  place: { readonly pool: number; readonly slope: number; readonly least?: number },
): number {
  const { pool, slope, least = 0 } = place;
  requirePositive("shareOfRimWet", { "place.pool": pool });
  requireNotNegative("shareOfRimWet", { "place.slope": slope, "place.least": least });
  const directions = cosines("shareOfRimWet", fount);
  const atMiddle = pool - decidingHole(fount) * slope - least;
  if (fount.hasSpouts)
    return directions.filter((c) => atMiddle + fount.rim * c * slope >= 0).length / directions.length;
  const fall = fount.rim * slope;
  if (atMiddle >= fall) return 1;
  return atMiddle <= -fall ? 0 : Math.acos(-atMiddle / fall) / Math.PI;
}

/**
 * Water standing in a fount's ring on a slope: the floor between jar and lip, under the level of the deciding hole.
 *
 * @param fount       see FountRing
 * @param place.jar   outside radius of what stands in the middle [m], >= 0
 * @param place.pool  depth of the level pool [m], > 0
 * @param place.slope tan θ, >= 0
 * @param place.above level above the top of the hole [m]; 0 if left out
 * @returns volume [m³]
 * @valid until the slope drains it
 * @throws RangeError when a size is out of its range
 * @source beyer-crc, wedge of a cylinder, from memory
 * @example waterInTiltedRing({ rim: 0.115, hole: 0.075, lipOverHole: 0.012, holes: 1, facing: 0, hasSpouts: false }, { jar: 0.09, pool: 0.018, slope: 0 })   // 2.898e-4
 */
export function waterInTiltedRing(
  fount: FountRing,
  place: { readonly jar: number; readonly pool: number; readonly slope: number; readonly above?: number },
): number {
  const { jar, pool, slope, above = 0 } = place;
  requirePositive("waterInTiltedRing", { "place.pool": pool });
  requireNotNegative("waterInTiltedRing", { "place.jar": jar, "place.slope": slope });
  const depth = pool + above - decidingHole(fount) * slope;
  const within = (radius: number) => (radius > 0 ? waterOverSlopingFloor({ radius, depth, slope }) : 0);
  return Math.max(0, within(fount.rim) - within(jar));
}

/**
 * Height of a shim under the lower edge that turns what stands on a slope back towards level.
 *
 *   s = b (cos α tan θ − sin α),   α = atan(what slope may be left)                                         (1)
 *   so b tan θ to make it level                                                                             (2)
 *
 * @param stand.base   b, across what it stands on, along the slope [m], > 0
 * @param stand.slope  tan θ of the ground, >= 0
 * @param stand.leave  tan α that may be left, >= 0; 0 if left out
 * @returns s, upright [m]; 0 where the ground is no steeper than what may be left
 * @valid a shim under the edge itself; one set further in is lower in proportion
 * @throws RangeError when base is not finite and positive or a slope negative
 * @source closed-form, a plank turned about its upper edge, derived
 * @example shimFor({ base: 0.23, slope: 0.1 })   // 0.023
 */
export function shimFor(stand: {
  readonly base: number;
  readonly slope: number;
  readonly leave?: number;
}): number {
  const { base, slope, leave = 0 } = stand;
  requirePositive("shimFor", { "stand.base": base });
  requireNotNegative("shimFor", { "stand.slope": slope, "stand.leave": leave });
  const angle = Math.atan(leave);
  return Math.max(0, base * (Math.cos(angle) * slope - Math.sin(angle)));
}
