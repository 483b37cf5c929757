import { writeDuration } from "@headfall/hydraulics";
import { html } from "lit";
import { showFlow, showVolume } from "../kernels/shown.js";
import type { DayRoom } from "./room.js";

/** What each drinker had to do. */
export function drinkersView({ result, system }: DayRoom) {
  return html`<section aria-labelledby="each">
    <h3 id="each">Each drinker</h3>
    <div class="scroller" role="region" aria-label="Each drinker's day" tabindex="0"><table class="cards">
      <caption>Least flow: what it passed when most others were at work, or the source was low.</caption>
      <thead><tr><th scope="col">Drinker</th><th scope="col">Bouts</th><th scope="col">Drawn</th><th scope="col">Busy</th><th scope="col">Least flow</th></tr></thead>
      <tbody>${result.drinkers.map(
        ({ drinker, bouts, drawn, busy, leastFlow }) => html`<tr><th scope="row">${drinker}</th>
          <td data-head="Bouts">${bouts}</td><td data-head="Drawn">${showVolume(drawn, system)}</td>
          <td data-head="Busy">${bouts === 0 ? "never" : writeDuration(busy)}</td>
          <td data-head="Least flow">${bouts === 0 ? "nobody came" : showFlow(leastFlow, system)}</td></tr>`,
      )}</tbody>
    </table></div>
  </section>`;
}
