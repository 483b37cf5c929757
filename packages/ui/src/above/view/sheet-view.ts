import { svg } from "lit";
import { gridStep, scaleBar } from "../../kernels/above/scale-bar.js";
import type { Viewport } from "../../kernels/above/viewport.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Least distance between lines of the grid, and the widest scale bar [px]. */
const GRID = 26;
const BAR = 110;

/** A light grid in the user's own units, as on squared paper. */
export function gridView(view: Viewport, { width, height }: Size, system: UnitSystem) {
  const step = gridStep(view.scale, system, GRID) * view.scale;
  const upright = linesFrom(view.left, step, width).map((x) => `M${x} 0V${height}`);
  const level = linesFrom(view.top, step, height).map((y) => `M0 ${y}H${width}`);
  return svg`<path class="grid" d=${[...upright, ...level].join("")}></path>`;
}

function linesFrom(origin: number, step: number, end: number): number[] {
  const first = ((origin % step) + step) % step;
  return Array.from(
    { length: Math.max(0, Math.ceil((end - first) / step)) },
    (_, i) => Math.round((first + i * step) * 10) / 10,
  );
}

/** How long a length is on the drawing. */
export function scaleBarView({ scale }: Viewport, { height }: Size, system: UnitSystem) {
  const { width, words } = scaleBar(scale, system, BAR);
  return svg`<g class="scale" transform="translate(14 ${height - 16})">
    <path class="bar" d="M0 -6V0H${width}V-6"></path>
    <text class="label" x=${width + 8} y="2">${words}</text>
  </g>`;
}
