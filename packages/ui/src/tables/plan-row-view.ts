import { html, nothing } from "lit";
import type { Entry } from "../fields/entry.js";
import { cellView } from "../fields/entry-view.js";
import type { TypingController } from "../fields/typing-controller.js";
import type { Selected } from "../kernels/selected.js";
import type { PlanContext } from "../parts/plan-context.js";
import { deleteReading } from "../parts/survey-view.js";
import type { PlanRow } from "./plan-rows.js";

/** What the rows of a table are made from. */
export interface RowsRequest extends PlanContext {
  readonly typing: TypingController;
  readonly selected: Selected | undefined;
  choose(part: Selected): void;
}

/** One row: its fields, then what can be done with it. */
export function planRowView(request: RowsRequest, row: PlanRow, isCurrent: boolean) {
  return html`<tr
    role="row" aria-current=${isCurrent ? "true" : nothing} @focusin=${() => request.choose(row.part)}
  >
    ${isNamed(row) ? nothing : html`<th role="rowheader" scope="row" class="wide">${row.name}</th>`}
    ${row.cells.map((entries, place) =>
      place === 0 && isNamed(row) ? headCell(entries[0], request.typing) : cell(entries, request.typing),
    )}
    ${row.tellsMore ? nothing : html`<td role="cell" class="wide actions">${actions(request, row)}</td>`}
  </tr>`;
}

/** Whether its first cell is the name of its part. */
const isNamed = ({ reading, tellsMore }: PlanRow) => reading === undefined && tellsMore === undefined;

/** The name of its part is what a row is called by. */
function headCell(entry: Entry, typing: TypingController) {
  return html`<th role="rowheader" scope="row" class="wide" data-head=${entry.title}>${cellView(entry, typing)}</th>`;
}

/** Choices need the width of a card; figures go by twos. */
function cell([entry, ...others]: readonly [Entry, ...Entry[]], typing: TypingController) {
  return html`<td role="cell" data-head=${entry.title} class=${entry.form === "choice" ? "wide" : ""}>
    ${cellView(entry, typing)}
    ${others.map((other) => html`<div class="also"><span aria-hidden="true">${other.title}</span>${cellView(other, typing)}</div>`)}
  </td>`;
}

function actions(request: RowsRequest, { part, name, key, reading }: PlanRow) {
  const { typing } = request;
  const remove = () =>
    reading !== undefined && part.kind === "run"
      ? deleteReading(request, part.run, reading)
      : typing.want(key, { kind: "delete", part });
  const canDuplicate = reading === undefined && part.kind !== "joint";
  return html`
    ${
      canDuplicate
        ? html`<button type="button" aria-label="Duplicate ${name}" @click=${() => typing.want(key, { kind: "duplicate", part })}>Duplicate</button>`
        : nothing
    }
    <button type="button" aria-label="Delete ${name}" @click=${remove}>Delete</button>
    ${typing.problem(key) === undefined ? nothing : html`<p class="problem" role="alert">${typing.problem(key)}</p>`}
  `;
}
