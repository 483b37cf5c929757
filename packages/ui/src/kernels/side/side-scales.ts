import type { ProfileLayout } from "../profile-layout.js";

/** The scales of a drawing from the side, both ways. */
export interface SideScales {
  x(along: number): number;
  y(height: number): number;
  alongAt(x: number): number;
  heightAt(y: number): number;
  /** Pixels for one metre up, and for one metre along. */
  readonly perMetreUp: number;
  readonly perMetreAlong: number;
}

/** Reads the scales off a layout. */
export function scalesOf({
  plot,
  heights,
  window,
}: Pick<ProfileLayout, "plot" | "heights" | "window">): SideScales {
  const perMetreUp = (plot.bottom - plot.top) / (heights[1] - heights[0]);
  const perMetreAlong = (plot.right - plot.left) / (window[1] - window[0]);
  return {
    x: (along) => plot.left + (along - window[0]) * perMetreAlong,
    y: (height) => plot.bottom - (height - heights[0]) * perMetreUp,
    alongAt: (x) => window[0] + (x - plot.left) / perMetreAlong,
    heightAt: (y) => heights[0] + (plot.bottom - y) / perMetreUp,
    perMetreUp,
    perMetreAlong,
  };
}
