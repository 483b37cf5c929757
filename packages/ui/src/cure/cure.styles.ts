import { css } from "lit";

export const cureStyles = css`
  h3:focus:not(:focus-visible) { outline: none; }
  .rest { display: flex; flex-direction: column; gap: 0 1.25rem; }
  .told { min-width: 0; }
  .older { opacity: 0.75; }
  .ask { display: flex; flex-wrap: wrap; align-items: center; gap: 0.5rem 1rem; margin: 0.75rem 0; }
  .ask progress { flex: 1 1 8rem; min-width: 0; max-width: 20rem; height: 1rem; accent-color: var(--_accent); }
  .counts { display: inline-flex; flex-wrap: wrap; gap: 0.1rem 0.8rem; vertical-align: middle; }
  .cures { display: grid; gap: 0.75rem; margin: 0.75rem 0; }
  .cure { border: 1px solid var(--_edge); border-radius: 8px; background: var(--_sheet); padding: 0.35rem 0.9rem 0.6rem; min-width: 0; }
  .cure h4 { margin-top: 0.35rem; font-size: 1.05rem; }
  .changes { list-style: none; padding: 0; font-weight: 600; }
  .figures div { display: grid; grid-template-columns: 7.5rem minmax(0, 1fr); gap: 0 0.75rem; padding: 0.15rem 0; }
  .figures dt { color: var(--_quiet); }
  .buttons { display: flex; flex-wrap: wrap; gap: 0.4rem; margin: 0.6rem 0; }
  button[aria-disabled="true"] { border-style: dashed; cursor: default; color: var(--_good); font-weight: 600; }
  .gives { list-style: none; padding: 0; }
  .say details:first-child { border-top: 0; }
  .pair { align-items: end; }
  .file { display: inline-flex; align-items: center; position: relative; }
  .file:focus-within { outline: 3px solid var(--_focus); outline-offset: 2px; }
  .file input { position: absolute; inset: 0; width: 100%; opacity: 0; cursor: pointer; font-size: 0; }
  .best { border: 1px solid var(--_good); border-radius: 4px; padding: 0 0.3rem; color: var(--_good); font-size: 0.8rem; }
  .beside-chart { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.5rem; align-items: start; }
  .beside-chart > * { min-width: 0; }
  .chart { display: block; width: 100%; max-width: 34rem; height: auto; background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; margin: 0.35rem 0 0; cursor: pointer; }
  .chart text { font-size: 12px; fill: var(--_ink); }
  .chart .tick { fill: var(--_quiet); }
  .grid { stroke: var(--_rule); }
  .front-line { fill: none; stroke: var(--_water-edge); stroke-width: 2; }
  .dot { fill: var(--_sheet); stroke: var(--_water-edge); stroke-width: 2.5; }
  .dot.now { fill: var(--_accent); stroke: var(--_ink); }
  .trade input[type="range"] { width: 100%; max-width: 34rem; }
  .points td.words, .points thead th { white-space: normal; }
  .points th[scope="row"] { white-space: nowrap; }
  .points td button { font-size: 0.85rem; }
  .chosen { border-left: 5px solid var(--_accent); padding-left: 0.75rem; margin: 0.5rem 0 1rem; }
  .moments td { vertical-align: top; }
  thead th:first-child, th[scope="row"] { text-align: left; white-space: normal; }
  .cautions { border-left: 5px solid var(--_starves); padding-left: 0.9rem; margin-top: 1.25rem; }
  .chosen .buttons { margin: 0.35rem 0; }
  @media (max-width: 640px) {
    .figures div { grid-template-columns: 5.5rem minmax(0, 1fr); gap: 0 0.5rem; }
    .cards th[scope="row"] { grid-column: 1 / -1; font-weight: 700; }
    .cards.beside tr { grid-template-columns: repeat(2, minmax(0, 1fr)); }
    .cards.beside td[data-head]::before { overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
    .cards.weeks tr { grid-template-columns: minmax(0, 1fr); }
  }
  @media (min-width: 700px) { .beside-chart { grid-template-columns: minmax(0, 1.2fr) minmax(14rem, 1fr); } }
  @media (forced-colors: active) {
    .front-line, .dot { stroke: CanvasText; }
    .dot.now { fill: Highlight; forced-color-adjust: none; }
  }
  @media (min-width: 900px) {
    .rest { display: grid; grid-template-columns: minmax(0, 1fr) 22rem; align-items: start; }
    .say { grid-column: 2; grid-row: 1; }
    .told { grid-column: 1; grid-row: 1; }
  }
  @media print {
    .say, .buttons, .ask { display: none; }
    .rest { display: block; }
    .told details::details-content { content-visibility: visible; block-size: auto; }
    .file { display: none; }
    .cure, table { break-inside: avoid; }
  }
`;
