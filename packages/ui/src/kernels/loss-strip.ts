import type { FrictionLaw } from "@headfall/hydraulics";
import { cutTo } from "./cut-to.js";
import type { LinearScale } from "./linear-scale.js";
import { otherLaw as lawBeside } from "./other-law.js";
import type { ProfileRequest, Spot } from "./profile-request.js";

/**
 * The head lost on the way, on a strip of its own: losses are millimetres where heights are metres, so they are
 * drawn to a scale of their own, which is stated.
 */
export interface LossStrip {
  readonly top: number;
  readonly bottom: number;
  /** Loss up to each point of the path, downwards from the top; by the law the plan shows first, and by the other. */
  readonly shown: readonly Spot[];
  readonly other: readonly Spot[];
  readonly shownLaw: FrictionLaw;
  readonly otherLaw: FrictionLaw;
  /** Loss at the end of the path by each law [m]. */
  readonly shownLoss: number;
  readonly otherLoss: number;
  /** How many times larger losses are drawn than lengths. */
  readonly exaggeration: number;
}

/** Losses smaller than this over the whole path [m] are drawn as none, lest rounding be drawn as a slope. */
const NO_LOSS = 1e-6;

/** Lays the strip between `top` and `top + height`; `x` puts a distance along the pipe on the drawing. */
export function layLossStrip(
  { checked, path, moment }: ProfileRequest,
  x: LinearScale,
  top: number,
  height: number,
): LossStrip {
  const shownLaw = checked.friction;
  const otherLaw = lawBeside(shownLaw);
  const surface = checked.sources[path.source]!.surface[moment];
  const losses = (law: FrictionLaw) =>
    path.points.map((point) => Math.max(0, surface - checked.solutions[moment][law].head[point]!));
  const shown = losses(shownLaw);
  const other = losses(otherLaw);
  const most = Math.max(...shown, ...other, 0);
  const base = top + 18;
  const bottom = top + height - 4;
  const perMetre = most > NO_LOSS ? (bottom - base) / most : 0;
  const spots = (values: readonly number[]): Spot[] =>
    cutTo(
      values.map((loss, i) => ({ x: x(path.along[i]!), y: base + loss * perMetre })),
      x.range,
    );
  return {
    top: base,
    bottom,
    shown: spots(shown),
    other: spots(other),
    shownLaw,
    otherLaw,
    shownLoss: shown[shown.length - 1] ?? 0,
    otherLoss: other[other.length - 1] ?? 0,
    exaggeration: perMetre / (x(1) - x(0)),
  };
}
