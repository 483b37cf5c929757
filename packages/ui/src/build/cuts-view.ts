import {
  type BarToCut,
  type PipeToCut,
  writeBar,
  writeCutLength,
  writeCutting,
  writePiece,
} from "@headfall/hydraulics";
import { html, svg } from "lit";
import { barLayout } from "../kernels/build/bar-layout.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import type { BuildRoom } from "./room.js";

/** Every kind of pipe: what to buy, and each bar drawn with its cuts. */
export function cutsView({ sheet, system }: BuildRoom) {
  return html`<section aria-labelledby="cuts"><h3 id="cuts">Cuts</h3>
    ${sheet.pipes.length === 0 ? html`<p>No pipe to cut.</p>` : sheet.pipes.map((pipe) => pipeView(pipe, system))}
  </section>`;
}

function pipeView(pipe: PipeToCut, system: UnitSystem) {
  const longest = Math.max(...pipe.bars.map(({ length }) => length));
  return html`<h4>${pipe.name}</h4>
    <ul>${writeCutting(pipe, system).map((line) => html`<li>${line}</li>`)}</ul>
    <ol class="bars">${pipe.bars.map((bar) => html`<li>${writeBar(bar, pipe, system)} ${barView(bar, longest, system)}</li>`)}</ol>
    ${proofView(pipe, system)}`;
}

/** A bar to scale with its pieces in order; what is left is hatched. */
function barView(bar: BarToCut, longest: number, system: UnitSystem) {
  const { pieces, rest, width } = barLayout(bar, longest);
  return html`<svg class="bar" viewBox="0 0 1000 40" preserveAspectRatio="none" aria-hidden="true">
    <rect class="stock" x="1" y="4" width=${width} height="32"></rect>
    ${pieces.map(({ x, width: wide, piece }) => svg`<rect class="piece" x=${x} y="4" width=${wide} height="32"><title>${writePiece(piece, system)}</title></rect>`)}
    ${rest === undefined ? "" : svg`<path class="rest" d=${`M${rest.x} 36 L${rest.x + rest.width} 4`}></path>`}
  </svg>`;
}

/** Why nothing buys less: the worth of the pieces, for those who want to add it up. */
function proofView({ cutting, name }: PipeToCut, system: UnitSystem) {
  if (cutting.bought === 0) return "";
  const length = (metres: number) => writeCutLength(metres, system);
  return html`<details><summary>How it was got<span class="spoken">: cuts of ${name}</span></summary>
    <p>Say a piece of each length is worth so much pipe:</p>
    <ul>${cutting.worth.map((one) => html`<li>${length(one.length)} is worth ${length(one.worth)}</li>`)}</ul>
    <p>However one is cut, no length sold yields more than it is long. All pieces together, less the most that what is on hand can yield, come to
      what must at least be bought; rounded up to lengths that are sold, ${length(cutting.bound)}. ${cutting.states.toLocaleString("en-GB")} states of other plans were looked at.</p>
  </details>`;
}
