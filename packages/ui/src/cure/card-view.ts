import {
  CURE_WORDS,
  type Cure,
  type Outcome,
  writeChange,
  writeClose,
  writeCost,
  writeMargin,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { leastSpareOf } from "../kernels/cure/least-spare.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { outcomeView } from "./counts-view.js";
import { type BeforeAndAfter, drinkersView, scenesView } from "./drinkers-view.js";
import type { CuredRoom } from "./room.js";
import { takeButton } from "./take-button.js";

/** One cure: what changes, what it costs, what it does, and the button that does it. */
export function cardView(room: CuredRoom, cure: Cure, at: number) {
  const { answer, system } = room;
  const id = `cure-${at + 1}`;
  return html`<article class="cure" aria-labelledby=${id}>
    <h4 id=${id}>${at + 1}. ${capital(CURE_WORDS[cure.kind])}</h4>
    <ul class="changes">${cure.changes.map((change) => html`<li>${writeChange(change, system)}</li>`)}</ul>
    <dl class="figures">
      <div><dt>Cost</dt><dd>${capital(writeCost(cure.cost, answer.money, system))}${cure.proven ? "" : " (a cheaper one of this kind is not ruled out)"}</dd></div>
      <div><dt>Before</dt><dd>${outcomeView(answer.before)}</dd></div>
      <div><dt>After</dt><dd>${outcomeView(cure.after)}</dd></div>
      <div><dt>Least to spare</dt><dd>${spareView(answer.before, system)} before, <strong>${spareView(cure.after, system)}</strong> after</dd></div>
      ${cure.close === undefined ? nothing : html`<div><dt>Left close</dt><dd>${writeClose(cure.close, system)}</dd></div>`}
    </dl>
    ${takeButton(room, cure.plan, CURE_WORDS[cure.kind], `${at + 1}`)}
    ${foldedTables({ before: answer.before, after: cure.after, system, name: `cure ${at + 1}` }, room, at)}
  </article>`;
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function spareView(outcome: Outcome, system: UnitSystem): string {
  const least = leastSpareOf(outcome);
  return least === undefined ? "none" : writeMargin(least.head, system);
}

/** So many rows are there at once, for paper too; longer tables are made when they are unfolded. */
const FEW = 60;

function foldedTables(compared: BeforeAndAfter, { unfolded, acts }: CuredRoom, at: number) {
  const { drinkers, scenes } = compared.after;
  const isThere = drinkers.length <= FEW || unfolded.has(at);
  return html`<details @toggle=${() => acts.unfold(at)}><summary>Every drinker in every moment: ${drinkers.length}</summary>${isThere ? drinkersView(compared) : nothing}</details>
    ${scenes.length < 2 ? nothing : html`<details><summary>Every coming week</summary>${scenesView(compared)}</details>`}`;
}
