import { type Plan, writeProblem } from "@headfall/hydraulics";
import { html, nothing, type PropertyValues } from "lit";
import { WidthController } from "../controllers/width-controller.js";
import { fieldStyles } from "../fields/fields.styles.js";
import { TypingController } from "../fields/typing-controller.js";
import { yearsOf } from "../kernels/rain/rain-years.js";
import { lineAmissView } from "../room/line-amiss.js";
import { isLineless, noLineView, wantRoom } from "../room/no-line.js";
import { nobodyYetView } from "../room/nobody-yet.js";
import { RoomElement } from "../room/room-element.js";
import { controls } from "../styles/controls.js";
import { roomStyles } from "../styles/room.styles.js";
import { tokens } from "../styles/tokens.js";
import { tableStyles } from "../tables/table.styles.js";
import { answerView, partsView, runsView } from "./answer-view.js";
import { calendarView } from "./calendar-view.js";
import { figureView } from "./figure-view.js";
import { howView } from "./how-view.js";
import { KeyboardPlace } from "./keyboard-place.js";
import { rainStyles } from "./rain.styles.js";
import { RainController } from "./rain-controller.js";
import type { RainExample } from "./rain-example.js";
import { recordView } from "./record-view.js";
import { roofView } from "./roof-view.js";
import { type RainActs, type RainRoom, type RainSaid, YEARS_SHOWN } from "./room.js";
import { sizesView } from "./sizes-view.js";
import { balanceView, cautionsView, overflowView } from "./water-view.js";

/**
 * Whether a vessel under a roof would have kept a plan's birds through a record of daily rain: days short, a calendar,
 * sizes that never fail, overflow, and where all the water went.
 *
 * @element headfall-rain
 * @fires edit-wanted  when the user wants the plan changed
 * @fires room-wanted  when the user wants to go to the birds
 */
export class HeadfallRain extends RoomElement {
  static override properties = {
    examples: { attribute: false },
    source: { state: true },
    figure: { state: true },
    runIndex: { state: true },
    firstYear: { state: true },
    lookedAt: { state: true },
  };
  static override styles = [tokens, controls, fieldStyles, tableStyles, roomStyles, rainStyles];

  /** Records of rain to try the room with, beside the user's own. */
  declare examples: readonly RainExample[];
  /** The source chosen; the first with a roof until one is. */
  declare private source: number | undefined;
  declare private figure: "expect" | "size";
  declare private runIndex: number;
  declare private firstYear: number;
  declare private lookedAt: number;

  readonly #typing = new TypingController(this);
  readonly #rain = new RainController(this);
  readonly #width = new WidthController(this, "(min-width: 700px)");
  #record: RainController["record"];
  /** Whether what the record comes to has not been shown yet. */
  #isAwaited = false;

  constructor() {
    super();
    new KeyboardPlace(this, "#rain-asked");
    this.examples = [];
    this.source = undefined;
    this.figure = "size";
    this.runIndex = 0;
    this.firstYear = 0;
    this.lookedAt = 0;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("plan")) {
      if ((changed.get("plan")?.sources.length ?? 0) !== this.plan?.sources.length) {
        this.#typing.forgetAll();
        this.source = undefined;
      }
      this.#typing.planChanged();
    }
    const asked = changed as ReadonlyMap<PropertyKey, unknown>;
    const hasVessel = this.plan !== undefined && !isLineless(this.plan);
    if (
      this.plan !== undefined &&
      hasVessel &&
      ["plan", "day", "source", "figure"].some((key) => asked.has(key))
    ) {
      const { plan, day, figure } = this;
      this.#rain.ask({ plan, day, figure, source: this.#sourceOf(plan) });
    }
    if (this.#rain.record !== this.#record) this.#recordCame(this.#rain.record);
  }

  /** What a new record comes to stands at the head of the room, which may be out of sight where it was chosen. */
  override updated(): void {
    const answer = this.renderRoot.querySelector<HTMLElement>(".answer");
    if (!this.#isAwaited || answer === null || this.#rain.isOld) return;
    this.#isAwaited = false;
    const { top, bottom } = answer.getBoundingClientRect();
    if (top < 0 || bottom > innerHeight) answer.scrollIntoView({ block: "center" });
  }

  /** A new record is opened on its last years. */
  #recordCame(record: RainController["record"]): void {
    this.#record = record;
    this.#isAwaited = record !== undefined;
    const years = record === undefined ? [] : yearsOf(record.firstDay, record.rain.length);
    this.firstYear = Math.max(0, years.length - YEARS_SHOWN);
    this.lookedAt = years[this.firstYear]?.from ?? 0;
  }

  #sourceOf({ sources }: Plan): number {
    const roofed = sources.findIndex(({ roof }) => roof !== undefined);
    const open = sources.findIndex(({ feed }) => feed === undefined);
    return this.source ?? (roofed >= 0 ? roofed : Math.max(0, open));
  }

  override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    if (isLineless(plan))
      return html`<h2 tabindex="-1">Will the rain do?</h2>
        ${noLineView("Here a roof fills the vessel that feeds a line.")} ${cautionsView({ system: this.system })}`;
    const said = this.#said(plan);
    const stray = this.#typing.strayRefusal;
    const { isOld, problems, supply } = this.#rain;
    return html`
      <h2 tabindex="-1">Will the rain do?</h2>
      ${plan.pens === undefined ? this.#nobody() : nobodyYetView(plan, this.day, this.#typing)}
      ${stray === "" ? nothing : html`<p class="problem" role="alert">${stray}</p>`}
      ${problems.length === 0 ? nothing : html`<p class="problem" role="alert">${problems.map(writeProblem).join(" ")}</p>`}
      ${this.#answer(said)}
      <div class="rest">
        <section class="say" aria-label="Roof and record">${roofView(said)} ${recordView(said)} ${figureView(said)}</section>
        <div class="told ${isOld && supply !== undefined ? "older" : ""}">${this.#told(said)}</div>
      </div>
      ${this.howPanel(this.#rain.told)}
    `;
  }

  /** What is known of the plan as it is now: of birds, under a roof, through a record. */
  #known({ plan, source, rain: { record, supply } }: RainSaid): RainRoom | undefined {
    const isAsked = plan.pens !== undefined && plan.sources[source]?.roof !== undefined;
    return isAsked && record !== undefined && supply !== undefined ? this.#room(record, supply) : undefined;
  }

  #answer(said: RainSaid) {
    const room = this.#known(said);
    return room === undefined
      ? nothing
      : html`<div class=${said.rain.isOld ? "older" : ""}>${answerView(room)} ${lineAmissView(this.checked)}</div>`;
  }

  #told(said: RainSaid) {
    const room = this.#known(said);
    if (room !== undefined)
      return html`${partsView(room)} ${calendarView(room)} ${runsView(room)} ${sizesView(room)}
        ${overflowView(room)} ${balanceView(room)} ${cautionsView(room)} ${howView(room)}`;
    const { plan, source, system, rain } = said;
    const { record, isOld, problems } = rain;
    const hasRoof = plan.sources[source]?.roof !== undefined;
    const missing = [
      ...(hasRoof ? [] : ["Say how large the roof is that fills the vessel."]),
      ...(record === undefined ? ["Open a record of daily rain, your own or an example."] : []),
    ];
    if (missing.length > 0)
      return html`<p>Will a barrel under a roof keep the birds in water? It is gone through day by day with rain as it once fell.</p>
        <ul>${missing.map((words) => html`<li>${words}</li>`)}</ul>${cautionsView({ system })}`;
    return isOld && problems.length === 0
      ? html`<p role="status">Going through the record day by day ...</p>`
      : cautionsView({ system });
  }

  #nobody() {
    return html`<p>Nobody drinks yet: say which birds drink from this line, and see whether the rain keeps up with them.
      <button type="button" @click=${wantRoom("birds")}>Go to the birds</button></p>`;
  }

  #said(plan: Plan): RainSaid {
    const { system, figure, examples } = this;
    const source = this.#sourceOf(plan);
    return {
      plan,
      source,
      system,
      figure,
      examples,
      typing: this.#typing,
      rain: this.#rain,
      acts: this.#acts,
    };
  }

  #room(record: RainRoom["record"], supply: RainRoom["supply"]): RainRoom {
    const { checked, system, runIndex, firstYear } = this;
    return {
      ...{ checked, record, supply, system, runIndex, firstYear, acts: this.#acts },
      isWide: this.#width.matches,
      run: supply.runs[runIndex]!,
      years: yearsOf(record.firstDay, record.rain.length),
      day: Math.min(this.lookedAt, supply.days - 1),
    };
  }

  readonly #acts: RainActs = {
    openFile: (file) => void this.#rain.openFile(file),
    openExample: (example) => void this.#rain.openExample(example),
    answer: (options) => this.#rain.answer(options),
    leave: () => this.#rain.leave(),
    choose: (source) => {
      this.source = source;
    },
    drink: (figure) => {
      this.figure = figure;
    },
    reckon: (run) => {
      this.runIndex = run;
    },
    showYears: (first) => {
      this.firstYear = Math.max(0, first);
    },
    lookAt: (day) => {
      this.lookedAt = day;
      const years =
        this.#record === undefined ? [] : yearsOf(this.#record.firstDay, this.#record.rain.length);
      const at = years.findIndex(({ to }) => day < to);
      // The calendar follows to the years of the day.
      if (at < this.firstYear || at >= this.firstYear + YEARS_SHOWN)
        this.firstYear = Math.max(0, Math.min(at, years.length - YEARS_SHOWN));
    },
  };
}
