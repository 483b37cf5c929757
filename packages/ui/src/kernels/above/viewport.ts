import type { Ground } from "./spot.js";

/** A place on the drawing [px]: x to the right, y down. */
export interface Pixel {
  readonly x: number;
  readonly y: number;
}

/** How the ground lies on the drawing: pixels a metre, and where the ground's own (0, 0) is. */
export interface Viewport {
  readonly scale: number;
  readonly left: number;
  readonly top: number;
}

/** From a kilometre across a phone down to a centimetre the width of a finger [px per m]. */
export const LEAST_SCALE = 0.02;
export const MOST_SCALE = 2000;
/** Fitting never comes closer than this [px per m]: a barrel alone should not fill the sheet. */
const FITTED_SCALE = 160;
/** Ground shown around a plan that has no extent of its own [m]. */
const LEAST_SHOWN = 6;

/** The rectangle of the drawing that a plan is fitted into [px]. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly margin: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
}

export const toPixel = ({ scale, left, top }: Viewport, { x, y }: Ground): Pixel => ({
  x: left + x * scale,
  y: top - y * scale,
});

export const toGround = ({ scale, left, top }: Viewport, { x, y }: Pixel): Ground => ({
  x: (x - left) / scale,
  y: (top - y) / scale,
});

/** The view moved by so many pixels, as a sheet of paper under the hand. */
export const panBy = ({ scale, left, top }: Viewport, x: number, y: number): Viewport => ({
  scale,
  left: left + x,
  top: top + y,
});

/** The view enlarged `factor` times, within the limits; what lies under `at` stays under it. */
export function zoomAbout(view: Viewport, at: Pixel, factor: number): Viewport {
  const scale = withinScales(view.scale * factor);
  const times = scale / view.scale;
  return { scale, left: at.x - (at.x - view.left) * times, top: at.y - (at.y - view.top) * times };
}

/** The view in which two places of the ground come as near as can be to two places of the drawing: two fingers. */
export function viewThrough(
  ground: readonly [Ground, Ground],
  drawn: readonly [Pixel, Pixel],
  atLeastApart = 8,
): Viewport {
  const apart = Math.max(Math.hypot(ground[1].x - ground[0].x, ground[1].y - ground[0].y), 1e-9);
  const reach = Math.max(Math.hypot(drawn[1].x - drawn[0].x, drawn[1].y - drawn[0].y), atLeastApart);
  const scale = withinScales(reach / apart);
  const middle = { x: (ground[0].x + ground[1].x) / 2, y: (ground[0].y + ground[1].y) / 2 };
  return {
    scale,
    left: (drawn[0].x + drawn[1].x) / 2 - middle.x * scale,
    top: (drawn[0].y + drawn[1].y) / 2 + middle.y * scale,
  };
}

/** The closest view that shows all spots inside the frame's margins, in its middle. */
export function fitView(spots: readonly Ground[], { width, height, margin }: Frame): Viewport {
  const box = boxOf(spots);
  const inner = {
    width: Math.max(1, width - margin.left - margin.right),
    height: Math.max(1, height - margin.top - margin.bottom),
  };
  const extent = { width: box.right - box.left, height: box.top - box.bottom };
  const isPoint = Math.max(extent.width, extent.height) < 1e-6;
  const scale = isPoint
    ? Math.min(inner.width, inner.height) / LEAST_SHOWN
    : Math.min(inner.width / Math.max(extent.width, 1e-9), inner.height / Math.max(extent.height, 1e-9));
  const kept = withinScales(Math.min(scale, FITTED_SCALE));
  return {
    scale: kept,
    left: margin.left + inner.width / 2 - ((box.left + box.right) / 2) * kept,
    top: margin.top + inner.height / 2 + ((box.bottom + box.top) / 2) * kept,
  };
}

function boxOf(spots: readonly Ground[]) {
  if (spots.length === 0) return { left: 0, right: 0, bottom: 0, top: 0 };
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of spots) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return { left, right, bottom, top };
}

const withinScales = (scale: number): number => Math.min(MOST_SCALE, Math.max(LEAST_SCALE, scale));
