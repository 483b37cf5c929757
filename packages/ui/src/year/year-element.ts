import {
  batchesOf,
  type Plan,
  readDay,
  writeProblem,
  writeYearCalendar,
  writeYearCsv,
  writeYearWeather,
  YEAR_CAUTIONS,
  type YearOfPlan,
} from "@headfall/hydraulics";
import { html, nothing, type PropertyValues } from "lit";
import { RoomAnswerController } from "../controllers/room-answer.js";
import { WidthController } from "../controllers/width-controller.js";
import { fieldView } from "../fields/entry-view.js";
import { fieldStyles } from "../fields/fields.styles.js";
import { TypingController } from "../fields/typing-controller.js";
import { countedBirds } from "../kernels/birds/kind-of-birds.js";
import { fileNameOf } from "../kernels/file-name.js";
import { namesOfPens } from "../kernels/pen-names.js";
import { dayEntry } from "../room/day-entry.js";
import { wantRoom } from "../room/no-line.js";
import { RoomElement } from "../room/room-element.js";
import { saveFile } from "../storage/save-file.js";
import { EditWantedEvent } from "../store/edit-wanted-event.js";
import type { PlanChange } from "../store/plan-change.js";
import { controls } from "../styles/controls.js";
import { roomStyles } from "../styles/room.styles.js";
import { tokens } from "../styles/tokens.js";
import { tableStyles } from "../tables/table.styles.js";
import { chartView } from "./chart-view.js";
import { addKit, dropKit, kitEntries, nameOfKind } from "./kit-entries.js";
import { kitView } from "./kit-view.js";
import type { YearRoom } from "./room.js";
import { addMove, stayEntries } from "./stay-entries.js";
import { tablesView } from "./tables-view.js";
import { yearStyles } from "./year.styles.js";

/** Rest after the last change before the year is reckoned: it takes seconds [ms]. */
const REST_MS = 400;

const WEEKS = [13, 26, 52, 104];

/**
 * A plan through a year: batches that come, grow, move and leave, what they drink, how high drinkers belong, and the kit on hand
 * given out to the pens, with what is short and the least to buy.
 *
 * @element headfall-year
 * @fires edit-wanted  when the user wants the plan changed
 * @fires room-wanted  when the user wants to go to the birds
 */
export class HeadfallYear extends RoomElement {
  static override properties = {
    weeks: { state: true },
  };
  static override styles = [tokens, controls, fieldStyles, tableStyles, roomStyles, yearStyles];

  /** Weeks looked ahead. */
  declare private weeks: number;

  readonly #typing = new TypingController(this);
  readonly #year = new RoomAnswerController<"year">(this, REST_MS);
  readonly #width = new WidthController(this, "(min-width: 700px)");

  constructor() {
    super();
    this.weeks = 52;
  }

  override willUpdate(changed: PropertyValues): void {
    if (changed.has("plan")) this.#typing.planChanged();
    const { plan, day, weeks } = this;
    if (plan !== undefined && ["plan", "day", "weeks"].some((key) => changed.has(key)))
      this.#year.ask({ kind: "year", plan, day, weeks });
  }

  override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    const { answer: year, isOld, problems } = this.#year;
    return html`
      <h2>The year, and the kit</h2>
      ${problems.length === 0 ? nothing : html`<p class="problem" role="alert">${problems.map(writeProblem).join(" ")}</p>`}
      ${this.#work()}
      <div class="rest ${isOld ? "older" : ""}">
        <section class="say" aria-label="Who comes and goes, and what is on hand">${this.#fields(plan)}</section>
        <div class="told">${year === undefined ? nothing : this.#told(plan, year)}</div>
      </div>
      ${this.howPanel(year === undefined ? {} : { year })}
    `;
  }

  #work() {
    const { progress, waits } = this.#year;
    if (progress !== undefined)
      return html`<div class="work" role="group" aria-label="Reckoning the year">
        <span>Going through the weeks ...</span>
        <progress max="1" .value=${progress} aria-label="Weeks gone through"></progress>
        <button type="button" @click=${() => this.#year.cancel()}>Cancel</button>
      </div>`;
    return waits
      ? html`<p class="work">What is shown may be of the plan before.
          <button type="button" class="chief" @click=${() => this.#year.run()}>Go through the weeks</button></p>`
      : nothing;
  }

  #told(plan: Plan, year: YearOfPlan) {
    if (year.pens.length === 0)
      return html`<p>The plan has no pens yet, so nobody drinks: say which birds there are, and their year follows.
        <button type="button" @click=${wantRoom("birds")}>Go to the birds</button></p>`;
    const room: YearRoom = {
      plan,
      year,
      system: this.system,
      typing: this.#typing,
      isWide: this.#width.matches,
    };
    const named = `${plan.name ?? ""} year`.trim();
    return html`${chartView(room)} ${kitView(room)} ${tablesView(room)}
      <p class="quiet">${writeYearWeather(year)}</p>
      <p class="files">
        <button type="button" @click=${() => saveFile(fileNameOf(named, "ics"), new Blob([writeYearCalendar(year, plan.name ?? "")], { type: "text/calendar;charset=utf-8" }))}>Save as a calendar</button>
        <button type="button" @click=${() => saveFile(fileNameOf(named, "csv"), new Blob([writeYearCsv(year, this.system)], { type: "text/csv;charset=utf-8" }))}>Save as a table</button>
      </p>
      <h3>Mind</h3><ul>${YEAR_CAUTIONS.map((line) => html`<li>${line}</li>`)}</ul>`;
  }

  #fields(plan: Plan) {
    const kit = plan.kit ?? [];
    return html`
      ${fieldView(dayEntry(plan, "It begins on", this.day), this.#typing)}
      <label class="field">How far ahead
        <select @change=${this.#lookAhead}>${WEEKS.map(
          (weeks) => html`<option value=${weeks} ?selected=${weeks === this.weeks}>${weeks} weeks</option>`,
        )}</select></label>
      <details><summary>Kit on hand: ${kit.length === 0 ? "none told" : `${kit.length} ${kit.length === 1 ? "kind" : "kinds"}`}</summary>
        ${kit.map(
          (
            entry,
            k,
          ) => html`<div class="piece">${kitEntries(plan, k).map((field) => fieldView(field, this.#typing))}
            <button type="button" @click=${() => this.#want(dropKit(plan, k))} aria-label="Take out ${nameOfKind(entry.kind)}">Take out</button></div>`,
        )}
        <button type="button" @click=${() => this.#want(addKit(plan))}>Add a kind</button>
      </details>
      ${namesOfPens(plan).map((name, pen) => this.#stays(plan, name, pen))}`;
  }

  #stays(plan: Plan, name: string, pen: number) {
    const batches = batchesOf(plan.pens![pen]!);
    return html`<details><summary>Days of ${name}</summary>
      ${batches.map((birds, batch) => {
        const place = { plan, pen, batch };
        const move = addMove(place, this.#today);
        return html`<p><strong>${countedBirds(birds)}</strong></p>
          ${stayEntries(place).map((entry) => fieldView(entry, this.#typing))}
          ${move === undefined ? nothing : html`<button type="button" aria-label="Add a move of birds ${batch + 1} of ${name}" @click=${() => this.#want(move)}>Add a move</button>`}`;
      })}
    </details>`;
  }

  get #today(): number {
    return readDay(this.plan?.day ?? this.day ?? "") ?? 0;
  }

  #want(change: PlanChange): void {
    this.dispatchEvent(new EditWantedEvent(change));
  }

  readonly #lookAhead = (event: Event): void => {
    this.weeks = Number((event.target as HTMLSelectElement).value);
  };
}
