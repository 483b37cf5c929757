import { type WeekReport, writeRange, writeReason } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { figuresIn } from "../kernels/how-got/figures.js";
import { type HowSubject, keyOfSubject } from "../kernels/how-got/subject.js";
import { showHead, showLength } from "../kernels/shown.js";
import { writeCounts } from "../kernels/verdict-marks.js";
import { wholeQuantities } from "../styles/whole-quantities.js";
import { askHow, numberInTable, roveNumbers } from "../verdicts/number-button.js";
import { verdictWord } from "../verdicts/verdict-mark.js";
import { type BirdsRoom, weekName } from "./room.js";

/** How the line does in each coming week: where its drinkers should hang, what head that leaves, and the verdict. */
export function lineWeeksView(room: BirdsRoom) {
  const { weeks, hotWeeks, isOld, isWide } = room;
  if (weeks.length === 0 || weeks[0]!.worst === undefined) return nothing;
  const isHung = weeks.some(({ raised }) => raised.length > 0);
  return html`<section aria-labelledby="weeks-line" class=${isOld ? "older" : nothing}>
    <h3 id="weeks-line">The line in the coming weeks</h3>
    ${worstView(room)}
    ${
      isHung
        ? nothing
        : html`<p class="quiet">No run is hung on cords: its drinkers stay where they are while the birds grow. Tick “Hung: goes up with the birds” at a run to see what raising it does.</p>`
    }
    <details ?open=${isWide}><summary>Heights, heads and verdicts, week by week</summary>
    <div class="scroller" role="region" aria-label="The line by week" tabindex="0">
      <table class="cards weeks" @click=${askHow} @keydown=${roveNumbers}>
        <thead><tr>
          <th scope="col">Week</th><th scope="col">Should hang at</th>
          ${isHung ? html`<th scope="col">Raised by</th><th scope="col">Hangs then at</th>` : nothing}
          <th scope="col">Head, full and idle</th><th scope="col">Head, lowest and busiest</th><th scope="col" class="words">Drinkers</th>
          ${hotWeeks.length === 0 ? nothing : html`<th scope="col" class="words">On a hot day</th>`}
        </tr></thead>
        <tbody>${spansOf(room).map((span, row) => rowView(span, isHung, row === 0))}</tbody>
      </table>
    </div>
    </details>
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
  readonly should: readonly { readonly group: number; readonly name: string; readonly range: string }[];
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
  const { groups, raised, idleHead, flowingHead, counts } = week;
  const { alike } = figuresIn(system);
  const write = alike(...raised.map(({ raise }) => raise), 0.1);
  const length = (value: number) => wholeQuantities(showLength(value, system));
  const range = ({ least, most }: WeekReport["idleHead"]) => {
    const [from, to] = [showHead(least, system), showHead(most, system)];
    return wholeQuantities(from === to ? from : `${from} to ${to}`);
  };
  return {
    should: groups.flatMap(({ group, index, hangAt }) =>
      hangAt === undefined
        ? []
        : [
            {
              group: index,
              name: group,
              range: wholeQuantities(writeRange(hangAt.low, hangAt.high, "length", system)),
            },
          ],
    ),
    raised: raised.map(({ raise }) => (raise < 0 ? `${write(-raise)} lower` : write(raise))),
    hangs: raised.map(({ run, height }) => {
      const at = height === undefined ? "not known" : length(height);
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

function rowView(span: Span, isHung: boolean, isFirst: boolean) {
  const { first, hot, cells } = span;
  const { week } = first;
  const number = (text: unknown, subject: WeekSubject) =>
    numberInTable(text, keyOfSubject(subject), () => ({
      subject,
      describedBy: `line-week-${week}`,
      // One stop of the tab key for the whole table.
      isTabStop: isFirst && subject.of === "weekHead" && subject.which === "idle",
    }));
  return html`<tr>
    <th scope="row" id="line-week-${week}">${spanName(span)}</th>
    <td data-head="Should hang at">${cells.should.length === 0 ? "no table has it" : nothing}${cells.should.map(
      ({ group, name, range }) =>
        html`<div>${cells.should.length > 1 ? html`<span class="quiet">${name}</span> ` : nothing}${number(range, { of: "weekHang", week, group })}</div>`,
    )}</td>
    ${
      isHung
        ? html`<td data-head="Raised by">${cells.raised.map((text, raised) => html`<div>${number(text, { of: "weekRaise", week, raised })}</div>`)}</td>
            <td data-head="Hangs then at">${cells.hangs.map((text) => html`<div>${text}</div>`)}</td>`
        : nothing
    }
    <td data-head="Head, full and idle">${number(cells.idle, { of: "weekHead", week, which: "idle" })}</td>
    <td data-head="Head, lowest and busiest">${number(cells.flowing, { of: "weekHead", week, which: "flowing" })}</td>
    <td class="words" data-head="Drinkers">${number(verdictWord(first.verdict), { of: "weekVerdict", week })}<div class="quiet">${cells.counts}</div></td>
    ${hot === undefined ? nothing : html`<td class="words" data-head="On a hot day">${number(verdictWord(hot.verdict), { of: "weekVerdict", week, hot: true })}<div class="quiet">${cells.hotCounts}</div></td>`}
  </tr>`;
}

type WeekSubject = Extract<HowSubject, { of: `week${string}` }>;

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
