import {
  type LikelyCause,
  type Trouble,
  type TwoAtOnce,
  writeCause,
  writeChance,
  writeTodo,
  writeTried,
  writeTwoAtOnce,
  writeWhy,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { upperFirst } from "../kernels/upper-first.js";
import { numberButton } from "../verdicts/number-button.js";
import type { TroubleRoom } from "./room.js";

/** Likely causes, each with its share, why, and what to do. */
export function causesView(room: TroubleRoom, trouble: Trouble) {
  const { likely, otherShare, fitsBadly } = trouble;
  return html`<section aria-labelledby="causes">
    <h3 id="causes">Likely causes</h3>
    ${fitsBadly ? html`<p class="problem">Nothing that was tried fits these signs well: look again at those that do not fit.</p>` : nothing}
    ${trouble.twoAtOnce === undefined ? nothing : twoView(room, trouble.twoAtOnce)}
    <ol class="causes">${likely.map((cause, at) => causeView(room, cause, at))}</ol>
    ${otherShare >= 0.005 ? html`<p class="quiet">All others together: ${writeChance(otherShare)}.</p>` : nothing}
  </section>`;
}

/** Two things wrong at once, where one does not explain what is seen. */
function twoView({ system }: TroubleRoom, two: TwoAtOnce) {
  return html`<div class="two"><h4>Two things at once, ${writeChance(two.share)}</h4>
    ${writeTwoAtOnce(two, system).map((line) => html`<p>${line}</p>`)}
    <details><summary>What to do about both</summary><ul>${two.causes.flatMap((cause) => writeTodo(cause)).map((line) => html`<li>${line}</li>`)}</ul></details></div>`;
}

function causeView({ system }: TroubleRoom, cause: LikelyCause, at: number) {
  const todo = writeTodo(cause);
  return html`<li>
    <h4>${at + 1}. ${upperFirst(writeCause(cause, system))}</h4>
    <p class="share"><svg class="bar" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
        <rect class="whole" x="0" y="1" width="100" height="10"></rect>
        <rect class="part" x="0" y="1" width=${Math.max(0.5, 100 * cause.share)} height="10"></rect></svg>
      ${numberButton(writeChance(cause.share), { of: "troubleShare", cause: at })}</p>
    <p>${upperFirst(writeWhy(cause, system))}</p>
    ${
      todo.length === 0
        ? nothing
        : html`<details ?open=${at === 0}><summary>What to do</summary><ul>${todo.map((line) => html`<li>${line}</li>`)}</ul></details>`
    }
  </li>`;
}

/** What was tried, and what was taken as understood. */
export function triedView({ system }: TroubleRoom, trouble: Trouble) {
  return html`<details><summary>How it was got</summary>
    <ul>${writeTried(trouble, system).map((line) => html`<li>${line}</li>`)}</ul></details>`;
}
