import { css } from "lit";

export const dayStyles = css`
  .large.dry { color: var(--_dry); }
  .bar { display: flex; flex-wrap: wrap; align-items: center; gap: 0.35rem 0.75rem; margin: 0.35rem 0; }
  .bar input[type="range"] { flex: 1 1 12rem; min-width: 8rem; }
  .bar .chief { min-width: 5.5rem; }
  .choice { display: inline-flex; align-items: center; flex-wrap: wrap; gap: 0.1rem 0.4rem; }
  progress { flex: 1 1 10rem; min-width: 6rem; height: 1.25rem; accent-color: var(--_accent); }
  .drawing { position: relative; border: 1px solid var(--_rule); border-radius: 8px; overflow: hidden; background: var(--_sheet); }
  .drawing .marks { position: absolute; inset: 0 auto auto 0; pointer-events: none; }
  .marks text { font: 700 12px var(--_font); fill: var(--_ink); }
  .halo { stroke: var(--_sheet); stroke-width: 4; paint-order: stroke; stroke-linejoin: round; }
  .stem { stroke: var(--_ink); stroke-width: 1.25; stroke-dasharray: 2 2; fill: none; }
  .bird { stroke: var(--_ink); stroke-linejoin: round; stroke-width: 0.2; }
  .bird.drinks { fill: var(--_ink); }
  .bird.waits { fill: var(--_sheet); }
  .surface { stroke: var(--_ink); stroke-width: 2.5; stroke-dasharray: 5 2; fill: none; }
  .now { min-height: 3em; }
  .clock { font-size: 1.3rem; font-variant-numeric: tabular-nums; margin-right: 0.5rem; }
  .key { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: 0.1rem 1.25rem; font-size: 0.9rem; }
  .key li { margin: 0.1rem 0; }
  .key svg { vertical-align: middle; }
  .chart { display: block; width: 100%; max-width: 44rem; height: auto; background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; margin: 0.35rem 0; cursor: pointer; }
  .chart text { font-size: 12px; fill: var(--_quiet); }
  .grid { stroke: var(--_rule); fill: none; }
  .drink-area { fill: var(--_water); stroke: var(--_water-edge); stroke-width: 1; }
  .wait-area { stroke: var(--_starves); stroke-width: 1; }
  .hatch { stroke: var(--_starves); stroke-width: 2.5; }
  .hatch-back { fill: var(--_sheet); }
  .places { stroke: var(--_ink); stroke-width: 1.5; stroke-dasharray: 7 4; fill: none; }
  .level-line { fill: none; stroke: var(--_water-edge); stroke-width: 2.5; }
  .now-line { stroke: var(--_ink); stroke-width: 1.5; fill: none; }
  .sheet { background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; padding: 0.35rem 0.75rem; margin: 0.5rem 0; }
  .figures > div { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: 0 1rem; min-height: 44px; border-top: 1px solid var(--_rule); }
  .figures dd { font-variant-numeric: tabular-nums; text-align: right; margin-left: auto; }
  th:first-child, th[scope="row"] { text-align: left; }
  .days th[scope="row"] { white-space: normal; }
  @media (max-width: 640px) {
    .cards tr { grid-template-columns: repeat(2, minmax(0, 1fr)); }
    .cards th[scope="row"] { grid-column: 1 / -1; }
    .days th, .days td { padding-inline: 0.25rem; }
  }
  @media (min-width: 1100px) { .figures { display: grid; grid-template-columns: 1fr 1fr; column-gap: 2rem; } }
  .older { opacity: 0.75; }
  .cautions { border-left: 5px solid var(--_starves); padding-left: 0.9rem; margin-top: 1.25rem; }
  @media (prefers-reduced-motion: no-preference) { .older { transition: opacity 200ms 400ms; } }
  @media (forced-colors: active) {
    .bird.drinks { fill: CanvasText; }
    .bird.waits { fill: Canvas; }
    .bird, .stem, .surface, .places, .now-line, .hatch, .wait-area, .drink-area, .level-line { stroke: CanvasText; }
    .drink-area { fill: none; stroke-width: 2; }
    .hatch-back { fill: Canvas; }
  }
  @media print { details::details-content { content-visibility: visible; block-size: auto; } .bar, .buttons, button:not(.number) { display: none; } .chart, table, .sheet { break-inside: avoid; } }
`;
