import type { Problem } from "@headfall/hydraulics";
import { html, nothing, render } from "lit";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { problemsView } from "../line/problems-view.js";
import type { PlanStore } from "../store/plan-store.js";
import { openPlanFile, savePlanFile } from "./plan-files.js";

/** How the page is lit: as the device says, or by the user's own choice. */
type Light = "device" | "sun" | "dark";

/** A file that could not be opened, and why. */
interface Refusal {
  readonly name: string;
  readonly problems: readonly Problem[];
}

/** The page around one line: its name, open and save, units, light. Everything else the line does by itself. */
export class Shell {
  readonly #root: HTMLElement;
  readonly #store: PlanStore;
  #units: UnitSystem = "metric";
  #refused: Refusal | undefined;

  constructor(root: HTMLElement, store: PlanStore) {
    this.#root = root;
    this.#store = store;
  }

  /** Shows the page and keeps it in step with the plan. */
  start(): void {
    this.#store.listen(() => this.#show());
    this.#takeDroppedFiles();
    this.#show();
  }

  #show(): void {
    const { plan } = this.#store;
    document.title = plan.name === undefined ? "Headfall" : `${plan.name} · Headfall`;
    render(
      html`<div class="page">
        <header class="top">
          <h1>Headfall <small>${plan.name ?? "A line without a name"}</small></h1>
          ${this.#tools()}
        </header>
        ${this.#refusal()}
        <main>
          <headfall-line
            .store=${this.#store} .units=${this.#units}
          ></headfall-line>
        </main>
        ${plan.note === undefined ? nothing : html`<footer class="note"><h2>About this plan</h2><p>${plan.note}</p></footer>`}
      </div>`,
      this.#root,
    );
  }

  #tools() {
    return html`<div class="tools" role="group" aria-label="Plan and page">
      <label class="button" title="A plan file can also be dropped anywhere on the page">Open a plan<input type="file" accept=".json,application/json" @change=${this.#fileChosen} /></label>
      <button @click=${() => savePlanFile(this.#store.plan)}>Save the plan</button>
      <select aria-label="Units" @change=${(event: Event) => this.#chooseUnits((event.target as HTMLSelectElement).value)}>
        <option value="metric">Metric units</option>
        <option value="us">US units</option>
      </select>
      <select aria-label="Light" @change=${(event: Event) => this.#chooseLight((event.target as HTMLSelectElement).value as Light)}>
        <option value="device">Auto light</option>
        <option value="sun">Bright sun</option>
        <option value="dark">Dark</option>
      </select>
    </div>`;
  }

  #refusal() {
    if (this.#refused === undefined) return nothing;
    const { name, problems } = this.#refused;
    return html`<section class="refused" role="alert">
      <h2>"${name}" could not be opened: ${problems.length} ${problems.length === 1 ? "problem" : "problems"}</h2>
      <p>The plan you had is unharmed and still shown below.</p>
      ${problemsView(problems)}
      <button @click=${() => this.#refuse(undefined)}>Close this list</button>
    </section>`;
  }

  readonly #fileChosen = (event: Event): void => {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (file !== undefined) void this.#open(file);
    // So that the same file, once mended, can be chosen again.
    input.value = "";
  };

  async #open(file: File): Promise<void> {
    const opened = await openPlanFile(file);
    if (opened.ok) {
      this.#refused = undefined;
      this.#store.open(opened.plan);
      this.#show();
    } else {
      this.#refuse(opened);
    }
  }

  #refuse(refused: Refusal | undefined): void {
    this.#refused = refused;
    this.#show();
  }

  #chooseUnits(units: string): void {
    this.#units = units === "us" ? "us" : "metric";
    this.#show();
  }

  #chooseLight(light: Light): void {
    if (light === "device") delete document.documentElement.dataset["light"];
    else document.documentElement.dataset["light"] = light;
  }

  #takeDroppedFiles(): void {
    const mark = (isOver: boolean) => document.body.classList.toggle("dropping", isOver);
    addEventListener("dragover", (event) => {
      event.preventDefault();
      mark(true);
    });
    addEventListener("dragleave", (event) => {
      if (event.relatedTarget === null) mark(false);
    });
    addEventListener("drop", (event) => {
      event.preventDefault();
      mark(false);
      const file = event.dataTransfer?.files[0];
      if (file !== undefined) void this.#open(file);
    });
  }
}
