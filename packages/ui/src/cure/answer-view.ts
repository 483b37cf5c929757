import {
  writeCureHeadline,
  writeMargin,
  writeRelaxation,
  writeScene,
  writeSearch,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { leastSpareOf } from "../kernels/cure/least-spare.js";
import { cardView } from "./card-view.js";
import { outcomeView } from "./counts-view.js";
import type { CuredRoom } from "./room.js";
import { takeButton } from "./take-button.js";

/** What was found: cures as cards, or what would have to give; and what was searched for it. */
export function answerView(room: CuredRoom) {
  const { answer, plan, of } = room;
  return html`<section aria-labelledby="found">
    <h3 id="found" tabindex="-1">${writeCureHeadline(answer)}</h3>
    <p>${plan === of ? "As it is" : "As it was"}: ${outcomeView(answer.before)}.</p>
    ${answer.before.meets ? worksView(room) : nothing}
    <div class="cures">${answer.cures.map((cure, at) => cardView(room, cure, at))}</div>
    ${relaxationsView(room)} ${searchedView(room)}
  </section>`;
}

/** A plan that works: what it leaves, and how to have more. */
function worksView({ answer, system }: CuredRoom) {
  const least = leastSpareOf(answer.before);
  return html`${least === undefined ? nothing : html`<p>Least to spare: <strong>${writeMargin(least.head, system)}</strong> at ${least.drinker}, ${writeScene(least.scene)}.</p>`}
    <p>To have more, say under “What counts” how much head is to be left, and look again; or see below what more would cost.</p>`;
}

/** What to give up, and by how much; each can be tried. */
function relaxationsView(room: CuredRoom) {
  const { answer, system } = room;
  if (answer.relaxations.length === 0) return nothing;
  return html`<h4>What could give</h4>
    <ul class="gives">${answer.relaxations.map(
      (one, at) =>
        html`<li>${writeRelaxation(one, system)} ${takeButton(room, one.plan, "the best that can be had", `way ${at + 1} to give something up`)}</li>`,
    )}</ul>`;
}

function searchedView({ answer, system }: CuredRoom) {
  if (answer.searches.length === 0) return nothing;
  const plans = answer.searches.reduce((sum, search) => sum + search.plans, 0);
  return html`<details><summary>What was searched: ${plans.toLocaleString("en-GB")} plans</summary>
    <ul>${answer.searches.map((search) => html`<li>${writeSearch(search, answer.money, system)}</li>`)}</ul>
  </details>`;
}
