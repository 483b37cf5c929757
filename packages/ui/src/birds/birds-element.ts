import type { Checked, Plan } from "@headfall/hydraulics";
import { html, nothing, type PropertyValues } from "lit";
import { WidthController } from "../controllers/width-controller.js";
import { fieldStyles } from "../fields/fields.styles.js";
import { TypingController } from "../fields/typing-controller.js";
import { nobodyYetView } from "../room/nobody-yet.js";
import { RoomElement } from "../room/room-element.js";
import { controls } from "../styles/controls.js";
import { roomStyles } from "../styles/room.styles.js";
import { tokens } from "../styles/tokens.js";
import { tableStyles } from "../tables/table.styles.js";
import { answerView } from "./answer-view.js";
import { birdsStyles } from "./birds.styles.js";
import { chartView } from "./chart-view.js";
import { crowdView } from "./crowd-view.js";
import { CARE, findingsView } from "./findings-view.js";
import { lineWeeksView } from "./line-weeks-view.js";
import { neededView } from "./needed-view.js";
import { pensView } from "./pens-view.js";
import type { BirdsRoom } from "./room.js";
import { WeeksController } from "./weeks-controller.js";
import { weeksWork } from "./weeks-work-view.js";

/**
 * The birds of a plan: its pens and their weather, what they drink, how they get on at their drinkers, and the weeks
 * to come.
 *
 * @element headfall-birds
 * @fires edit-wanted  when the user wants the plan changed
 * @fires room-wanted  when the user wants to go to the line
 */
export class HeadfallBirds extends RoomElement {
  static override styles = [tokens, controls, fieldStyles, tableStyles, roomStyles, birdsStyles];

  readonly #typing = new TypingController(this);
  readonly #weeks = new WeeksController(this);
  readonly #width = new WidthController(this, "(min-width: 700px)");

  /** Whether the keyboard was on something here before the last update. */
  #hadFocus = false;
  /** The pen that has just been added; with several, the others are folded on a phone. */
  #newPen: number | undefined;
  /** Whether that was in the last edit. */
  #isPenAdded = false;
  /** The last check that told of the birds. */
  #told: Checked | undefined;

  override willUpdate(changed: PropertyValues<this>): void {
    this.#hadFocus = this.shadowRoot?.activeElement != null;
    if (changed.has("plan")) this.#planChanged(changed.get("plan"));
    // The first look at a plan tells nothing of its birds yet; what was told last stays until the check does.
    if (this.checked?.flock !== undefined || this.plan?.pens === undefined) this.#told = this.checked;
    if (this.plan !== undefined && (changed.has("plan") || changed.has("day")))
      this.#weeks.ask({ plan: this.plan, day: this.day });
  }

  /** What the keyboard was on may have gone with its pen. */
  override updated(): void {
    const isAdded = this.#isPenAdded;
    this.#isPenAdded = false;
    if (!this.#hadFocus) return;
    if (isAdded) this.#goToNewPen();
    else if (this.shadowRoot?.activeElement == null)
      this.renderRoot.querySelector<HTMLElement>("h2")?.focus({ preventScroll: true });
  }

  /** Its fields stand over the button that was pressed. */
  #goToNewPen(): void {
    const pens = this.renderRoot.querySelectorAll(".pen");
    pens[this.#newPen ?? 0]?.querySelector("select")?.focus();
  }

  /** Pens and batches are counted through: with one fewer, what was typed may mean another. */
  #planChanged(before: Plan | undefined): void {
    const [had, has] = [before?.pens?.length ?? 0, this.plan?.pens?.length ?? 0];
    if (before !== undefined && has !== had) {
      this.#isPenAdded = has > had;
      this.#newPen = has > had ? has - 1 : undefined;
    }
    if (before !== undefined && shapeOf(before) !== shapeOf(this.plan)) this.#typing.forgetAll();
    this.#typing.planChanged();
  }

  override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    const room = this.#room(plan);
    const stray = this.#typing.strayRefusal;
    return html`
      <h2 tabindex="-1">What the birds drink</h2>
      ${plan.pens === undefined ? EMPTY : html`${nobodyYetView(plan, this.day, this.#typing)} ${answerView(room)}`}
      ${stray === "" ? nothing : html`<p class="problem" role="alert">${stray}</p>`}
      ${plan.pens === undefined ? nothing : findingsView(room)}
      <div class="rest">
        <section class="say" aria-label="Pens and weather">${pensView(room)}</section>
        <div class="told">
          ${plan.pens === undefined ? nothing : html`${neededView(room)} ${weeksWork(this.#weeks)} ${chartView(room)} ${crowdView(room)} ${lineWeeksView(room)}`}
          ${CARE}
        </div>
      </div>
      ${this.howPanel(this.#weeks.told, this.#told)}
    `;
  }

  #room(plan: Plan): BirdsRoom {
    const { system, day } = this;
    const { weeks, hotWeeks, everyBird, isOld } = this.#weeks;
    return {
      plan,
      flock: this.#told?.flock,
      system,
      // A page of one's own that tells no day gets ages counted on some day; the library asks for one where it matters.
      day: plan.day ?? day ?? "2000-01-01",
      today: day,
      typing: this.#typing,
      weeks,
      hotWeeks,
      everyBird,
      isOld,
      newPen: this.#newPen,
      isWide: this.#width.matches,
    };
  }
}

const shapeOf = (plan: Plan | undefined): string =>
  (plan?.pens ?? []).map(({ birds }) => (Array.isArray(birds) ? birds.length : 1)).join();

const EMPTY = html`<p>Say which birds drink from this line, and the page works out what they need in a day, how many are at
  the drinkers at once, how long each takes, and what changes while they grow. Until then every verdict goes by the numbers
  typed at the drinkers.</p>`;
