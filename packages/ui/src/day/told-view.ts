import {
  LEFT_OUT_WORDS,
  type PenDay,
  writeClock,
  writeDry,
  writePenDay,
  writeQuantity,
  writeShare,
  writeWait,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { shortBatches } from "../kernels/day/short-birds.js";
import { percentOf } from "../kernels/how-got/crowd.js";
import { bare } from "../kernels/how-got/figures.js";
import type { DayPenFigure } from "../kernels/how-got/subject.js";
import { showVolume } from "../kernels/shown.js";
import { numberButton } from "../verdicts/number-button.js";
import { birdsWord, type DayRoom, isFed } from "./room.js";

/** At the head of the room: whether every bird got its water, and the longest wait. */
export function answerView({ result }: DayRoom) {
  const sum = (figure: "short" | "birds") => result.pens.reduce((all, pen) => all + pen[figure], 0);
  const longest = Math.max(0, ...result.pens.map(({ longestWait }) => longestWait));
  const [short, birds] = [sum("short"), sum("birds")];
  return html`<dl class="answer">
    <div><dt>On this day</dt>
      <dd>${
        birds === 0
          ? html`<span class="large">no bird is there yet</span>`
          : short === 0
            ? html`<span class="large good">every bird got its water</span>`
            : html`<span class="large dry">${short} of ${birdsWord(birds)} came short</span>`
      }</dd></div>
    <div><dt>Longest wait</dt><dd class="large">${writeWait(longest)}</dd></div>
    ${dryView(result.pens)}
  </dl>`;
}

/** When some pen's drinkers first gave nothing: waits do not count who found no water. */
function dryView(pens: readonly PenDay[]) {
  const dry = pens.flatMap(({ pen, dryFrom }) => (dryFrom === undefined ? [] : [{ pen, dryFrom }]));
  if (dry.length === 0) return nothing;
  const first = Math.min(...dry.map(({ dryFrom }) => dryFrom));
  return html`<div><dt>No water</dt><dd><span class="large dry">from ${writeClock(first)}</span>
    ${pens.length === 1 ? nothing : html`<span class="quiet">${dry.map(({ pen }) => pen).join(", ")}</span>`}</dd></div>`;
}

/** The day in sentences, who came short, and how they waited. */
export function toldView(room: DayRoom) {
  const { result } = room;
  return html`<section aria-labelledby="told">
    <h3 id="told">What the day was like</h3>
    ${sentencesOf(room).map((sentence) => html`<p>${sentence}</p>`)}
    ${waterView(room)} ${shortView(room)} ${result.pens.map((pen, p) => (pen.birds === 0 ? nothing : penFigures(room, pen, p)))}
  </section>`;
}

/** A sentence for each pen with birds at the line, and one for all the others. */
function sentencesOf({ result, system }: DayRoom): string[] {
  const told = result.pens.filter(({ birds }) => birds > 0).map((pen) => writePenDay(pen, system));
  const [first, ...more] = result.pens.filter(({ birds }) => birds === 0);
  if (first === undefined) return told;
  const names = [first, ...more].map(({ pen }) => pen).join(", ");
  return [...told, writePenDay({ ...first, pen: names }, system)];
}

function waterView({ plan, result, system }: DayRoom) {
  const { drunk, spilled, drawn } = result.balance;
  return html`<p>Drunk ${showVolume(drunk, system)} and spilled ${showVolume(spilled, system)}: ${showVolume(drawn, system)} drawn.
    ${result.sources.map(({ source, poured }, s) => {
      if (isFed(plan, s)) return nothing;
      const level = result.levels.level[s];
      const length = (metres = 0) =>
        system === "us" ? writeQuantity(metres, "length", system, 3) : `${Math.round(metres * 1000) / 10} cm`;
      return html` ${source} went from ${length(level?.[0])} to ${length(level?.[level.length - 1])}${poured > 0 ? `, ${showVolume(poured, system)} poured in` : ""}.`;
    })}${result.sources.some((_, s) => isFed(plan, s)) ? ` ${LEFT_OUT_WORDS.headerTank}` : ""}</p>`;
}

function shortView({ result, checked, system }: DayRoom) {
  const short = shortBatches(result);
  if (short.length === 0) return nothing;
  const name = (pen: number, batch: number) =>
    checked?.flock?.pens[pen]?.batches[batch]?.kindName ?? `birds ${batch + 1}`;
  return html`<h4>Who came short</h4>
    <ul class="short">${short.map(
      ({ pen, batch, birds, short: count, missing, least }) =>
        html`<li><strong>${count} of ${birds}</strong>, ${name(pen, batch)} of ${result.pens[pen]?.pen}: ${numberButton(showVolume(missing, system), { of: "dayShort", inPen: pen, inBatch: batch })} missing together; the worst got ${writeShare(least)} of what it wanted.</li>`,
    )}</ul>`;
}

/** One pen's figures; beside those of the day, what the formula says of the busiest hour. */
function penFigures({ checked }: DayRoom, pen: PenDay, inPen: number) {
  const p = checked?.flock?.pens.findIndex((one) => one.pen === pen.pen) ?? -1;
  const report = checked?.flock?.pens[p];
  const never = "more come than can drink";
  const told = (what: DayPenFigure, words: string) => numberButton(words, { of: "dayPen", inPen, what });
  const rows: readonly (readonly [string, unknown])[] = [
    ["Mean wait", told("meanWait", writeWait(pen.meanWait))],
    ["95 in 100 waited no more than", told("wait95", writeWait(pen.wait95))],
    ["Longest wait", told("longestWait", writeWait(pen.longestWait))],
    ["Every place taken, of the light", told("allTaken", writeShare(pen.allTaken))],
    ["Most at once", told("mostAtOnce", `${pen.mostAtOnce} (${writeClock(pen.mostAt)})`)],
    ["Gave up and came back", told("gaveUp", String(pen.gaveUp))],
    ...(pen.foundDry === 0 ? [] : ([["Found no water", told("foundDry", bare(pen.foundDry, 7))]] as const)),
    ...(report === undefined || report.birds === 0
      ? []
      : ([
          [
            "By formula, busiest hour: mean wait",
            numberButton(report.meanWait === undefined ? never : writeWait(report.meanWait), {
              of: "penWait",
              pen: p,
            }),
          ],
          [
            "By formula, busiest hour: all taken",
            numberButton(
              report.chanceAllTaken === undefined ? never : `${percentOf(report.chanceAllTaken)} of the time`,
              { of: "penAllTaken", pen: p },
            ),
          ],
        ] as const)),
  ];
  return html`<div class="sheet"><h4>${pen.pen}: ${birdsWord(pen.birds)}</h4>
    <dl class="figures">${rows.map(([term, value]) => html`<div><dt>${term}</dt><dd>${value}</dd></div>`)}</dl>
    ${pen.foundDry === 0 ? nothing : html`<p class="dry">${writeDry(pen)}</p>`}</div>`;
}
