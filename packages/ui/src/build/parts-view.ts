import { type Part, writeBasis, writePart, writePrice, writePriceLine } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { upperFirst } from "../kernels/upper-first.js";
import type { BuildActs, BuildRoom } from "./room.js";

/** What to bring from the shop, pipe apart. */
export function partsView({ sheet }: BuildRoom, acts: BuildActs) {
  const hasPrices = sheet.parts.some(({ price }) => price !== undefined);
  return html`<section aria-labelledby="parts">
    <h3 id="parts">Parts</h3>
    ${
      sheet.parts.length === 0
        ? html`<p>The plan has no line yet: nothing to buy for it.</p>`
        : html`<div class="scroller"><table class="cards">
            <caption>Pipe is in the cuts below.</caption>
            <thead><tr><th scope="col" class="words">Part</th><th scope="col">Count</th>${hasPrices ? html`<th scope="col">Price</th>` : nothing}<th scope="col" class="words">For</th><th scope="col" class="words">Why</th></tr></thead>
            <tbody>${sheet.parts.map((part) => rowView(part, hasPrices, sheet.price.money))}</tbody>
          </table></div>`
    }
    ${writePriceLine(sheet).map((line) => html`<p>${line}</p>`)}
    <div class="buttons"><button type="button" @click=${acts.saveParts}>Save the parts as a table</button></div>
  </section>`;
}

function rowView(part: Part, hasPrices: boolean, money: string | undefined) {
  const { count, price, where } = part;
  return html`<tr><th scope="row" class="wide">${upperFirst(writePart(part))}</th>
    <td data-head="Count">${count}</td>
    ${hasPrices ? html`<td data-head="Price">${price === undefined ? "none" : writePrice(price * count, money)}</td>` : nothing}
    <td class="words wrap" data-head="For">${where.join(", ")}</td>
    <td class="words wrap" data-head="Why">${writeBasis(part)}</td></tr>`;
}
