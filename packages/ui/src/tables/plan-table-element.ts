import type { Checked, Plan } from "@headfall/hydraulics";
import { html, LitElement, nothing, type PropertyValues } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { fieldStyles } from "../fields/fields.styles.js";
import { TypingController } from "../fields/typing-controller.js";
import { isSamePart, type Selected } from "../kernels/selected.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { PartChosenEvent } from "../store/part-chosen-event.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";
import { addRowView } from "./plan-add-view.js";
import { planRowView, type RowsRequest } from "./plan-row-view.js";
import { type RowSeat, type RowSort, rowOf, SORTS, seatsOf } from "./plan-rows.js";
import { planTableStyles } from "./plan-table.styles.js";
import { tableStyles } from "./table.styles.js";

/** Rows shown at once; a longer table has pages. */
const PAGE_ROWS = 100;

/** Rest a long plan is waited for before its tables are drawn anew [ms]: a drag elsewhere is not held up by them. */
const REST_MS = 150;

const CAPTIONS: Readonly<Record<RowSort, string>> = {
  sources: "Sources",
  points: "Points",
  runs: "Runs",
  drinkers: "Drinkers",
  surveys: "Surveys",
  fittings: "Fittings and valves",
};

const HEADS: Readonly<Record<RowSort, readonly string[]>> = {
  sources: ["Name", "Vessel", "Stand", "Full", "Lowest", "Ordinary", "Outlet", "Ground", "How air gets in"],
  points: ["Name", "Ground", "Pipe above it", "Air can leave"],
  runs: ["Name", "From", "To", "Length", "Fall", "Pipe", "Tap"],
  drinkers: [
    "Name",
    "Kind",
    "How many",
    "One every",
    "First at",
    "Drop",
    "At work, busiest",
    "Ordinary",
    "Must give",
  ],
  surveys: ["Reading", "Distance", "Drop", "Air can leave"],
  fittings: ["Run", "Fittings", "One-way valve", "Regulator"],
};

/**
 * A plan as tables in which every cell can be typed into: the same plan as the drawings, for keyboards, screen readers
 * and those who would rather type.
 *
 * @element headfall-plan-table
 * @fires edit-wanted  when the user wants the plan changed
 * @fires part-chosen  when the user comes to a row
 */
export class HeadfallPlanTable extends LitElement {
  static override properties = {
    plan: { attribute: false },
    checked: { attribute: false },
    selected: { attribute: false },
    system: {},
    refusal: {},
    pages: { state: true },
  };
  static override styles = [tokens, controls, tableStyles, fieldStyles, planTableStyles];

  /** The plan shown. */
  declare plan: Plan | undefined;
  /** What the check found out, perhaps of an older plan: levels that are taken for granted come from it. */
  declare checked: Checked | undefined;
  /** The part chosen; its row is marked, and its page shown. */
  declare selected: Selected | undefined;
  /** Units shown and written. */
  declare system: UnitSystem;
  /** Why the last edit was refused; empty when it was not. */
  declare refusal: string;
  declare private pages: Readonly<Partial<Record<RowSort, number>>>;

  readonly #typing = new TypingController(this);
  /** The table with the focus: where the keyboard goes on from when its row is deleted. */
  #focusHome: Element | undefined;

  constructor() {
    super();
    this.plan = undefined;
    this.checked = undefined;
    this.selected = undefined;
    this.system = "metric";
    this.refusal = "";
    this.pages = {};
  }

  /** While the plan changes under a hand on a drawing, the tables of a long plan wait; a hand in them is never kept. */
  protected override async scheduleUpdate(): Promise<void> {
    const isLong = (this.plan?.runs.length ?? 0) > PAGE_ROWS;
    if (this.hasUpdated && isLong && this.shadowRoot?.activeElement == null) await this.#planRests();
    super.scheduleUpdate();
  }

  async #planRests(): Promise<void> {
    let before: Plan | undefined;
    do {
      before = this.plan;
      await new Promise((done) => setTimeout(done, REST_MS));
    } while (before !== this.plan);
  }

  override willUpdate(changed: PropertyValues<this>): void {
    this.#focusHome = this.shadowRoot?.activeElement?.closest("section") ?? undefined;
    if (changed.has("plan")) this.#planChanged(changed.get("plan"));
    if (changed.has("selected") && !isSamePart(changed.get("selected"), this.selected))
      this.#turnToSelected();
  }

  override updated(): void {
    if (this.#focusHome === undefined || this.shadowRoot?.activeElement != null) return;
    this.#focusHome.querySelector<HTMLElement>(".scroller, h3")?.focus({ preventScroll: true });
  }

  override render() {
    const { plan, checked, system, selected } = this;
    if (plan === undefined) return nothing;
    const request: RowsRequest = {
      ...{ plan, checked, system, selected, typing: this.#typing },
      choose: (part) => this.#choose(part),
    };
    return html`${SORTS.map((sort) => this.#tableOf(request, sort))}`;
  }

  #tableOf(request: RowsRequest, sort: RowSort) {
    const seats = seatsOf(request.plan, sort);
    const page = this.#pageOf(sort, seats);
    const shown = seats.slice(page * PAGE_ROWS, (page + 1) * PAGE_ROWS);
    return html`<section>
      ${seats.length === 0 ? html`<h3 tabindex="-1">${CAPTIONS[sort]}: none yet</h3>` : this.#rows(request, sort, shown)}
      ${seats.length > PAGE_ROWS ? this.#pager(sort, page, seats.length) : nothing} ${addRowView(request, sort)}
    </section>`;
  }

  #rows(request: RowsRequest, sort: RowSort, shown: readonly RowSeat[]) {
    return html`<div class="scroller" role="region" aria-label="${CAPTIONS[sort]}, table" tabindex="0">
      <table class="cards" role="table">
        <caption>${CAPTIONS[sort]}</caption>
        <thead role="rowgroup"><tr role="row">
          ${HEADS[sort].map((head) => html`<th role="columnheader" scope="col">${head}</th>`)}
          ${sort === "fittings" ? nothing : html`<th role="columnheader" scope="col"><span class="spoken">What to do with it</span></th>`}
        </tr></thead>
        <tbody role="rowgroup">
          ${repeat(
            shown.map((seat) => rowOf(request, seat)),
            ({ key }) => key,
            (row) =>
              planRowView(
                request,
                row,
                row.reading === undefined && !row.tellsMore && isRowOf(request.selected, row.part),
              ),
          )}
        </tbody>
      </table>
    </div>`;
  }

  #pager(sort: RowSort, page: number, count: number) {
    const first = page * PAGE_ROWS;
    const last = Math.min(count, first + PAGE_ROWS);
    const name = CAPTIONS[sort].toLowerCase();
    return html`<div class="pages" role="group" aria-label="Pages of ${name}">
      <button type="button" aria-label="Rows before, ${name}" ?disabled=${page === 0} @click=${() => this.#turn(sort, page - 1)}>Before</button>
      <span role="status">${first + 1} to ${last} of ${count}</span>
      <button type="button" aria-label="Rows after, ${name}" ?disabled=${last === count} @click=${() => this.#turn(sort, page + 1)}>After</button>
    </div>`;
  }

  #pageOf(sort: RowSort, seats: readonly RowSeat[]): number {
    return Math.max(0, Math.min(this.pages[sort] ?? 0, Math.ceil(seats.length / PAGE_ROWS) - 1));
  }

  #turn(sort: RowSort, page: number): void {
    this.pages = { ...this.pages, [sort]: page };
  }

  /** Shows the page on which the chosen part's row is. */
  #turnToSelected(): void {
    const { plan, selected } = this;
    if (plan === undefined || selected === undefined) return;
    for (const sort of SORTS) {
      const place = seatsOf(plan, sort).findIndex(({ part }) => isRowOf(selected, part));
      if (place >= 0 && sort !== "surveys") this.#turn(sort, Math.floor(place / PAGE_ROWS));
    }
  }

  #choose(part: Selected): void {
    if (!isRowOf(this.selected, part)) this.dispatchEvent(new PartChosenEvent(part));
  }

  /** Parts without a name of their own are counted through: with one fewer, what was typed may mean another part. */
  #planChanged(before: Plan | undefined): void {
    if (before !== undefined && this.plan !== undefined && this.plan.runs.length < before.runs.length)
      this.#typing.forgetAll();
    this.#typing.planChanged();
  }
}

/** Whether a row is about the chosen part; of drinkers, one chosen by its number belongs to its group. */
function isRowOf(selected: Selected | undefined, part: Selected): boolean {
  if (selected?.kind === "drinkers" && part.kind === "drinkers")
    return selected.run === part.run && selected.group === part.group;
  return isSamePart(selected, part);
}
