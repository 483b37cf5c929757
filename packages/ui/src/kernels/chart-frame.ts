/** The part of a chart that its values are drawn in [px]; y down. */
export interface Plot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What every chart has: its size, and where on it the values are [px]. */
export interface ChartFrame {
  readonly width: number;
  readonly height: number;
  readonly plot: Plot;
}

/** A chart of a size, with so much left on each side for axes and words [px]. */
export const frameWithin = (width: number, height: number, margin: Plot): ChartFrame => ({
  width,
  height,
  plot: {
    left: margin.left,
    right: width - margin.right,
    top: margin.top,
    bottom: height - margin.bottom,
  },
});

/** A line from point to point as the path of an SVG, to a tenth of a pixel. */
export const pathThrough = (points: readonly { readonly x: number; readonly y: number }[]): string =>
  points.map(({ x, y }, k) => `${k === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`).join("");
