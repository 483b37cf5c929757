import type { Checked, Plan } from "@headfall/hydraulics";
import { html, LitElement, nothing, type PropertyValues } from "lit";
import { laySheet, type Sheet } from "../kernels/sheet/lay-sheet.js";
import { scalesOf } from "../kernels/sheet/scales.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";
import { choicesView } from "./choices-view.js";
import { pageStyles } from "./page.styles.js";
import { pageView } from "./page-view.js";
import { Printing } from "./printing.js";
import { sheetStyles } from "./sheet.styles.js";
import { FIRST_CHOICES, type SheetChoices } from "./sheet-choices.js";
import { writeSheet } from "./sheet-words.js";

/**
 * Prints the plan to scale: choose drawing, paper and scale, see the pages, print them. While it is shown, a print of
 * the document is its pages and nothing else, whoever asked for the print.
 *
 * @element headfall-sheet
 * @csspart choices  the fields
 * @csspart preview  the pages
 */
export class HeadfallSheet extends LitElement {
  static override properties = {
    plan: { attribute: false },
    checked: { attribute: false },
    system: {},
    date: {},
    choices: { attribute: false },
  };
  static override styles = [tokens, controls, pageStyles, sheetStyles];

  /** The plan to print. */
  declare plan: Plan | undefined;
  /** What the check came to: heights, verdicts and cautions come from it. */
  declare checked: Checked | undefined;
  /** Units written, and those of the scales and of the usual paper. */
  declare system: UnitSystem;
  /** The date as it is to be printed; empty leaves a line to write it on. */
  declare date: string;
  /** What is printed and how; the user changes it. */
  declare choices: SheetChoices;
  #sheet: Sheet | undefined;
  readonly #printing = new Printing();

  constructor() {
    super();
    this.plan = undefined;
    this.checked = undefined;
    this.system = "metric";
    this.date = "";
    this.choices = FIRST_CHOICES;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener("beforeprint", this.#putPages);
    addEventListener("afterprint", this.#takePagesAway);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener("beforeprint", this.#putPages);
    removeEventListener("afterprint", this.#takePagesAway);
    this.#printing.takeAway();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    // A scale in inches to the foot means nothing in metres, nor the other way about.
    if (changed.has("system")) this.choices = withScalesOf(this.system, this.choices);
    const { plan, checked, system, date, choices } = this;
    const paper = choices.paper ?? (system === "us" ? "letter" : "a4");
    this.#sheet = plan && laySheet({ ...choices, plan, checked, system, date, paper });
  }

  override render() {
    const { choices, checked, system } = this;
    const sheet = this.#sheet;
    const isEmpty = sheet === undefined || sheet.pages.length === 0;
    return html`
      <div class="board">
        <form part="choices" class="fields" @submit=${this.#print}>
          ${choicesView({
            choices,
            sheet,
            checked,
            system,
            choose: (change) => {
              this.choices = { ...this.choices, ...change };
            },
          })}
          <button class="chief" type="submit" ?disabled=${isEmpty}>Print</button>
          <p class="told" role="status">${writeSheet(sheet, choices.drawing, checked !== undefined)}</p>
          <p class="quiet">In the printer's own window choose the same paper, 100 % (no fitting to the page) and no margins.</p>
        </form>
        <div part="preview" class="preview" role="region" aria-label="Pages as printed" tabindex="0">
          ${isEmpty ? nothing : this.#pages(sheet)}
        </div>
      </div>`;
  }

  #pages(sheet: Sheet) {
    const { isColour } = this.choices;
    return html`${sheet.pages.map((page) =>
      pageView(
        page,
        sheet.paper,
        isColour,
        `Page ${page.name}: ${page.window === undefined ? "notes" : sheet.view}`,
      ),
    )}`;
  }

  readonly #print = (event: Event): void => {
    event.preventDefault();
    window.print();
  };

  /** Also when the print was asked for by the browser's own menu. */
  readonly #putPages = (): void => {
    if (!this.checkVisibility()) return;
    this.performUpdate();
    const sheet = this.#sheet;
    if (sheet !== undefined && sheet.pages.length > 0) this.#printing.put(this.#pages(sheet), sheet.paper);
  };

  readonly #takePagesAway = (): void => this.#printing.takeAway();
}

function withScalesOf(system: UnitSystem, choices: SheetChoices): SheetChoices {
  const known = (times: number | undefined) =>
    scalesOf(system).some((scale) => scale.times === times) ? times : undefined;
  return { ...choices, scale: known(choices.scale), heightScale: known(choices.heightScale) };
}
