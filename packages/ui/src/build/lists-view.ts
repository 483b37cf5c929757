import {
  BUILD_ROUNDS,
  gatherMarks,
  HOLES_NOTE,
  JUG_NOTE,
  writeContact,
  writeCutLength,
  writeHole,
  writeJug,
  writeLoadLines,
  writeMarkLines,
  writeStep,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { upperFirst } from "../kernels/upper-first.js";
import { wholeDates } from "../styles/whole-dates.js";
import type { BuildRoom } from "./room.js";

/** What can hurt, by source: first of all that is told. */
export function loadsView({ sheet, system }: BuildRoom) {
  return sheet.loads.map(
    (
      load,
    ) => html`<section class="hurts" aria-labelledby="load-${load.index}"><h3 id="load-${load.index}">What can hurt: ${load.source}</h3>
      <ul>${writeLoadLines(load, system).map((line) => html`<li>${line}</li>`)}</ul></section>`,
  );
}

export function holesView({ sheet, system }: BuildRoom) {
  if (sheet.holes.length === 0) return nothing;
  return html`<section aria-labelledby="holes"><h3 id="holes">Holes and threads</h3>
    <ul>${sheet.holes.map((hole) => html`<li>${writeHole(hole, system)}</li>`)}</ul><p>${HOLES_NOTE}</p></section>`;
}

export function heightsView({ sheet, system }: BuildRoom) {
  if (sheet.heights.length === 0) return nothing;
  return html`<section aria-labelledby="heights"><h3 id="heights">Heights to mark</h3>
    <div class="scroller"><table class="cards"><thead><tr><th scope="col" class="words">Mark</th><th scope="col">Above the ground there</th><th scope="col">Above the ground at the first source</th></tr></thead>
    <tbody>${gatherMarks(sheet.heights).map(
      ({ words, mark }) =>
        html`<tr><th scope="row" class="wide">${upperFirst(words)}</th><td data-head="Above the ground">${writeCutLength(mark.aboveGround, system)}</td><td data-head="Above that at the first source">${writeCutLength(mark.height, system)}</td></tr>`,
    )}</tbody></table></div></section>`;
}

export function stepsView({ sheet, system }: BuildRoom) {
  if (sheet.steps.length === 0) return nothing;
  return html`<section aria-labelledby="steps"><h3 id="steps">In this order</h3>
    <ol class="steps">${sheet.steps.map((step) => html`<li>${writeStep(step, system)}</li>`)}</ol></section>`;
}

export function jugsView({ sheet, system }: BuildRoom) {
  if (sheet.jugs.length === 0) return nothing;
  return html`<section aria-labelledby="jugs"><h3 id="jugs">Jug and watch</h3>
    <ul>${sheet.jugs.map((jug) => html`<li>${writeJug(jug, system)}</li>`)}</ul><p>${JUG_NOTE}</p></section>`;
}

/** What hangs in the coop, as it will be printed. */
export function coopView({ sheet, system }: BuildRoom) {
  const { marks, heights, contacts } = sheet.coop;
  return html`<section aria-labelledby="coop"><h3 id="coop">To hang in the coop</h3>
    ${marks.map((mark) => html`<h4>Daily mark of ${mark.source}</h4><ul>${writeMarkLines(mark, system).map((line) => html`<li>${wholeDates(line)}</li>`)}</ul>`)}
    ${heights.map(
      ({ run, weeks }) =>
        html`<h4>Height of ${run}</h4><ul>${weeks.map(({ week, height, raise, low, high }) => html`<li>Week ${week}: ${height === undefined ? `${writeCutLength(raise, system)} from where it is` : writeCutLength(height, system)} (${writeCutLength(low, system)} to ${writeCutLength(high, system)})</li>`)}</ul>`,
    )}
    <h4>Rounds</h4><ul>${BUILD_ROUNDS.map(([often, what]) => html`<li>${often}: ${what.join(" ")}</li>`)}</ul>
    <h4>Whom to call</h4>${contacts.length === 0 ? html`<p>Nobody is named yet.</p>` : html`<ul>${contacts.map((contact) => html`<li>${writeContact(contact)}</li>`)}</ul>`}
  </section>`;
}
