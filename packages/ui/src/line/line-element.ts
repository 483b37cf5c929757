import type { Checked, MomentName, Plan, Problem } from "@headfall/hydraulics";
import { html, LitElement, nothing, type PropertyValues } from "lit";
import { AnnounceController } from "../controllers/announce-controller.js";
import { CheckController } from "../controllers/check-controller.js";
import { type ProfilePath, pathToDrinker } from "../kernels/profile-path.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { writeCounts } from "../kernels/verdict-marks.js";
import { worstDrinker } from "../kernels/worst-drinker.js";
import type { DrinkerChosenEvent } from "../profile/drinker-chosen-event.js";
import { applyChange, type LineChange } from "../store/change.js";
import { PlanChangedEvent } from "../store/plan-changed-event.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";
import { drinkersTable } from "../tables/drinkers-table.js";
import { runsHow, runsTable } from "../tables/runs-table.js";
import { tableStyles } from "../tables/table.styles.js";
import { answerView, countsView } from "./answer-view.js";
import { controlsView } from "./controls-view.js";
import { drinkerChoice, drinkerView } from "./drinker-view.js";
import { cautionsView, defaultsView, fillingView, problemsView, sourcesView } from "./findings-view.js";
import { lineStyles } from "./line.styles.js";
import { LineCheckedEvent } from "./line-checked-event.js";
import { momentsView } from "./moments-view.js";

/**
 * A drinker line: drawn from the side, with what can be changed, the verdict on every drinker, and how each number
 * was got. Give it a plan (as read by `readPlan`); it checks the plan after every change and says so.
 *
 * @element headfall-line
 * @fires plan-changed    after the user edited the plan: the new plan, the one before, and the edit
 * @fires line-checked    after every check: what was found out, or the plan's problems
 * @fires drinker-chosen  when the user chose a drinker on the drawing
 * @csspart counts    how many drinkers do well, drip, starve, are dry
 * @csspart sentence  the worst drinker's sentence
 * @csspart moments   the choice of moment
 * @csspart drinker   the drinker looked at
 * @csspart cautions filling sources defaults  the lists further down
 * @cssprop --headfall-paper --headfall-sheet --headfall-ink --headfall-quiet  background and text
 * @cssprop --headfall-accent --headfall-focus                                 what can be pressed
 * @cssprop --headfall-good --headfall-drips --headfall-starves --headfall-dry  verdicts
 * @cssprop --headfall-water --headfall-earth --headfall-pipe --headfall-font   the drawing, and the letters
 */
export class HeadfallLine extends LitElement {
  static override properties = {
    plan: { attribute: false },
    moment: { reflect: true },
    units: { reflect: true },
    drinker: {},
    run: { state: true },
    showsAll: { state: true },
  };
  static override styles = [tokens, controls, tableStyles, lineStyles];

  /** The plan shown; replaced by a new one at each edit, never changed itself. */
  declare plan: Plan | undefined;
  /** The moment shown: "fullIdle", "fullBusiest", "lowestBusiest" or "ordinary". */
  declare moment: MomentName;
  /** Units shown and written: "metric" or "us". */
  declare units: UnitSystem;
  /** Id of the drinker looked at; empty for the worst one. */
  declare drinker: string;
  declare private run: number | undefined;
  declare private showsAll: boolean;

  readonly #check = new CheckController(this, (check) => this.#checkDone(check));
  readonly #announce = new AnnounceController(this);

  constructor() {
    super();
    this.plan = undefined;
    this.moment = "fullBusiest";
    this.units = "metric";
    this.drinker = "";
    this.run = undefined;
    this.showsAll = false;
  }

  /** What the last good plan came to. */
  get checked(): Checked | undefined {
    return this.#check.checked;
  }

  /** What is wrong with the plan as it stands; empty when nothing is. */
  get problems(): readonly Problem[] {
    return this.#check.problems;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("plan") && this.plan !== undefined) this.#check.check(this.plan);
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
    const named = this.drinker === "" ? -1 : checked.line.drinkers.id.indexOf(this.drinker);
    const lookedAt = named >= 0 ? named : worst;
    const path = pathToDrinker(checked.line, lookedAt);
    const system = this.units;
    return html`
      ${answerView(checked, worst, this.#check.isSampling, system)}
      <div class="board">
        <div class="stage">
          ${countsView(checked)}
          <div class="drawing">
            <headfall-profile
              .checked=${checked} .path=${path} .moment=${this.moment} .drinker=${lookedAt} .system=${system}
              @drinker-chosen=${(event: DrinkerChosenEvent) => this.#look(event.drinker)}
            ></headfall-profile>
          </div>
        </div>
        <section class="side controls" aria-label="What to change">
          ${momentsView(this.moment, (moment) => {
            this.moment = moment;
          })}
          ${this.#controls(checked, lookedAt, path)}
          ${drinkerChoice(checked, this.drinker, (drinker) => {
            this.drinker = drinker;
          })}
        </section>
        ${drinkerView(checked, lookedAt, this.moment, system)}
      </div>
      ${cautionsView(checked, system)} ${fillingView(checked, system)}
      <section class="deep" aria-labelledby="drinkers">
        <h2 id="drinkers">Every drinker</h2>
        ${drinkersTable({
          checked,
          system,
          lookedAt,
          showsAll: this.showsAll,
          onChoose: (drinker) => this.#lookClosely(drinker),
          onShowAll: () => {
            this.showsAll = true;
          },
        })}
      </section>
      <section class="deep" aria-labelledby="runs">
        <h2 id="runs">Every run</h2>
        ${runsTable(checked, system)} ${runsHow(checked, system)}
      </section>
      ${sourcesView(checked, system)} ${defaultsView(checked)}
    `;
  }

  #controls(checked: Checked, lookedAt: number, path: ProfilePath | undefined) {
    if (this.plan === undefined) return nothing;
    const run = this.run ?? checked.line.drinkers.run[lookedAt] ?? 0;
    return controlsView({
      plan: this.plan,
      checked,
      system: this.units,
      moment: this.moment,
      source: path?.source ?? 0,
      run: Math.min(run, checked.line.runs.length - 1),
      onChange: (change) => this.#edit(change),
      onChooseRun: (chosen) => {
        this.run = chosen;
      },
    });
  }

  #edit(change: LineChange): void {
    const before = this.plan;
    if (before === undefined) return;
    this.plan = applyChange(before, change);
    this.dispatchEvent(new PlanChangedEvent(this.plan, before, change));
  }

  #look(drinker: number): void {
    this.drinker = this.#check.checked?.line.drinkers.id[drinker] ?? "";
  }

  /** From a row of the table to how its numbers were got, keyboard and reader included. */
  async #lookClosely(drinker: number): Promise<void> {
    this.#look(drinker);
    await this.updateComplete;
    const heading = this.renderRoot.querySelector<HTMLElement>("#looked-at");
    heading?.scrollIntoView({ block: "center" });
    heading?.focus({ preventScroll: true });
  }

  #checkDone({ checked, problems }: CheckController): void {
    if (problems.length > 0) this.#announce.say(`${problems.length} problems in the plan.`);
    else if (checked !== undefined) this.#announce.say(`Verdict: ${writeCounts(checked.counts)}.`);
    this.dispatchEvent(new LineCheckedEvent(problems.length > 0 ? undefined : checked, problems));
  }
}
