import { type Checked, type DrinkerReading, writeMargin } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { guard } from "lit/directives/guard.js";
import { repeat } from "lit/directives/repeat.js";
import { showFlow, showHead } from "../kernels/shown.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { askHow, roveNumbers } from "../verdicts/number-button.js";
import { verdictWord } from "../verdicts/verdict-mark.js";
import { type NumberColumn, numberCell, numberTable, rowHead } from "./number-rows.js";

/** Rows shown before the user asks for all of them: a long line stays quick to drag. */
const FIRST_ROWS = 120;

export interface DrinkersTableRequest {
  readonly checked: Checked;
  readonly system: UnitSystem;
  readonly lookedAt: number;
  readonly showsAll: boolean;
  readonly onChoose: (drinker: number) => void;
  readonly onShowAll: () => void;
}

const READINGS = [
  { title: "Head, full and idle", moment: "fullIdle", of: "drinkerHead" },
  { title: "Head, full and busiest", moment: "fullBusiest", of: "drinkerHead" },
  { title: "Head, lowest and busiest", moment: "lowestBusiest", of: "drinkerHead" },
  { title: "Flow, lowest and busiest", moment: "lowestBusiest", of: "drinkerFlow" },
] as const;

const table = "drinkers";
const VERDICT: NumberColumn = {
  table,
  column: 1,
  title: "Verdict",
  isWords: true,
  subject: (drinker) => ({ of: "verdict", drinker }),
};
const MARGIN: NumberColumn = {
  table,
  column: 2,
  title: "Margin",
  subject: (drinker) => ({ of: "drinkerMargin", drinker }),
};
const COLUMNS = READINGS.map(({ title, moment, of }, at) => ({
  moment,
  of,
  cell: { table, column: at + 3, title, subject: (drinker: number) => ({ of, drinker, moment }) },
}));
const HEADS = [{ title: "Drinker", isWords: true }, VERDICT, MARGIN, ...READINGS, { title: "How" }];

/** Every drinker with its heads, flows, verdict and margin; each number leads to how it was got. */
export function drinkersTable(request: DrinkersTableRequest) {
  const { checked, showsAll, onChoose } = request;
  const all = checked.drinkers;
  const shown = showsAll ? all : all.slice(0, FIRST_ROWS);
  return html`
    <div class="scroller" role="region" aria-labelledby="drinkers-caption" tabindex="0" @click=${(event: Event) => rowPressed(event, onChoose)} @keydown=${roveNumbers}>
      ${numberTable({
        name: table,
        caption: "Head is metres or feet of water above the drinker. Flows are while a bird works it.",
        columns: HEADS,
        rows: repeat(
          shown,
          ({ drinker }) => drinker,
          (_, row) => guard(figuresOfRow(request, row), () => drinkerRow(request, row)),
        ),
      })}
    </div>
    ${
      shown.length < all.length
        ? html`<p><button @click=${request.onShowAll}>Show all ${all.length} drinkers</button></p>`
        : nothing
    }
  `;
}

/** One listener for the whole table: a row's button shows its drinker, any number asks how it was got. */
function rowPressed(event: Event, onChoose: (drinker: number) => void): void {
  const button = (event.target as Element).closest<HTMLElement>("[data-row]");
  if (button === null) askHow(event);
  else onChoose(Number(button.dataset["row"]));
}

/** All that a row shows: while these stay the same it is not written again. */
function figuresOfRow({ checked, system, lookedAt }: DrinkersTableRequest, row: number): unknown[] {
  const { drinker, verdict, margin, moments } = checked.drinkers[row]!;
  const figures = COLUMNS.map(({ moment, of }) => figureOf(moments[moment][checked.friction], of));
  return [row, drinker, verdict, margin, system, row === lookedAt, ...figures];
}

const figureOf = (reading: DrinkerReading, of: "drinkerHead" | "drinkerFlow"): number =>
  of === "drinkerHead" ? reading.flowingHead : reading.flow;

function drinkerRow({ checked, system, lookedAt }: DrinkersTableRequest, row: number) {
  const { drinker, verdict, margin, moments } = checked.drinkers[row]!;
  const reading = ({ moment, of }: (typeof COLUMNS)[number]) =>
    writeReading(figureOf(moments[moment][checked.friction], of), of, system);
  return html`<tr role="row" aria-current=${row === lookedAt ? "true" : nothing}>
    ${rowHead(table, row, drinker)}
    ${numberCell(VERDICT, row, verdictWord(verdict))} ${numberCell(MARGIN, row, writeMargin(margin, system))}
    ${COLUMNS.map((column) => numberCell(column.cell, row, reading(column)))}
    <td role="cell" class="last"><button data-row=${row} aria-label="How ${drinker} was got">How</button></td>
  </tr>`;
}

function writeReading(figure: number, of: "drinkerHead" | "drinkerFlow", system: UnitSystem): string {
  if (of === "drinkerHead") return showHead(figure, system);
  return figure === 0 ? "none" : showFlow(figure, system);
}
