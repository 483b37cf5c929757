import { allFittings, findFitting, kindFound, type PlanFitting } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { Entry } from "../fields/entry.js";
import { cellView, idOf, problemView } from "../fields/entry-view.js";
import { pressForm } from "../fields/fresh-field.js";
import { type FittingCount, readFitting, writeFitting } from "../kernels/fitting-counts.js";
import { setAt } from "../store/set-at.js";
import type { PanelRequest } from "./panel-request.js";
import { runNames } from "./plan-context.js";

/** Stands in the choice for a fitting that is in no table. */
const OWN = "own fitting";

/** Elbows, valves and the like on a run, with their counts. */
export function fittingsView(request: PanelRequest, run: number) {
  const { plan, typing } = request;
  const fittings = plan.runs[run]!.fittings ?? [];
  const many = fittings.reduce((sum, fitting) => sum + readFitting(fitting).count, 0);
  return html`<details>
    <summary>Fittings${many > 0 ? `: ${many}` : ""}</summary>
    <div>
      <p class="note quiet">The way in from a source is always counted; it need not be listed.</p>
      ${fittings.length === 0 ? nothing : fittingsTable(request, run, fittings)} ${newFitting(request, run)}
      ${problemView(typing, `${runNames(plan)[run]} fittings`)}
    </div>
  </details>`;
}

/** The name of a fitting in words. */
const wordsOf = ({ name }: FittingCount): string => kindFound(findFitting(name))?.name ?? name;

function fittingsTable(request: PanelRequest, run: number, fittings: readonly PlanFitting[]) {
  const { plan, typing } = request;
  return html`<table class="small">
    <caption class="spoken">Fittings of ${runNames(plan)[run]}</caption>
    <thead><tr><th scope="col">Fitting</th><th scope="col">How many</th><td></td></tr></thead>
    <tbody>
      ${fittings.map(readFitting).map((fitting, index) => {
        const { name, count, loss } = fittingEntries(request, run, index, fitting);
        return html`<tr>
          <th scope="row">
            ${fitting.k === undefined ? wordsOf(fitting) : html`${cellView(name, typing)} loses ${cellView(loss, typing)} velocity heads`}
          </th>
          <td>${cellView(count, typing)}</td>
          <td><button type="button" aria-label="Delete ${wordsOf(fitting)}" @click=${() => deleteFitting(request, run, index)}>Delete</button></td>
        </tr>`;
      })}
    </tbody>
  </table>`;
}

function fittingEntries({ plan }: PanelRequest, run: number, index: number, fitting: FittingCount) {
  const of = runNames(plan)[run]!;
  const write = setAt(["runs", run, "fittings", index], `fittings of ${of}`);
  const entry = (key: "name" | "count" | "k", title: string, kind: "name" | "count" | "number"): Entry => ({
    form: "typed",
    key: `${of} fitting ${index} ${key}`,
    title,
    name: `${title}, ${wordsOf(fitting)}`,
    kind,
    typed: String(fitting[key]),
    isNeeded: true,
    change: (value) => write(writeFitting({ ...fitting, [key]: value })),
  });
  return {
    name: entry("name", "Name", "name"),
    count: entry("count", "How many", "count"),
    loss: entry("k", "Loss coefficient", "number"),
  };
}

function writeList({ plan, typing }: PanelRequest, run: number, list: readonly PlanFitting[]): void {
  const name = runNames(plan)[run]!;
  typing.forgetUnder(`${name} fitting `);
  const set = setAt(["runs", run, "fittings"], `fittings of ${name}`);
  typing.want(`${name} fittings`, set(list.length > 0 ? list : undefined));
}

function deleteFitting(request: PanelRequest, run: number, index: number): void {
  const list = request.plan.runs[run]!.fittings ?? [];
  writeList(
    request,
    run,
    list.filter((_, place) => place !== index),
  );
}

function newFitting(request: PanelRequest, run: number) {
  const { plan, typing } = request;
  const key = `${runNames(plan)[run]} new fitting`;
  const chosen = typing.draft(key) ?? "elbow-90";
  const option = (value: string, words: string) =>
    html`<option value=${value} .selected=${live(value === chosen)}>${words}</option>`;
  return html`<form class="line" @submit=${pressForm(() => addFitting(request, run, typing.draft(key) ?? chosen))}>
    <div class="field">
      <label for=${idOf(key)}>Fitting to add</label>
      <select id=${idOf(key)} @change=${(event: Event) => typing.keep(key, (event.target as HTMLSelectElement).value)}>
        ${allFittings.map(({ id, name }) => option(id, name))} ${option(OWN, "Own, by its loss coefficient")}
      </select>
    </div>
    <button type="submit">Add fitting</button>
  </form>`;
}

/** One more of a kind there is already only raises its count. */
function addFitting(request: PanelRequest, run: number, chosen: string): void {
  const list = request.plan.runs[run]!.fittings ?? [];
  writeList(
    request,
    run,
    chosen === OWN ? [...list, { name: OWN, k: 1, count: 1 }] : withOneMore(list, chosen),
  );
}

function withOneMore(list: readonly PlanFitting[], chosen: string): PlanFitting[] {
  const counted = list.map(readFitting);
  const at = counted.findIndex((each) => each.k === undefined && each.name === chosen);
  if (at < 0) return [...list, chosen];
  const { name, count } = counted[at]!;
  return list.map((each, index) => (index === at ? writeFitting({ name, count: count + 1 }) : each));
}
