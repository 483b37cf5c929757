import { sourceByKey } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { HowGot, Parts, SecondOpinion, Step, Validity } from "../kernels/how-got/how-got.js";
import { wholeDates } from "../styles/whole-dates.js";
import { numberButton } from "./number-button.js";

/** How a number was got, below its title and result. */
export function howBody({ steps, parts, listed, valid, secondOpinion, notes, sources }: HowGot) {
  return html`
    ${steps.map(stepView)} ${parts === undefined ? nothing : partsView(parts)}
    ${listed === undefined ? nothing : partsView(listed, "parts worded")}
    ${secondOpinion === undefined ? nothing : opinionView(secondOpinion)}
    ${valid.length === 0 ? nothing : html`<ul class="valid">${valid.map(validityView)}</ul>`}
    ${notes.map((note) => html`<p>${wholeDates(note)}</p>`)}
    ${sources.length === 0 ? nothing : html`<p class="quiet">Source: ${sources.map(writeSource).join("; ")}</p>`}
  `;
}

function stepView({ formula, filled, terms }: Step) {
  const asked = terms.filter(({ from }) => from !== undefined);
  return html`<div class="step">
    <p class="formula">${formula}</p>
    <p class="formula filled">${filled}</p>
    ${
      asked.length === 0
        ? nothing
        : html`<p class="onward"><span class="quiet">How these were got:</span>
            ${asked.map(({ symbol, text, from }) => html`${numberButton(html`<span class="symbol">${symbol}</span> ${text}`, from!)} `)}
          </p>`
    }
  </div>`;
}

function partsView({ caption, columns, rows }: Parts, look = "parts") {
  return html`<div class="parts-frame" role="region" aria-label=${caption} tabindex="0">
    <table class=${look}>
      <caption>${caption}</caption>
      <thead><tr>${columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
      <tbody>
        ${rows.map(
          ({ cells: [name, ...others], source }) => html`<tr>
            <th scope="row">${name}${source === undefined ? nothing : html` <span class="quiet">[${source}]</span>`}</th>
            ${others.map((cell) => html`<td>${cell}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

function opinionView({ by, result, difference }: SecondOpinion) {
  return html`<p class="opinion"><strong>Second opinion</strong>, ${by}: <strong>${result}</strong> (${difference})</p>`;
}

/** A filled mark inside the range, a hollow one outside: shape and word before colour. */
function validityView({ law, holds, here, isInside }: Validity) {
  return html`<li class=${isInside ? "inside" : "outside"}>
    <span class="range-mark" aria-hidden="true">${isInside ? "●" : "○"}</span>
    <span><strong>${law}</strong>: ${holds}.${here === "" ? "" : ` Here: ${here}.`}</span>
  </li>`;
}

/** A source by its title, who wrote it and when, how it is known, and its key in the table of sources. */
function writeSource(key: string): string {
  const source = sourceByKey(key);
  if (source === undefined) return key;
  const { authors, title, year, opened } = source;
  const known = opened === "from memory" ? ", from memory" : "";
  return `${authors === undefined ? "" : `${authors}, `}${title}${year === undefined ? "" : ` (${year})`}${known} [${key}]`;
}
