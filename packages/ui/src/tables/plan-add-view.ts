import type { Plan, PlanDrinkerGroup } from "@headfall/hydraulics";
import { html } from "lit";
import { guard } from "lit/directives/guard.js";
import { idOf, problemView } from "../fields/entry-view.js";
import { type FreshField, freshView, pressForm, readFresh } from "../fields/fresh-field.js";
import { TEXT_KINDS } from "../fields/text-kinds.js";
import { usualRow } from "../kernels/put-along.js";
import { drawRunFrom } from "../parts/part-actions.js";
import { layoutOf, lengthOfRun, runNames } from "../parts/plan-context.js";
import { addSource } from "../parts/plan-panel.js";
import { lastKind, USUAL_SPACING } from "../parts/put-drinkers-view.js";
import { addReadings } from "../parts/survey-view.js";
import type { RowsRequest } from "./plan-row-view.js";
import type { RowSort } from "./plan-rows.js";

/** The button under a table that adds a row to it, with the choice of where. */
export function addRowView(request: RowsRequest, sort: RowSort) {
  switch (sort) {
    case "sources":
      return addSourceButton(request);
    case "runs":
      return addRunForm(request);
    case "drinkers":
      return addDrinkersForm(request);
    case "surveys":
      return addReadingForm(request);
    case "fittings":
      return html`<p class="note quiet">Fittings by name with their count, a semicolon between: ball-valve; elbow-90 x 2; filter (K 12).</p>`;
    case "points":
      return html`<p class="note quiet">Points come with the runs that meet or end there.</p>`;
  }
}

function addSourceButton({ plan, typing }: RowsRequest) {
  const key = "add source";
  return html`<p>
    <button type="button" @click=${() => typing.want(key, addSource(plan))}>Add a source</button>
    ${problemView(typing, key)}
  </p>`;
}

/** A choice of a part to add something to. */
function partChoice(
  { typing }: RowsRequest,
  key: string,
  label: string,
  options: readonly { readonly value: string; readonly words: string }[],
) {
  const chosen = typing.draft(key) ?? options[0]?.value;
  return html`<div class="field">
    <label for=${idOf(key)}>${label}</label>
    <select id=${idOf(key)} @change=${(event: Event) => typing.keep(key, (event.target as HTMLSelectElement).value)}>
      ${guard([JSON.stringify(options), chosen], () =>
        options.map(
          ({ value, words }) => html`<option value=${value} ?selected=${value === chosen}>${words}</option>`,
        ),
      )}
    </select>
  </div>`;
}

function addRunForm(request: RowsRequest) {
  const { plan, typing } = request;
  const key = "add run from";
  const options = layoutOf(plan).joints.map(({ name }) => ({ value: name, words: name }));
  const add = () => {
    const joint = typing.draft(key) ?? options[0]?.value;
    if (joint !== undefined) typing.want(key, drawRunFrom(request, joint));
  };
  return html`<form class="line" @submit=${pressForm(add)}>
    ${partChoice(request, key, "Add a run from", options)}
    <button type="submit">Add a run</button>
    ${problemView(typing, key)}
  </form>`;
}

const runOptions = (plan: Plan) => runNames(plan).map((words, run) => ({ value: String(run), words }));

function addDrinkersForm(request: RowsRequest) {
  const { plan, typing } = request;
  if (plan.runs.length === 0) return html`<p class="note quiet">Drinkers hang on runs: add a run first.</p>`;
  const key = "add drinkers to";
  const add = () => {
    const run = runWithin(plan, typing.draft(key));
    typing.want(key, { kind: "addDrinkers", run, drinkers: usualDrinkers(request, run) });
  };
  return html`<form class="line" @submit=${pressForm(add)}>
    ${partChoice(request, key, "Add drinkers to", runOptions(plan))}
    <button type="submit">Add drinkers</button>
    ${problemView(typing, key)}
  </form>`;
}

/** The run chosen; runs may have gone since. */
const runWithin = (plan: Plan, chosen: string | undefined) =>
  Math.min(Number(chosen ?? 0), plan.runs.length - 1);

function usualDrinkers(request: RowsRequest, run: number): PlanDrinkerGroup {
  const { plan, system } = request;
  const { count, every } = usualRow(lengthOfRun(plan, run), USUAL_SPACING[system]);
  return { kind: lastKind(plan), count, every: TEXT_KINDS.length.write(every, system) };
}

function addReadingForm(request: RowsRequest) {
  const { plan, typing } = request;
  if (plan.runs.length === 0)
    return html`<p class="note quiet">A survey goes along a run: add a run first.</p>`;
  const key = "add reading to";
  const along: FreshField = { key: "add along", title: "Distance", kind: "distance", usual: "" };
  const fall: FreshField = { key: "add fall", title: "Drop", kind: "length", usual: "" };
  const add = async () => {
    const [far, low] = [await readFresh(along, typing), await readFresh(fall, typing)];
    if (far === undefined || low === undefined) return;
    const run = runWithin(plan, typing.draft(key));
    addReadings(request, run, [{ along: far.typed, fall: low.typed }], [along.key, fall.key]);
  };
  return html`<form class="line" @submit=${pressForm(add)}>
    ${partChoice(request, key, "Add a reading to", runOptions(plan))} ${freshView(along, typing)} ${freshView(fall, typing)}
    <button type="submit">Add a reading</button>
    ${runNames(plan).map((name) => problemView(typing, `${name} survey`))}
  </form>`;
}
