import { html, nothing } from "lit";
import { guard } from "lit/directives/guard.js";
import { live } from "lit/directives/live.js";
import type { Entry } from "../fields/entry.js";
import { fieldView, idOf, problemView } from "../fields/entry-view.js";
import { pressForm } from "../fields/fresh-field.js";
import { type HeightKey, heightKeyOf } from "../store/measure-height.js";
import { setAt } from "../store/set-at.js";
import { jointDoubtEntry } from "./doubt-entries.js";
import { buttonsView, type PanelAction, type PanelRequest } from "./panel-request.js";
import { deleteAction, drawAction } from "./part-actions.js";
import { layoutOf, runEnds, runNames } from "./plan-context.js";
import { jointEntries, nameEntry } from "./plan-entries.js";
import { fallEntry, fallReferenceWords } from "./run-entries.js";

/** What a keeper sets of a place where runs meet or end: how high it is, and whether air can leave. */
export function jointPanel(request: PanelRequest, joint: string) {
  const { plan, typing } = request;
  const { ground, above, bleed } = jointEntries(request, joint);
  const view = (entry: Entry) => fieldView(entry, typing);
  const decided = decidingEntry(request, joint);
  const doubt = jointDoubtEntry(request, joint);
  const heights = html`<div class="pair">${view(ground)} ${view(above)}</div>`;
  const part = { kind: "joint", joint } as const;
  const meeting = runEnds(plan).flatMap(({ from, to }, run) => (from === joint || to === joint ? [run] : []));
  const join: PanelAction = {
    words: "Make one run of the two",
    press: () => typing.want("action", { kind: "joinRuns", joint }),
  };
  return html`
    ${buttonsView([
      drawAction(request, joint),
      ...(meeting.length === 2 ? [join] : []),
      deleteAction(request, part),
    ])}
    ${problemView(typing, "action")}
    ${decided === undefined ? heights : view(decided)} ${view(bleed)}
    <h3>Runs that meet here</h3>
    ${buttonsView(meeting.map((run) => ({ words: runNames(plan)[run]!, press: () => request.choose({ kind: "run", run }) })))}
    <details>
      <summary>More</summary>
      <div>
        ${view({ form: "typed", ...nameEntry(part, joint, "the joint") })}
        ${doubt === undefined ? nothing : view(doubt)}
        ${decided === undefined ? nothing : html`<p class="note quiet">A height typed here takes the place of that fall.</p>${heights}`}
        ${mergeView(request, joint)}
      </div>
    </details>
  `;
}

/** The fall that brings its height here; undefined where the joint says its own. */
function decidingEntry(request: PanelRequest, joint: string): Entry | undefined {
  const key = heightKeyOf(request.plan, joint);
  const [list, run] = key.path;
  if (list !== "runs") return undefined;
  return key.path[2] === "fall"
    ? {
        form: "typed",
        ...fallEntry(request, run as number),
        title: `Fall of ${runNames(request.plan)[run as number]}`,
      }
    : readingEntry(request, key, run as number);
}

/** The last reading of the survey that leads here. */
function readingEntry({ plan }: PanelRequest, key: HeightKey, run: number): Entry {
  return {
    form: "typed",
    key: `${runNames(plan)[run]} survey end`,
    title: `Drop at the end of ${runNames(plan)[run]}`,
    name: key.what,
    kind: "length",
    typed: key.typed,
    isNeeded: true,
    note: `The last reading of its survey: how much lower than ${fallReferenceWords(plan, run)}.`,
    change: setAt(key.path, key.what),
  };
}

/** Lays this joint upon another, so that their runs meet. */
function mergeView({ plan, typing }: PanelRequest, joint: string) {
  const others = layoutOf(plan).joints.filter(({ name }) => name !== joint);
  if (others.length === 0) return nothing;
  const key = `point ${joint} join`;
  const chosen = () => typing.draft(key) ?? others[0]!.name;
  const merge = () => typing.want(key, { kind: "mergeJoints", joint, into: chosen() });
  return html`<form class="line" @submit=${pressForm(merge)}>
    <div class="field">
      <label for=${idOf(key)}>Join to</label>
      <select id=${idOf(key)} @change=${(event: Event) => typing.keep(key, (event.target as HTMLSelectElement).value)}>
        ${guard([others.map(({ name }) => name).join("\n"), chosen()], () =>
          others.map(
            ({ name }) => html`<option value=${name} .selected=${live(name === chosen())}>${name}</option>`,
          ),
        )}
      </select>
    </div>
    <button type="submit">Join</button>
    ${problemView(typing, key)}
  </form>`;
}
