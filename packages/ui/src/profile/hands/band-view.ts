import { nothing, svg } from "lit";
import { pathOf } from "../../kernels/path-of.js";
import type { ProfileLayout } from "../../kernels/profile-layout.js";
import type { ProfileRequest } from "../../kernels/profile-request.js";
import { bandText, type HeadBar, headBar, headBars } from "../../kernels/side/head-bars.js";
import { arrowWordsAt } from "../../kernels/side/label-rows.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";

/** Both extremes at once: their grade lines firm, and upright the heads each drinker sees between them. */
export function bandView(layout: ProfileLayout, request: ProfileRequest, system: UnitSystem) {
  const { checked, drinker } = request;
  const bars = headBars(checked, layout);
  const drawn = layout.drinkers.find(({ index }) => index === drinker);
  return svg`
    <path class="firm" d=${pathOf(layout.grade.highest)}></path>
    <path class="firm" d=${pathOf(layout.grade.lowest)}></path>
    ${bars.map(barView)}
    ${drawn === undefined ? nothing : lookedAtView(headBar(checked, layout, drinker, drawn.x), layout, bandText(checked, drinker, system))}`;
}

function barView({ x, lowest, highest, needs, holds, isShort, isOver }: HeadBar) {
  const end = (y: number, kind: string) => svg`<path class="bar ${kind}" d="M${x} ${y - 5}V${y + 5}"></path>`;
  return svg`
    <path class="bar" d="M${x} ${lowest}V${highest}"></path>
    ${isShort ? end(lowest, "short") : nothing}
    ${isOver ? end(highest, "over") : nothing}
    ${needs === undefined ? nothing : svg`<path class="bound needs" d="M${x - 4} ${needs}H${x + 4}"></path>`}
    ${holds === undefined ? nothing : svg`<path class="bound holds" d="M${x - 4} ${holds - 4}L${x} ${holds}L${x + 4} ${holds - 4}"></path>`}`;
}

/** Its band in words, over its bar; under it where there is no room above. */
function lookedAtView({ x, lowest, highest }: HeadBar, { width, arrow }: ProfileLayout, text: string) {
  const isRight = x > width * 0.6;
  const over = highest > 26 ? highest - 9 : lowest + 20;
  const words = arrow === undefined ? 0 : arrowWordsAt(arrow) + 4;
  const y = Math.abs(over - words) < 16 ? words - 17 : over;
  return svg`<text class="halo figure" x=${x + (isRight ? 6 : -6)} y=${y}
    text-anchor=${isRight ? "end" : "start"}>${text}</text>`;
}
