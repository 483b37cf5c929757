import {
  LEFT_OUT_WORDS,
  type MishapRow,
  writeClock,
  writeDay,
  writeDuration,
  writeMishapCautions,
  writeNothing,
  writeRowName,
  writeWatererHarm,
  writeWatererMishap,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { harmAfter } from "../kernels/mishaps/day-share.js";
import { FAMILY_WORDS, familiesOf, type MishapFamily } from "../kernels/mishaps/mishap-families.js";
import { upperFirst } from "../kernels/upper-first.js";
import { openAllButton } from "../room/open-all.js";
import { wholeDates } from "../styles/whole-dates.js";
import { numberButton } from "../verdicts/number-button.js";
import type { MishapsRoom } from "./room.js";

const DAY = 86_400;

/** At the head of the room: the worst, and how many harm before anybody who looks once a day sees them. */
export function answerView({ mishaps }: MishapsRoom) {
  const [worst] = mishaps.rows;
  if (worst === undefined)
    return html`<p>Nothing of this plan can go wrong by itself: it has no pipe and no drinker yet.</p>`;
  const isSoon = ({ worst: one }: MishapRow) => (harmAfter(one) ?? Number.POSITIVE_INFINITY) < DAY;
  const soon = mishaps.rows.filter(isSoon).length;
  const after = harmAfter(worst.worst);
  const words =
    after === undefined ? "nobody goes without" : after <= 0 ? "at once" : `after ${writeDuration(after)}`;
  return html`<dl class="answer">
      <div><dt>The worst</dt><dd><span class="large">${upperFirst(writeRowName(worst, mishaps))}</span></dd>
        <dd>${worst.worst.hasBirds ? "first bird without water" : "half of the drinkers dry"}: ${numberButton(words, { of: "mishap", row: 0, what: "harm" })}</dd></div>
      <div><dt>Harm within a day, if nobody looks</dt><dd><span class=${soon > 0 ? "large dry" : "large good"}>${soon} of ${mishaps.rows.length}</span></dd></div>
    </dl>
    <p>${beginningOf(mishaps)}
      ${writeNothing(mishaps)} ${mishaps.leavesOut.filter((code) => code !== "nobodyDrinks").map((code) => html`${LEFT_OUT_WORDS[code]} `)}</p>`;
}

/** The same of a plan that has loose waterers and no line. */
export function looseAnswerView({ mishaps, system }: MishapsRoom) {
  const [first] = mishaps.waterers;
  if (first === undefined) return nothing;
  const { worst } = first;
  const soon = mishaps.waterers.filter(
    ({ worst: one }) => (one.harmAfter ?? Number.POSITIVE_INFINITY) < DAY,
  ).length;
  const words = worst.harmAfter === undefined ? "nobody goes without" : writeWatererHarm(worst);
  return html`<dl class="answer">
      <div><dt>The worst</dt><dd><span class="large">${upperFirst(writeWatererMishap(worst, system))}</span></dd>
        <dd>first bird without water: ${words}</dd></div>
      <div><dt>Harm within a day, if nobody looks</dt><dd><span class=${soon > 0 ? "large dry" : "large good"}>${soon} of ${mishaps.waterers.length}</span></dd></div>
    </dl>
    <p>${beginningOf(mishaps)}
      The plan has no line.</p>`;
}

function beginningOf({ day, begins }: MishapsRoom["mishaps"]) {
  const on = day === undefined ? "" : ` on ${writeDay(day)}`;
  return wholeDates(
    `Everything is full${on} at ${writeClock(begins)} when it happens; nobody looks and nobody fills by hand.`,
  );
}

/** Which mishaps are shown, by what they come to. */
export function choiceView(room: MishapsRoom) {
  const { mishaps, family, acts } = room;
  const choose = (event: Event) => {
    const { value } = event.target as HTMLSelectElement;
    acts.choose(value === "" ? undefined : (value as MishapFamily));
  };
  return html`<p class="buttons"><label class="choice">Show
    <select @change=${choose}>
      <option value="" ?selected=${family === undefined}>All mishaps (${mishaps.rows.length})</option>
      ${familiesOf(mishaps.rows).map(
        (one) =>
          html`<option value=${one.family} ?selected=${one.family === family}>${FAMILY_WORDS[one.family]} (${one.rows})</option>`,
      )}
    </select></label> ${openAllButton(room.isAllOpen, acts.openAll)}</p>
    <p class="quiet">Open one for what is lost, who goes dry and what guards against it. The bar in it is a day, with marks at 6, 12 and 18 h: how much of it passes
      until harm. Full and dashed: longer than a day, or never.</p>`;
}

/** What the guards ask for. */
export function guardCautions({ rows }: MishapsRoom["mishaps"]) {
  return writeMishapCautions(rows.flatMap(({ guards }) => guards ?? [])).map(
    (words) => html`<p>${words}</p>`,
  );
}

/** How all of it was got, in sentences. */
export function howView({ mishaps }: MishapsRoom) {
  const some = mishaps.rows.filter(({ run, count }) => run < count);
  return html`<section aria-labelledby="how-mishaps"><h3 id="how-mishaps">How it was got</h3>
    <details><summary>The rules of a mishap</summary>
      <ul>
        <li>Every mishap is made from this plan: one a vessel, a drinker, a joint, a run, a device, a round of filling, a batch of birds. It is the same line with one law changed, solved again.</li>
        <li>What pours out follows the height of its water; birds drink meanwhile on the figure to size on; nobody looks, for up to 60 days. What is there at the start is what is drunk, lost and left.</li>
        <li>The first is the one with the soonest bird without water; then the most water lost; then the most drinkers dry or starving.</li>
        <li>A guard is tried by running the mishap again with it. The one told first is the cheapest kind with which a look every day is soon enough, four hours left to mend; where none is, the one that gives longest.</li>
        ${some.length === 0 ? nothing : html`<li>Of large groups of drinkers some are run, from the first to the last: ${some.map((row) => `${row.run} of ${row.count} in ${writeRowName(row, mishaps)}`).join("; ")}.</li>`}
        <li>One mishap at a time: two together are not reckoned.</li>
      </ul>
    </details></section>`;
}
