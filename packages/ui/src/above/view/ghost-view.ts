import { nothing, svg } from "lit";
import { inScene } from "../../kernels/above/lay-scene.js";
import { sizeOfText } from "../../kernels/above/place-texts.js";
import type { Ground } from "../../kernels/above/spot.js";
import { pathOf } from "../../profile/profile-words.js";
import type { Ghost } from "../states/hand.js";

/** What the hand is about to do, over the plan: the way drawn, what it was snapped to, and its length. */
export function ghostView(ghost: Ghost | undefined, scale: number) {
  if (ghost === undefined) return nothing;
  const place = (ground: Ground) => inScene(ground, scale);
  const { way, guide, meets, at, words } = ghost;
  return svg`<g class="ghost" aria-hidden="true">
    ${guide === undefined ? nothing : svg`<path class="guide" d=${pathOf(guide.map(place))}></path>`}
    ${way === undefined ? nothing : svg`<path class="drawn" d=${pathOf(way.map(place))}></path>`}
    ${meets === undefined ? nothing : meetsView(place(meets))}
    ${at === undefined || !words ? nothing : wordsView(place(at), words)}
  </g>`;
}

const meetsView = ({ x, y }: { x: number; y: number }) =>
  svg`<circle class="meets" cx=${x} cy=${y} r="13"></circle>`;

/** Well above the place, where a finger does not cover it. */
function wordsView({ x, y }: { x: number; y: number }, words: string) {
  const { width } = sizeOfText([words]);
  return svg`<g transform="translate(${x} ${y - 44})">
    <rect class="tag" x=${-width / 2 - 6} y="-14" width=${width + 12} height="22" rx="5"></rect>
    <text class="tag-words" text-anchor="middle" y="2">${words}</text>
  </g>`;
}
