import { type WatererReport, writeTilt } from "@headfall/hydraulics";
import { nothing, svg } from "lit";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { pictureOf, type Spot, type WatererPicture } from "../kernels/yard/waterer-picture.js";

const SIZE = { width: 300, height: 190 } as const;

const points = (spots: readonly Spot[]): string => spots.map((spot) => spot.join(",")).join(" ");

/** Room under what is drawn [px]. */
const BELOW = 22;

/** A dish or a pan is lower than a fount, and needs less of a picture. */
function heightOf({ walls, pins, drops, height }: WatererPicture): number {
  const lowest = Math.max(...[...walls, ...pins, drops].flat().map(([, y]) => y));
  return Math.min(height, Math.ceil(lowest + BELOW));
}

/** A waterer cut along the slope it stands on, downhill to the right, with its water at rest. */
export function pictureView(report: WatererReport, system: UnitSystem) {
  const picture = pictureOf(report.waterer, report.tilt, SIZE);
  const { width, ground, limit, walls, water, level, hole, drops, cord, pins } = picture;
  const height = heightOf(picture);
  return svg`<svg class="picture" viewBox="0 0 ${width} ${height}" role="img" aria-label="Cut along the slope, downhill to the right. ${writeTilt(report, system)}">
    ${report.waterer.kind.hangs ? nothing : svg`<polyline class="ground" points=${points(ground)}></polyline>`}
    ${limit === undefined ? nothing : svg`<polyline class="limit" points=${points(limit)}></polyline>`}
    ${water.filter((shape) => shape.length > 2).map((shape) => svg`<polygon class="water" points=${points(shape)}></polygon>`)}
    ${walls.map((wall) => svg`<polyline class="wall" points=${points(wall)}></polyline>`)}
    ${pins.map((pin) => svg`<polyline class="pin" points=${points(pin)}></polyline>`)}
    ${level === undefined ? nothing : svg`<polyline class="level" points=${points(level)}></polyline>`}
    ${cord === undefined ? nothing : svg`<polyline class="cord" points=${points(cord)}></polyline>`}
    ${hole === undefined ? nothing : svg`<circle class="hole" cx=${hole[0]} cy=${hole[1]} r="3.5"></circle>`}
    ${drops.map(([x, y]) => svg`<circle class="drop" cx=${x} cy=${y} r="3"></circle>`)}
  </svg>`;
}
