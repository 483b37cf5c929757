import { css } from "lit";

/** A list that opens: what is in each row is told in a line or two, and the rest when it is opened; on paper all is. */
export const rowStyles = css`
  .rows { list-style: none; padding: 0; margin: 0.5rem 0; }
  .row { max-width: none; background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; padding: 0.1rem 0.75rem; margin: 0.35rem 0; }
  .row > details { border-top: 0; }
  .row h4 { margin: 0; font-size: 1.05rem; }
  .brief { flex: 1; min-width: 0; padding: 0.15rem 0; }
  .brief p { display: flex; flex-wrap: wrap; gap: 0 0.75rem; margin: 0; }
  @media print {
    details::details-content { content-visibility: visible; block-size: auto; }
    summary { min-height: 0; }
    summary::before, details[open] > summary::before { content: none; }
    .row { break-inside: avoid; }
  }
`;
