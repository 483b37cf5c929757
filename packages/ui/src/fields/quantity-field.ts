import { html, LitElement, nothing, type PropertyValues } from "lit";
import { live } from "lit/directives/live.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";
import { FIELD_KINDS, type SliderKind } from "./field-kinds.js";
import { QuantityChangedEvent } from "./quantity-changed-event.js";
import { quantityFieldStyles } from "./quantity-field.styles.js";
import { readTyped } from "./read-typed.js";

/** Slides there were, so that each has a name of its own. */
let slides = 0;

/**
 * A quantity by slider and by typing, both at once: the slider answers while it is dragged, the text field takes
 * anything a person may write ("2 ft 6 in", "75 cm", a bare number, or a sum such as "=3*24 cm").
 *
 * @element headfall-quantity
 * @fires quantity-changed  with the text to keep and its value in SI; while dragging and after typing
 * @csspart slider  the range input
 * @csspart text    the text field
 */
export class HeadfallQuantity extends LitElement {
  static override properties = {
    label: {},
    note: {},
    kind: {},
    system: {},
    typed: {},
    standIn: {},
    value: { type: Number },
    min: { type: Number },
    max: { type: Number },
    problem: { state: true },
    draft: { state: true },
  };
  static override styles = [tokens, controls, quantityFieldStyles];

  /** What is set, in words. */
  declare label: string;
  /** A few words more, under the field. */
  declare note: string;
  /** What kind of quantity: "length" or "count". */
  declare kind: SliderKind;
  /** Units written by the slider, and taken for a bare number. */
  declare system: UnitSystem;
  /** The text the plan holds; shown as it is where it is in the user's own units. */
  declare typed: string;
  /** What is taken while nothing is typed, shown in the empty field; without it something must be typed. */
  declare standIn: string;
  /** The value in SI. */
  declare value: number;
  /** Lower end of the slider, in SI. Typing may go beyond it. */
  declare min: number;
  /** Upper end of the slider, in SI. Typing may go beyond it. */
  declare max: number;
  declare private problem: string;
  declare private draft: string | undefined;
  /** The slide under way, and what the field held before it. */
  #slide: { gesture: string; typed: string; value: number } | undefined;

  constructor() {
    super();
    this.label = "";
    this.note = "";
    this.kind = "length";
    this.system = "metric";
    this.typed = "";
    this.standIn = "";
    this.value = 0;
    this.min = 0;
    this.max = 1;
    this.problem = "";
    this.draft = undefined;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    // A value that came from elsewhere makes what was typed and its fault a thing of the past, but takes nothing from
    // under a hand that is typing.
    const isTyping = this.shadowRoot?.activeElement?.id === "text";
    if (!isTyping && (changed.has("value") || changed.has("system"))) {
      this.problem = "";
      this.draft = undefined;
    }
  }

  override render() {
    const kind = FIELD_KINDS[this.kind];
    const shown = kind.shown(this.typed, this.value, this.system);
    const text = this.#isLeftOut() ? "" : shown;
    return html`
      <label for="text">${this.label}</label>
      <div class="row">
        <input
          id="slider" part="slider" type="range" aria-label="${this.label}, slider"
          min=${this.min} max=${this.max} step=${kind.step(this.system)} .value=${String(this.value)}
          aria-valuetext=${shown} @input=${this.#slid} @change=${this.#slideEnded} @pointercancel=${this.#slideTaken}
        />
        <input
          id="text" part="text" type="text" autocomplete="off" spellcheck="false" enterkeyhint="done"
          .value=${live(this.draft ?? text)} placeholder=${this.standIn === "" ? nothing : this.standIn} aria-invalid=${this.problem === "" ? nothing : "true"}
          aria-describedby="note problem" @input=${this.#letterTyped} @change=${this.#wasTyped} @keydown=${this.#keyPressed}
        />
      </div>
      <p id="note" class="note quiet">${this.note}</p>
      <p id="problem" class="problem" aria-live="polite">${this.problem}</p>
    `;
  }

  #isLeftOut(): boolean {
    return this.typed === "" && this.standIn !== "";
  }

  #letterTyped(event: Event): void {
    this.draft = (event.target as HTMLInputElement).value;
  }

  #slid(event: Event): void {
    const value = Number((event.target as HTMLInputElement).value);
    const { typed, value: before } = this;
    this.#slide ??= { gesture: `slide ${++slides}`, typed, value: before };
    this.#become(FIELD_KINDS[this.kind].write(value, this.system), value, this.#slide.gesture);
  }

  #slideEnded(): void {
    this.#slide = undefined;
  }

  /** The page took the finger for scrolling: what it moved on its way is put back. */
  #slideTaken(): void {
    const slide = this.#slide;
    this.#slide = undefined;
    if (slide !== undefined) this.#become(slide.typed, slide.value, slide.gesture);
  }

  async #wasTyped(event: Event): Promise<void> {
    const text = (event.target as HTMLInputElement).value;
    this.draft = text;
    if (text.trim() === "" && this.standIn !== "") {
      this.draft = undefined;
      this.problem = "";
      return this.#become("", this.value);
    }
    const read = await readTyped(text, FIELD_KINDS[this.kind], this.system);
    // Something newer may have been typed while a sum was worked out.
    if (this.draft !== text) return;
    this.problem = read.ok ? "" : read.problem;
    if (read.ok) {
      this.draft = undefined;
      this.#become(read.typed, read.value);
    }
  }

  #keyPressed(event: KeyboardEvent): void {
    if (event.key !== "Escape" || this.draft === undefined) return;
    this.draft = undefined;
    this.problem = "";
  }

  #become(typed: string, value: number, gesture?: string): void {
    this.typed = typed;
    this.value = value;
    this.dispatchEvent(new QuantityChangedEvent(typed, value, gesture));
  }
}
