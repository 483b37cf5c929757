import { requireNotNegative, requirePositive } from "../numerics/require-number.js";

/** Steps of the sum over the depth of a tapered pan, and how far it reaches: enough for twelve figures. */
const STEPS = 80;
const REACH = 3.2;

/**
 * Water over a flat round floor under a level surface, where the floor slopes: dry where the surface meets the floor.
 *
 *   V = ∫ max(0, d + x tan θ) dA over the floor, x from its middle, downhill                                (1)
 *     = d A + (2/3) tan θ (R² − b²)^1.5,  A = R² (π/2 + asin(b/R)) + b √(R² − b²),  b = d / tan θ           (2)
 *
 * @param pool.radius  R, of the floor [m], > 0
 * @param pool.depth   d, over the middle of the floor, at right angles to it [m]; below 0 where the middle is dry
 * @param pool.slope   tan θ, >= 0
 * @returns V [m³]
 * @valid upright round walls that nothing runs over
 * @throws RangeError when radius is not finite and positive or slope negative
 * @source beyer-crc, wedge of a cylinder, from memory
 * @example waterOverSlopingFloor({ radius: 0.165, depth: 0.1, slope: 0 })   // 0.008553
 */
export function waterOverSlopingFloor(pool: {
  readonly radius: number;
  readonly depth: number;
  readonly slope: number;
}): number {
  const { radius, depth, slope } = pool;
  requirePositive("waterOverSlopingFloor", { "pool.radius": radius });
  requireNotNegative("waterOverSlopingFloor", { "pool.slope": slope });
  if (depth >= radius * slope) return Math.PI * radius ** 2 * depth;
  if (depth <= -radius * slope) return 0;
  const toDry = depth / slope;
  const half = Math.sqrt(radius ** 2 - toDry ** 2);
  const wet = radius ** 2 * (Math.PI / 2 + Math.asin(toDry / radius)) + toDry * half;
  return Math.max(0, depth * wet + (2 / 3) * slope * half ** 3);
}

/**
 * Water that stays in a round pan with upright walls on a slope, filled till it runs over the lowest lip.
 *
 *   V = waterOverSlopingFloor with d = H − R tan θ                                                          (1)
 *   which is π R² (H − R tan θ) while the floor is covered                                                  (2)
 *
 * @param pan.radius  R, inside [m], > 0
 * @param pan.depth   H, inside [m], > 0
 * @param pan.slope   tan θ of what it stands on, >= 0
 * @returns V [m³]
 * @valid any slope; surface tension holds a millimetre or two more, and a bump spills it
 * @throws RangeError when radius or depth is not finite and positive or slope negative
 * @source beyer-crc, wedge of a cylinder, from memory
 * @example waterInTiltedPan({ radius: 0.165, depth: 0.1, slope: 0.08749 })   // 0.007318
 */
export function waterInTiltedPan(pan: {
  readonly radius: number;
  readonly depth: number;
  readonly slope: number;
}): number {
  const { radius, depth, slope } = pan;
  requirePositive("waterInTiltedPan", { "pan.depth": depth });
  return waterOverSlopingFloor({ radius, depth: depth - radius * slope, slope });
}

/**
 * Water that stays in a pan that widens upwards, on a slope, filled till it runs over the lowest lip.
 *
 *   V = ∫₀ᴴ A(z) dz,  A: the part of the disc of radius r(z) with x > R − (H − z) / tan θ                    (1)
 *   summed at z = (a + b)/2 + (b − a)/2 tanh(π/2 sinh u), by equal steps of u, from the depth a where the
 *   surface leaves the wall to the lip                                                                      (2)
 *
 * @param pan.floor  radius of the floor [m], > 0
 * @param pan.rim    R, radius at the lip [m], > 0
 * @param pan.depth  H, inside [m], > 0
 * @param pan.slope  tan θ of what it stands on, >= 0
 * @returns V [m³], to ten figures
 * @valid any slope; walls no flatter than the surface on the low side
 * @throws RangeError when a size is not finite and positive or slope negative
 * @source closed-form, solid of discs cut by a plane, derived
 * @example waterInTiltedTaper({ floor: 0.17, rim: 0.2, depth: 0.1, slope: 0 })   // 0.010776
 */
export function waterInTiltedTaper(pan: {
  readonly floor: number;
  readonly rim: number;
  readonly depth: number;
  readonly slope: number;
}): number {
  const { floor, rim, depth, slope } = pan;
  requirePositive("waterInTiltedTaper", { "pan.floor": floor, "pan.rim": rim, "pan.depth": depth });
  requireNotNegative("waterInTiltedTaper", { "pan.slope": slope });
  if (slope === 0) return (Math.PI * depth * (floor ** 2 + floor * rim + rim ** 2)) / 3;
  const widening = (rim - floor) / depth;
  const radiusAt = (z: number) => floor + widening * z;
  const dryTo = (z: number) => rim - (depth - z) / slope;
  const within = (z: number) => Math.min(depth, Math.max(0, z));
  // The surface leaves the wall where dryTo = -r on the high side, and meets it again at the lip, dryTo = r.
  const allWet = within((depth - (rim + floor) * slope) / (1 + widening * slope));
  const top = radiusAt(allWet);
  const below = (Math.PI * allWet * (floor ** 2 + floor * top + top ** 2)) / 3;
  return below + integrate((z) => segment(radiusAt(z), dryTo(z)), allWet, depth);
}

/** Area of the part of a disc beyond a chord at x. */
function segment(radius: number, x: number): number {
  if (x <= -radius) return Math.PI * radius ** 2;
  if (x >= radius) return 0;
  return radius ** 2 * Math.acos(x / radius) - x * Math.sqrt(radius ** 2 - x ** 2);
}

/** The rule of (2), which bends of the integrand at either end do not disturb. */
function integrate(of: (z: number) => number, from: number, to: number): number {
  if (to <= from) return 0;
  const [middle, half] = [(from + to) / 2, (to - from) / 2];
  const step = (2 * REACH) / STEPS;
  let sum = 0;
  for (let k = 0; k <= STEPS; k++) {
    const u = k * step - REACH;
    const inner = (Math.PI / 2) * Math.sinh(u);
    const weight = ((Math.PI / 2) * Math.cosh(u)) / Math.cosh(inner) ** 2;
    sum += of(middle + half * Math.tanh(inner)) * weight;
  }
  return sum * half * step;
}

/**
 * Water that stays in a box-shaped trough along a slope, filled till it runs over the lower end.
 *
 *   V = W L (H − L tan θ / 2) while the floor is covered, else W H² / (2 tan θ)                             (1)
 *
 * @param trough.length  L, inside, along the slope [m], > 0
 * @param trough.width   W, inside [m], > 0
 * @param trough.depth   H, inside [m], > 0
 * @param trough.slope   tan θ along its length, >= 0
 * @returns V [m³]
 * @valid any slope; turned across the slope, length and width change places
 * @throws RangeError when a size is not finite and positive or slope negative
 * @source closed-form, wedge of a box, derived
 * @example waterInTiltedTrough({ length: 0.9, width: 0.15, depth: 0.09, slope: 0.08749 })   // 0.006835
 */
export function waterInTiltedTrough(trough: {
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  readonly slope: number;
}): number {
  const { length, width, depth, slope } = trough;
  requirePositive("waterInTiltedTrough", {
    "trough.length": length,
    "trough.width": width,
    "trough.depth": depth,
  });
  requireNotNegative("waterInTiltedTrough", { "trough.slope": slope });
  if (length * slope <= depth) return width * length * (depth - (length * slope) / 2);
  return (width * depth ** 2) / (2 * slope);
}
