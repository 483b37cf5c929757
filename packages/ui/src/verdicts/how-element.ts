import type { Checked, Plan } from "@headfall/hydraulics";
import { html, LitElement, nothing, type PropertyValues } from "lit";
import type { HowGot } from "../kernels/how-got/how-got.js";
import { howGotOf } from "../kernels/how-got/how-got-of.js";
import type { RoomTold } from "../kernels/how-got/request.js";
import { type HowSubject, isSameSubject } from "../kernels/how-got/subject.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";
import { wholeDates } from "../styles/whole-dates.js";
import { howPanelStyles, howStyles } from "./how.styles.js";
import { howBody } from "./how-got-view.js";
import { HowClosedEvent, type HowWantedEvent } from "./how-wanted-event.js";
import { closesOnPress, focusedNow } from "./press-elsewhere.js";

/**
 * How a number was got: a panel beside what it is about, which follows the plan while it is open. It opens when it is
 * given a subject; closed by its button, by Escape, or by pressing elsewhere, it lets go of the subject and says so.
 * Dragging, and typing into a field, leave it open: so one can watch a number while changing what it hangs on.
 *
 * @element headfall-how
 * @fires how-closed  after the user closed it; `subject` is undefined then
 * @fires how-wanted  when the user asks for a number inside; the panel shows it by itself
 * @csspart panel  the panel
 */
export class HeadfallHow extends LitElement {
  static override properties = {
    checked: { attribute: false },
    plan: { attribute: false },
    room: { attribute: false },
    subject: { attribute: false },
    system: {},
    trail: { state: true },
  };
  static override styles = [tokens, controls, howStyles, howPanelStyles];

  /** What the page shows. */
  declare checked: Checked | undefined;
  /** The plan as typed; for what only it knows. */
  declare plan: Plan | undefined;
  /** What the room it is shown in had reckoned; for figures of it. */
  declare room: RoomTold | undefined;
  /** Which number is told of; undefined while the panel is closed. */
  declare subject: HowSubject | undefined;
  /** Units shown: "metric" or "us". */
  declare system: UnitSystem;
  /** Numbers that led here, from inside the panel. */
  declare private trail: readonly HowSubject[];

  #opener: HTMLElement | SVGElement | undefined;
  #goesInside = false;
  readonly #press = closesOnPress(this, () => this.close());

  constructor() {
    super();
    this.checked = undefined;
    this.plan = undefined;
    this.room = undefined;
    this.subject = undefined;
    this.system = "metric";
    this.trail = [];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#press.stop();
  }

  /** Closes the panel, as its own button does. */
  close(): void {
    if (this.subject === undefined) return;
    this.subject = undefined;
    this.dispatchEvent(new HowClosedEvent());
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has("subject") || isSameSubject(changed.get("subject"), this.subject)) return;
    if (!this.#goesInside) this.trail = [];
    if (changed.get("subject") === undefined) this.#opener = focusedNow();
    this.#goesInside = false;
  }

  override render() {
    if (this.subject === undefined || this.checked === undefined) return nothing;
    const how = howGotOf(this.subject, this.checked, this.plan, this.system, this.room);
    return html`<div class="panel" part="panel" popover="manual" role="dialog" aria-labelledby="title"
      @keydown=${this.#keyPressed} @how-wanted=${this.#askedInside}>
      <header>
        ${this.trail.length === 0 ? nothing : html`<button @click=${this.#goBack}>Back</button>`}
        <h2 id="title" tabindex="-1">${wholeDates(how?.title ?? "No longer in the plan")}</h2>
        <button aria-label="Close" @click=${this.close}>✕</button>
      </header>
      <div class="told" role="region" aria-labelledby="title" tabindex="0">${how === undefined ? GONE : toldView(how)}</div>
    </div>`;
  }

  override updated(changed: PropertyValues<this>): void {
    if (!changed.has("subject") || isSameSubject(changed.get("subject"), this.subject)) return;
    if (this.subject === undefined) this.#closed();
    else this.#opened(changed.get("subject") === undefined);
  }

  #opened(isFirst: boolean): void {
    const panel = this.renderRoot.querySelector<HTMLElement>(".panel");
    if (panel === null) return;
    if (!panel.matches(":popover-open")) panel.showPopover();
    this.renderRoot.querySelector(".told")!.scrollTop = 0;
    this.renderRoot.querySelector<HTMLElement>("#title")!.focus({ preventScroll: true });
    if (isFirst) this.#press.start();
  }

  /** Back to where the keyboard was, unless it has gone elsewhere by itself. */
  #closed(): void {
    this.#press.stop();
    const now = focusedNow();
    if (now === undefined || now === document.body) this.#opener?.focus({ preventScroll: true });
    this.#opener = undefined;
  }

  #keyPressed(event: KeyboardEvent): void {
    if (event.key !== "Escape") return;
    event.preventDefault();
    event.stopPropagation();
    this.close();
  }

  #askedInside(event: HowWantedEvent): void {
    if (this.subject === undefined || isSameSubject(event.subject, this.subject)) return;
    this.#goesInside = true;
    this.trail = [...this.trail, this.subject];
    this.subject = event.subject;
  }

  #goBack(): void {
    this.#goesInside = true;
    this.subject = this.trail[this.trail.length - 1];
    this.trail = this.trail.slice(0, -1);
  }
}

const GONE = html`<p>The plan has changed, and this part is gone.</p>`;

const toldView = (how: HowGot) => html`<p class="main-result">${how.result}</p>${howBody(how)}`;
