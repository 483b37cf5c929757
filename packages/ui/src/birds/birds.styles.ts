import { css } from "lit";

export const birdsStyles = css`
  h2:focus { outline: none; }
  h2:focus-visible { outline: 3px solid var(--_focus); }
  h4 { font-size: 1rem; margin: 0.35rem 0; }
  ul, ol { padding-left: 1.25rem; margin: 0.35rem 0; }
  .rest { display: flex; flex-direction: column; gap: 0 1.25rem; }
  .pen { background: var(--_sheet); }
  .pen .batch { border-top: 1px solid var(--_rule); margin-top: 0.5rem; }
  .pair > .field:has(> input[type="date"]) { grid-column: 1 / -1; }
  .label { font-weight: 600; margin: 0.6rem 0 0; }
  .tick { margin: 0; }
  .sheet { background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; padding: 0.35rem 0.75rem; margin: 0.5rem 0; }
  .figures > div { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: 0 1rem; min-height: 44px; border-top: 1px solid var(--_rule); }
  .figures dd { font-variant-numeric: tabular-nums; text-align: right; margin-left: auto; }
  .cautions { border-left: 5px solid var(--_starves); padding-left: 0.9rem; margin-top: 1.25rem; }
  .cautions h3 { margin-top: 0; }
  .drunk thead th:first-child, .cards thead th:first-child { text-align: left; }
  @media (min-width: 1100px) { .figures { display: grid; grid-template-columns: 1fr 1fr; column-gap: 2rem; } }
  .date { font-size: 0.8rem; }
  .older { opacity: 0.75; }
  .chart { display: block; width: 100%; max-width: 42rem; height: auto; background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; margin: 0.35rem 0; }
  .chart text { font-size: 12px; fill: var(--_ink); }
  .chart .tick { fill: var(--_quiet); }
  .grid { stroke: var(--_rule); }
  .series { color: var(--_ink); }
  .series .run { fill: none; stroke: currentColor; stroke-width: 2; }
  .series .dot { fill: currentColor; stroke: currentColor; }
  .series text { fill: currentColor; }
  .series.size { color: var(--_accent); }
  .size .run { stroke-width: 3; }
  .size text { font-weight: 700; }
  .expect .run { stroke-dasharray: 8 4; }
  .expect .dot { fill: var(--_sheet); }
  .series.hot { color: var(--_starves); }
  .hot .run { stroke-dasharray: 2 4; }
  .series:is(.batch1, .batch2, .batch3) { color: var(--_quiet); }
  .batch1 .run { stroke-dasharray: 12 3 2 3; stroke-width: 1.5; }
  .batch2 .run { stroke-dasharray: 5 2; stroke-width: 1.5; }
  .batch3 .run { stroke-dasharray: 1 3; stroke-width: 1.5; }
  .short { display: block; }
  .need { margin-bottom: 0.1rem; }
  .forces { list-style: none; padding: 0; margin: 0 0 0.5rem; }
  .forces li { margin: 0.15rem 0 0.15rem 1.4em; }
  .mark { display: inline-block; width: 1.4em; margin-left: -1.4em; }
  .weeks th, .weeks td { white-space: normal; }
  .work { display: flex; flex-wrap: wrap; align-items: center; gap: 0.35rem 0.75rem; margin: 0.75rem 0; }
  .work progress { flex: 1 1 8rem; min-width: 6rem; height: 1.25rem; accent-color: var(--_accent); }
  details.sheet > summary h4 { margin: 0; }
  .batches { list-style: none; padding: 0; color: var(--_quiet); font-size: 0.9rem; }
  @media (max-width: 640px) {
    .cards tr { grid-template-columns: repeat(2, minmax(0, 1fr)); }
    .cards th[scope="row"] { grid-column: 1 / -1; }
    .weeks tr { align-items: start; }
    .drunk th, .drunk td { padding-inline: 0.3rem; }
    .drunk .date { display: block; }
  }
  @media (min-width: 900px) {
    .rest { display: grid; grid-template-columns: minmax(0, 1fr) 22rem; align-items: start; }
    .say { grid-column: 2; grid-row: 1; }
    .told { grid-column: 1; grid-row: 1; }
  }
  @media (prefers-reduced-motion: no-preference) { .older { transition: opacity 200ms 400ms; } }
  @media (forced-colors: active) {
    .chart { background: Canvas; border-color: CanvasText; }
    .chart text, .chart .tick, .series.series text { fill: CanvasText; }
    .series.series { color: CanvasText; }
    .expect .dot { fill: Canvas; }
    .grid { stroke: GrayText; }
  }
  @media print {
    .say, .work, .hint, caption, button:not(.number) { display: none; }
    .rest { display: block; }
    .told details::details-content { content-visibility: visible; block-size: auto; }
    .sheet, .chart, tr { break-inside: avoid; }
  }
`;
