import { nothing, svg } from "lit";
import { layDayMarks, surfaceY } from "../kernels/day/day-marks.js";
import { levelAt } from "../kernels/day/short-birds.js";
import type { PlayedRoom } from "./room.js";

/** A bird from the side, its beak to the right, in a box from −1 to 1. */
const BIRD =
  "M-1 -0.3C-0.7 0.75 0.45 0.85 0.6 -0.05C0.65 -0.25 0.62 -0.3 0.68 -0.38L1 -0.5L0.7 -0.62A0.33 0.33 0 0 0 0.08 -0.62C0.05 -0.1 -0.5 0.05 -1 -0.3ZM-0.1 0.5V1M0.12 0.5V1";

export const birdAt = (x: number, y: number, isWaiting: boolean) =>
  svg`<path class="bird ${isWaiting ? "waits" : "drinks"}" d=${BIRD} transform="translate(${x} ${y}) scale(7)"></path>`;

/** Over the drawing: birds at drinkers and birds that wait, with their number where it is more than one, and where the water stands. */
export function marksView(room: PlayedRoom) {
  const { layout, index, moment } = room;
  if (layout === undefined) return nothing;
  const { atWork, waiting } = layDayMarks(layout, index, moment);
  return svg`<svg class="marks" viewBox="0 0 ${layout.width} ${layout.height}" width=${layout.width} height=${layout.height} aria-hidden="true">
    ${surfaceView(room)}
    ${atWork.map(
      ({ x, y, drinkerY, birds }) => svg`<path class="stem" d="M${x} ${y + 8}V${drinkerY}"></path>
        ${birdAt(x, y, false)}
        ${birds === 1 ? nothing : svg`<text class="halo" x=${x} y=${y - 8} text-anchor="middle">${birds}</text>`}`,
    )}
    ${waiting.map(
      ({ pen, birds, x, y }) => svg`${birdAt(x - 26, y, true)}
        <text class="halo" x=${x - 14} y=${y + 4}>${birds} ${birds === 1 ? "waits" : "wait"}: ${room.result.pens[pen]?.pen}</text>`,
    )}
  </svg>`;
}

/** The level of the drawn source now, from wall to wall and a little beyond. */
function surfaceView({ layout, checked, ways, way, result, moment }: PlayedRoom) {
  const source = ways[way]?.path.source;
  const about = source === undefined ? undefined : checked?.line.sources[source];
  if (layout === undefined || source === undefined || about === undefined) return nothing;
  const y = surfaceY(layout, levelAt(result, source, moment.time), about.levels.full);
  return svg`<path class="surface" d="M${layout.vessel.left - 4} ${y}H${layout.vessel.right + 4}"></path>`;
}
