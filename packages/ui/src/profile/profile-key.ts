import { html, nothing } from "lit";
import type { ProfileLayout } from "../kernels/profile-layout.js";
import { trimmed } from "../kernels/typed-quantity.js";

/** What the lines of the drawing mean, and how far its two height scales differ from its lengths. */
export function profileKey(layout: ProfileLayout, gradeWords: string) {
  return html`
    <span class="key">${sample("chosen")} ${gradeWords}</span>
    <span class="key">${sample("extreme highest")} full, idle</span>
    <span class="key">${sample("extreme lowest")} lowest, busiest</span>
    ${layout.air.length === 0 ? nothing : html`<span class="key">${bubbles} air stays</span>`}
    <span class="scales">${writeExaggeration(layout)}</span>
  `;
}

const sample = (kind: string) =>
  html`<svg viewBox="0 0 28 8" height="8" aria-hidden="true"><path class=${kind} d="M1 4H27"></path></svg>`;

const bubbles = html`<svg viewBox="0 0 24 14" height="14" aria-hidden="true">
  <g class="air"><circle cx="9" cy="8" r="4"></circle><circle cx="16" cy="4" r="2.5"></circle></g>
</svg>`;

/** The scales in words: "Heights drawn 3.4 times lengths, losses 260 times." */
function writeExaggeration({ exaggeration, loss }: ProfileLayout): string {
  const heights = `Heights drawn ${roughly(exaggeration)} times lengths`;
  return loss.exaggeration > 0 ? `${heights}, losses ${roughly(loss.exaggeration)} times.` : `${heights}.`;
}

/** Two figures are enough to say a scale. */
function roughly(times: number): string {
  return times >= 10 ? String(Number(times.toPrecision(2))) : trimmed(times, 1);
}
