import type { Checked, Plan } from "@headfall/hydraulics";
import { html, LitElement, nothing } from "lit";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";
import { saveStyles } from "./save.styles.js";
import { savePicture } from "./save-picture.js";
import { saveTable, TABLES, type TableName } from "./save-tables.js";
import type { SavedDrawing } from "./saved-drawing.js";
import { today } from "./today.js";

/**
 * Saves what is shown: the drawings as pictures, the results as tables for a spreadsheet, and the plan on paper, to
 * scale.
 *
 * @element headfall-save
 * @csspart pictures  choices and buttons for pictures
 * @csspart tables    the buttons for tables
 * @csspart print     the dialog with the pages
 */
export class HeadfallSave extends LitElement {
  static override properties = {
    plan: { attribute: false },
    checked: { attribute: false },
    system: {},
    drawings: { attribute: false },
    date: {},
    chosen: { state: true },
    paper: { state: true },
    transparent: { state: true },
    told: { state: true },
    isPrinting: { state: true },
  };
  static override styles = [tokens, controls, saveStyles];

  /** The plan that is saved and printed. */
  declare plan: Plan | undefined;
  /** What the check came to; the tables come from it. */
  declare checked: Checked | undefined;
  /** Units written into the tables and on paper. */
  declare system: UnitSystem;
  /** Gives the drawings that are on the screen when it is asked. */
  declare drawings: () => readonly SavedDrawing[];
  /** The date printed on the pages; the day of printing when left empty. */
  declare date: string;
  declare private chosen: string;
  declare private paper: boolean;
  declare private transparent: boolean;
  declare private told: string;
  declare private isPrinting: boolean;

  constructor() {
    super();
    this.plan = undefined;
    this.checked = undefined;
    this.system = "metric";
    this.drawings = () => [];
    this.date = "";
    this.chosen = "";
    this.paper = true;
    this.transparent = false;
    this.told = "";
    this.isPrinting = false;
  }

  override firstUpdated(): void {
    // Drawings that come onto the screen together with this are there on the next frame.
    requestAnimationFrame(this.#lookAgain);
  }

  /** Which drawings are shown is not told; it is looked for again when it may matter. */
  readonly #lookAgain = (): void => this.requestUpdate();

  override render() {
    const drawings = this.drawings();
    return html`
      <section part="pictures" aria-labelledby="pictures" @pointerenter=${this.#lookAgain} @focusin=${this.#lookAgain}>
        <h3 id="pictures">Pictures</h3>
        ${this.#pictures(drawings)}
      </section>
      <section part="tables" aria-labelledby="tables">
        <h3 id="tables">Tables for a spreadsheet</h3>
        <div class="buttons">
          ${(Object.keys(TABLES) as TableName[]).map(
            (
              table,
            ) => html`<button ?disabled=${this.checked === undefined} @click=${() => this.#saveTable(table)}>
              Table of ${table} (CSV)
            </button>`,
          )}
        </div>
      </section>
      <section aria-labelledby="paper">
        <h3 id="paper">On paper</h3>
        <div class="buttons"><button @click=${this.#openPrint}>Print to scale ...</button></div>
      </section>
      <p class="told" role="status">${this.told}</p>
      ${this.#printDialog()}
    `;
  }

  #pictures(drawings: readonly SavedDrawing[]) {
    return html`
      ${
        drawings.length < 2
          ? nothing
          : html`<label class="field"
              >Drawing
              <select @change=${(event: Event) => {
                this.chosen = (event.target as HTMLSelectElement).value;
              }}>
                ${drawings.map(({ name }) => html`<option .selected=${name === this.chosen}>${name}</option>`)}
              </select></label
            >`
      }
      <label class="tick"
        ><input type="checkbox" .checked=${this.paper} @change=${(event: Event) => {
          this.paper = (event.target as HTMLInputElement).checked;
        }} />Light colours, as on paper</label
      >
      <label class="tick"
        ><input type="checkbox" .checked=${this.transparent} @change=${(event: Event) => {
          this.transparent = (event.target as HTMLInputElement).checked;
        }} />See-through ground</label
      >
      <div class="buttons">
        <button @click=${() => this.#savePicture("svg")}>Save a picture (SVG)</button>
        <button @click=${() => this.#savePicture("png")}>Save a picture (PNG)</button>
      </div>`;
  }

  #printDialog() {
    if (!this.isPrinting) return nothing;
    return html`<dialog part="print" aria-labelledby="printing" @close=${this.#printClosed}>
      <div class="head">
        <h2 id="printing">Print to scale</h2>
        <button @click=${this.#closePrint}>Close</button>
      </div>
      <headfall-sheet
        .plan=${this.plan} .checked=${this.checked} .system=${this.system} .date=${this.date === "" ? today() : this.date}
      ></headfall-sheet>
    </dialog>`;
  }

  async #savePicture(kind: "svg" | "png"): Promise<void> {
    const drawings = this.drawings();
    const drawing = drawings.find(({ name }) => name === this.chosen) ?? drawings[0];
    if (this.plan === undefined) return;
    if (drawing === undefined) {
      this.told = "No drawing is shown: turn to one of them first.";
      return;
    }
    try {
      const { paper, transparent } = this;
      this.told = `Saved as ${await savePicture(kind, drawing, this.plan, { paper, transparent })}.`;
    } catch (error) {
      this.told = `The picture could not be saved. ${error instanceof Error ? error.message : ""}`;
    }
  }

  #saveTable(table: TableName): void {
    if (this.plan === undefined || this.checked === undefined) return;
    this.told = `Saved as ${saveTable(table, this.plan, this.checked, this.system)}.`;
  }

  readonly #openPrint = async (): Promise<void> => {
    this.isPrinting = true;
    await this.updateComplete;
    this.renderRoot.querySelector("dialog")?.showModal();
  };

  readonly #closePrint = (): void => this.renderRoot.querySelector("dialog")?.close();

  readonly #printClosed = (): void => {
    this.isPrinting = false;
  };
}
