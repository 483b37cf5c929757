import { type Plan, sourceNames, writeProblem } from "@headfall/hydraulics";
import { html, nothing, type PropertyValues } from "lit";
import { hotSpellEntries } from "../birds/weather-entries.js";
import { RoomAnswerController } from "../controllers/room-answer.js";
import { WidthController } from "../controllers/width-controller.js";
import { fieldView } from "../fields/entry-view.js";
import { fieldStyles } from "../fields/fields.styles.js";
import { TypingController } from "../fields/typing-controller.js";
import { lineAmissView } from "../room/line-amiss.js";
import { isLineless, noLineView } from "../room/no-line.js";
import { nobodyYetView } from "../room/nobody-yet.js";
import { RoomElement } from "../room/room-element.js";
import { controls } from "../styles/controls.js";
import { roomStyles } from "../styles/room.styles.js";
import { tokens } from "../styles/tokens.js";
import { tableStyles } from "../tables/table.styles.js";
import { awayView } from "./away-view.js";
import { carryingView } from "./carrying-view.js";
import { answerView, lastsView } from "./lasts-view.js";
import { levelView } from "./level-view.js";
import { markView } from "./mark-view.js";
import { refillEntries } from "./refill-entries.js";
import type { TimeRoom } from "./room.js";
import { printStrip } from "./strip-printing.js";
import { timeStyles } from "./time.styles.js";

/** Rest after the last change before the days are reckoned [ms]. */
const REST_MS = 250;

/** Days away to begin with. */
const DAYS_AWAY = 5;

/**
 * How long the water of a plan lasts: days until the first bird goes without, the level through them, going away, the
 * daily mark, carrying.
 *
 * @element headfall-time
 * @fires edit-wanted  when the user wants the plan changed
 * @fires room-wanted  when the user wants to go to the birds
 */
export class HeadfallTime extends RoomElement {
  static override properties = {
    daysAway: { state: true },
    source: { state: true },
  };
  static override styles = [tokens, controls, fieldStyles, tableStyles, roomStyles, timeStyles];

  declare private daysAway: number;
  declare private source: number;

  readonly #typing = new TypingController(this);
  readonly #time = new RoomAnswerController<"time">(this, REST_MS);
  readonly #width = new WidthController(this, "(min-width: 700px)");

  constructor() {
    super();
    this.daysAway = DAYS_AWAY;
    this.source = 0;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("plan")) {
      if ((changed.get("plan")?.sources.length ?? 0) !== this.plan?.sources.length) this.#typing.forgetAll();
      this.#typing.planChanged();
      this.source = Math.min(this.source, Math.max(0, (this.plan?.sources.length ?? 1) - 1));
    }
    const asked = changed as ReadonlyMap<PropertyKey, unknown>;
    if (this.plan?.pens === undefined || isLineless(this.plan)) return;
    if (["plan", "day", "daysAway", "source"].some((key) => asked.has(key)))
      this.#time.ask({
        kind: "time",
        plan: this.plan,
        day: this.day,
        daysAway: this.daysAway,
        source: this.source,
      });
  }

  override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    if (isLineless(plan))
      return html`<h2>How long the water lasts</h2> ${noLineView("How often each of these is filled stands in the yard.")} ${CAUTIONS}`;
    const { isOld, problems } = this.#time;
    return html`
      <h2>How long the water lasts</h2>
      ${plan.pens === undefined ? this.#nobody() : nobodyYetView(plan, this.day, this.#typing)}
      ${problems.length === 0 ? nothing : html`<p class="problem" role="alert">${problems.map(writeProblem).join(" ")}</p>`}
      <div class="rest ${isOld ? "older" : ""}">
        <section class="say" aria-label="How it is filled, and heat">${this.#fields(plan)}</section>
        <div class="told">
          ${plan.pens === undefined || problems.length > 0 ? nothing : this.#toldOrWaiting(plan)}
          ${CAUTIONS}
        </div>
      </div>
      ${this.howPanel(undefined)}
    `;
  }

  #toldOrWaiting(plan: Plan) {
    const { answer } = this.#time;
    return answer === undefined
      ? html`<p>Working it out ...</p>`
      : this.#told({ ...this.#room(plan), answer });
  }

  #told(room: TimeRoom) {
    return html`${answerView(room)} ${lineAmissView(this.checked)} ${lastsView(room)} ${levelView(room)} ${awayView(room)} ${markView(room)} ${carryingView(room)}`;
  }

  #nobody() {
    return html`<p>Nobody drinks yet: say which birds drink from this line, and the days follow from them.
      <button type="button" @click=${this.#goToBirds}>Go to the birds</button></p>`;
  }

  /** How each source is filled again, and the heat to be ready for. */
  #fields(plan: Plan) {
    const names = sourceNames(plan);
    return html`<fieldset><legend>Filled again</legend>
      ${plan.sources.map(({ feed }, index) =>
        feed === undefined
          ? refillEntries(plan, index, names[index] ?? "", this.system).map((entry) =>
              fieldView(entry, this.#typing),
            )
          : html`<p class="quiet">${names[index]} is filled by the line.</p>`,
      )}
    </fieldset>
    ${plan.pens === undefined ? nothing : html`<fieldset><legend>Heat</legend>${hotSpellEntries(plan, this.system).map((entry) => fieldView(entry, this.#typing))}</fieldset>`}`;
  }

  readonly #goToBirds = (): void => {
    this.dispatchEvent(
      new CustomEvent("room-wanted", { bubbles: true, composed: true, detail: { room: "birds" } }),
    );
  };

  #room(plan: Plan): Omit<TimeRoom, "answer"> {
    return {
      plan,
      checked: this.checked,
      system: this.system,
      typing: this.#typing,
      daysAway: this.daysAway,
      today: this.day,
      source: this.source,
      isWide: this.#width.matches,
      acts: {
        goAway: (days) => {
          this.daysAway = days;
        },
        lookAt: (source) => {
          this.source = source;
        },
        printStrip: () => {
          const mark = this.#time.answer?.mark;
          if (mark !== undefined) printStrip(mark, this.system);
        },
      },
    };
  }
}

const CAUTIONS = html`<section class="cautions" aria-label="Cautions">
  <p>Look at the birds and their water every day: no computed figure replaces that. Somebody should do so while you are away, too.</p>
  <p>A level that falls as it should does not show that every drinker works. Chicks and quail can drown in shallow open water.</p>
  <p>Birds that stop drinking, or drink far more, may be ill: ask a vet.</p>
</section>`;
