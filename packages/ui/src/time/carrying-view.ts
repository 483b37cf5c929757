import { type CarryingDay, writeMass, writeQuantity } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { fieldView } from "../fields/entry-view.js";
import { showVolume } from "../kernels/shown.js";
import { carryEntries } from "./refill-entries.js";
import type { TimeRoom } from "./room.js";

/** What is carried: kilograms a trip, trips a day, climb. */
export function carryingView(room: TimeRoom) {
  const { answer, plan, typing, system } = room;
  const { carrying } = answer;
  return html`<section aria-labelledby="carrying">
    <h3 id="carrying">Carrying</h3>
    ${
      carrying.sources.length === 0
        ? html`<p>Nothing is carried: every source is filled by a hose, a roof or another.</p>`
        : html`<p>To ${carrying.sources.join(", ")}, if what is drunk is carried: ${showVolume(carrying.each, system)} a trip${carrying.isLimited ? ", as the limit on its weight has it" : ""}.</p>
            ${table(room)}`
    }
    <details><summary>What one trip is</summary><div class="pair">${carryEntries(plan).map((entry) => fieldView(entry, typing))}</div></details>
  </section>`;
}

function table({ answer: { carrying }, system }: TimeRoom) {
  const shown = rowsOf(carrying.days);
  const isUphill = carrying.climb > 0;
  return html`<div class="scroller" role="region" aria-label="Trips and loads" tabindex="0"><table class="narrow">
    <thead><tr><th scope="col">When</th><th scope="col">A day</th><th scope="col">Trips</th><th scope="col">A trip</th>
      ${isUphill ? html`<th scope="col">Climb</th><th scope="col">Work</th>` : nothing}</tr></thead>
    <tbody>${shown.map(
      (
        day,
      ) => html`<tr><th scope="row">${whenOf(day)}</th><td>${showVolume(day.volume.size, system)}</td><td>${tripsOf(day)}</td>
        <td>${writeMass(day.massPerTrip, system)}</td>
        ${isUphill ? html`<td>${writeQuantity(day.climb, "length", system)}</td><td>${Number((day.work / 1000).toPrecision(2))} kJ</td>` : nothing}</tr>`,
    )}</tbody></table></div>`;
}

const SHOWN_WEEKS = [0, 4, 8];

interface Row extends CarryingDay {
  /** What is carried does not change in the weeks shown. */
  readonly isSteady: boolean;
}

/** Now, in four weeks and in eight; one row where they are the same. */
function rowsOf(days: readonly CarryingDay[]): Row[] {
  const shown = days.filter(({ week }) => SHOWN_WEEKS.includes(week));
  const isSteady = shown.every(({ hot, volume }) => {
    const now = shown.find((day) => day.week === 0 && day.hot === hot)?.volume.size ?? 0;
    return Math.abs(volume.size - now) <= STEADY * now;
  });
  return shown.filter(({ week }) => !isSteady || week === 0).map((day) => ({ ...day, isSteady }));
}

/** Growth that no figure shows [share]. */
const STEADY = 0.001;

const whenOf = ({ week, hot, isSteady }: Row): string =>
  `${isSteady ? "now to week 8" : week === 0 ? "now" : `in ${week} weeks`}${hot ? ", hot" : ""}`;

const tripsOf = ({ trips }: CarryingDay): string =>
  trips.expect === trips.size ? String(trips.size) : `${trips.expect} to ${trips.size}`;
