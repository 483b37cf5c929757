import { type PenReport, writeClock, writeGroupCrowd, writeRange, writeSeconds } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { percentOf } from "../kernels/how-got/crowd.js";
import { bare } from "../kernels/how-got/figures.js";
import { showFlow, showLength, showVolume } from "../kernels/shown.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { wantRoom } from "../room/no-line.js";
import { numberButton } from "../verdicts/number-button.js";
import type { BirdsRoom } from "./room.js";

/** How each pen gets on at its drinkers in its busiest hour. */
export function crowdView(room: BirdsRoom) {
  const { flock } = room;
  if (flock === undefined || flock.pens.length === 0) return nothing;
  return html`<section aria-labelledby="crowd">
    <h3 id="crowd">At the drinkers, in the busiest hour</h3>
    ${elsewhereView(flock.pens)} ${flock.pens.filter(({ isElsewhere }) => !isElsewhere).map((pen) => penCrowd(room, pen))}
    ${groupsView(room)}
  </section>`;
}

/** Pens without a bird at the line, told together. */
function elsewhereView(pens: readonly PenReport[]) {
  const names = pens.filter(({ isElsewhere }) => isElsewhere).map(({ pen }) => pen);
  if (names.length === 0) return nothing;
  return html`<p><strong>${names.join(", ")}</strong>: ${names.length === 1 ? "its" : "their"} birds drink from loose waterers.
    <button type="button" @click=${wantRoom("yard")}>Go to the yard</button></p>`;
}

function penCrowd({ system, isWide }: BirdsRoom, pen: PenReport) {
  if (pen.birds === 0) return html`<p><strong>${pen.pen}</strong>: no bird is there yet.</p>`;
  const rows = [...boutRows(pen, system), ...crowdRows(pen)];
  return html`<details class="sheet" ?open=${isWide}>
    <summary><h4>${pen.pen}: ${pen.birds} birds at ${pen.drinkers} ${pen.drinkers === 1 ? "drinker" : "drinkers"}</h4></summary>
    <dl class="figures">${rows.map(([term, value]) => html`<div><dt>${term}</dt><dd>${value}</dd></div>`)}</dl>
    ${pen.saturates ? html`<p class="problem">They want ${showFlow(pen.demand, system)} in that hour; ${showFlow(pen.capacity, system)} is all the drinkers can pass on.</p>` : nothing}
  </details>`;
}

type Row = readonly [term: string, value: unknown];

/** When and how often they drink, and what one bout is. */
function boutRows(pen: PenReport, system: UnitSystem): readonly Row[] {
  const { index: p, busiestHour: hour } = pen;
  const there = pen.batches.filter(({ bouts: each }) => each > 0);
  const bouts = there.map(({ bouts: each, index }) =>
    there.length === 1 ? bare(each, 2) : `${bare(each, 2)} (birds ${index + 1})`,
  );
  return [
    [
      "Busiest hour",
      hour === undefined
        ? "none"
        : `from ${writeClock(hour.from)}: ${percentOf(hour.share)} of the day's water`,
    ],
    ["Bouts of drinking a day", bouts.join(", ")],
    ["A bout", numberButton(showVolume(pen.boutVolume, system), { of: "penBout", pen: p })],
    [
      "It lasts, at these drinkers",
      pen.boutSeconds === undefined
        ? NO_WATER
        : numberButton(writeSeconds(pen.boutSeconds), { of: "penBoutSeconds", pen: p }),
    ],
  ];
}

const NO_WATER = "no water comes";
const NEVER = "more come than can drink";

/** How they crowd at their drinkers in that hour. */
function crowdRows(pen: PenReport): readonly Row[] {
  const { index: p, load, chanceAllTaken, meanWait } = pen;
  const taken = chanceAllTaken === undefined ? NEVER : `${percentOf(chanceAllTaken)} of the time`;
  return [
    [
      "Drinking at once, on average",
      load === undefined ? NO_WATER : numberButton(bare(load, 2), { of: "penLoad", pen: p }),
    ],
    [
      "Drinkers at work, busiest minutes",
      numberButton(`${pen.busiest} of ${pen.drinkers}`, { of: "penBusiest", pen: p }),
    ],
    ["Every place taken", numberButton(taken, { of: "penAllTaken", pen: p })],
    [
      "Mean wait",
      numberButton(meanWait === undefined ? NEVER : writeSeconds(meanWait), { of: "penWait", pen: p }),
    ],
  ];
}

/** What each group of drinkers is judged with, and how high it hangs. */
function groupsView({ flock, system }: BirdsRoom) {
  return html`<ul class="groups">
    ${flock!.groups.map((group) => {
      const { height, hangAt } = group;
      const length = (value: number) => showLength(value, system);
      return html`<li>${writeGroupCrowd(group, system)}
        ${hangAt === undefined ? nothing : html`Should hang at ${writeRange(hangAt.low, hangAt.high, "length", system)}${height === undefined ? "; how high it hangs above the ground is not said" : `; hangs at ${length(height)}`}.`}
      </li>`;
    })}
  </ul>`;
}
