/** Levels, volumes and faces of vessels: one phenomenon, and long because most of it is what its formulas say of themselves. */

import { buildMonotoneCurve, type MonotoneCurve } from "../numerics/monotone-curve.js";
import { requireNotNegative, requirePositive } from "../numerics/require-number.js";
import { findRoot } from "../numerics/root.js";

/** The inside of a vessel. Levels are measured up from its lowest inside point. All lengths [m], volumes [m³]. */
export type VesselShape =
  /** A cylinder standing on its end. */
  | { readonly kind: "upright"; readonly diameter: number; readonly height: number }
  /** A cylinder lying on its side, flat ends. */
  | { readonly kind: "lying"; readonly diameter: number; readonly length: number }
  /** A round bucket, wider at either end. */
  | {
      readonly kind: "tapered";
      readonly bottomDiameter: number;
      readonly topDiameter: number;
      readonly height: number;
    }
  /** A box with plumb walls. */
  | { readonly kind: "box"; readonly length: number; readonly width: number; readonly height: number }
  /** Measured levels and volumes, both from 0 and strictly rising. */
  | { readonly kind: "table"; readonly levels: readonly number[]; readonly volumes: readonly number[] };

/**
 * Inside height of a vessel as it stands.
 *
 *   upright, tapered, box: height;  lying: diameter;  table: last level     (1)
 *
 * @param shape  the vessel's inside
 * @returns height [m]
 * @valid any vessel
 * @throws RangeError when a dimension is not finite and positive, or a table does not start at 0 and rise
 * @source closed-form, definition
 * @example heightOfVessel({ kind: "lying", diameter: 0.57, length: 0.85 })   // 0.57
 */
export function heightOfVessel(shape: VesselShape): number {
  requireShape("heightOfVessel", shape);
  return heightWithin(shape);
}

function heightWithin(shape: VesselShape): number {
  if (shape.kind === "lying") return shape.diameter;
  return shape.kind === "table" ? shape.levels[shape.levels.length - 1]! : shape.height;
}

/**
 * Volume of a full vessel.
 *
 *   V(height)                                                               (1)
 *
 * @param shape  the vessel's inside
 * @returns volume to the brim [m³]
 * @valid any vessel
 * @throws RangeError as heightOfVessel
 * @source closed-form, as volumeAtLevel
 * @example capacityOfVessel({ kind: "upright", diameter: 0.5715, height: 0.8509 })   // 0.21827
 */
export function capacityOfVessel(shape: VesselShape): number {
  requireShape("capacityOfVessel", shape);
  return volumeAtLevel(shape, heightWithin(shape));
}

/**
 * Volume of water in a vessel at a level.
 *
 *   upright: V = π D² h / 4                                                 (1)
 *   lying:   V = L R² (θ − sin θ)/2,  θ = 4 arcsin √(h/2R)                  (2)
 *   tapered: V = π h (r₀² + r₀ r + r²)/3,  r = r₀ + (r₁ − r₀) h/H           (3)
 *   box:     V = l w h                                                      (4)
 *   table:   a rising smooth curve through the rows                         (5)
 *
 * @param shape  the vessel's inside
 * @param level  h, above the lowest inside point [m]
 * @returns V [m³]; 0 below the bottom, the capacity above the brim
 * @valid 0 to heightOfVessel
 * @throws RangeError as heightOfVessel, or when level is not a number
 * @source closed-form, solid geometry; rows by fritsch-butland-1984
 * @example volumeAtLevel({ kind: "lying", diameter: 0.57, length: 0.85 }, 0.285)   // 0.10845
 */
export function volumeAtLevel(shape: VesselShape, level: number): number {
  const h = levelWithin("volumeAtLevel", shape, level);
  switch (shape.kind) {
    case "upright":
      return (Math.PI / 4) * shape.diameter ** 2 * h;
    case "lying":
      return shape.length * segmentArea(shape.diameter, h);
    case "tapered": {
      const bottom = shape.bottomDiameter / 2;
      const top = radiusOfTapered(shape, h);
      return (Math.PI / 3) * h * (bottom * bottom + bottom * top + top * top);
    }
    case "box":
      return shape.length * shape.width * h;
    case "table":
      return curveOfTable(shape).at(h);
  }
}

/**
 * Level of water in a vessel that holds a volume.
 *
 *   upright, box: h = V/A                                                   (1)
 *   tapered: h = 3V/[π (r₀² + r₀ r + r²)],  r³ = r₀³ + 3 k V/π,  k = (r₁ − r₀)/H      (2)
 *   lying, table: the root of volumeAtLevel(h) = V, to rounding             (3)
 *
 * @param shape   the vessel's inside
 * @param volume  V [m³]
 * @returns h, above the lowest inside point [m]; 0 for less than nothing, the height for more than the capacity
 * @valid 0 to capacityOfVessel
 * @throws RangeError as heightOfVessel, or when volume is not a number
 * @source closed-form, equations of volumeAtLevel solved for h; root by chandrupatla-1997
 * @example levelAtVolume({ kind: "box", length: 0.5, width: 0.4, height: 0.3 }, 0.02)   // 0.1
 */
export function levelAtVolume(shape: VesselShape, volume: number): number {
  requireShape("levelAtVolume", shape);
  const height = heightWithin(shape);
  if (Number.isNaN(volume)) throw new RangeError("levelAtVolume: volume is NaN; it must be a number");
  if (volume <= 0) return 0;
  if (volume >= capacityOfVessel(shape)) return height;
  switch (shape.kind) {
    case "upright":
      return volume / ((Math.PI / 4) * shape.diameter ** 2);
    case "box":
      return volume / (shape.length * shape.width);
    case "tapered": {
      const bottom = shape.bottomDiameter / 2;
      const widening = (shape.topDiameter / 2 - bottom) / shape.height;
      const top = Math.cbrt(bottom ** 3 + (3 * widening * volume) / Math.PI);
      return (3 * volume) / (Math.PI * (bottom * bottom + bottom * top + top * top));
    }
    case "lying":
    case "table":
      return findRoot((level) => volumeAtLevel(shape, level) - volume, 0, height).root;
  }
}

/**
 * Area of the free surface of water in a vessel, dV/dh.
 *
 *   upright: π D²/4;  lying: 2 L √[h (D − h)];  tapered: π r²;  box: l w;  table: slope of the curve   (1)
 *
 * @param shape  the vessel's inside
 * @param level  h, above the lowest inside point [m]
 * @returns area [m²]; beyond bottom or brim, that at the bottom or brim; 0 at both for a lying cylinder
 * @valid 0 to heightOfVessel
 * @throws RangeError as heightOfVessel, or when level is not a number
 * @source closed-form, derivative of volumeAtLevel
 * @example surfaceAtLevel({ kind: "lying", diameter: 0.57, length: 0.85 }, 0.285)   // 0.4845
 */
export function surfaceAtLevel(shape: VesselShape, level: number): number {
  const h = levelWithin("surfaceAtLevel", shape, level);
  switch (shape.kind) {
    case "upright":
      return (Math.PI / 4) * shape.diameter ** 2;
    case "lying":
      return 2 * shape.length * Math.sqrt(h * (shape.diameter - h));
    case "tapered":
      return Math.PI * radiusOfTapered(shape, h) ** 2;
    case "box":
      return shape.length * shape.width;
    case "table":
      return curveOfTable(shape).slopeAt(h);
  }
}

/**
 * Area of wall and bottom that water touches.
 *
 *   upright: π D²/4 + π D h                                                 (1)
 *   lying:   L R θ + R² (θ − sin θ), both ends counted                      (2)
 *   tapered: π r₀² + π (r₀ + r) √[h² + (r − r₀)²]                           (3)
 *   box:     l w + 2 (l + w) h                                              (4)
 *   table:   as a round vessel of the same surface at each row, coned between rows (an estimate: the rows
 *            do not say how the wall runs)                                  (5)
 *
 * @param shape  the vessel's inside
 * @param level  h, above the lowest inside point [m]
 * @returns area [m²]; 0 in an empty vessel
 * @valid 0 to heightOfVessel
 * @throws RangeError as heightOfVessel, or when level is not a number
 * @source closed-form, solid geometry
 * @example wettedAreaAtLevel({ kind: "box", length: 0.5, width: 0.4, height: 0.3 }, 0.1)   // 0.38
 */
export function wettedAreaAtLevel(shape: VesselShape, level: number): number {
  const h = levelWithin("wettedAreaAtLevel", shape, level);
  if (h === 0) return 0;
  switch (shape.kind) {
    case "upright":
      return Math.PI * shape.diameter * (shape.diameter / 4 + h);
    case "lying":
      return (
        (shape.length * shape.diameter * segmentAngle(shape.diameter, h)) / 2 +
        2 * segmentArea(shape.diameter, h)
      );
    case "tapered": {
      const bottom = shape.bottomDiameter / 2;
      return Math.PI * bottom ** 2 + coneArea([bottom, radiusOfTapered(shape, h)], h);
    }
    case "box":
      return shape.length * shape.width + 2 * (shape.length + shape.width) * h;
    case "table":
      return wettedAreaOfTable(shape, h);
  }
}

/** Outer surface of a frustum of a cone without its ends, from the radii of both. */
const coneArea = ([one, other]: readonly [number, number], height: number): number =>
  Math.PI * (one + other) * Math.hypot(height, other - one);

/** Curves of tables met, each built once: a vessel is asked for thousands of levels, and shapes never change. */
const CURVES = new WeakMap<VesselShape, MonotoneCurve>();

function curveOfTable(shape: VesselShape & { kind: "table" }): MonotoneCurve {
  const known = CURVES.get(shape);
  if (known !== undefined) return known;
  const curve = buildMonotoneCurve(shape.levels, shape.volumes);
  CURVES.set(shape, curve);
  return curve;
}

function wettedAreaOfTable(shape: VesselShape & { kind: "table" }, level: number): number {
  const curve = curveOfTable(shape);
  const radiusAt = (h: number): number => Math.sqrt(curve.slopeAt(h) / Math.PI);
  let area = curve.slopeAt(0);
  for (let row = 1; row < shape.levels.length && shape.levels[row - 1]! < level; row++) {
    const below = shape.levels[row - 1]!;
    const above = Math.min(shape.levels[row]!, level);
    area += coneArea([radiusAt(below), radiusAt(above)], above - below);
  }
  return area;
}

function radiusOfTapered(shape: VesselShape & { kind: "tapered" }, level: number): number {
  const share = level / shape.height;
  return (shape.bottomDiameter * (1 - share) + shape.topDiameter * share) / 2;
}

/** θ, the angle that the water's chord subtends at the centre of a round section. */
const segmentAngle = (diameter: number, level: number): number =>
  4 * Math.asin(Math.min(1, Math.sqrt(level / diameter)));

function segmentArea(diameter: number, level: number): number {
  return (diameter * diameter * angleLessItsSine(segmentAngle(diameter, level))) / 8;
}

/** θ − sin θ; by its series where the difference would lose digits. */
function angleLessItsSine(angle: number): number {
  if (angle > 0.5) return angle - Math.sin(angle);
  const square = angle * angle;
  let term = (angle * square) / 6;
  let sum = term;
  for (let n = 4; Math.abs(term) > Number.EPSILON * sum; n += 2) {
    term *= -square / (n * (n + 1));
    sum += term;
  }
  return sum;
}

function levelWithin(owner: string, shape: VesselShape, level: number): number {
  requireShape(owner, shape);
  if (Number.isNaN(level)) throw new RangeError(`${owner}: level is NaN; it must be a number`);
  return Math.min(Math.max(level, 0), heightWithin(shape));
}

function requireShape(owner: string, shape: VesselShape): void {
  if (shape.kind === "table") {
    requireTable(owner, shape.levels, shape.volumes);
    return;
  }
  const { kind: _, ...dimensions } = shape;
  requirePositive(owner, dimensions);
}

function requireTable(owner: string, levels: readonly number[], volumes: readonly number[]): void {
  if (levels.length !== volumes.length || levels.length < 2 || levels[0] !== 0 || volumes[0] !== 0) {
    throw new RangeError(`${owner}: a table needs as many levels as volumes, two or more, both from 0`);
  }
  for (let row = 1; row < levels.length; row++) {
    requireNotNegative(owner, { level: levels[row]!, volume: volumes[row]! });
    if (!(levels[row]! > levels[row - 1]! && volumes[row]! > volumes[row - 1]!)) {
      throw new RangeError(`${owner}: row ${row} of the table does not rise above the row before it`);
    }
  }
}
