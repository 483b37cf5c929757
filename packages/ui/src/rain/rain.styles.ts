import { css } from "lit";

export const rainStyles = css`
  :is(h2, legend):focus:not(:focus-visible) { outline: none; }
  .rest { display: flex; flex-direction: column; gap: 0 1.25rem; }
  .told { min-width: 0; }
  .older { opacity: 0.75; }
  .problem ul { color: inherit; }
  .asked { border: 2px solid var(--_accent); border-radius: 8px; background: var(--_sheet); padding: 0.35rem 0.75rem; margin: 0.6rem 0; }
  .asked p { max-width: none; }
  .choices { list-style: none; padding: 0; }
  .choices li { display: grid; grid-template-columns: 7rem minmax(0, 1fr); align-items: center; gap: 0 0.6rem; }
  .choice { display: inline-flex; align-items: center; flex-wrap: wrap; gap: 0.1rem 0.4rem; }
  .buttons button:disabled { color: var(--_quiet); border-style: dashed; cursor: default; }
  select.long { width: 100%; }
  .tall { max-height: 24rem; overflow-y: auto; }
  .scroller { margin: 0.35rem 0; }
  thead th:first-child, th[scope="row"] { text-align: left; white-space: normal; }
  .bars { width: 30%; min-width: 3rem; }
  .bar { display: block; width: 100%; height: 12px; fill: var(--_dry); }
  .years { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(19rem, 100%), 1fr)); gap: 0.75rem 1.25rem; }
  .year { margin: 0; }
  .calendar { display: block; width: 100%; max-width: 34rem; height: auto; cursor: pointer; }
  .calendar text { font-size: 9px; fill: var(--_quiet); }
  .calendar .square { fill: var(--_sheet); stroke: var(--_rule); stroke-width: 0.5; }
  .calendar .water { fill: var(--_water); }
  .calendar .surface { fill: none; stroke: var(--_water-edge); stroke-width: 1; }
  .calendar .over { fill: none; stroke: var(--_ink); stroke-width: 2; }
  .calendar .unknown { fill: none; stroke: var(--_ink); stroke-width: 1; }
  .calendar .short { fill: none; stroke: var(--_dry); stroke-width: 1.6; }
  .calendar .chosen { fill: none; stroke: var(--_focus); stroke-width: 2; }
  .calendar.key-mark { display: inline-block; width: 18px; height: 18px; vertical-align: middle; cursor: auto; }
  .key { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: 0.1rem 1.25rem; font-size: 0.9rem; }
  .key li { margin: 0.1rem 0; }
  .chart { display: block; width: 100%; max-width: 44rem; height: auto; background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; margin: 0.35rem 0; }
  .chart text { font-size: 12px; fill: var(--_ink); }
  .chart .tick { fill: var(--_quiet); }
  .chart .letter { font-weight: 700; }
  .grid { stroke: var(--_rule); }
  .size-line { fill: none; stroke: var(--_dry); stroke-width: 2; }
  .dot { fill: var(--_dry); }
  .mark { stroke: var(--_ink); stroke-width: 1.5; stroke-dasharray: 5 3; }
  .cautions { border-left: 5px solid var(--_starves); padding-left: 0.9rem; margin-top: 1.25rem; }
  thead td { border-top: 0; }
  @media (max-width: 640px) {
    th, td { padding-inline: 0.3rem; }
    .bars { width: 18%; min-width: 2rem; }
    .cards tr { grid-template-columns: repeat(4, minmax(0, 1fr)); }
    .cards th[scope="row"] { grid-column: 1 / -1; }
  }
  @media (min-width: 900px) {
    .rest { display: grid; grid-template-columns: minmax(0, 1fr) 22rem; align-items: start; }
    .say { grid-column: 2; grid-row: 1; }
    .told { grid-column: 1; grid-row: 1; }
  }
  @media (prefers-reduced-motion: no-preference) { .older { transition: opacity 200ms 400ms; } }
  @media (forced-colors: active) {
    .calendar .water { fill: none; }
    .calendar :is(.surface, .over, .unknown, .short, .chosen), .size-line, .mark { stroke: CanvasText; }
    .bar, .dot { fill: CanvasText; forced-color-adjust: none; }
  }
  @media print {
    .say, .buttons, .field { display: none; }
    .rest { display: block; }
    .tall { max-height: none; }
    .told details::details-content { content-visibility: visible; block-size: auto; }
    .year, .chart, table { break-inside: avoid; }
  }
`;
