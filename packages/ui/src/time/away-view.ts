import { writeAwayAnswer, writeFailure, writeLookEvery } from "@headfall/hydraulics";
import { html } from "lit";
import { fieldView } from "../fields/entry-view.js";
import { showVolume } from "../kernels/shown.js";
import { dayEntry } from "../room/day-entry.js";
import { wantRoom } from "../room/no-line.js";
import { numberButton } from "../verdicts/number-button.js";
import type { TimeRoom } from "./room.js";

const MOST_DAYS = 60;

/** Going away: what must be filled and standing, and what one failure does. */
export function awayView({ answer: { away }, plan, daysAway, today, typing, system, acts }: TimeRoom) {
  return html`<section aria-labelledby="away">
    <h3 id="away">Going away</h3>
    <div class="field"><label for="days-away">Days nobody comes</label>
      <input id="days-away" type="number" min="1" max=${MOST_DAYS} step="1" inputmode="numeric" .value=${String(daysAway)}
        @change=${(event: Event) => acts.goAway(daysIn(event))} /></div>
    ${fieldView(dayEntry(plan, "The day you go", today), typing)}
    <p class="sentence"><strong>${writeAwayAnswer(away, system)}</strong></p>
    <dl class="figures">
      <div><dt>Needed</dt><dd>${numberButton(showVolume(away.needed, system), { of: "away", what: "needed", days: away.days })}</dd></div>
      <div><dt>Reaches the birds</dt><dd>${numberButton(showVolume(away.usable, system), { of: "away", what: "usable", days: away.days })}</dd></div>
    </dl>
    <h4>Filled and standing</h4>
    <ul>${away.sources.map(({ source, full }, index) => html`<li>${source}: ${numberButton(showVolume(full, system), { of: "sourceVolume", source: index, which: "full" })}</li>`)}</ul>
    <h4>One station failed on the hottest day</h4>
    <ul>${away.failures.map((failure) => html`<li>${writeFailure(failure)}</li>`)}</ul>
    <p>${writeLookEvery(away)}</p>
    <p>A cap off, a nipple stuck open, a hose off its barb do other harm.
      <button type="button" @click=${wantRoom("mishaps")}>See what each mishap does</button></p>
  </section>`;
}

function daysIn(event: Event): number {
  const typed = Math.round(Number((event.target as HTMLInputElement).value));
  return Number.isFinite(typed) ? Math.min(MOST_DAYS, Math.max(1, typed)) : 1;
}
