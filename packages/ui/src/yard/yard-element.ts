import { type Plan, writeProblem, YARD_CAUTIONS } from "@headfall/hydraulics";
import { html, nothing, type PropertyValues } from "lit";
import { RoomAnswerController } from "../controllers/room-answer.js";
import { WidthController } from "../controllers/width-controller.js";
import { fieldStyles } from "../fields/fields.styles.js";
import { TypingController } from "../fields/typing-controller.js";
import { RoomElement } from "../room/room-element.js";
import { controls } from "../styles/controls.js";
import { roomStyles } from "../styles/room.styles.js";
import { rowStyles } from "../styles/rows.styles.js";
import { tokens } from "../styles/tokens.js";
import { tableStyles } from "../tables/table.styles.js";
import { answerView, pensView } from "./pens-view.js";
import type { WatererSpot, YardActs, YardRoom } from "./room.js";
import { yardStyles } from "./yard.styles.js";

/** Rest after the last change before the yard is reckoned [ms]. */
const REST_MS = 100;
const WEEKS = 8;

/**
 * The loose waterers of a plan, pen by pen, a line each with how it stands; opened, each drawn on its slope with its
 * water at rest, what it gives, how often it is filled, whom it suits and what to put right.
 *
 * @element headfall-yard
 * @fires edit-wanted  when the user wants the plan changed
 * @fires room-wanted  when the user wants to go to the birds
 */
export class HeadfallYard extends RoomElement {
  static override properties = { isAllOpen: { state: true }, added: { state: true } };
  static override styles = [tokens, controls, fieldStyles, tableStyles, roomStyles, rowStyles, yardStyles];

  declare private isAllOpen: boolean;
  declare private added: WatererSpot | undefined;

  readonly #typing = new TypingController(this);
  readonly #yard = new RoomAnswerController<"yard">(this, REST_MS);
  readonly #width = new WidthController(this, "(min-width: 900px)");

  constructor() {
    super();
    this.isAllOpen = false;
    this.added = undefined;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("plan")) {
      const before = changed.get("plan");
      // Pens and waterers are counted through: with one fewer, what was typed may mean another.
      if (before !== undefined && shapeOf(before) !== shapeOf(this.plan)) this.#typing.forgetAll();
      this.#typing.planChanged();
    }
    if (this.plan !== undefined && (changed.has("plan") || changed.has("day")))
      this.#yard.ask({ kind: "yard", plan: this.plan, day: this.plan.day ?? this.day, weeks: WEEKS });
  }

  override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    const { answer: yard, isOld, problems } = this.#yard;
    const room: YardRoom = {
      plan,
      yard,
      system: this.system,
      typing: this.#typing,
      isWide: this.#width.matches,
      isAllOpen: this.isAllOpen,
      added: this.added,
      acts: this.#acts,
    };
    const stray = this.#typing.strayRefusal;
    return html`
      <h2>The yard: founts, pans and buckets</h2>
      ${problems.length === 0 ? nothing : html`<p class="problem" role="alert">${problems.map(writeProblem).join(" ")}</p>`}
      ${stray === "" ? nothing : html`<p class="problem" role="alert">${stray}</p>`}
      <div class=${isOld ? "older" : ""}>
        ${problems.length > 0 && yard === undefined ? nothing : answerView(room)}
        ${pensView(room)}
      </div>
      <section class="cautions"><h3>Mind</h3><ul>${YARD_CAUTIONS.map((line) => html`<li>${line}</li>`)}</ul></section>
      ${this.howPanel(yard === undefined ? {} : { yard })}
    `;
  }

  readonly #acts: YardActs = {
    openAll: (isOpen) => {
      this.isAllOpen = isOpen;
      this.added = undefined;
    },
    opened: (added) => {
      this.added = added;
    },
  };
}

const shapeOf = (plan: Plan | undefined): string =>
  (plan?.pens ?? []).map(({ waterers }) => waterers?.length ?? 0).join();
