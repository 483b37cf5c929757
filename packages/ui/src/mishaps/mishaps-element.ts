import { type Checked, hasWaterers, type MishapResult, type Plan, writeProblem } from "@headfall/hydraulics";
import { html, nothing, type PropertyValues } from "lit";
import { RoomAnswerController } from "../controllers/room-answer.js";
import { WidthController } from "../controllers/width-controller.js";
import { drinkersIn } from "../kernels/mishaps/drinkers-in.js";
import type { MishapFamily } from "../kernels/mishaps/mishap-families.js";
import { drawingOfMishap, type StruckDrawing } from "../kernels/mishaps/mishap-place.js";
import type { ProfileLayout } from "../kernels/profile-layout.js";
import { isLineless, noLineView } from "../room/no-line.js";
import { RoomElement } from "../room/room-element.js";
import { controls } from "../styles/controls.js";
import { roomStyles } from "../styles/room.styles.js";
import { rowStyles } from "../styles/rows.styles.js";
import { tokens } from "../styles/tokens.js";
import { tableStyles } from "../tables/table.styles.js";
import { answerView, choiceView, guardCautions, howView, looseAnswerView } from "./answer-view.js";
import { drawingView } from "./drawing-view.js";
import { type DripsTyped, dripsView } from "./drips-view.js";
import { mishapsStyles } from "./mishaps.styles.js";
import type { MishapsActs, MishapsRoom } from "./room.js";
import { rowsView } from "./rows-view.js";
import { watererCautions, waterersView } from "./waterers-view.js";

/** Rest after the last change before the mishaps are run: there are dozens [ms]. */
const REST_MS = 400;
/** Plans of more drinkers are run when that is asked for. */
const MOST_AT_ONCE = 300;

/**
 * What any one mishap does to a plan, the worst first: what is lost, when the first bird goes without, who goes dry, and
 * the cheapest guard; and drips as litres a day.
 *
 * @element headfall-mishaps
 */
export class HeadfallMishaps extends RoomElement {
  static override properties = {
    family: { state: true },
    isAllOpen: { state: true },
    chosen: { state: true },
    layout: { state: true },
    drips: { state: true },
  };
  static override styles = [tokens, controls, tableStyles, roomStyles, rowStyles, mishapsStyles];

  declare private family: MishapFamily | undefined;
  declare private isAllOpen: boolean;
  /** The row whose mishap is drawn. */
  declare private chosen: number | undefined;
  declare private layout: ProfileLayout | undefined;
  declare private drips: DripsTyped;

  readonly #mishaps = new RoomAnswerController<"mishaps">(this, REST_MS);
  readonly #width = new WidthController(this, "(min-width: 1000px)");

  #struck:
    | { readonly checked: Checked; readonly of: MishapResult; readonly drawing: StruckDrawing | undefined }
    | undefined;

  constructor() {
    super();
    this.family = undefined;
    this.isAllOpen = false;
    this.chosen = undefined;
    this.layout = undefined;
    this.drips = { aMinute: "10", drinkers: "1" };
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has("plan") && !changed.has("day")) return;
    const { plan, day } = this;
    if (plan !== undefined && isAskable(plan))
      this.#mishaps.ask({ kind: "mishaps", plan, day }, drinkersIn(plan) > MOST_AT_ONCE);
    // Rows of another plan are others.
    this.chosen = undefined;
    this.family = undefined;
  }

  override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    if (!isAskable(plan))
      return html`<h2>What any one mishap does</h2>
        ${noLineView("Once a pen has founts, pans or buckets, what goes wrong with each is told here.")}
        <section class="cautions" aria-label="Cautions">${CAUTIONS}</section>`;
    const { answer: mishaps, problems, isOld } = this.#mishaps;
    return html`
      <h2>What any one mishap does</h2>
      ${problems.length === 0 ? nothing : html`<p class="problem" role="alert">${problems.map(writeProblem).join(" ")}</p>`}
      ${this.#work(plan)}
      ${mishaps === undefined ? nothing : html`<div class=${isOld ? "older" : nothing}>${this.#told(this.#room(mishaps))}</div>`}
      ${dripsView({ typed: this.drips, system: this.system, type: this.#type })}
      <section class="cautions" aria-label="Cautions">
        ${mishaps === undefined ? nothing : guardCautions(mishaps)} ${(mishaps?.waterers.length ?? 0) > 0 ? watererCautions() : nothing} ${CAUTIONS}
      </section>
      ${this.howPanel(mishaps === undefined ? {} : { mishaps })}
    `;
  }

  /** How far the run has come, or how to begin it. */
  #work(plan: Plan) {
    const { progress, waits, answer: mishaps } = this.#mishaps;
    if (progress !== undefined)
      return html`<div class="work" role="group" aria-label="Running the mishaps">
        <span>Making each mishap happen ...</span>
        <progress max="1" .value=${progress} aria-label="Mishaps run"></progress>
        <button type="button" @click=${() => this.#mishaps.cancel()}>Cancel</button>
      </div>`;
    if (!waits) return nothing;
    return html`<p class="work">${mishaps === undefined ? `${drinkersIn(plan)} drinkers: each mishap of them is a run of its own.` : "What is shown is of the plan before that change."}
      <button type="button" class="chief" @click=${() => this.#mishaps.run()}>Run the mishaps</button></p>`;
  }

  #told(room: MishapsRoom) {
    const { isWide } = room;
    const { waterers } = room.mishaps;
    const isLoose = waterers.length > 0 && room.mishaps.rows.length === 0;
    return html`${isLoose ? looseAnswerView(room) : answerView(room)}
      ${
        room.mishaps.rows.length === 0
          ? nothing
          : html`<h3>Each mishap, the worst first</h3> ${choiceView(room)}
              <div class=${isWide && room.chosen !== undefined ? "beside" : nothing}>${rowsView(room)} ${isWide ? drawingView(room) : nothing}</div>
              ${howView(room)}`
      }
      ${waterersView(room)}`;
  }

  #room(mishaps: MishapsRoom["mishaps"]): MishapsRoom {
    const { checked, system, family, isAllOpen, layout } = this;
    const isSame = !this.#mishaps.isOld && checked?.line.drinkers.count === mishaps.line.drinkers.count;
    const chosen = isSame ? this.chosen : undefined;
    const row = chosen === undefined ? undefined : mishaps.rows[chosen];
    return {
      ...{ mishaps, checked: isSame ? checked : undefined, system, family, isAllOpen, layout, chosen },
      struck: row === undefined || checked === undefined ? undefined : this.#struckOf(checked, row.worst),
      isWide: this.#width.matches,
      acts: this.#acts,
    };
  }

  /** The same object while it is of the same: else each drawing would ask for another. */
  #struckOf(checked: Checked, of: MishapResult): StruckDrawing | undefined {
    if (this.#struck?.checked !== checked || this.#struck.of !== of)
      this.#struck = { checked, of, drawing: drawingOfMishap(checked, of) };
    return this.#struck.drawing;
  }

  readonly #type = (typed: DripsTyped): void => {
    this.drips = typed;
  };

  readonly #acts: MishapsActs = {
    choose: (family) => {
      this.family = family;
    },
    openAll: (isOpen) => {
      this.isAllOpen = isOpen;
    },
    draw: (row) => {
      this.chosen = row;
      this.layout = undefined;
    },
    drawn: (layout) => {
      this.layout = layout;
    },
  };
}

/** A line, or loose waterers: of either something can go wrong. */
const isAskable = (plan: Plan): boolean => !isLineless(plan) || hasWaterers(plan);

const CAUTIONS = html`<p>Nobody works under a full vessel on a stand that has not been proven: empty it first. A full barrel weighs a quarter of a ton.</p>
  <p>Wet litter from a leak harms feet and lungs: change it. Chicks and quail can drown in a pan that stands in for the line: put stones in.</p>
  <p>Birds that drink far more or far less than usual may be ill: ask a vet.</p>`;
