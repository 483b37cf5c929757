import type { Leak, Line } from "../../model/line.js";
import type { Bench } from "./bench.js";
import type { Trial } from "./trial.js";

/**
 * Two things wrong at once: a trial with what each of two changes in the plan. Flows left in a drinker and losses put
 * into a pipe add up; what both would set otherwise cannot be both.
 *
 * @returns undefined where the two cannot be at once, or are not followed together: both change the same tap, the same
 * vessel, the birds, or take a joint apart
 */
export function mergeTrials(bench: Bench, a: Trial, b: Trial): Trial | undefined {
  if (standsInTheWay(bench, a, b) || standsInTheWay(bench, b, a)) return undefined;
  if (a.flock !== undefined && b.flock !== undefined) return undefined;
  if (a.spilt !== undefined && b.spilt !== undefined) return undefined;
  const line = mergeLines(bench.line, a.line, b.line);
  const levels = column(bench.levels, a.levels ?? bench.levels, b.levels ?? bench.levels);
  const atWork = column(bench.atWork, a.atWork ?? bench.atWork, b.atWork ?? bench.atWork);
  const notFilled = onlyOne(a.notFilled, b.notFilled);
  if (line === undefined || levels === undefined || atWork === undefined || notFilled === CONFLICT)
    return undefined;
  const [flock, heads, spilt] = [a.flock ?? b.flock, a.heads ?? b.heads, a.spilt ?? b.spilt];
  const airHead =
    a.airHead === undefined || b.airHead === undefined
      ? (a.airHead ?? b.airHead)
      : a.airHead.map((head, p) => head + (b.airHead?.[p] ?? 0));
  return {
    weight: a.weight * b.weight,
    severity: {},
    line,
    isAlike: a.isAlike && b.isAlike,
    levels,
    atWork,
    ...(flock === undefined ? {} : { flock }),
    ...(heads === undefined ? {} : { heads }),
    ...(spilt === undefined ? {} : { spilt }),
    ...(airHead === undefined ? {} : { airHead }),
    ...(notFilled === undefined ? {} : { notFilled }),
  };
}

/** Heads that one trial states are those of its own levels and vessels: the other must leave these alone. */
const standsInTheWay = ({ line }: Bench, a: Trial, b: Trial): boolean =>
  a.heads !== undefined &&
  (b.heads !== undefined || b.levels !== undefined || b.line.sources !== line.sources);

const CONFLICT = Symbol("both");

const onlyOne = (a: number | undefined, b: number | undefined) =>
  a !== undefined && b !== undefined && a !== b ? CONFLICT : (a ?? b);

/** What two lines each change in a third, in one; undefined where they set the same thing otherwise. */
function mergeLines(base: Line, a: Line, b: Line): Line | undefined {
  if (a === base || b === base) return a === base ? b : a;
  const [moreA, moreB] = [a, b].map(({ points }) => points.count - base.points.count);
  // Each joint apart has ends of its own behind the points of the plan.
  if (moreA > 0 && moreB > 0) return undefined;
  const segments = columns(base.segments, a.segments, b.segments);
  const unstuck = (line: Line) => line.drinkers.stuck ?? new Uint8Array(line.drinkers.count);
  const withStuck = (line: Line) => ({ ...line.drinkers, stuck: unstuck(line) });
  const drinkers = columns(withStuck(base), withStuck(a), withStuck(b));
  const sources = column(base.sources, a.sources, b.sources);
  if (segments === undefined || drinkers === undefined || sources === undefined) return undefined;
  const own = (line: Line): readonly Leak[] => (line.leaks ?? []).slice(base.leaks?.length ?? 0);
  const leaks = [...(base.leaks ?? []), ...own(a), ...own(b)];
  return {
    ...base,
    points: moreA > 0 ? a.points : b.points,
    segments,
    drinkers,
    sources,
    ...(leaks.length === 0 ? {} : { leaks }),
  };
}

/** How two changes of one figure add up, where they do. */
const ADDED: Readonly<Record<string, (base: number, a: number, b: number) => number>> = {
  coefficient: (base, a, b) => (base === 0 ? 0 : (a * b) / base),
  kInfinity: (base, a, b) => a + b - base,
};

function columns<T extends object>(base: T, a: T, b: T): T | undefined {
  const merged: Record<string, unknown> = {};
  for (const key of Object.keys(base) as (keyof T & string)[]) {
    const [was, one, other] = [base[key], a[key], b[key]];
    if (one === was || other === was) merged[key] = one === was ? other : one;
    else {
      const both = column(was as never, one as never, other as never, ADDED[key]);
      if (both === undefined) return undefined;
      merged[key] = both;
    }
  }
  return merged as T;
}

/** Place by place what either of two changed; undefined where both did, to something else, and nothing adds them up. */
function column<C extends ArrayLike<unknown> & { slice(): C }>(
  base: C,
  a: C,
  b: C,
  add?: (base: number, a: number, b: number) => number,
): C | undefined {
  if (a === base || b === base) return a === base ? b : a;
  const merged = a.slice() as unknown as { [place: number]: unknown };
  for (let i = 0; i < base.length; i += 1) {
    if (b[i] === base[i] || b[i] === a[i]) continue;
    if (a[i] === base[i]) merged[i] = b[i];
    else if (add === undefined) return undefined;
    else merged[i] = add(base[i] as number, a[i] as number, b[i] as number);
  }
  return merged as unknown as C;
}
