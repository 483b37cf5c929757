import { type Heat, type Plan, runNames, sourceNames, writeProblem } from "@headfall/hydraulics";
import { html, nothing, type PropertyValues } from "lit";
import { RoomAnswerController } from "../controllers/room-answer.js";
import { WidthController } from "../controllers/width-controller.js";
import { fieldView } from "../fields/entry-view.js";
import { fieldStyles } from "../fields/fields.styles.js";
import { TypingController } from "../fields/typing-controller.js";
import { RoomElement } from "../room/room-element.js";
import { controls } from "../styles/controls.js";
import { roomStyles } from "../styles/room.styles.js";
import { tokens } from "../styles/tokens.js";
import { tableStyles } from "../tables/table.styles.js";
import { AirController } from "./air-controller.js";
import type { AirExample } from "./air-example.js";
import { airView } from "./air-view.js";
import { frostView } from "./frost-view.js";
import { heatView } from "./heat-view.js";
import type { WeatherRoom } from "./room.js";
import { weatherStyles } from "./weather.styles.js";
import { coverEntries, hotDayEntries, nightEntries } from "./weather-entries.js";
import { yearsView } from "./years-view.js";

/** Rest after the last change before night and day are reckoned [ms]. */
const REST_MS = 150;

/**
 * A plan in frost and in heat: hours until each part stops in a night of frost, what to drain, refills; water by the
 * hour on a hot day, what to flush, what shade, white, foam or earth would change; and by a
 * daily record, nights of frost and hot days by year.
 *
 * @element headfall-weather
 * @fires edit-wanted  when the user wants the plan changed
 */
export class HeadfallWeather extends RoomElement {
  static override properties = {
    examples: { attribute: false },
    chosen: { state: true },
    covered: { state: true },
  };
  static override styles = [tokens, controls, fieldStyles, tableStyles, roomStyles, weatherStyles];

  /** Daily records of the air to try the room with, beside the user's own. */
  declare examples: readonly AirExample[];
  /** The part whose curve is drawn; the warmest that birds drink from until one is chosen. */
  declare private chosen: number | undefined;
  /** The run or source whose cover is typed, runs first. */
  declare private covered: number;

  readonly #typing = new TypingController(this);
  readonly #weather = new RoomAnswerController<"weather">(this, REST_MS);
  readonly #air = new AirController(this);
  readonly #width = new WidthController(this, "(min-width: 700px)");

  constructor() {
    super();
    this.examples = [];
    this.chosen = undefined;
    this.covered = 0;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("plan")) {
      const before = changed.get("plan");
      if (
        before?.runs.length !== this.plan?.runs.length ||
        before?.sources.length !== this.plan?.sources.length
      ) {
        this.#typing.forgetAll();
        this.chosen = undefined;
        this.covered = 0;
      }
      this.#typing.planChanged();
    }
    if (this.plan === undefined || !(changed.has("plan") || changed.has("day"))) return;
    this.#weather.ask({ kind: "weather", plan: this.plan, day: this.day });
    this.#air.ask(this.plan, this.day);
  }

  override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    const { answer, isOld, problems } = this.#weather;
    return html`
      <h2>Frost and heat</h2>
      ${problems.length === 0 ? nothing : html`<p class="problem" role="alert">${problems.map(writeProblem).join(" ")}</p>`}
      <div class="rest ${isOld ? "older" : ""}">
        <section class="say" aria-label="Night, day, and what keeps them off">
          <details ?open=${this.#width.matches}><summary>Change the night, the day, and what keeps them off</summary>${this.#fields(plan)}</details>
          ${this.#record()}
        </section>
        <div class="told">
          ${answer === undefined ? (problems.length > 0 ? nothing : html`<p>Working it out ...</p>`) : this.#told({ ...this.#room(plan, answer.heat), ...answer })}
        </div>
      </div>
      ${this.howPanel(answer)}
    `;
  }

  /** Folded on a phone until there is one: night and day stand before it. */
  #record() {
    const { record, asked, faulty, isReading } = this.#air;
    const isUnused = record === undefined && asked === undefined && faulty === undefined && !isReading;
    const view = airView(this.#air, this.examples);
    if (this.#width.matches || !isUnused) return view;
    return html`<details><summary>By a daily record of the air: none yet</summary>${view}</details>`;
  }

  #told(room: WeatherRoom) {
    return html`${frostView(room)} ${heatView(room)} ${yearsView(this.#air, this.system)}`;
  }

  #room(plan: Plan, heat: Heat): Omit<WeatherRoom, "frost" | "heat"> {
    return {
      plan,
      system: this.system,
      typing: this.#typing,
      chosen: Math.min(this.chosen ?? warmestOf(heat), heat.parts.length - 1),
      isWide: this.#width.matches,
      choose: (part) => {
        this.chosen = part;
      },
    };
  }

  #fields(plan: Plan) {
    const typing = this.#typing;
    const fields = (entries: ReturnType<typeof nightEntries>) =>
      entries.map((entry) => fieldView(entry, typing));
    return html`
      <fieldset><legend>Night of frost</legend>${fields(nightEntries(plan))}</fieldset>
      <fieldset><legend>Hot day</legend>${fields(hotDayEntries(plan))}</fieldset>
      ${this.#cover(plan)}`;
  }

  /** What keeps the weather off one run or source; one at a time, for there may be many. */
  #cover(plan: Plan) {
    const names = [...runNames(plan), ...sourceNames(plan)];
    if (names.length === 0) return nothing;
    const at = Math.min(this.covered, names.length - 1);
    const isRun = at < plan.runs.length;
    const entries = coverEntries(
      plan,
      isRun ? "runs" : "sources",
      isRun ? at : at - plan.runs.length,
      names[at] ?? "",
    );
    return html`<fieldset><legend>What keeps it off</legend>
      <label class="field">Run or vessel
        <select @change=${this.#coverOther}>
          ${names.map((name, k) => html`<option value=${k} ?selected=${k === at}>${name}</option>`)}
        </select></label>
      ${entries.map((entry) => fieldView(entry, this.#typing))}
    </fieldset>`;
  }

  readonly #coverOther = (event: Event): void => {
    this.covered = Number((event.target as HTMLSelectElement).value);
  };
}

/** The warmest part that birds drink from; the first where they drink from none. */
function warmestOf({ parts }: Heat): number {
  let warmest = 0;
  parts.forEach(({ drinkers, hottest }, k) => {
    const best = parts[warmest];
    if (drinkers > 0 && (best === undefined || best.drinkers === 0 || hottest.peak > best.hottest.peak))
      warmest = k;
  });
  return warmest;
}
