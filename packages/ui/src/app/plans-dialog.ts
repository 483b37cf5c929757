import { html, nothing } from "lit";
import { troubleOf } from "../storage/storage-trouble.js";
import type { KeptPlan } from "../storage/stored-plan.js";
import { writeTrouble } from "../storage/trouble-words.js";
import type { Desk } from "./desk.js";
import { EXAMPLES } from "./examples.js";
import { PageDialog } from "./page-dialog.js";
import { deletedView, type PlanActs, planRow, renameRow, shutRow } from "./plan-rows.js";
import { savePlans, saveRecord } from "./save-plans.js";
import { beginPlan, vesselChoice } from "./vessel-choice.js";
import { YARD_EXAMPLE } from "./yard-example.js";

/** Shows the list of plans: to open, rename, copy, delete and bring back, and to begin or fetch another. */
export function showPlans(desk: Desk): void {
  void new PlansDialog(desk).show();
}

class PlansDialog {
  readonly #desk: Desk;
  readonly #dialog = new PageDialog("Plans", () => this.#view());
  #plans: readonly KeptPlan[] = [];
  #trouble = "";
  #sought = "";
  #renaming: { readonly id: string; readonly problem: string } | undefined;
  #said = "";
  #justDeleted: KeptPlan | undefined;
  #isBeginning = false;
  #isEmptying = false;

  constructor(desk: Desk) {
    this.#desk = desk;
  }

  async show(): Promise<void> {
    await this.#read();
    this.#desk.onListChanged = () => void this.#readAgain();
    this.#dialog.show();
  }

  async #read(): Promise<void> {
    try {
      this.#plans = await this.#desk.list();
      this.#trouble = "";
    } catch (error) {
      this.#trouble = writeTrouble(troubleOf(error).kind);
    }
  }

  async #readAgain(): Promise<void> {
    if (!this.#dialog.isOpen) return;
    await this.#read();
    this.#dialog.update();
  }

  /** Does something with the plans, says what, and shows the list as it then is. Tells whether it could be done. */
  async #act(act: () => Promise<unknown>, said = ""): Promise<boolean> {
    this.#justDeleted = undefined;
    const isDone = await act().then(
      () => true,
      (error: unknown) => {
        this.#said = `That could not be done: ${writeTrouble(troubleOf(error).kind)}.`;
        return false;
      },
    );
    if (isDone) this.#said = said;
    await this.#readAgain();
    return isDone;
  }

  /** Puts the keyboard on a plan of the list, once what it was on is gone. */
  #focusOn({ id }: KeptPlan): void {
    this.#dialog.focus(`[data-plan="${CSS.escape(id)}"]`);
  }

  #view() {
    if (this.#isBeginning) return this.#beginView();
    const here = this.#plans.filter(({ deletedAt }) => deletedAt === undefined);
    const deleted = this.#plans.filter(({ deletedAt }) => deletedAt !== undefined);
    return html`${this.#tools(here)} ${this.#searchView(here.length)} ${this.#saidView()}
      ${this.#trouble === "" ? nothing : html`<p>No plans can be kept: ${this.#trouble}.</p>`}
      <ul aria-label="Your plans">${this.#parkedRows()} ${here.filter((plan) => this.#isSought(plan)).map((plan) => this.#row(plan))}</ul>
      ${deletedView(deleted, this.#isEmptying, this.#acts)}
      <h3>Examples</h3>
      <div class="acts">
        ${[...EXAMPLES, YARD_EXAMPLE].map((plan) => html`<button @click=${() => this.#leave(() => this.#desk.openNew(plan))}>${plan.name}</button>`)}
      </div>`;
  }

  #tools(here: readonly KeptPlan[]) {
    return html`<div class="acts">
      <button class="chief" @click=${() =>
        this.#update(() => {
          this.#isBeginning = true;
        })}>New plan</button>
      <label class="button">Open files<input type="file" multiple accept=".json,application/json" @change=${this.#filesChosen} /></label>
      <button ?disabled=${here.length === 0} @click=${() => savePlans(here)}>Save all as one file</button>
    </div>`;
  }

  #searchView(count: number) {
    if (count < 2 && this.#sought === "") return nothing;
    return html`<label class="wide">Search<input type="text" .value=${this.#sought} @input=${(event: Event) =>
      this.#update(() => {
        this.#sought = (event.target as HTMLInputElement).value;
      })} /></label>`;
  }

  #saidView() {
    const deleted = this.#justDeleted;
    return html`<div role="status">
      ${this.#said === "" ? nothing : html`<p>${this.#said}</p>`}
      ${deleted === undefined ? nothing : html`<div class="acts"><button @click=${() => this.#acts.bringBack(deleted)}>Bring back<span class="spoken"> ${deleted.name}</span></button></div>`}
    </div>`;
  }

  #beginView() {
    return html`${vesselChoice((vessel) => this.#leave(() => beginPlan(this.#desk, vessel)))}
      <div class="acts"><button @click=${() =>
        this.#update(() => {
          this.#isBeginning = false;
        })}>Back to the list</button></div>`;
  }

  #parkedRows() {
    return this.#desk.parked.all.map(
      ({ draft, plan }) => html`<li>
        <button class="plan" @click=${() => this.#leave(() => this.#desk.open(draft.id))}>${plan.name ?? "A line without a name"}<small>Not saved: in this window only</small></button>
      </li>`,
    );
  }

  #row(plan: KeptPlan) {
    if (plan.kind !== "openable") return shutRow(plan, () => saveRecord(plan));
    if (this.#renaming?.id === plan.id) return renameRow(plan, this.#renaming.problem, this.#acts);
    return planRow(plan, plan.id === this.#desk.openId, this.#acts);
  }

  readonly #acts: PlanActs = {
    open: ({ id }) => this.#leave(() => this.#desk.open(id)),
    saveFile: (plan) => savePlans([plan]),
    copy: ({ id, name }) => this.#act(() => this.#desk.copy(id), `"${name}" was copied.`),
    startRenaming: ({ id }) => {
      this.#update(() => {
        this.#renaming = { id, problem: "" };
      });
      this.#dialog.focus("form input");
    },
    stopRenaming: (plan) => {
      this.#update(() => {
        this.#renaming = undefined;
      });
      this.#focusOn(plan);
    },
    rename: (plan, name) => this.#rename(plan, name),
    delete: async (plan) => {
      if (!(await this.#act(() => this.#desk.delete(plan.id), `"${plan.name}" was deleted.`))) return;
      this.#update(() => {
        this.#justDeleted = plan;
      });
      this.#dialog.focus("[role=status] button");
    },
    bringBack: async (plan) => {
      await this.#act(() => this.#desk.bringBack(plan.id), `"${plan.name}" is back.`);
      this.#focusOn(plan);
    },
    askToEmpty: (isEmptying) =>
      this.#update(() => {
        this.#isEmptying = isEmptying;
      }),
    empty: () => {
      this.#isEmptying = false;
      return this.#act(() => this.#desk.emptyDeleted(), "The deleted plans are gone.");
    },
  };

  async #rename(plan: KeptPlan, name: string): Promise<void> {
    await this.#act(async () => {
      const renaming = await this.#desk.rename(plan.id, name.trim());
      const problem = renaming.ok ? undefined : renaming.problems[0];
      this.#renaming = problem && { id: plan.id, problem: `${problem.allowed} ${problem.mend}` };
    });
    if (this.#renaming === undefined) this.#focusOn(plan);
    else this.#dialog.focus("form input");
  }

  #isSought({ name }: KeptPlan): boolean {
    return name.toLocaleLowerCase().includes(this.#sought.trim().toLocaleLowerCase());
  }

  #update(change: () => void): void {
    change();
    this.#dialog.update();
  }

  async #leave(act: () => Promise<unknown>): Promise<void> {
    this.#dialog.close();
    await act();
  }

  readonly #filesChosen = (event: Event): void => {
    const files = [...((event.target as HTMLInputElement).files ?? [])];
    if (files.length > 0) void this.#leave(() => this.#desk.openFiles(files));
  };
}
