import { html, nothing } from "lit";
import type { Entry } from "../fields/entry.js";
import { fieldView, problemView } from "../fields/entry-view.js";
import { groupEntries, kindEntry, leaveToBirds, nameOfGroup } from "./drinkers-entries.js";
import { buttonsView, type PanelRequest } from "./panel-request.js";
import { deleteAction, duplicateAction } from "./part-actions.js";
import { runNames } from "./plan-context.js";
import { nameEntry } from "./plan-entries.js";

/** What a keeper sets of a row of drinkers: kind, how many and how far apart first. */
export function drinkersPanel(request: PanelRequest, run: number, group: number) {
  const { plan, typing, choose } = request;
  const part = { kind: "drinkers", run, group } as const;
  const { count, every, first, drop, busiest, ordinary, need } = groupEntries(request, run, group);
  const view = (entry: Entry) => fieldView(entry, typing);
  const leftToBirds = leaveToBirds(plan, run, group);
  const name = nameEntry(part, nameOfGroup(plan, run, group), "the drinkers");
  return html`
    ${buttonsView([
      { words: `Its run: ${runNames(plan)[run]}`, press: () => choose({ kind: "run", run }) },
      duplicateAction(request, part),
      deleteAction(request, part),
    ])}
    ${problemView(typing, "action")}
    ${view({ form: "choice", ...kindEntry(request, run, group) })}
    <div class="pair">${view(count)} ${view(every)} ${view(busiest)} ${view(ordinary)}</div>
    ${leftToBirds === undefined ? nothing : buttonsView([{ words: "Let the birds decide", press: () => typing.want("action", leftToBirds) }])}
    <details>
      <summary>More</summary>
      <div>${view({ form: "typed", ...name })} ${[first, drop, need].map(view)}</div>
    </details>
  `;
}
