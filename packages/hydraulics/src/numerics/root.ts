/** Why a search for a root ended. */
export type RootOutcome =
  /** The bracket has shrunk to the tolerance, or a residual is exactly nought. */
  | "found"
  /** The ends do not differ in sign: no root is promised between them. */
  | "no-bracket"
  /** The allowed evaluations are used up; root and bracket are the best so far. */
  | "spent"
  /** The function gave a value that is no number, at `root`. */
  | "not-a-number";

/** What a search for a root found, with the evidence. */
export interface RootResult {
  readonly outcome: RootOutcome;
  /** The point of least residual seen. */
  readonly root: number;
  /** The function there. */
  readonly residual: number;
  /** Both ends still known to enclose a change of sign, lower first. */
  readonly bracket: readonly [number, number];
  /** How often the function was called. */
  readonly evaluations: number;
}

/** When to stop. */
export interface RootOptions {
  /** Width of bracket that is narrow enough; unless given, 5e-32 of the larger end, so that a root at 0 ends too. */
  readonly tolerance?: number;
  /** Most calls of the function; 200 unless given. */
  readonly evaluationsAllowed?: number;
}

/**
 * Root of a continuous function between two ends where its sign differs.
 *
 *   x = x₁ + t (x₂ − x₁),  t by inverse quadratic interpolation where ξ and φ permit, else t = 1/2      (1)
 *   interpolation is taken when  φ² < ξ  and  (1 − φ)² < 1 − ξ                                         (2)
 *
 * @param residual  the function
 * @param from      one end
 * @param to        the other end; either may be the larger
 * @param options   tolerance and evaluationsAllowed; unless told, the root is found to rounding
 * @returns the root with its residual, bracket, count of evaluations, and why the search ended
 * @valid any continuous function; a jump through nought is reported as its place
 * @throws RangeError when an end is not finite, the tolerance is negative, or fewer than 3 evaluations are allowed
 * @source chandrupatla-1997, the algorithm of section 3, from memory
 * @example findRoot((x) => x * x - 2, 0, 2).root   // 1.414213562
 */
// biome-ignore lint/complexity/noExcessiveLinesPerFunction: a kernel; the steps of the paper follow one another on six numbers
export function findRoot(
  residual: (x: number) => number,
  from: number,
  to: number,
  options: RootOptions = {},
): RootResult {
  const tolerance = options.tolerance ?? Number.EPSILON ** 2 * Math.max(Math.abs(from), Math.abs(to));
  const allowed = options.evaluationsAllowed ?? 200;
  requireSearch({ from, to, tolerance, allowed });

  // The ends: x1 is the newest point, x2 the end across the change of sign, x3 the one last discarded.
  let x1 = from;
  let x2 = to;
  let f1 = residual(x1);
  let f2 = residual(x2);
  let evaluations = 2;
  const result = (outcome: RootOutcome): RootResult => {
    const firstIsBest = Number.isNaN(f1) || (!Number.isNaN(f2) && Math.abs(f1) <= Math.abs(f2));
    return {
      outcome,
      root: firstIsBest ? x1 : x2,
      residual: firstIsBest ? f1 : f2,
      bracket: x1 < x2 ? [x1, x2] : [x2, x1],
      evaluations,
    };
  };
  if (Number.isNaN(f1) || Number.isNaN(f2)) return result("not-a-number");
  if (f1 === 0 || f2 === 0) return result("found");
  if (f1 > 0 === f2 > 0) return result("no-bracket");

  let t = 0.5;
  while (evaluations < allowed) {
    // Step 1: a new point, and which end it replaces.
    const x = x1 + t * (x2 - x1);
    const f = residual(x);
    evaluations++;
    let x3 = x1;
    let f3 = f1;
    if (!(f > 0 === f1 > 0)) {
      x3 = x2;
      f3 = f2;
      x2 = x1;
      f2 = f1;
    }
    x1 = x;
    f1 = f;
    if (Number.isNaN(f)) return result("not-a-number");

    // Step 2: stop when the bracket is as narrow as rounding or the tolerance asks.
    const nearest = Math.abs(f1) < Math.abs(f2) ? x1 : x2;
    const width = 2 * Number.EPSILON * Math.abs(nearest) + tolerance / 2 + Number.MIN_VALUE;
    const least = width / Math.abs(x2 - x1);
    if (f1 === 0 || f2 === 0 || least >= 0.5) return result("found");

    // Step 3: interpolate where conditions (2) show that the three points bend gently, else halve.
    t = interpolated(x1, x2, x3, f1, f2, f3) ?? 0.5;
    t = Math.min(Math.max(t, least), 1 - least);
  }
  return result("spent");
}

function interpolated(
  x1: number,
  x2: number,
  x3: number,
  f1: number,
  f2: number,
  f3: number,
): number | undefined {
  const xi = (x1 - x2) / (x3 - x2);
  const phi = (f1 - f2) / (f3 - f2);
  if (!(phi * phi < xi && (1 - phi) ** 2 < 1 - xi)) return undefined;
  const t =
    (f1 / (f2 - f1)) * (f3 / (f2 - f3)) + ((x3 - x1) / (x2 - x1)) * (f1 / (f3 - f1)) * (f2 / (f3 - f2));
  return Number.isFinite(t) ? t : undefined;
}

function requireSearch(search: {
  readonly from: number;
  readonly to: number;
  readonly tolerance: number;
  readonly allowed: number;
}): void {
  const { from, to, tolerance, allowed } = search;
  if (!Number.isFinite(from) || !Number.isFinite(to)) {
    throw new RangeError(`findRoot: the ends are ${from} and ${to}; both must be finite`);
  }
  if (!(tolerance >= 0)) throw new RangeError(`findRoot: tolerance is ${tolerance}; it must not be below 0`);
  if (!(allowed >= 3))
    throw new RangeError(`findRoot: evaluationsAllowed is ${allowed}; it must be 3 or more`);
}
