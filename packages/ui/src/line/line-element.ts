/** Where what a hand does, what is checked and what is drawn meet: long, since every part of the line is tied in here and none of it is done here. */

import type { Checked, Plan, Problem } from "@headfall/hydraulics";
import { html, LitElement, nothing, type PropertyValues } from "lit";
import { afterPaint } from "../controllers/after-paint.js";
import { AnnounceController } from "../controllers/announce-controller.js";
import { CheckController } from "../controllers/check-controller.js";
import { DragPace } from "../controllers/drag-pace.js";
import { DragStep } from "../controllers/drag-step.js";
import { nextTask } from "../controllers/next-task.js";
import { WidthController } from "../controllers/width-controller.js";
import type { HowSubject } from "../kernels/how-got/subject.js";
import type { Selected } from "../kernels/selected.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { writeCounts } from "../kernels/verdict-marks.js";
import { worstDrinker } from "../kernels/worst-drinker.js";
import type { EditWantedEvent } from "../store/edit-wanted-event.js";
import type { PlanChange } from "../store/plan-change.js";
import { PlanChangedEvent } from "../store/plan-changed-event.js";
import type { PlanStore } from "../store/plan-store.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";
import { answerView, countsView } from "./answer-view.js";
import type { Board, BoardActs, BoardView, Refusal, Tool } from "./board.js";
import { drawingAround, fieldsAround } from "./fields-around.js";
import { growToFit, keepHeight } from "./keep-height.js";
import { lineStyles } from "./line.styles.js";
import { LineCheckedEvent } from "./line-checked-event.js";
import { momentOf, type Shown } from "./moments-view.js";
import { drinkerOf, pathFor } from "./part-on-line.js";
import { problemsView } from "./problems-view.js";
import type * as Rest from "./rest.js";
import { stageView } from "./stage-view.js";
import { stepOfKeys } from "./step-of-keys.js";

/**
 * A drinker line to be sketched: drawn from above and from the side, with its parts to be changed, the verdict on every
 * drinker, and how each number was got. Give it a plan (as read by `readPlan`), or a store that holds one; it checks
 * the plan after every change and says so. What is needed for the first verdict comes first; the rest follows by itself.
 *
 * @element headfall-line
 * @fires plan-changed    after the plan has become another one: the new plan, the one before, and why
 * @fires line-checked    after every check: what was found out, or the plan's problems
 * @fires drinker-chosen  when the user chose a drinker on the drawing
 * @csspart counts    how many drinkers do well, drip, starve, are dry
 * @csspart sentence  the worst drinker's sentence
 * @csspart steps     undo and redo
 * @csspart views     turns from one view to another, where there is room for one
 * @csspart above side  the boxes of the two drawings
 * @csspart tools     what the hand does on the drawing from above
 * @csspart moments   the choice of moment
 * @csspart drinker   the drinker looked at
 * @csspart cautions filling defaults  the lists further down
 * @csspart typed-plan drinkers runs sources  the tables further down
 */
export class HeadfallLine extends LitElement {
  static override properties = {
    plan: { attribute: false, noAccessor: true },
    store: { attribute: false, noAccessor: true },
    moment: { reflect: true },
    units: { reflect: true },
    day: {},
    drinker: {},
    view: { reflect: true },
    selected: { attribute: false },
    tool: { state: true },
    refusal: { state: true },
    how: { state: true },
    rest: { state: true },
    showsAll: { state: true },
  };
  static override styles = [tokens, controls, lineStyles];

  /** What is shown: "fullIdle", "fullBusiest", "lowestBusiest", "ordinary", or "bothEnds" for the two extremes at once. */
  declare moment: Shown;
  /** Units shown and written: "metric" or "us". */
  declare units: UnitSystem;
  /** The day birds are as old as said on, "2026-07-04", where the plan names none; the page gives today's. */
  declare day: string | undefined;
  /** Id of the drinker looked at; empty for the worst one. */
  declare drinker: string;
  /** Where there is room for one view only: "above", "side" or "table". */
  declare view: BoardView;
  /** The part of the plan that is chosen. */
  declare selected: Selected | undefined;
  declare private tool: Tool;
  declare private refusal: Refusal | undefined;
  declare private how: HowSubject | undefined;
  declare private rest: typeof Rest | undefined;
  declare private showsAll: boolean;

  readonly #check = new CheckController(this, (check) => this.#checkDone(check));
  readonly #announce = new AnnounceController(this);
  readonly #pace = new DragPace(this);
  readonly #step = new DragStep(({ change, gesture }) => this.#edit(change, gesture));
  readonly #width = new WidthController(this, "(min-width: 900px)");
  #plan: Plan | undefined;
  #store: PlanStore | undefined;
  #stopListening: (() => void) | undefined;
  #loading: Promise<unknown> | undefined;

  constructor() {
    super();
    this.moment = "fullBusiest";
    this.units = "metric";
    this.day = undefined;
    this.drinker = "";
    this.view = "side";
    this.selected = undefined;
    this.tool = "hand";
    this.refusal = undefined;
    this.how = undefined;
    this.rest = undefined;
    this.showsAll = false;
    this.addEventListener("edit-wanted", (event) => this.#editWanted(event));
    this.addEventListener("gesture-given-up", ({ gesture }) => this.store?.giveUp(gesture));
    this.addEventListener("part-chosen", ({ part }) => this.#choose(part));
    this.addEventListener("how-wanted", ({ subject }) => {
      this.how = subject;
    });
    this.addEventListener("keydown", (event) => this.#keyPressed(event));
  }

  /** The plan shown; replaced by a new one at each edit, never changed itself. */
  get plan(): Plan | undefined {
    this.#step.makeNow();
    return this.#store?.plan ?? this.#plan;
  }
  set plan(plan: Plan | undefined) {
    if (plan === this.plan) return;
    if (plan !== undefined && this.#store !== undefined) this.#store.open(plan);
    else {
      this.#plan = plan;
      this.#takePlan(plan);
    }
  }

  /** Holds the plan and what was done to it; made by the element unless one is given. */
  get store(): PlanStore | undefined {
    this.#step.makeNow();
    return this.#store;
  }
  set store(store: PlanStore | undefined) {
    if (store === this.store) return;
    this.#stopListening?.();
    this.#store = store;
    this.#stopListening = store?.listen((plan, before, cause) => {
      if (cause === "open") this.#forget();
      this.#takePlan(plan);
      this.dispatchEvent(new PlanChangedEvent(plan, before, cause));
    });
    this.#forget();
    this.#takePlan(store?.plan);
  }

  /** What the last good plan came to. */
  get checked(): Checked | undefined {
    return this.#check.checked;
  }

  /** What is wrong with the plan as it stands; empty when nothing is. */
  get problems(): readonly Problem[] {
    return this.#check.problems;
  }

  /**
   * Whether the verdicts are of the plan as it now stands, with at least a coarse answer to which of them are sure.
   * Not so for a moment after each change, and longer with a large plan.
   */
  get isSettled(): boolean {
    const isUnderWay = this.#step.isWaiting || this.#pace.isDragging || this.isUpdatePending;
    return this.#check.isSettled && !isUnderWay;
  }

  /** Fulfilled once everything that follows the first verdict is there. */
  get whole(): Promise<void> {
    return this.#loadRest().then(async () => {
      await this.updateComplete;
    });
  }

  /** While a hand drags, a check and the drawing of what it found are a task each: together they are a long one. */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.#pace.isDragging) await nextTask();
    super.scheduleUpdate();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("day") && changed.get("day") !== this.day) this.#takePlan(this.plan);
  }

  override updated(): void {
    if (this.#pace.isDragging) growToFit(this.#sentence);
  }

  get #sentence(): HTMLElement | null {
    return this.renderRoot.querySelector<HTMLElement>(".sentence");
  }

  override render() {
    const { checked } = this.#check;
    return html`
      <div class="spoken" role="status" aria-live="polite">${this.#announce.spoken}</div>
      ${this.#faults()} ${checked === undefined ? html`<p>Working it out ...</p>` : this.#answer(checked)}
    `;
  }

  #faults() {
    const { problems, checked } = this.#check;
    if (problems.length === 0) return nothing;
    const shown = checked === undefined ? "" : " What is shown is the plan before that change.";
    return html`<div class="faults" role="alert">
      <strong>This plan cannot be worked out yet.${shown}</strong>
      ${problemsView(problems)}
    </div>`;
  }

  #answer(checked: Checked) {
    const worst = worstDrinker(checked);
    const board = this.#board(checked, worst);
    const { rest } = this;
    return html`
      <div class=${this.#pace.isDragging ? "board dragged" : "board"}>
        <div class="stage">
          <div class="bar">${board && rest?.barView(board)}</div>
          <div class="stays">
            ${countsView(checked)}
            ${board === undefined ? stageView(checked, worst, this.units) : rest?.drawingsView(board)}
          </div>
          ${board && rest?.toolsBelow(board)}
        </div>
        <section class="side controls" aria-label="What to change">
          ${answerView(checked, worst, this.#check.sampling, this.units)} ${this.#progress()}
          ${board && rest?.sideView(board)}
        </section>
      </div>
      ${board && rest?.deepView(board)}
    `;
  }

  /** What the views that come later are made from; undefined until they are there. */
  #board(checked: Checked, worst: number): Board | undefined {
    const store = this.#store;
    if (this.rest === undefined || store === undefined) return undefined;
    const named = this.drinker === "" ? -1 : checked.line.drinkers.id.indexOf(this.drinker);
    const lookedAt = named >= 0 ? named : worst;
    const { line } = checked;
    return {
      store,
      plan: store.plan,
      checked,
      checkedPlan: this.#check.checkedPlan,
      system: this.units,
      day: this.day,
      shown: this.moment,
      moment: momentOf(this.moment),
      view: this.view,
      isWide: this.#width.matches,
      tool: this.tool,
      part: this.selected,
      refusal: this.refusal,
      lookedAt,
      path: pathFor(line, this.selected, lookedAt),
      showsAll: this.showsAll,
      isWaiting: (what) => this.#pace.isWaiting(what),
      how: this.how,
      acts: this.#acts,
    };
  }

  readonly #acts: BoardActs = {
    edit: (change, gesture) => this.#edit(change, gesture),
    choose: (part) => this.#choose(part),
    look: (drinker) => this.#look(drinker),
    lookClosely: (drinker) => void this.#lookClosely(drinker),
    show: (shown) => {
      this.moment = shown;
    },
    turnTo: (view) => {
      this.view = view;
    },
    take: (tool) => {
      this.tool = tool;
    },
    undo: () => this.#announceStep("Undone", this.store?.undo()?.words),
    redo: () => this.#announceStep("Done again", this.store?.redo()?.words),
    showAll: () => {
      this.showsAll = true;
    },
    closeHow: () => {
      this.how = undefined;
    },
  };

  #progress() {
    const { progress } = this.#check;
    if (progress === undefined) return nothing;
    return html`<p class="progress">
      <label>Trying what the measurements leave open <progress max="1" .value=${progress}></progress></label>
      <button @click=${() => this.#check.stop()}>Stop</button>
    </p>`;
  }

  #editWanted(event: EditWantedEvent): void {
    const field = fieldsAround(event);
    this.#pace.held = field === undefined ? drawingAround(event) : undefined;
    if (field === undefined && event.gesture !== undefined) this.#step.put(event);
    else this.#edit(event.change, event.gesture, field?.localName);
    // The drawings follow with the check; a field that is still under the hand must not fall back for that long.
    if (field !== undefined) field.plan = this.plan;
  }

  #edit(change: PlanChange, gesture?: string, by = "drawing"): void {
    const edited = this.store?.edit(change, this.units, gesture);
    if (edited === undefined) return;
    if (gesture !== undefined) {
      if (!this.#pace.isDragging) keepHeight(this.#sentence);
      this.#pace.note();
    }
    this.refusal = edited.ok ? undefined : { by, because: edited.because };
    if (!edited.ok) this.#announce.say(`Not done: ${edited.because}`);
    else if (edited.selected !== undefined) this.#choose(edited.selected);
    if (change.kind === "drawRun" || change.kind === "addDrinkers") this.tool = "hand";
  }

  #choose(part: Selected | undefined): void {
    this.selected = part;
    this.refusal = undefined;
    const { checked } = this.#check;
    const drinker = checked === undefined ? undefined : drinkerOf(checked.line, part);
    if (drinker === undefined) return;
    this.#look(drinker);
    this.how = { of: "verdict", drinker };
  }

  #look(drinker: number): void {
    this.drinker = this.#check.checked?.line.drinkers.id[drinker] ?? "";
  }

  /** From a row of the table to how its numbers were got, keyboard and reader included. */
  async #lookClosely(drinker: number): Promise<void> {
    this.#look(drinker);
    this.selected = undefined;
    await this.updateComplete;
    const heading = this.renderRoot.querySelector<HTMLElement>("#looked-at");
    heading?.scrollIntoView({ block: "center" });
    heading?.focus({ preventScroll: true });
  }

  #announceStep(what: string, words: string | undefined): void {
    this.refusal = undefined;
    if (words !== undefined) this.#announce.say(`${what}: ${words}.`);
  }

  #keyPressed(event: KeyboardEvent): void {
    const step = stepOfKeys(event);
    if (step === undefined) return;
    event.preventDefault();
    this.#acts[step]();
  }

  #takePlan(plan: Plan | undefined): void {
    // The check is followed by an update: one drawing for each step of a drag, of the plan and its verdicts together.
    if (plan !== undefined) this.#check.check(plan, this.day);
    else this.requestUpdate();
  }

  /** What was chosen in another plan means nothing in this one: its first source is, since all begins there. */
  #forget(): void {
    this.selected = { kind: "source", source: 0 };
    const isBare = this.plan?.runs.length === 0;
    if (isBare) this.view = "above";
    this.tool = isBare ? "run" : "hand";
    this.drinker = "";
    this.refusal = undefined;
    this.how = undefined;
    this.showsAll = false;
  }

  #checkDone({ checked, problems }: CheckController): void {
    if (problems.length > 0) this.#announce.say(`${problems.length} problems in the plan.`);
    else if (checked !== undefined) this.#announce.say(`Verdict: ${writeCounts(checked.counts)}.`);
    this.dispatchEvent(new LineCheckedEvent(problems.length > 0 ? undefined : checked, problems));
    if (this.#loading === undefined) afterPaint(() => this.#loadRest());
  }

  #loadRest(): Promise<unknown> {
    this.#loading ??= import("./rest.js").then((rest) => {
      if (this.#store === undefined && this.#plan !== undefined) this.store = rest.storeOf(this.#plan);
      const root = this.shadowRoot!;
      root.adoptedStyleSheets = [...root.adoptedStyleSheets, ...rest.restStyles];
      this.rest = rest;
    });
    return this.#loading;
  }
}
