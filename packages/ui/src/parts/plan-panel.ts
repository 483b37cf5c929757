import { allVessels, drinkerGroupsOf, type Plan } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { fieldView, idOf, problemView } from "../fields/entry-view.js";
import { pressForm } from "../fields/fresh-field.js";
import type { Selected } from "../kernels/selected.js";
import { freeSpot } from "../kernels/straight-on.js";
import type { PlanChange } from "../store/plan-change.js";
import { nameOfGroup } from "./drinkers-entries.js";
import type { PanelRequest } from "./panel-request.js";
import { jointNames, layoutOf, runNames, sourceNames } from "./plan-context.js";
import { planEntries } from "./plan-entries.js";

/** Parts of one sort listed at once; the tables have all of a longer plan. */
const MOST_LISTED = 60;

/** The plan as a whole, while no part is chosen: every part as a button, then what holds for all. */
export function planPanel(request: PanelRequest) {
  const { typing, plan } = request;
  const [name, ...others] = planEntries(request);
  return html`
    ${fieldView(name!, typing)} ${partLists(plan).map((list) => listView(request, list))} ${addSourceView(request)}
    <details><summary>More about the plan</summary><div>${others.map((entry) => fieldView(entry, typing))}</div></details>
    ${problemView(typing, "action")}
  `;
}

interface PartList {
  readonly title: string;
  readonly parts: readonly { readonly part: Selected; readonly name: string }[];
}

function partLists(plan: Plan): PartList[] {
  const runs = runNames(plan);
  const groups = plan.runs.flatMap((run, index) =>
    drinkerGroupsOf(run).map((_, group) => ({
      part: { kind: "drinkers", run: index, group } as const,
      name: nameOfGroup(plan, index, group),
    })),
  );
  return [
    {
      title: "Sources",
      parts: sourceNames(plan).map((name, source) => ({ part: { kind: "source", source }, name })),
    },
    { title: "Runs", parts: runs.map((name, run) => ({ part: { kind: "run", run }, name })) },
    { title: "Drinkers", parts: groups },
    {
      title: "Joints",
      parts: jointNames(plan).map((name) => ({ part: { kind: "joint", joint: name }, name })),
    },
  ];
}

function listView({ choose }: PanelRequest, { title, parts }: PartList) {
  if (parts.length === 0) return nothing;
  return html`<section aria-label=${title}>
    <h3>${title}</h3>
    <div class="buttons">
      ${parts
        .slice(0, MOST_LISTED)
        .map(({ part, name }) => html`<button type="button" @click=${() => choose(part)}>${name}</button>`)}
    </div>
    ${parts.length > MOST_LISTED ? html`<p class="note quiet">And ${parts.length - MOST_LISTED} more: the tables have them all.</p>` : nothing}
  </section>`;
}

const USUAL_VESSEL = "drum-55gal-plastic";

/** One more source, beside all that is drawn. */
export function addSource(plan: Plan, vessel = USUAL_VESSEL): PlanChange {
  return { kind: "addSource", vessel, place: freeSpot(layoutOf(plan)) };
}

function addSourceView({ plan, typing }: PanelRequest) {
  const key = "new source";
  const chosen = () => typing.draft(key) ?? USUAL_VESSEL;
  return html`<form class="line" @submit=${pressForm(() => typing.want(key, addSource(plan, chosen())))}>
    <div class="field">
      <label for=${idOf(key)}>Another source</label>
      <select id=${idOf(key)} @change=${(event: Event) => typing.keep(key, (event.target as HTMLSelectElement).value)}>
        ${allVessels.map(({ id, name }) => html`<option value=${id} .selected=${live(id === chosen())}>${name}</option>`)}
      </select>
    </div>
    <button type="submit">Add a source</button>
    ${problemView(typing, key)}
  </form>`;
}
