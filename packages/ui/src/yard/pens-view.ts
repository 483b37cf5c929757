import {
  batchesOf,
  isGrave,
  type PenYard,
  writeAge,
  writeChangeOver,
  writeShareOfLoose,
  writeSlope,
  writeYardFinding,
  type YardOfPlan,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { fieldView, problemView } from "../fields/entry-view.js";
import { nameOfPen } from "../kernels/pen-names.js";
import { findingsOfPen, standingOf } from "../kernels/yard/standing.js";
import { wantRoom } from "../room/no-line.js";
import { openAllButton } from "../room/open-all.js";
import { wholeDates } from "../styles/whole-dates.js";
import type { YardRoom } from "./room.js";
import { standingView } from "./standing-view.js";
import { addWaterer, slopeEntry, waterersOf } from "./waterer-entries.js";
import { watererView, weeksView } from "./waterer-view.js";

/** The answer above all else: what is amiss, gravest first. */
export function answerView({ yard, system }: YardRoom) {
  if (yard === undefined) return html`<p>Working it out ...</p>`;
  const findings = yard.pens.flatMap(({ findings: all }) => all);
  const grave = findings.filter(isGrave);
  const rest = findings.filter((finding) => !isGrave(finding));
  const all = yard.pens.reduce(
    (sum, { waterers }) => sum + waterers.reduce((n, { waterer }) => n + waterer.count, 0),
    0,
  );
  if (all === 0)
    return html`<p>No pen has a loose waterer yet. Add the founts, pans and buckets that stand in it, and the page works out what each gives
    on its slope, how often to fill it and whom it suits.</p>`;
  return html`
    <dl class="answer">
      <div><dt>Waterers</dt><dd class="large">${all}</dd></div>
      <div><dt>To put right first</dt><dd class="large">${grave.length === 0 ? "nothing" : grave.length}</dd></div>
      <div><dt>Fills a day</dt><dd class="large">${fillsOf(yard, "refills")}</dd></div>
      <div><dt>On a hot day</dt><dd class="large">${fillsOf(yard, "hotRefills")}</dd></div>
    </dl>
    ${grave.length === 0 ? nothing : html`<ul class="grave">${grave.map((finding) => html`<li><strong>First:</strong> ${writeYardFinding(finding, system)}</li>`)}</ul>`}
    ${rest.length === 0 ? nothing : html`<details ?open=${rest.length < 6}><summary>${rest.length} more to mind</summary><ul>${rest.map((finding) => html`<li>${writeYardFinding(finding, system)}</li>`)}</ul></details>`}`;
}

/** Of all waterers together, to a tenth. */
function fillsOf({ pens }: YardOfPlan, which: "refills" | "hotRefills"): string {
  const sum = pens.reduce(
    (total, { waterers }) =>
      total + waterers.reduce((n, { waterer, weeks }) => n + waterer.count * (weeks[0]?.[which] ?? 0), 0),
    0,
  );
  return sum.toFixed(1);
}

/** Every pen with its waterers. */
export function pensView(room: YardRoom) {
  const { plan, yard } = room;
  const pens = plan.pens ?? [];
  if (pens.length === 0)
    return html`<p>A waterer stands in a pen, and the plan has none yet: say which birds there are.
      <button type="button" class="chief" @click=${wantRoom("birds")}>Go to the birds</button></p>`;
  const count = pens.reduce((sum, { waterers }) => sum + (waterers?.length ?? 0), 0);
  return html`${count === 0 ? nothing : html`<p class="buttons">Open one to change it. ${count < 2 ? nothing : openAllButton(room.isAllOpen, room.acts.openAll)}</p>`}
    ${pens.map((_, pen) => penView(room, pen, yard?.pens[pen]))}`;
}

function penView(room: YardRoom, pen: number, told: PenYard | undefined) {
  const { plan, typing, acts } = room;
  const name = nameOfPen(plan, pen);
  const act = `pen ${pen + 1} waterers`;
  const waterers = waterersOf(plan, pen);
  // What was reckoned of an older plan may have other waterers.
  const same = told?.waterers.length === waterers.length ? told : undefined;
  const add = () => {
    typing.want(act, addWaterer(plan, pen));
    acts.opened({ pen, at: waterers.length });
  };
  return html`<section class="pen" aria-labelledby="yard-pen-${pen}">
    <div class="head"><h3 id="yard-pen-${pen}">${name}</h3>
      <button type="button" class="add" aria-label="Add a waterer to ${name}" @click=${add}>Add a waterer</button></div>
    ${problemView(typing, act)}
    <p class="quiet">${birdsIn(room, pen, told)}</p>
    ${same === undefined ? nothing : placesView(same)}
    ${waterers.length === 0 ? nothing : html`<ul class="rows" aria-label="Waterers of ${name}">${waterers.map((_, at) => watererView(room, { pen, at }, same))}</ul>`}
    ${groundView(room, pen, same)}
  </section>`;
}

/** Whether the pen has places enough to drink, and how many of them are here. */
function placesView(told: PenYard) {
  const share = writeShareOfLoose(told);
  return html`${told.birds === 0 ? nothing : html`<p>${standingView(standingOf(findingsOfPen(told), "places enough to drink"))}</p>`}
    ${share === undefined ? nothing : html`<p>${share}</p>`}`;
}

/** What is the same for all of a pen, folded: its ground, and the weeks to come. */
function groundView(room: YardRoom, pen: number, told: PenYard | undefined) {
  const { plan, typing, isAllOpen } = room;
  const hasWeeks = told !== undefined && told.waterers.length > 0;
  const ground = told === undefined ? "Ground" : `Ground ${writeSlope(told.slope)}`;
  return html`<details class="ground-and-weeks" ?open=${isAllOpen}><summary>${ground}${hasWeeks ? ", coming weeks" : nothing}</summary>
    <div class="pair">${fieldView(slopeEntry(plan, pen), typing)}</div>
    ${hasWeeks ? html`${weeksView(room, told)}${changeOversView(told)}` : nothing}
  </details>`;
}

function birdsIn({ plan }: YardRoom, pen: number, told: PenYard | undefined): string {
  if (told === undefined)
    return batchesOf(plan.pens![pen]!)
      .map(({ count, kind }) => `${count} × ${kind}`)
      .join(", ");
  return told.batches
    .map(
      ({ count, kindName, ageDays }) =>
        `${count} × ${kindName}, ${ageDays < 0 ? `come in ${writeAge(-ageDays)}` : writeAge(ageDays)}`,
    )
    .join("; ");
}

function changeOversView({ changeOvers }: PenYard) {
  if (changeOvers.length === 0) return nothing;
  return html`<h4>Changing over</h4><ul>${changeOvers.map((change) => html`<li>${wholeDates(writeChangeOver(change))}</li>`)}</ul>`;
}
