import { html } from "lit";
import type { HowSubject } from "../kernels/how-got/subject.js";
import { numberInTable } from "../verdicts/number-button.js";

/** A table whose rows are parts of the line and whose numbers can be asked how they were got. */
export interface NumberTable {
  /** Starts the ids of its heads, which say of every number whose it is. */
  readonly name: string;
  readonly caption: string;
  /** Column heads; the first is that of the row's own name. */
  readonly columns: readonly Column[];
  readonly rows: unknown;
}

export interface Column {
  readonly title: string;
  /** Words stand to the left, numbers to the right. */
  readonly isWords?: boolean;
}

/** The frame of such a table. Its listeners are those of the element around it: `askHow` and `roveNumbers`. */
export function numberTable({ name, caption, columns, rows }: NumberTable) {
  return html`<table class="cards" role="table">
    <caption id="${name}-caption">${caption} Press a number to see how it was got; arrow keys go from one to the next.</caption>
    <thead role="rowgroup">
      <tr role="row">
        ${columns.map(
          ({ title, isWords = false }, at) =>
            html`<th role="columnheader" scope="col" id="${name}-column-${at}" class=${isWords ? "words" : ""}>${title}</th>`,
        )}
      </tr>
    </thead>
    <tbody role="rowgroup">${rows}</tbody>
  </table>`;
}

/** A column of numbers of one table, made once. */
export interface NumberColumn {
  readonly table: string;
  /** Place among the columns, the row's own name being 0. */
  readonly column: number;
  readonly title: string;
  readonly isWords?: boolean;
  readonly subject: (row: number) => HowSubject;
}

/** One cell with a number; the first number of the first row is where the tab key stops. */
export function numberCell(
  { table, column, title, isWords, subject }: NumberColumn,
  row: number,
  text: unknown,
) {
  return html`<td role="cell" class=${isWords === true ? "words" : ""} data-head=${title}>${numberInTable(
    text,
    `${table} ${row} ${column}`,
    () => ({
      subject: subject(row),
      describedBy: `${table}-row-${row} ${table}-column-${column}`,
      isTabStop: row === 0 && column === 1,
    }),
  )}</td>`;
}

/** The head of a row: the name of the part, which its numbers are read out with. */
export function rowHead(table: string, row: number, name: unknown) {
  return html`<th role="rowheader" scope="row" class="words" id="${table}-row-${row}">${name}</th>`;
}
