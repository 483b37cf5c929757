import { drinkerGroupsOf } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { Entry } from "../fields/entry.js";
import { fieldView, problemView } from "../fields/entry-view.js";
import { type FreshField, freshView, pressForm, readFresh } from "../fields/fresh-field.js";
import { TEXT_KINDS } from "../fields/text-kinds.js";
import { showLength } from "../kernels/shown.js";
import { endDoubtEntry } from "./doubt-entries.js";
import { nameOfGroup } from "./drinkers-entries.js";
import { fittingsView } from "./fittings-view.js";
import { buttonsView, type PanelRequest } from "./panel-request.js";
import { deleteAction, drawAction, duplicateAction } from "./part-actions.js";
import { ownPipeEntries, pipeEntry } from "./pipe-entries.js";
import { lengthOfRun, runEnds, runNames } from "./plan-context.js";
import { nameEntry } from "./plan-entries.js";
import { putDrinkersView } from "./put-drinkers-view.js";
import {
  endEntry,
  fallEntry,
  hungEntry,
  lengthEntry,
  oneWayEntries,
  regulatorEntries,
  tapEntry,
} from "./run-entries.js";
import { surveyView } from "./survey-view.js";

/** What a keeper sets of a run: length, fall and pipe first, then what hangs on it. */
export function runPanel(request: PanelRequest, run: number) {
  const { plan, typing } = request;
  const name = runNames(plan)[run]!;
  const part = { kind: "run", run } as const;
  const view = (entry: Entry) => fieldView(entry, typing);
  const more: Entry[] = [
    { form: "typed", ...nameEntry(part, name, "the run") },
    { form: "choice", ...endEntry(request, run, "from") },
    { form: "choice", ...endEntry(request, run, "to") },
    { form: "choice", ...tapEntry(request, run) },
    hungEntry(request, run),
    ...oneWayEntries(request, run),
    ...regulatorEntries(request, run),
  ];
  // A line without drinkers has no verdict: putting them is what comes next.
  const comesNext = plan.runs.every((each) => drinkerGroupsOf(each).length === 0);
  return html`
    ${comesNext ? putDrinkersView(request, run, "chief") : nothing}
    ${buttonsView([
      { ...drawAction(request, runEnds(plan)[run]!.to), words: "Draw a run from its end", isChief: false },
      duplicateAction(request, part),
      deleteAction(request, part),
    ])}
    ${problemView(typing, "action")}
    <div class="pair">
      ${view({ form: "typed", ...lengthEntry(request, run) })} ${view({ form: "typed", ...fallEntry(request, run) })}
    </div>
    ${view({ form: "choice", ...pipeEntry(request, run) })}
    <div class="pair">${ownPipeEntries(request, run).map(view)}</div>
    ${groupsView(request, run)} ${comesNext ? nothing : putDrinkersView(request, run)} ${surveyView(request, run)}
    ${fittingsView(request, run)}
    <details><summary>More</summary><div>${more.map(view)}${view(endDoubtEntry(request, run))}${cutView(request, run)}</div></details>
  `;
}

/** The drinkers on it, each group a button that leads to it. */
function groupsView({ plan, choose }: PanelRequest, run: number) {
  const groups = drinkerGroupsOf(plan.runs[run]!);
  if (groups.length === 0) return nothing;
  return html`<div class="buttons">
    ${groups.map(
      ({ count }, group) =>
        html`<button type="button" @click=${() => choose({ kind: "drinkers", run, group })}>
          Its drinkers: ${nameOfGroup(plan, run, group)} (${count ?? 1})
        </button>`,
    )}
  </div>`;
}

/** Cuts the run in two, in the middle unless told where. */
function cutView(request: PanelRequest, run: number) {
  const { plan, typing, system } = request;
  const name = runNames(plan)[run]!;
  const length = lengthOfRun(plan, run);
  const field: FreshField = {
    key: `${name} cut`,
    title: "Cut in two, so far from its start",
    kind: "distance",
    usual: TEXT_KINDS.distance.write(length / 2, system),
  };
  const cut = async () => {
    const read = await readFresh(field, typing);
    if (read === undefined) return;
    if (read.value <= 0 || read.value >= length)
      return typing.complain(
        field.key,
        `The cut has to lie within the run, which is ${showLength(length, system)} long.`,
      );
    typing.want(field.key, { kind: "splitRun", run, along: read.value });
  };
  return html`<form class="line" @submit=${pressForm(cut)}>
    ${freshView(field, typing)}<button type="submit">Cut in two</button>
  </form>`;
}
