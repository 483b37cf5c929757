import {
  bestVariants,
  nameOfVariant,
  type Plan,
  VARIANT_ROWS,
  type Variant,
  type VariantRow,
  writeConclusion,
  writeDifference,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { namePath } from "../kernels/name-path.js";
import { countsView } from "./counts-view.js";
import type { BesideRoom, KeptPlan } from "./room.js";

/** The plan in hand beside others: chosen from those kept, or opened from files. */
export function besideView(room: BesideRoom) {
  const { others, variants, isOld, problems, acts } = room;
  const opened = (event: Event) => {
    const input = event.target as HTMLInputElement;
    const files = [...(input.files ?? [])];
    input.value = "";
    if (files.length > 0) acts.openFiles(files);
  };
  return html`<section aria-labelledby="beside">
    <h3 id="beside">Beside other plans</h3>
    <p>See this plan beside others: what works, what it takes, how long it lasts.</p>
    <div class="buttons">
      ${acts.list === undefined ? nothing : html`<button type="button" @click=${acts.list}>${others === undefined ? "Choose from your plans" : "List your plans again"}</button>`}
      <label class="button file">Choose files<input type="file" multiple accept=".json,application/json" @change=${opened} /></label>
    </div>
    ${problems.length === 0 ? nothing : html`<div role="alert">${problems.map((words) => html`<p class="problem">${words}</p>`)}</div>`}
    ${others === undefined ? nothing : choicesView(others, room)}
    ${variants === undefined ? nothing : html`<div class=${isOld ? "older" : nothing}>${comparedView(variants, room)}</div>`}
  </section>`;
}

function choicesView(others: readonly KeptPlan[], { chosen, acts }: BesideRoom) {
  if (others.length === 0) return html`<p>No other plan is kept in this browser.</p>`;
  return html`<fieldset><legend>Set beside this plan</legend>
    ${others.map(
      (
        { id, name },
        at,
      ) => html`<div class="field tick"><span class="box"><input type="checkbox" id="beside-${at}" .checked=${live(chosen.has(id))}
        @change=${(event: Event) => acts.choose(id, (event.target as HTMLInputElement).checked)} /></span><label for="beside-${at}">${name === "" ? "A line without a name" : name}</label></div>`,
    )}
  </fieldset>`;
}

function comparedView(variants: readonly Variant[], room: BesideRoom) {
  const names = variants.map((_, v) => (v === 0 ? "This plan" : nameOfVariant(variants, v)));
  const rows = VARIANT_ROWS.filter(
    (row) => row.key !== "counts" && variants.some(({ figures }) => row.value(figures) !== undefined),
  );
  return html`<p><strong>${writeConclusion(variants)}</strong></p>
    <div class="scroller" role="region" aria-label="Plans beside each other" tabindex="0"><table class="cards beside">
      <thead><tr><td></td>${names.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
      <tbody>
        <tr><th scope="row">drinkers</th>${variants.map(({ figures }, v) => html`<td data-head=${names[v]!}>${countsView(figures.counts)}</td>`)}</tr>
        ${rows.map((row) => rowView(row, variants, names, room))}
      </tbody>
    </table></div>
    ${variants.slice(1).map((variant, v) => differencesView(variant, names[v + 1]!, room.plan))}`;
}

function rowView(
  row: VariantRow,
  variants: readonly Variant[],
  names: readonly string[],
  { system }: BesideRoom,
) {
  const best = bestVariants(row, variants);
  return html`<tr><th scope="row">${row.words}</th>${variants.map(
    ({ figures, money }, v) =>
      html`<td data-head=${names[v]!}>${row.write(figures, system, money)}${best[v] ? html` <strong class="best">best</strong>` : nothing}</td>`,
  )}</tr>`;
}

/** What the other says differently, of parts by their names. */
function differencesView({ differences }: Variant, name: string, plan: Plan) {
  return html`<details><summary>What ${name} says differently: ${differences.length === 0 ? "nothing" : differences.length}</summary>
    <ul>${differences.map((each) => html`<li>${writeDifference(each.first === undefined ? each : { ...each, path: namePath(each.path, plan), part: undefined })}</li>`)}</ul>
  </details>`;
}
