import {
  type GuardResult,
  type MishapRow,
  writeDuration,
  writeGain,
  writeGuard,
  writeLoss,
  writeNames,
  writeRowName,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { dayBarOf, harmAfter, writeHarmAfter } from "../kernels/mishaps/day-share.js";
import { rowsOfFamily } from "../kernels/mishaps/mishap-families.js";
import { isSameGuard } from "../kernels/mishaps/same-guard.js";
import { showVolume } from "../kernels/shown.js";
import { upperFirst } from "../kernels/upper-first.js";
import { numberButton } from "../verdicts/number-button.js";
import { verdictWord } from "../verdicts/verdict-mark.js";
import { drawingView } from "./drawing-view.js";
import { hoursView } from "./hours-view.js";
import type { MishapsRoom } from "./room.js";

/** Below this nothing is said to be lost: a drop [m³]. */
const A_DROP = 1e-6;

/** The mishaps, the worst first, in two lines each; opened, each with what it does and what guards against it. */
export function rowsView(room: MishapsRoom) {
  const rows = rowsOfFamily(room.mishaps.rows, room.family);
  return html`<ol class="rows" aria-label="Mishaps, the worst first">
    ${repeat(
      rows,
      // By name, so that one that was opened stays so when others come before it.
      ({ row }) => writeRowName(row, room.mishaps),
      ({ row, at }) => rowView(room, row, at),
    )}
  </ol>`;
}

function rowView(room: MishapsRoom, row: MishapRow, at: number) {
  const isChosen = room.chosen === at;
  const id = `mishap-${at}`;
  return html`<li class="row ${isChosen ? "chosen" : ""}" aria-labelledby=${id}>
    <details ?open=${room.isAllOpen}><summary><div class="brief">
        <h4 id=${id}><span class="rank">${at + 1}</span> ${upperFirst(writeRowName(row, room.mishaps))}</h4>
        ${briefView(room, row)}
      </div></summary>
      ${harmView(room, row, at)} ${figuresView(room, row, at)} ${whoView(room, row)}
      ${guardView(room, row, at)} ${drawButton(room, at)}
      ${isChosen && !room.isWide ? drawingView(room) : nothing}
      ${moreView(room, row)}
    </details>
  </li>`;
}

/** The worst verdict it makes, at how many, and how soon. */
function briefView({ mishaps }: MishapsRoom, { worst }: MishapRow) {
  const [group] = worseOff(worst);
  const who =
    group === undefined
      ? html`<span class="quiet">no drinker worse</span>`
      : html`${verdictWord(group.verdict)} ${group.drinkers.length} of ${mishaps.line.drinkers.count}`;
  return html`<p><span>${who}</span> <strong>harm ${writeHarmAfter(harmAfter(worst))}</strong></p>`;
}

function drawButton({ chosen, checked, acts }: MishapsRoom, at: number) {
  if (checked === undefined) return nothing;
  const isChosen = chosen === at;
  return html`<p class="buttons"><button type="button" aria-pressed=${isChosen ? "true" : "false"} aria-describedby=${`mishap-${at}`}
    @click=${() => acts.draw(isChosen ? undefined : at)}>${isChosen ? "Drawn" : "Show on the drawing"}</button></p>`;
}

/** Until harm, as a bar against a day and in words. */
function harmView({ mishaps }: MishapsRoom, { worst }: MishapRow, at: number) {
  const after = harmAfter(worst);
  const who = worst.firstWithout === undefined ? "" : `, ${worst.firstWithout.pen}`;
  const what = worst.hasBirds ? `First bird without water${who}` : "Half of the drinkers dry";
  const isBlameless = after !== undefined && after === harmAfter(mishaps.nothing);
  return html`<p class="harm">${what}: <strong>${numberButton(writeHarmAfter(after), { of: "mishap", row: at, what: "harm" })}</strong>${isBlameless ? html` <span class="quiet">(no sooner than if nothing goes wrong)</span>` : nothing}</p>
    ${hoursView(dayBarOf(after))}`;
}

function figuresView({ system }: MishapsRoom, { worst, lost, count }: MishapRow, at: number) {
  const told = (words: string, what: "lost" | "empty" | "pours" | "night") =>
    numberButton(words, { of: "mishap", row: at, what });
  const isLosing = worst.balance.lost >= A_DROP;
  const rows: (readonly [string, unknown])[] = [];
  if (isLosing) rows.push(["To the ground", told(showVolume(worst.balance.lost, system), "lost")]);
  if (isLosing && count > 1 && lost.least < 0.9 * lost.most)
    rows.push(["The least of them", showVolume(lost.least, system)]);
  if (worst.empty !== undefined && isLosing)
    rows.push(["Empty after", told(worst.empty <= 0 ? "at once" : writeDuration(worst.empty), "empty")]);
  if (worst.firstDry !== undefined)
    rows.push([
      "First drinker dry",
      `${worst.firstDry.after <= 0 ? "at once" : writeDuration(worst.firstDry.after)} (${worst.firstDry.drinker})`,
    ]);
  if (worst.night.lost >= A_DROP)
    rows.push(["Lost in a night", told(showVolume(worst.night.lost, system), "night")]);
  return rows.length === 0
    ? nothing
    : html`<dl class="figures">${rows.map(([term, value]) => html`<div><dt>${term}</dt><dd>${value}</dd></div>`)}</dl>`;
}

/** Drinkers that do worse than in the plan, the worst verdict first. */
const worseOff = ({ dry, starve, drip }: MishapRow["worst"]) =>
  (
    [
      { verdict: "dry", drinkers: dry },
      { verdict: "starves", drinkers: starve },
      { verdict: "drips", drinkers: drip },
    ] as const
  ).filter(({ drinkers }) => drinkers.length > 0);

/** Who is worse off than in the plan, with marks. */
function whoView({ mishaps }: MishapsRoom, { worst }: MishapRow) {
  const { id, count } = mishaps.line.drinkers;
  const named = (drinkers: readonly number[]) =>
    drinkers.length === count ? `all ${count} drinkers` : writeNames(drinkers.map((drinker) => id[drinker]!));
  const groups = worseOff(worst);
  if (groups.length === 0)
    return html`<p class="quiet">No drinker does worse than in the plan while there is water.</p>`;
  return html`<ul class="who">${groups.map(
    ({ verdict, drinkers }) => html`<li>${verdictWord(verdict)} <span>${named(drinkers)}</span></li>`,
  )}</ul>`;
}

const gainOf = ({ system }: MishapsRoom, { worst }: MishapRow, guard: GuardResult): string =>
  writeGain(guard, worst.leakRate, system, worst.hasBirds);

function guardView(room: MishapsRoom, row: MishapRow, at: number) {
  const { mishaps, system } = room;
  const { cheapest, guards } = row;
  if (guards === undefined) return nothing;
  if (cheapest === undefined)
    return html`<p class="guard"><strong>Guard:</strong> none was found but a second vessel and line. It harms sooner than anybody looks.</p>`;
  const guard = guards.findIndex((one) => isSameGuard(one, cheapest));
  const isLate = !cheapest.isEnough && cheapest.guard.kind !== "look";
  return html`<p class="guard"><strong>Guard:</strong> ${writeGuard(cheapest.guard, mishaps, system)}${gainOf(room, row, cheapest)}.
    ${isLate ? "Even so a look every day may come too late." : nothing}
    ${numberButton("How it was got", { of: "mishapGuard", row: at, guard })}</p>`;
}

/** Other guards, and what pours. */
function moreView(room: MishapsRoom, row: MishapRow) {
  const { mishaps, system } = room;
  const { worst, guards = [], cheapest } = row;
  const losses = writeLoss(worst, mishaps, system);
  const others = guards.filter((one) => cheapest === undefined || !isSameGuard(one, cheapest));
  if (losses.length === 0 && others.length === 0) return nothing;
  return html`<details><summary>${others.length === 0 ? "What is lost" : `Other guards (${others.length})${losses.length === 0 ? "" : ", and what is lost"}`}</summary>
    ${losses.map((line) => html`<p>${line}</p>`)}
    ${
      others.length === 0
        ? nothing
        : html`<ul>${others.map(
            (one) =>
              html`<li>${writeGuard(one.guard, mishaps, system)}${gainOf(room, row, one)}.${one.isEnough ? " With it a look every day is soon enough." : ""}</li>`,
          )}</ul>`
    }
  </details>`;
}
