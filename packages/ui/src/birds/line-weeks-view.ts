import { type WeekReport, writeReason } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { showHead, showLength } from "../kernels/shown.js";
import { writeCounts } from "../kernels/verdict-marks.js";
import { verdictWord } from "../verdicts/verdict-mark.js";
import { type BirdsRoom, weekName } from "./room.js";

/** How the line does in each coming week: where its drinkers then hang, what head that leaves, and the verdict. */
export function lineWeeksView(room: BirdsRoom) {
  const { weeks, hotWeeks, isOld } = room;
  if (weeks.length === 0 || weeks[0]!.worst === undefined) return nothing;
  const isHung = weeks.some(({ raised }) => raised.length > 0);
  return html`<section aria-labelledby="weeks-line" class=${isOld ? "older" : nothing}>
    <h3 id="weeks-line">The line in the coming weeks</h3>
    ${
      isHung
        ? nothing
        : html`<p class="quiet">No run is hung on cords: its drinkers stay where they are while the birds grow. Tick “Hung: goes up with the birds” at a run to see what raising it does.</p>`
    }
    <div class="scroller" role="region" aria-label="The line by week" tabindex="0">
      <table class="cards">
        <thead><tr>
          <th scope="col">Week</th>${isHung ? html`<th scope="col">Raised by</th><th scope="col">Drinkers hang at</th>` : nothing}
          <th scope="col">Head, full and idle</th><th scope="col">Head, lowest and busiest</th><th scope="col" class="words">Drinkers</th>
          ${hotWeeks.length === 0 ? nothing : html`<th scope="col" class="words">On a hot day</th>`}
        </tr></thead>
        <tbody>${weeks.map((week, w) => rowView(room, week, hotWeeks[w], isHung))}</tbody>
      </table>
    </div>
    ${worstView(room)}
  </section>`;
}

function rowView({ system }: BirdsRoom, week: WeekReport, hot: WeekReport | undefined, isHung: boolean) {
  const { raised, idleHead, flowingHead, counts, verdict } = week;
  const range = ({ least, most }: WeekReport["idleHead"]) =>
    showHead(least, system) === showHead(most, system)
      ? showHead(least, system)
      : `${showHead(least, system)} to ${showHead(most, system)}`;
  return html`<tr>
    <th scope="row">${weekName(week.week)}</th>
    ${
      isHung
        ? html`<td data-head="Raised by">${raised.map(({ raise }) => html`<div>${showLength(raise, system)}</div>`)}</td>
            <td data-head="Drinkers hang at">${raised.map(({ run, height }) => html`<div>${raised.length > 1 ? `${run}: ` : ""}${height === undefined ? "not known" : showLength(height, system)}</div>`)}</td>`
        : nothing
    }
    <td data-head="Head, full and idle">${range(idleHead)}</td>
    <td data-head="Head, lowest and busiest">${range(flowingHead)}</td>
    <td class="words" data-head="Drinkers">${verdictWord(verdict)}<div class="quiet">${writeCounts(counts)}</div></td>
    ${hot === undefined ? nothing : html`<td class="words" data-head="On a hot day">${verdictWord(hot.verdict)}<div class="quiet">${writeCounts(hot.counts)}</div></td>`}
  </tr>`;
}

/** The first week that does worse than this one, and why. */
function worstView({ weeks, hotWeeks, system }: BirdsRoom) {
  const [now] = weeks;
  const turned =
    [...weeks, ...hotWeeks].find(
      ({ verdict, week }) => week > 0 && verdict !== "good" && now?.verdict === "good",
    ) ?? hotWeeks.find(({ verdict }) => verdict !== "good" && now?.verdict === "good");
  if (turned?.worst === undefined) return nothing;
  const when = `${turned.hot ? "On a hot day " : ""}${weekName(turned.week)}`;
  return html`<p><strong>${when.charAt(0).toUpperCase()}${when.slice(1)}:</strong>
    ${turned.worst.drinker}: ${writeReason(turned.worst.because, system)}.</p>`;
}
