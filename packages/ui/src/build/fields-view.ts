import { allPipes, findPipe, kindFound, type Plan, sourceNames } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { fieldView, problemView } from "../fields/entry-view.js";
import type { PlanChange } from "../store/plan-change.js";
import {
  addContact,
  contactEntries,
  dropContact,
  footingEntries,
  lengthEntries,
  soilEntry,
} from "./build-entries.js";
import type { BuildFields } from "./room.js";

/** What a plan may say for building; all of it may be left out. */
export function fieldsView(fields: BuildFields) {
  const { plan, typing } = fields;
  const names = sourceNames(plan);
  return html`
    ${plan.sources.map(
      (_, index) => html`<details><summary>How ${names[index]} stands</summary>
        <div class="pair">${footingEntries(plan, index).map((entry) => fieldView(entry, typing))}</div></details>`,
    )}
    ${plan.sources.length === 0 ? nothing : fieldView(soilEntry(plan), typing)}
    ${pipesView(fields)} ${contactsView(fields)}`;
}

const nameOf = (pipe: string): string => kindFound(findPipe(pipe))?.name ?? pipe;
const idOf = (pipe: string): string => kindFound(findPipe(pipe))?.id ?? pipe;

/** Pipes of the plan that are not on its shelf yet. */
function laidOffShelf({ runs, shelf = [] }: Plan): readonly string[] {
  const there = new Set(shelf.map(({ pipe }) => idOf(pipe)));
  const laid = runs.flatMap(({ pipe }) =>
    typeof pipe === "string" ? [idOf(pipe)] : pipe === undefined ? ["pvc-sch40-1/2"] : [],
  );
  const known = new Set(allPipes.map(({ id }) => id));
  return [...new Set(laid)].filter((id) => known.has(id) && !there.has(id));
}

function pipesView({ plan, typing }: BuildFields) {
  const { shelf = [] } = plan;
  const put = (pipe: string): PlanChange => ({
    kind: "set",
    path: ["shelf"],
    value: [...shelf, { pipe }],
    what: `${nameOf(pipe)} on the shelf`,
  });
  return html`<details><summary>Pipe: lengths sold, pieces on hand</summary>
    ${shelf.map(
      ({ pipe }, index) => html`<fieldset><legend>${nameOf(pipe)}</legend>
        ${lengthEntries(plan, index, nameOf(pipe)).map((entry) => fieldView(entry, typing))}</fieldset>`,
    )}
    ${laidOffShelf(plan).map(
      (pipe) =>
        html`<div class="buttons"><button type="button" @click=${() => typing.want("shelf put", put(pipe))}>Say more of ${nameOf(pipe)}</button></div>`,
    )}
    ${problemView(typing, "shelf put")}
    <p class="note quiet">Prices stand in the room Cure. A cure thinks of the pipes named here only.</p>
  </details>`;
}

function contactsView({ plan, typing }: BuildFields) {
  const { contacts = [] } = plan;
  return html`<details><summary>Whom to call: ${contacts.length === 0 ? "nobody yet" : contacts.length}</summary>
    ${contacts.map(
      (_, index) => html`<fieldset><legend>Contact ${index + 1}</legend>
        ${contactEntries(plan, index).map((entry) => fieldView(entry, typing))}
        <div class="buttons"><button type="button" @click=${() => typing.want(`contact ${index} off`, dropContact(plan, index))}>Take it out<span class="spoken">: contact ${index + 1}</span></button></div>
        ${problemView(typing, `contact ${index} off`)}</fieldset>`,
    )}
    <div class="buttons"><button type="button" @click=${() => typing.want("contact add", addContact(plan))}>One more to call</button></div>
    ${problemView(typing, "contact add")}
    <p class="note quiet">They are kept in the plan: whoever gets the plan, or a link to it, reads them.</p>
  </details>`;
}
