import { type WeekReport, writeReason } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { figuresIn } from "../kernels/how-got/figures.js";
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
        <tbody>${spansOf(room).map((span) => rowView(span, isHung))}</tbody>
      </table>
    </div>
    ${worstView(room)}
  </section>`;
}

/** Weeks in a row of which the same is shown: one row for all of them. */
interface Span {
  readonly first: WeekReport;
  readonly hot: WeekReport | undefined;
  readonly last: number;
  readonly cells: Cells;
}

interface Cells {
  readonly raised: readonly string[];
  readonly hangs: readonly string[];
  readonly idle: string;
  readonly flowing: string;
  readonly counts: string;
  readonly hotCounts: string;
}

function spansOf(room: BirdsRoom): readonly Span[] {
  const spans: Span[] = [];
  room.weeks.forEach((week, w) => {
    const hot = room.hotWeeks[w];
    const cells = cellsOf(room, week, hot);
    const before = spans.at(-1);
    if (before !== undefined && JSON.stringify(before.cells) === JSON.stringify(cells))
      spans[spans.length - 1] = { ...before, last: week.week };
    else spans.push({ first: week, hot, last: week.week, cells });
  });
  return spans;
}

function cellsOf({ system }: BirdsRoom, week: WeekReport, hot: WeekReport | undefined): Cells {
  const { raised, idleHead, flowingHead, counts } = week;
  const { alike } = figuresIn(system);
  const write = alike(...raised.map(({ raise }) => raise), 0.1);
  const range = ({ least, most }: WeekReport["idleHead"]) => {
    const [from, to] = [showHead(least, system), showHead(most, system)];
    return from === to ? from : `${from} to ${to}`;
  };
  return {
    raised: raised.map(({ raise }) => write(raise)),
    hangs: raised.map(({ run, height }) => {
      const at = height === undefined ? "not known" : showLength(height, system);
      return raised.length > 1 ? `${run}: ${at}` : at;
    }),
    idle: range(idleHead),
    flowing: range(flowingHead),
    counts: writeCounts(counts),
    hotCounts: hot === undefined ? "" : writeCounts(hot.counts),
  };
}

const spanName = ({ first: { week }, last }: Span): string =>
  last === week ? weekName(week) : week === 0 ? `this week to week ${last}` : `weeks ${week} to ${last}`;

function rowView(span: Span, isHung: boolean) {
  const { first, hot, cells } = span;
  const lines = (texts: readonly string[]) => texts.map((text) => html`<div>${text}</div>`);
  return html`<tr>
    <th scope="row">${spanName(span)}</th>
    ${
      isHung
        ? html`<td data-head="Raised by">${lines(cells.raised)}</td>
            <td data-head="Drinkers hang at">${lines(cells.hangs)}</td>`
        : nothing
    }
    <td data-head="Head, full and idle">${cells.idle}</td>
    <td data-head="Head, lowest and busiest">${cells.flowing}</td>
    <td class="words" data-head="Drinkers">${verdictWord(first.verdict)}<div class="quiet">${cells.counts}</div></td>
    ${hot === undefined ? nothing : html`<td class="words" data-head="On a hot day">${verdictWord(hot.verdict)}<div class="quiet">${cells.hotCounts}</div></td>`}
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
