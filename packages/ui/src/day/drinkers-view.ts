import { writeDuration } from "@headfall/hydraulics";
import { html } from "lit";
import type { HowSubject } from "../kernels/how-got/subject.js";
import { showFlow, showVolume } from "../kernels/shown.js";
import { askHow, numberInTable, roveNumbers } from "../verdicts/number-button.js";
import type { DayRoom } from "./room.js";

/** What each drinker had to do. */
export function drinkersView({ result, system, isWide }: DayRoom) {
  return html`<section aria-labelledby="each">
    <h3 id="each">Each drinker</h3>
    <details ?open=${isWide && result.drinkers.length <= FEW}><summary>${spreadOf(result)}</summary>
    <div class="scroller" role="region" aria-label="Each drinker's day" tabindex="0"><table class="cards" @click=${askHow} @keydown=${roveNumbers}>
      <caption>Least flow: what it passed when most others were at work, or the source was low.</caption>
      <thead><tr><th scope="col">Drinker</th><th scope="col" id="each-bouts">Bouts</th><th scope="col" id="each-drawn">Drawn</th><th scope="col" id="each-busy">Busy</th><th scope="col" id="each-leastFlow">Least flow</th></tr></thead>
      <tbody>${result.drinkers.map(
        (
          { drinker, bouts, drawn, busy, leastFlow },
          at,
        ) => html`<tr><th scope="row" id="each-${at}">${drinker}</th>
          <td data-head="Bouts">${told(at, "bouts", String(bouts))}</td><td data-head="Drawn">${told(at, "drawn", showVolume(drawn, system))}</td>
          <td data-head="Busy">${told(at, "busy", bouts === 0 ? "never" : writeDuration(busy))}</td>
          <td data-head="Least flow">${told(at, "leastFlow", bouts === 0 ? "nobody came" : showFlow(leastFlow, system))}</td></tr>`,
      )}</tbody>
    </table></div>
    </details>
  </section>`;
}

/** So many drinkers are a table that is read through; more are looked up in it. */
const FEW = 12;

function spreadOf({ drinkers }: DayRoom["result"]): string {
  const bouts = drinkers.map((one) => one.bouts);
  const [least, most] = [Math.min(...bouts), Math.max(...bouts)];
  return `${drinkers.length} ${drinkers.length === 1 ? "drinker" : "drinkers"}, ${least === most ? least : `${least} to ${most}`} bouts each`;
}

/** One stop of the tab key for the whole table; arrow keys lead on. */
const told = (at: number, what: Extract<HowSubject, { of: "dayDrinker" }>["what"], words: string) =>
  numberInTable(words, `${what} ${at}`, () => ({
    subject: { of: "dayDrinker", at, what },
    describedBy: `each-${at} each-${what}`,
    isTabStop: at === 0 && what === "bouts",
  }));
