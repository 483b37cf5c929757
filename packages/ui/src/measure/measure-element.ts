import {
  type Checked,
  type CloseCall,
  FIRST_SAMPLES,
  MEASURED_AS_WRITTEN,
  type Measuring,
  type Plan,
  writeMeasuring,
  writeRemedy,
  writeSways,
} from "@headfall/hydraulics";
import { html, LitElement, nothing, type PropertyValues } from "lit";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";
import { numberButton } from "../verdicts/number-button.js";
import { measureStyles } from "./measure.styles.js";
import { MeasureController } from "./measure-controller.js";

/** In lines with more drinkers than this the measurements are tried when that is asked for only. */
const MOST_UNASKED = 100;

/**
 * Which measurements of a plan to take again, and how good they must be: for the drinker looked at, and for all that are
 * close calls. Shows nothing where every verdict is sure.
 *
 * @element headfall-measure
 * @fires how-wanted  when the user wants to know how a number was got
 */
export class HeadfallMeasure extends LitElement {
  static override properties = {
    plan: { attribute: false },
    checked: { attribute: false },
    system: {},
    day: {},
    lookedAt: { attribute: false },
  };
  static override styles = [tokens, controls, measureStyles];

  /** The plan that was checked; never changed here. */
  declare plan: Plan | undefined;
  /** What the check found out; nothing is tried until it has told which verdicts are sure. */
  declare checked: Checked | undefined;
  /** Units written. */
  declare system: UnitSystem;
  /** Today, "2026-07-04"; counts where the plan names no day. */
  declare day: string | undefined;
  /** The drinker looked at, by its place in the line. */
  declare lookedAt: number;

  readonly #work = new MeasureController(this);
  /** The plan that was asked about. */
  #asked: Plan | undefined;

  constructor() {
    super();
    this.plan = undefined;
    this.checked = undefined;
    this.system = "metric";
    this.day = undefined;
    this.lookedAt = -1;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("day") || this.plan !== this.#asked) {
      this.#work.forget();
      this.#asked = undefined;
    }
    if (this.#asked === undefined && this.#isClose && !this.#isLong) this.#ask();
  }

  get #isClose(): boolean {
    const { checked } = this;
    if (checked === undefined || checked.madeFrom.samples < FIRST_SAMPLES) return false;
    return checked.drinkers.some(({ certainty }) => certainty.kind === "closeCall");
  }

  get #isLong(): boolean {
    return (this.checked?.drinkers.length ?? 0) > MOST_UNASKED;
  }

  #ask(rest?: number): void {
    if (this.plan === undefined) return;
    this.#asked = this.plan;
    this.#work.ask(this.plan, this.day, rest);
  }

  override render() {
    const { measuring, progress } = this.#work;
    if (!this.#isClose) return nothing;
    if (measuring !== undefined && measuring.close.length === 0) return nothing;
    return html`<section class=${measuring === undefined ? "waiting" : nothing} aria-labelledby="measure">
      <h2 id="measure">What to measure again</h2>
      ${measuring === undefined ? this.#waiting(progress) : this.#found(measuring)}
    </section>`;
  }

  #waiting(progress: number | undefined) {
    if (progress === undefined)
      return html`<p class="work">Some verdicts are close calls.
        <button type="button" @click=${() => this.#ask(0)}>Find what to measure again</button></p>`;
    return html`<div class="work" role="group" aria-label="Trying better measurements">
      <span>Trying better measurements ...</span>
      <progress max="1" .value=${progress} aria-label="Measurements tried"></progress>
      <button type="button" @click=${() => this.#work.stop()}>Cancel</button>
    </div>`;
  }

  #found(measuring: Measuring) {
    const looked = measuring.close.find(({ index }) => index === this.lookedAt);
    return html`
      ${looked === undefined ? nothing : this.#closeCall(looked)}
      <h3>Of all ${measuring.close.length} close calls, the most worthwhile first</h3>
      <ol>${writeMeasuring(measuring, this.system)
        .filter((line) => line !== MEASURED_AS_WRITTEN)
        .map((line) => html`<li>${line}</li>`)}</ol>
      <p>${MEASURED_AS_WRITTEN}</p>
      <details>
        <summary>How this was got</summary>
        <p>Each measurement was tried: up to ${measuring.samples} plans that fit the measurements as well were solved again by
          both laws, with that one thing less in doubt and all else as before. The figure given is the largest that makes the
          verdict sure. Doubts are two standard deviations either way.</p>
      </details>
    `;
  }

  #closeCall(close: CloseCall) {
    const share = numberButton(`${Math.floor(100 * close.share)} %`, {
      of: "drinkerCertainty",
      drinker: close.index,
    });
    return html`<p><strong>${close.drinker}</strong> is a close call: ${share} of the plans agree (else mostly
        ${close.otherwise}). ${writeRemedy(close, this.system)}</p>
      <p>${writeSways(close, this.system)}</p>`;
  }
}
