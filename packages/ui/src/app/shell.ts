import type { Plan } from "@headfall/hydraulics";
import { html, nothing, render, type TemplateResult } from "lit";
import { afterPaint } from "../controllers/after-paint.js";
import type { HeadfallLine } from "../line/line-element.js";
import type { PlanShelf } from "../storage/plan-shelf.js";
import { StorageTrouble } from "../storage/storage-trouble.js";
import type { Begun } from "./begin-with-last.js";
import type { Desk, Page } from "./desk.js";
import type { Notice } from "./notice.js";
import { type Light, type Preferences, readPreferences, rememberPreferences } from "./preferences.js";
import { today } from "./today.js";

/**
 * The page around one line: its name, what is remembered, what there is to say. All else comes with the desk, which is
 * fetched once the first verdict stands.
 */
export class Shell implements Page {
  /** How well the plan is kept, in a word or two. */
  keptWords = "";
  /** What stands above the line on a first visit. */
  card: TemplateResult | undefined;

  readonly #root: HTMLElement;
  readonly #shelf: PlanShelf;
  readonly #begun: Begun;
  #plan: Plan;
  #preferences = readPreferences();
  #notices: readonly Notice[] = [];
  #desk: Promise<Desk> | undefined;

  constructor(root: HTMLElement, shelf: PlanShelf, begun: Begun, example: Plan) {
    this.#root = root;
    this.#shelf = shelf;
    this.#begun = begun;
    this.#plan = begun.arrived ?? begun.kept?.plan ?? example;
    if (begun.arrived === undefined && begun.kept === undefined) this.card = this.#startCard();
  }

  start(): void {
    this.#light();
    this.show();
    // Once: from then on the line holds the plan, and says when it has become another.
    this.line.plan = this.#plan;
    this.#takeDroppedFiles();
    addEventListener("line-checked", () => afterPaint(() => this.withDesk(() => undefined)), { once: true });
  }

  get line(): HeadfallLine {
    return this.#root.querySelector("headfall-line")!;
  }

  /** Has something done by the desk, as soon as it is there. */
  async withDesk(act: (desk: Desk) => unknown): Promise<void> {
    try {
      this.#desk ??= this.#setUpDesk();
      const desk = await this.#desk;
      this.untell("undone");
      await act(desk);
    } catch (error) {
      reportError(error);
      this.tell({ key: "undone", words: error instanceof StorageTrouble ? UNREAD : UNFETCHED, acts: [] });
    }
  }

  /** Says something, in place of what was said under the same key. */
  tell(notice: Notice): void {
    this.#notices = [...this.#notices.filter(({ key }) => key !== notice.key), notice];
    this.show();
  }

  untell(key: string): void {
    this.#notices = this.#notices.filter((notice) => notice.key !== key);
    this.show();
  }

  show(): void {
    const { name, note } = this.#plan;
    const title = name === undefined ? "Headfall" : `${name} · Headfall`;
    if (document.title !== title) document.title = title;
    const urgent = this.#notices.filter(({ isUrgent }) => isUrgent);
    render(
      html`<div class="page">
        <header class="top">
          <h1>Headfall
            <button aria-haspopup="dialog" @click=${() => this.withDesk((desk) => desk.showPlans())}><span class="spoken">Plans, now open: </span>${name ?? "A line without a name"}</button>
          </h1>
          <span class="kept">${this.keptWords}</span>
          <button class="more" popovertarget="tools">More</button>
          ${this.#tools()}
        </header>
        <div role="status">${this.#notices.map((notice) => (notice.isUrgent ? nothing : this.#notice(notice)))}</div>
        <div role="alert">${urgent.map((notice) => this.#notice(notice))}</div>
        ${this.card ?? nothing}
        <main tabindex="-1">
          <headfall-line .units=${this.#preferences.units} .day=${today()} @plan-changed=${this.#planChanged}></headfall-line>
        </main>
        ${note === undefined ? nothing : html`<footer class="note"><h2>About this plan</h2><p>${note}</p></footer>`}
      </div>`,
      this.#root,
    );
  }

  /** Puts the keyboard on a part of the page, where what it was on is gone. */
  focus(selector: string): void {
    this.#root.querySelector<HTMLElement>(selector)?.focus({ preventScroll: true });
  }

  readonly #planChanged = ({ plan, before }: { plan: Plan; before: Plan }): void => {
    this.#plan = plan;
    if (plan.name !== before.name || plan.note !== before.note) this.show();
  };

  async #setUpDesk(): Promise<Desk> {
    const { line } = this;
    try {
      const [{ PlanDesk }] = await Promise.all([import("./plan-desk.js"), line.whole]);
      return new PlanDesk(this, line.store!, this.#shelf, this.#begun);
    } catch (error) {
      this.#desk = undefined; // the next act tries again
      throw error;
    }
  }

  #tools() {
    const { units, light } = this.#preferences;
    // In the row where there is room for it; on a phone it comes when "More" is pressed.
    return html`<div class="tools" id="tools" popover role="group" aria-label="Plan and page">
      <label class="button" title="Files can also be dropped anywhere on the page">Open a plan<input type="file" multiple accept=".json,application/json" @change=${this.#filesChosen} /></label>
      <button @click=${() => this.#useTool((desk) => desk.savePlan())}>Save the plan</button>
      <button aria-haspopup="dialog" @click=${() => this.#useTool((desk) => desk.share())}>Share</button>
      <select aria-label="Units" .value=${units} @change=${(event: Event) => this.#prefer({ units: chosenIn(event) === "us" ? "us" : "metric" })}>
        <option value="metric">Metric units</option>
        <option value="us">US units</option>
      </select>
      <select aria-label="Light" .value=${light} @change=${(event: Event) => this.#prefer({ light: chosenIn(event) as Light })}>
        <option value="device">Auto light</option>
        <option value="sun">Bright sun</option>
        <option value="dark">Dark</option>
      </select>
      ${helpView()}
    </div>`;
  }

  #notice({ key, words, body, acts, closeWords }: Notice) {
    return html`<section class="notice">
      <p>${words}</p>
      ${body ?? nothing}
      <div class="acts">
        ${acts.map((each) => html`<button @click=${each.act}>${each.words}</button>`)}
        <button @click=${() => this.untell(key)}>${closeWords ?? "Close"}</button>
      </div>
    </section>`;
  }

  #startCard() {
    return html`<section class="card" aria-labelledby="start">
      <h2 id="start">Will every drinker get its water?</h2>
      <div class="acts">
        <button class="chief" @click=${() => this.withDesk((desk) => desk.beginOwn())}>Draw a line of your own</button>
        <button @click=${() => this.withDesk((desk) => desk.keepExample())}>Look at an example</button>
      </div>
    </section>`;
  }

  /** With "More" closed again, the keyboard is back on it when all is done. */
  #useTool(act: (desk: Desk) => unknown): void {
    this.#root.querySelector<HTMLElement>("#tools")?.hidePopover?.();
    void this.withDesk(act);
  }

  readonly #filesChosen = (event: Event): void => {
    const input = event.target as HTMLInputElement;
    const files = [...(input.files ?? [])];
    // So that the same file, once mended, can be chosen again.
    input.value = "";
    if (files.length > 0) this.#useTool((desk) => desk.openFiles(files));
  };

  #prefer(chosen: Partial<Preferences>): void {
    this.#preferences = { ...this.#preferences, ...chosen };
    rememberPreferences(this.#preferences);
    this.#light();
    this.show();
  }

  #light(): void {
    const { light } = this.#preferences;
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
      const files = [...(event.dataTransfer?.files ?? [])];
      if (files.length > 0) void this.withDesk((desk) => desk.openFiles(files));
    });
  }
}

const UNREAD =
  "That could not be done: the browser's storage does not answer. What you did so far is unharmed.";
const UNFETCHED =
  "A part of the page could not be fetched. Is the network there? What you did so far is unharmed; once it is back, try again, or reload the page.";

/** The documents, where the page was built with them beside it. */
function helpView() {
  const link = document.querySelector<HTMLLinkElement>("link[rel=help]");
  return link === null ? nothing : html`<a class="button" href=${link.href}>Help</a>`;
}

const chosenIn = (event: Event): string => (event.target as HTMLSelectElement).value;
