import { sourceByKey } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { HowGot } from "../kernels/how-got.js";

/** A number that unfolds into how it was got. */
export function howGotView({ title, result, formula, filled, notes, sources }: HowGot) {
  return html`<details>
    <summary>${title}<span class="result">${result}</span></summary>
    <p class="formula">${formula}</p>
    <p class="formula">${filled}</p>
    ${notes.map((note) => html`<p>${note}</p>`)}
    ${sources.length === 0 ? nothing : html`<p class="quiet">Source: ${sources.map(writeSource).join("; ")}</p>`}
  </details>`;
}

/** A source by its title, with the key it has in the table of sources. */
function writeSource(key: string): string {
  const source = sourceByKey(key);
  return source === undefined ? key : `${source.title} [${key}]`;
}
