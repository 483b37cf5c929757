import { html, LitElement, nothing, type PropertyValues } from "lit";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";
import { FIELD_KINDS, type FieldKind } from "./field-kinds.js";
import { QuantityChangedEvent } from "./quantity-changed-event.js";
import { quantityFieldStyles } from "./quantity-field.styles.js";
import { readTyped } from "./read-typed.js";

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
  declare kind: FieldKind;
  /** Units written by the slider, and taken for a bare number. */
  declare system: UnitSystem;
  /** The text the plan holds; shown as it is where it is in the user's own units. */
  declare typed: string;
  /** The value in SI. */
  declare value: number;
  /** Ends of the slider, in SI. Typing may go beyond them. */
  declare min: number;
  declare max: number;
  declare private problem: string;
  declare private draft: string | undefined;

  constructor() {
    super();
    this.label = "";
    this.note = "";
    this.kind = "length";
    this.system = "metric";
    this.typed = "";
    this.value = 0;
    this.min = 0;
    this.max = 1;
    this.problem = "";
    this.draft = undefined;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    // A value that came from elsewhere makes what was half-typed and its fault a thing of the past.
    if (changed.has("value") || changed.has("system")) {
      this.problem = "";
      this.draft = undefined;
    }
  }

  override render() {
    const kind = FIELD_KINDS[this.kind];
    const shown = kind.shown(this.typed, this.value, this.system);
    return html`
      <label for="text">${this.label}</label>
      <div class="row">
        <input
          id="slider" part="slider" type="range" aria-label="${this.label}, slider"
          min=${this.min} max=${this.max} step=${kind.step(this.system)} .value=${String(this.value)}
          aria-valuetext=${shown} @input=${this.#slid}
        />
        <input
          id="text" part="text" type="text" autocomplete="off" spellcheck="false" enterkeyhint="done"
          .value=${this.draft ?? shown} aria-invalid=${this.problem === "" ? nothing : "true"}
          aria-describedby="note problem" @change=${this.#wasTyped} @keydown=${this.#keyPressed}
        />
      </div>
      <p id="note" class="note quiet">${this.note}</p>
      <p id="problem" class="problem" aria-live="polite">${this.problem}</p>
    `;
  }

  #slid(event: Event): void {
    const value = Number((event.target as HTMLInputElement).value);
    this.#become(FIELD_KINDS[this.kind].write(value, this.system), value);
  }

  async #wasTyped(event: Event): Promise<void> {
    const text = (event.target as HTMLInputElement).value;
    this.draft = text;
    const read = await readTyped(text, this.kind, this.system);
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

  #become(typed: string, value: number): void {
    this.typed = typed;
    this.value = value;
    this.dispatchEvent(new QuantityChangedEvent(typed, value));
  }
}
