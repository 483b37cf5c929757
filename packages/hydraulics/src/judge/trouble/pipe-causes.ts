import { type Line, SEGMENT_KIND } from "../../model/line.js";
import { DISCHARGE_COEFFICIENT } from "../../physics/orifice.js";
import type { Bench } from "./bench.js";
import { runAt, type Supposition } from "./mishap-causes.js";
import type { Sign } from "./signs.js";
import type { Trial } from "./trial.js";

/** Open share of the bore where something sits in the pipe; these drinker-line flows notice nothing wider. */
const OPEN_SHARES = [
  { openShare: 0, weight: 0.5 },
  { openShare: 0.004, weight: 0.2 },
  { openShare: 0.012, weight: 0.15 },
  { openShare: 0.04, weight: 0.15 },
] as const;

/** A stoppage at the start of a run, where its strainer, tap and couplings are, is this much likelier than elsewhere. */
const START_WEIGHT = 4;

/** Places along a run at which a stoppage is tried, besides those next to drinkers that were looked at. */
const MOST_PLACES = 8;

/**
 * Something in the pipe of a run: a kink, a plug of slime, a clogged strainer, ice. Tried shut and nearly shut, at its
 * start and between its drinkers.
 */
export function supposeStoppage(bench: Bench, run: number, signs: readonly Sign[]): Supposition {
  const { line } = bench;
  const places = placesAlong(line, run, signs);
  const total = places.length - 1 + START_WEIGHT;
  const trials = places.flatMap((segment, k) =>
    OPEN_SHARES.map(({ openShare, weight }): Trial => {
      const isShut = openShare === 0;
      return {
        weight: (weight * (k === 0 ? START_WEIGHT : 1)) / total,
        severity: { openShare, along: alongOf(line, run, segment) },
        line: isShut ? withShutAt(line, segment) : withNarrow(line, segment, openShare),
        isAlike: !isShut,
      };
    }),
  );
  return { cause: { code: "runBlocked", ...runAt(line, run) }, trials };
}

/** Segments of a run that are pipe: its first, some evenly along it, and those before and behind what was looked at. */
function placesAlong({ runs, segments, drinkers }: Line, run: number, signs: readonly Sign[]): number[] {
  const { firstSegment, segmentCount, points } = runs[run];
  const pipes: number[] = [];
  for (let s = firstSegment; s < firstSegment + segmentCount; s += 1)
    if (segments.kind[s] === SEGMENT_KIND.pipe) pipes.push(s);
  const chosen = new Set<number>([0]);
  const count = Math.min(MOST_PLACES, pipes.length);
  for (let k = 1; k < count; k += 1) chosen.add(Math.floor((k * pipes.length) / count));
  const looked = new Set(signs.flatMap((sign) => (sign.at === "drinker" ? [sign.id] : [])));
  for (let d = 0; d < drinkers.count; d += 1) {
    if (drinkers.run[d] !== run || !looked.has(drinkers.id[d])) continue;
    const before = points.indexOf(drinkers.point[d]) - 1;
    for (const k of [before, before + 1]) if (k > 0 && k < pipes.length) chosen.add(k);
  }
  return [...chosen].sort((a, b) => a - b).map((k) => pipes[k]);
}

function alongOf({ runs, segments }: Line, run: number, segment: number): number {
  const { points, along } = runs[run];
  const k = points.indexOf(segments.from[segment]);
  return k < 0 ? 0 : along[k];
}

export function withShutAt(line: Line, segment: number): Line {
  const shut = line.segments.shut.slice();
  shut[segment] = 1;
  return { ...line, segments: { ...line.segments, shut } };
}

/**
 * A narrow place as a sharp-edged orifice: K = (1 / (C_d a))^2 velocity heads of the pipe, a its open share.
 *
 * @source unwin-1911, article Hydraulics, seen
 */
export function withNarrow(line: Line, segment: number, openShare: number): Line {
  const kInfinity = line.segments.kInfinity.slice();
  kInfinity[segment] += (1 / (DISCHARGE_COEFFICIENT.sharp * openShare)) ** 2;
  return { ...line, segments: { ...line.segments, kInfinity } };
}
