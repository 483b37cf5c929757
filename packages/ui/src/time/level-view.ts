import { levelAtVolume, writeDuration, writeQuantity } from "@headfall/hydraulics";
import { html, nothing, svg } from "lit";
import { type LevelChart, type LevelMark, layLevelChart } from "../kernels/time/level-chart.js";
import type { TimeRoom } from "./room.js";

const DAY = 86_400;
const FOOT = 0.3048;

/** The level of one source through the days, with the band it may lie in, and the same as a table. */
export function levelView(room: TimeRoom) {
  const { answer, source: index, system, isWide, checked } = room;
  const { lasting } = answer;
  const source = checked?.line.sources[index];
  const about = lasting.sources[index];
  if (source === undefined || about === undefined) return nothing;
  const cases = lasting.cases;
  const marks = marksOf(room);
  const isUs = system === "us";
  const chart = layLevelChart({
    source: index,
    shape: source.shape,
    fullLevel: about.fullLevel,
    outlet: source.outlet,
    expect: cases.expect.levels,
    low: cases.low.levels,
    high: cases.high.levels,
    marks,
    unit: isUs ? FOOT / 12 : 0.01,
    width: isWide ? 660 : 330,
    height: 260,
  });
  return html`<section aria-labelledby="level">
    <h3 id="level">Level of ${about.source} through the days</h3>
    ${sourceChoice(room)}
    ${chartView(chart, isUs ? "in" : "cm", `Level of ${about.source}: full at the start; ${marks.map(({ words }) => words).join("; ") || "nothing gives out"}.`)}
    <ul class="key">
      <li><svg viewBox="0 0 40 14" width="40" height="14" aria-hidden="true"><path class="level-line" d="M2 7H38"></path></svg> to expect</li>
      <li><svg viewBox="0 0 40 14" width="40" height="14" aria-hidden="true"><rect class="level-band" x="2" y="2" width="36" height="10"></rect></svg> from the least to the most that may be drunk${room.plan.weather?.hotSpell === undefined ? "" : ", in heat"}, with drips</li>
      ${marks.map(({ letter, words }) => html`<li><strong>${letter}</strong> ${words}</li>`)}
    </ul>
    ${levelTable(room)}
  </section>`;
}

function sourceChoice({ answer, source, acts }: TimeRoom) {
  const { sources } = answer.lasting;
  if (sources.length < 2) return nothing;
  return html`<label class="field">Source
    <select @change=${(event: Event) => acts.lookAt(Number((event.target as HTMLSelectElement).value))}>
      ${sources.map(({ source: name, index }) => html`<option value=${index} ?selected=${index === source}>${name}</option>`)}
    </select></label>`;
}

/** What happens on the way down, in the case to expect. */
function marksOf({ answer }: TimeRoom): LevelMark[] {
  const { expect } = answer.lasting.cases;
  const mark = (letter: string, words: string, after: number | undefined): LevelMark[] =>
    after === undefined ? [] : [{ letter, words: `${words} after ${writeDuration(after)}`, after }];
  return [
    ...mark("D", `first drinker dry (${expect.firstDry?.drinker ?? ""})`, expect.firstDry?.after),
    ...mark("W", `first bird without (${expect.firstWithout?.pen ?? ""})`, expect.firstWithout?.after),
    ...mark("H", "half of the drinkers dry", expect.halfDry),
    ...mark("E", "nothing left to draw", expect.empty),
  ];
}

function chartView(
  { width, height, plot, line, band, days, levels, marks, outletY }: LevelChart,
  unit: string,
  words: string,
) {
  let shown = "";
  return svg`<svg class="chart" viewBox="0 0 ${width} ${height}" role="img" aria-label=${words}>
    ${levels.map(
      ({ at, value }) => svg`<line class="grid" x1=${plot.left} x2=${plot.right} y1=${at} y2=${at}></line>
      <text class="tick" x=${plot.left - 6} y=${at + 4} text-anchor="end">${value}</text>`,
    )}
    ${days.map(
      ({
        at,
        value,
      }) => svg`<line class="grid" x1=${at} x2=${at} y1=${plot.bottom} y2=${plot.bottom + 5}></line>
      <text class="tick" x=${at} y=${plot.bottom + 18} text-anchor="middle">${value}</text>`,
    )}
    <text class="tick" x=${plot.left} y=${height - 4}>days from the start; level in ${unit}</text>
    <path class="level-band" d=${band}></path>
    <line class="outlet" x1=${plot.left} x2=${plot.right} y1=${outletY} y2=${outletY}></line>
    <text class="tick" x=${plot.left + 4} y=${outletY - 4}>outlet</text>
    <path class="level-line" d=${line}></path>
    ${marks.map(({ letter, x }, k) => {
      // Those at one moment share a flag.
      const isSame = k > 0 && Math.abs((marks[k - 1]?.x ?? 0) - x) < 14;
      shown = isSame ? `${shown} ${letter}` : letter;
      const isLast = Math.abs((marks[k + 1]?.x ?? Number.NEGATIVE_INFINITY) - x) >= 14;
      return svg`<line class="mark" x1=${x} x2=${x} y1=${plot.top} y2=${plot.bottom}></line>
        ${isLast ? svg`<text class="letter" x=${Math.min(x, plot.right - 4)} y=${plot.top - 6} text-anchor=${x > plot.right - 30 ? "end" : "middle"}>${shown}</text>` : nothing}`;
    })}
  </svg>`;
}

/** Level and litres at the same hour each day. */
function levelTable({ answer, source: index, checked, system }: TimeRoom) {
  const shape = checked?.line.sources[index]?.shape;
  if (shape === undefined) return nothing;
  const { cases } = answer.lasting;
  const levelOn = (levels: typeof cases.expect.levels, day: number): string => {
    const begins = levels[0]?.time ?? 0;
    const point = levels.filter(({ time }) => time <= begins + day * DAY + 1).at(-1);
    const level = levelAtVolume(shape, Math.max(0, point?.volumes[index] ?? 0));
    return system === "us"
      ? writeQuantity(level, "length", system, 3)
      : `${Math.round(level * 1000) / 10} cm`;
  };
  const last = Math.min(14, Math.ceil(cases.low.followed / DAY));
  return html`<details>
    <summary>The same as a table</summary>
    <div class="scroller" role="region" aria-label="Level by day" tabindex="0">
      <table>
        <thead><tr><th scope="col">Day</th><th scope="col">To expect</th><th scope="col">Lowest</th><th scope="col">Highest</th></tr></thead>
        <tbody>${Array.from(
          { length: last + 1 },
          (_, day) => html`<tr><th scope="row">${day}</th><td>${levelOn(cases.expect.levels, day)}</td>
            <td>${levelOn(cases.high.levels, day)}</td><td>${levelOn(cases.low.levels, day)}</td></tr>`,
        )}</tbody>
      </table>
    </div>
  </details>`;
}
