import { css } from "lit";
import { howStyles } from "../verdicts/how.styles.js";

export const tableStyles = css`
  ${howStyles}
  .scroller { overflow-x: auto; border: 1px solid var(--_rule); border-radius: 6px; background: var(--_sheet); }
  table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; font-size: 0.9rem; }
  caption { text-align: left; padding: 0.5rem 0.6rem; color: var(--_quiet); font-size: 0.85rem; }
  th, td { padding: 0.3rem 0.45rem; text-align: right; border-top: 1px solid var(--_rule); vertical-align: middle; white-space: nowrap; }
  thead th { vertical-align: bottom; border-top: 0; font-weight: 600; white-space: normal; }
  th[scope="row"], td.words, th.words { text-align: left; }
  tr[aria-current="true"] { box-shadow: inset 4px 0 0 var(--_accent); }
  td button:not(.number) { min-width: 44px; font-size: 0.85rem; padding: 0 0.5rem; }
  .verdict { display: inline-flex; align-items: center; gap: 0.35rem; font-weight: 700; }
  .inline-mark { flex: none; overflow: visible; }

  /* On a narrow screen a row becomes a card; nothing has to be scrolled sideways. */
  @media (max-width: 640px) {
    table.cards, .cards tbody, .cards tr, .cards td, .cards th[scope="row"] { display: block; }
    .cards thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
    .cards caption { display: block; }
    .cards tr { border-top: 2px solid var(--_rule); padding: 0.35rem 0.6rem; display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); column-gap: 0.6rem; align-items: center; }
    .cards td, .cards th { border: 0; padding: 0.1rem 0; text-align: left; white-space: normal; }
    .cards td[data-head]::before { content: attr(data-head); display: block; font-size: 0.75rem; line-height: 1.2; color: var(--_quiet); }
    .cards td.last { grid-column: 3; grid-row: 1; }
    .cards td button:not(.number) { width: 100%; }
    .cards td button.number { min-height: 44px; min-width: 44px; margin-top: -0.35rem; }
    /* Where the figures are few, words give way so that all of them are seen. */
    .narrow :is(th, td) { padding-inline: 0.25rem; }
    .narrow th { white-space: normal; }
  }
  @media print { td button:not(.number) { display: none; } button.number { text-decoration: none; } .scroller { overflow: visible; border: 0; } }
`;
