import type { Line } from "../../model/line.js";
import { pressureSurfaceAt } from "../../model/moment.js";
import { withMishap } from "../../model/with-mishap.js";
import type { Bench } from "./bench.js";
import type { Trial } from "./trial.js";

/** How much of what a source could still give is gone already, and how likely each is of these. */
const GONE = [
  { share: 0.4, weight: 0.25 },
  { share: 0.75, weight: 0.35 },
  { share: 1, weight: 0.4 },
] as const;

/** The same line with less water in one source than was thought, down to none that it can give. */
export function waterTrials(
  { line, levels }: Bench,
  source: number,
  also: Pick<Trial, "notFilled"> = {},
): Trial[] {
  const { outlet } = line.sources[source];
  const [now, bottom] = [levels[source], Math.min(levels[source], outlet)];
  return GONE.map(({ share, weight }) => {
    const level = now - share * (now - bottom);
    const isEmpty = level <= outlet;
    return {
      ...also,
      weight,
      severity: { below: now - level },
      line: isEmpty ? withEmptySource(line, source) : line,
      isAlike: !isEmpty,
      levels: levels.map((one, i) => (i === source ? level : one)),
    };
  });
}

/** The line when the outlet of a source has come clear of the water: air stands in it, and nothing passes. */
export function withEmptySource(line: Line, source: number): Line {
  const { from, to, shut } = line.segments;
  const { point } = line.sources[source];
  const cut = shut.map((isShut, s) => (from[s] === point || to[s] === point ? 1 : isShut));
  return { ...line, segments: { ...line.segments, shut: cut } };
}

/** Of what stood over the height at which a closed source stalls, the share that still presses when it is looked at. */
const STILL_PRESSING = [
  { share: 0, weight: 0.6 },
  { share: 0.12, weight: 0.4 },
] as const;

/**
 * No air gets into a source any more: the water that has left since has thinned the air over the rest until next to
 * nothing presses. It has stalled, or gives a little as it gulps.
 */
export function stalledTrials({ line, levels }: Bench, source: number): Trial[] {
  const closed = withMishap(line, { kind: "ventBlocked", source });
  const heads = Float64Array.from(line.sources, (one, i) => pressureSurfaceAt(line, one, levels[i]));
  const lowest = line.drinkers.height.reduce((least, z) => Math.min(least, z), heads[source]);
  return STILL_PRESSING.map(({ share, weight }) => {
    const pressing = heads.slice();
    pressing[source] = lowest + share * (heads[source] - lowest);
    return { weight, severity: {}, line: closed, isAlike: true, heads: pressing };
  });
}
