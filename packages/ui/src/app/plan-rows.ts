import { writeProblem } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { KeptPlan, ShutPlan } from "../storage/stored-plan.js";

/** What can be done with the plans of the list. */
export interface PlanActs {
  readonly open: (plan: KeptPlan) => unknown;
  readonly saveFile: (plan: KeptPlan) => unknown;
  readonly copy: (plan: KeptPlan) => unknown;
  readonly startRenaming: (plan: KeptPlan) => unknown;
  readonly stopRenaming: (plan: KeptPlan) => unknown;
  readonly rename: (plan: KeptPlan, name: string) => unknown;
  readonly delete: (plan: KeptPlan) => unknown;
  readonly bringBack: (plan: KeptPlan) => unknown;
  readonly askToEmpty: (isEmptying: boolean) => unknown;
  readonly empty: () => unknown;
}

const nameOf = ({ name }: KeptPlan): string => (name === "" ? "A line without a name" : name);

const WHEN = new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeStyle: "short" });

/** One plan that can be opened. */
export function planRow(plan: KeptPlan, isOpen: boolean, acts: PlanActs) {
  const name = nameOf(plan);
  const act = (words: string, does: (plan: KeptPlan) => unknown) =>
    html`<button @click=${() => does(plan)}>${words}<span class="spoken"> ${name}</span></button>`;
  return html`<li>
    <button class="plan" data-plan=${plan.id} aria-current=${isOpen ? "true" : nothing} @click=${() => acts.open(plan)}>
      ${name}<small>${isOpen ? "Open now. " : nothing}Changed ${WHEN.format(plan.changedAt)}</small>
    </button>
    <div class="acts">
      ${act("Rename", acts.startRenaming)} ${act("Copy", acts.copy)} ${act("Save file", acts.saveFile)} ${act("Delete", acts.delete)}
    </div>
  </li>`;
}

/** The same while it is being given another name. */
export function renameRow(plan: KeptPlan, problem: string, acts: PlanActs) {
  const submit = (event: SubmitEvent) => {
    event.preventDefault();
    acts.rename(plan, String(new FormData(event.target as HTMLFormElement).get("name") ?? ""));
  };
  return html`<li>
    <form @submit=${submit}>
      <label class="wide">New name<input type="text" name="name" maxlength="80" .value=${plan.name}
        aria-invalid=${problem === "" ? nothing : "true"} aria-describedby=${problem === "" ? nothing : "name-problem"} /></label>
      ${problem === "" ? nothing : html`<p class="problem" id="name-problem">${problem}</p>`}
      <div class="acts">
        <button class="chief">Keep this name</button>
        <button type="button" @click=${() => acts.stopRenaming(plan)}>Leave it as it was</button>
      </div>
    </form>
  </li>`;
}

/** One that this page cannot open; it can only be taken out as a file. */
export function shutRow(plan: ShutPlan, saveRaw: () => unknown) {
  const why =
    plan.kind === "newer"
      ? "A newer Headfall saved this plan. This one cannot open it, and leaves it as it is."
      : "This plan is damaged and cannot be opened. It is left as it is.";
  return html`<li class="shut">
    <strong>${nameOf(plan)}</strong>
    <p>${why}</p>
    <details>
      <summary>What was found</summary>
      <ol>${plan.problems.slice(0, 20).map((problem) => html`<li>${writeProblem(problem)}</li>`)}</ol>
    </details>
    <div class="acts"><button @click=${saveRaw}>Save as it is<span class="spoken"> ${nameOf(plan)}</span></button></div>
  </li>`;
}

/** The deleted ones, each to be brought back, all to be removed for good. */
export function deletedView(deleted: readonly KeptPlan[], isEmptying: boolean, acts: PlanActs) {
  if (deleted.length === 0) return nothing;
  return html`<details>
    <summary>Deleted (${deleted.length})</summary>
    <ul aria-label="Deleted plans">
      ${deleted.map(
        (plan) => html`<li>
          ${nameOf(plan)}
          <div class="acts"><button @click=${() => acts.bringBack(plan)}>Bring back<span class="spoken"> ${nameOf(plan)}</span></button></div>
        </li>`,
      )}
    </ul>
    ${isEmptying ? reallyView(deleted.length, acts) : html`<div class="acts"><button @click=${() => acts.askToEmpty(true)}>Remove them for good</button></div>`}
  </details>`;
}

function reallyView(count: number, acts: PlanActs) {
  return html`<p>${count === 1 ? "This plan" : `These ${count} plans`} cannot be brought back after that.</p>
    <div class="acts">
      <button class="chief" @click=${acts.empty}>Remove for good</button>
      <button @click=${() => acts.askToEmpty(false)}>Keep ${count === 1 ? "it" : "them"}</button>
    </div>`;
}
