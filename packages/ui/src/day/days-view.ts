import { type OverDays, type PenDays, writeShare, writeWait } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { showVolume } from "../kernels/shown.js";
import { MANY_DAYS } from "./day-controller.js";
import { birdsWord, type DayRoom } from "./room.js";

/** A hundred days, to tell what is one day's chance and what is the line's doing. */
export function daysView(room: DayRoom) {
  const { days, progress, acts, system } = room;
  return html`<section aria-labelledby="days">
    <h3 id="days">A hundred days</h3>
    ${
      progress === undefined
        ? html`<p>One day has its luck. ${MANY_DAYS} of them tell how far days differ.</p>
            <p class="buttons"><button type="button" @click=${acts.runMany}>${days === undefined ? "Run a hundred days" : "Run them again"}</button></p>`
        : html`<div class="bar"><progress max="1" .value=${progress} aria-label="Days run"></progress>
            <span>${Math.round(progress * MANY_DAYS)} of ${MANY_DAYS}</span>
            <button type="button" @click=${acts.cancelMany}>Cancel</button></div>`
    }
    ${
      days === undefined
        ? nothing
        : html`<p>Drawn a day: ${showVolume(days.drawn.low, system)} to ${showVolume(days.drawn.high, system)} on eight days of ten, at most ${showVolume(days.drawn.most, system)}.</p>
            ${days.pens.map(penTable)}`
    }
  </section>`;
}

const whole = (value: number): string => String(Math.round(value));

const ROWS: readonly {
  readonly words: string;
  of(pen: PenDays): OverDays;
  write(value: number): string;
  /** Not told of where it never was. */
  readonly isRare?: boolean;
}[] = [
  { words: "Birds short", of: (pen) => pen.short, write: whole },
  { words: "Most at once", of: (pen) => pen.mostAtOnce, write: whole },
  { words: "Every place taken, of the light", of: (pen) => pen.allTaken, write: writeShare },
  { words: "Mean wait", of: (pen) => pen.meanWait, write: writeWait },
  { words: "Wait of 95 in 100", of: (pen) => pen.wait95, write: writeWait },
  { words: "Longest wait", of: (pen) => pen.longestWait, write: writeWait },
  { words: "Gave up", of: (pen) => pen.gaveUp, write: whole },
  { words: "Found no water", of: (pen) => pen.foundDry, write: whole, isRare: true },
  { words: "No water at all, of the light", of: (pen) => pen.dry, write: writeShare, isRare: true },
];

function penTable(pen: PenDays) {
  const title = `${pen.pen}: ${birdsWord(pen.birds)}, some short on ${writeShare(pen.daysShort)} of the days`;
  return html`<div class="scroller" role="region" aria-label=${`Days of ${pen.pen}`} tabindex="0"><table class="days">
    <caption>${title}</caption>
    <thead><tr><td></td><th scope="col">One day in ten below</th><th scope="col">Middle day</th><th scope="col">One in ten above</th><th scope="col">Most</th></tr></thead>
    <tbody>${ROWS.filter(({ of, isRare }) => isRare !== true || of(pen).most > 0).map(
      ({ words, of, write }) => {
        const { low, middle, high, most } = of(pen);
        return html`<tr><th scope="row">${words}</th>${[low, middle, high, most].map((value) => html`<td>${write(value)}</td>`)}</tr>`;
      },
    )}</tbody></table></div>`;
}
