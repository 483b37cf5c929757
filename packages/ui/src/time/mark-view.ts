import { writeMarkLines, writeQuantity } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { wholeDates } from "../styles/whole-dates.js";
import { numberButton } from "../verdicts/number-button.js";
import type { TimeRoom } from "./room.js";

/** The daily mark: how far the level should fall by tomorrow, and its strip to be printed. */
export function markView({ answer: { mark }, system, acts }: TimeRoom) {
  const level = (metres: number) =>
    system === "us" ? writeQuantity(metres, "length", system, 3) : `${Math.round(metres * 1000) / 10} cm`;
  return html`<section aria-labelledby="mark">
    <h3 id="mark">The daily mark of ${mark.source}</h3>
    ${
      mark.isKeptFull
        ? nothing
        : html`<p>By tomorrow at the same hour it falls <span class="large">${numberButton(level(mark.fall.expect), { of: "dailyFall", source: mark.index })}</span></p>`
    }
    <ul>${writeMarkLines(mark, system).map((sentence) => html`<li>${wholeDates(sentence)}</li>`)}</ul>
    ${
      mark.isKeptFull || mark.marks.length === 0
        ? nothing
        : html`<p>A strip in true size for a dip stick, for this vessel and these birds:</p>
            <div class="buttons"><button type="button" @click=${acts.printStrip}>Print the strip</button></div>
            <p class="quiet">In the printer's own window choose 100 % (no fitting to the page) and no margins.</p>`
    }
  </section>`;
}
