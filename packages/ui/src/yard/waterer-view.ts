import {
  type PenYard,
  type WatererReport,
  writeMass,
  writeOpenings,
  writeRange,
  writeRefills,
  writeSlope,
  writeTilt,
  writeVolume,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { fieldView } from "../fields/entry-view.js";
import type { WatererFigure } from "../kernels/how-got/subject.js";
import { findingsOfWaterer, standingOf } from "../kernels/yard/standing.js";
import { wholeQuantities } from "../styles/whole-quantities.js";
import { numberButton } from "../verdicts/number-button.js";
import { pictureView } from "./picture-view.js";
import type { WatererSpot, YardRoom } from "./room.js";
import { standingView } from "./standing-view.js";
import { dropWaterer, nameOfWaterer, watererEntries } from "./waterer-entries.js";

/** One waterer: a line with how it stands; opened, its picture on its slope, its figures, and what is typed of it. */
export function watererView(room: YardRoom, spot: WatererSpot, told: PenYard | undefined) {
  const { plan, typing, isWide, isAllOpen, added } = room;
  const { pen, at } = spot;
  const name = nameOfWaterer(plan, pen, at);
  const report = told?.waterers[at];
  const isAdded = added?.pen === pen && added.at === at;
  const drop = ({ currentTarget }: Event) => {
    shutBefore(currentTarget as HTMLElement);
    typing.want(`pen ${pen + 1} waterers`, dropWaterer(plan, pen, at));
  };
  return html`<li class="row" aria-label=${name}>
    <details class="waterer" ?open=${isAllOpen || isAdded}><summary><div class="brief">
        <h4>${name}</h4>
        ${told === undefined || report === undefined ? nothing : briefView(told, report)}
      </div></summary>
      <div class="sides">
        ${report === undefined ? nothing : toldView(room, pen, report)}
        <details class="fields" ?open=${isWide || isAdded}><summary>Change it</summary>
          ${watererEntries(plan, pen, at).map((entry) => fieldView(entry, typing))}
          <button type="button" @click=${drop} aria-label="Take out ${name}">Take out</button>
        </details>
      </div>
    </details>
  </li>`;
}

/** How it stands, and how often somebody has to fill it. */
function briefView(told: PenYard, { id, waterer, weeks }: WatererReport) {
  const refills = weeks[0]?.refills;
  const fill = `${refills === undefined ? "" : "fill "}${writeRefills(refills)}`;
  return html`<p>${standingView(standingOf(findingsOfWaterer(told, id), "good"))}<span class="spoken">;</span>
    <span>${waterer.count > 1 ? `${waterer.count} of them: ` : nothing}${fill}</span></p>`;
}

/** Before a waterer goes its line is shut, so that the one that moves up does not stand open; the focus goes to what stays. */
function shutBefore(button: HTMLElement): void {
  const line = button.closest<HTMLDetailsElement>("details.waterer");
  if (line !== null) line.open = false;
  button.closest("section")?.querySelector<HTMLElement>(".add")?.focus();
}

function toldView({ system, isWide }: YardRoom, pen: number, report: WatererReport) {
  const { index, waterer, holds, gives, reach, weeks, fullMass, fill } = report;
  const [week] = weeks;
  const number = (text: string, what: WatererFigure) =>
    numberButton(text, { of: "waterer", pen, waterer: index, what });
  return html`<div class="shown">
    ${pictureView(report, system)}
    <p class="quiet">Cut along its slope, downhill to the right.${report.tilt.works === "vacuum" ? DRAINING : nothing}</p>
    <dl class="figures">
      <div><dt>Gives on its slope</dt><dd>${number(writeVolume(gives, system), "gives")}</dd></div>
      ${drainsView(report, number)}
      <div><dt>Birds at once${waterer.count > 1 ? `, at all ${waterer.count}` : ""}</dt><dd>${number(String(reach.atOnce * waterer.count), "atOnce")}</dd></div>
      <div><dt>To be filled</dt><dd>${number(writeRefills(week?.refills), "refills")}</dd></div>
      <div><dt>On a hot day</dt><dd>${number(writeRefills(week?.hotRefills), "hotRefills")}</dd></div>
    </dl>
    <p>${writeTilt(report, system)}</p>
    <details ?open=${isWide}><summary>What it holds and weighs, and how high it belongs</summary><dl class="figures">
      <div><dt>Holds</dt><dd>${number(writeVolume(holds, system), "holds")}</dd></div>
      <div><dt>Full it weighs</dt><dd>${number(writeMass(fullMass, system), "weight")}</dd></div>
      <div><dt>To fill it</dt><dd>${fill.trips === 1 ? "1 trip" : `${fill.trips} trips`} of ${writeMass(fill.massPerTrip, system)}</dd></div>
      ${
        week?.hang === undefined
          ? nothing
          : html`<div><dt>${waterer.kind.heightAs === "nipple" ? "Pins at" : "Lip at"}</dt><dd>${wholeQuantities(writeRange(week.hang.low, week.hang.high, "length", system, 2))}</dd></div>`
      }
    </dl></details>
    ${openingsView(report, system)}
  </div>`;
}

const DRAINING =
  " A dot is the air hole, as high as the water stands; the broken line is the ground on which it would drain.";

function drainsView({ tilt }: WatererReport, number: (text: string, what: WatererFigure) => unknown) {
  if ("drainsAt" in tilt)
    return html`<div><dt>Drains from</dt><dd>${number(tilt.drainsAt === undefined ? "no slope" : writeSlope(tilt.drainsAt), "drainsAt")}</dd></div>`;
  return "share" in tilt
    ? html`<div><dt>Stays of a full one</dt><dd>${number(`${Math.round(100 * tilt.share)} %`, "share")}</dd></div>`
    : nothing;
}

function openingsView(report: WatererReport, system: YardRoom["system"]) {
  const lines = writeOpenings(report, system);
  if (lines.length === 0) return nothing;
  return html`<details><summary>If it is opened, shut or warmed</summary>
    <ul>${lines.map((line) => html`<li>${line}</li>`)}</ul></details>`;
}

/** How often each is filled, and where lip or pins belong, in the weeks to come. */
export function weeksView({ system }: YardRoom, { pen, waterers }: PenYard) {
  const [first] = waterers;
  if (first === undefined) return nothing;
  const height = ({ hang }: WatererReport["weeks"][number]) =>
    hang === undefined ? "no table says" : writeRange(hang.low, hang.high, "length", system, 2);
  return html`<h4>The coming weeks</h4>
    <div class="scroller" role="region" aria-label="Weeks of ${pen}" tabindex="0"><table>
      <thead><tr><th scope="col">Week</th>${waterers.map(({ id }) => html`<th scope="col">${id}: fill</th><th scope="col">height</th>`)}</tr></thead>
      <tbody>${first.weeks.map(
        ({ week }) =>
          html`<tr><th scope="row">${week}</th>${waterers.map(({ weeks }) => html`<td>${writeRefills(weeks[week]!.refills)}</td><td>${height(weeks[week]!)}</td>`)}</tr>`,
      )}</tbody>
    </table></div>`;
}
