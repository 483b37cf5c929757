import { nothing, svg } from "lit";
import { inScene } from "../../kernels/above/lay-scene.js";
import { sizeOfText } from "../../kernels/above/place-texts.js";
import type { Ground } from "../../kernels/above/spot.js";
import type { Pixel, Viewport } from "../../kernels/above/viewport.js";
import { pathOf } from "../../kernels/path-of.js";
import type { Ghost } from "../states/hand.js";

/** What the hand is about to do, over the plan: the way drawn, what it was snapped to, and its length. */
export function ghostView(ghost: Ghost | undefined, view: Viewport, width: number) {
  if (ghost === undefined) return nothing;
  const place = (ground: Ground) => inScene(ground, view.scale);
  const { way, guide, meets, at, words } = ghost;
  return svg`<g class="ghost" aria-hidden="true">
    ${guide === undefined ? nothing : svg`<path class="guide" d=${pathOf(guide.map(place))}></path>`}
    ${way === undefined ? nothing : svg`<path class="drawn" d=${pathOf(way.map(place))}></path>`}
    ${meets === undefined ? nothing : meetsView(place(meets))}
    ${at === undefined || !words ? nothing : wordsView(place(at), words, view, width)}
  </g>`;
}

const meetsView = ({ x, y }: Pixel) => svg`<circle class="meets" cx=${x} cy=${y} r="13"></circle>`;

/** Well above the place, where a finger does not cover it; below it near the top, and never off the sheet. */
function wordsView({ x, y }: Pixel, words: string, { left, top }: Viewport, sheet: number) {
  const long = sizeOfText([words]).width;
  const across = Math.min(Math.max(x, long / 2 + 12 - left), sheet - long / 2 - 12 - left);
  const down = top + y < 96 ? y + 56 : y - 44;
  return svg`
    <rect class="tag" x=${across - long / 2 - 6} y=${down - 14} width=${long + 12} height="22" rx="5"></rect>
    <text class="tag-words" text-anchor="middle" x=${across} y=${down + 2}>${words}</text>`;
}
