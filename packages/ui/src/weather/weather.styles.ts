import { css } from "lit";

export const weatherStyles = css`
  .rest { display: flex; flex-direction: column; gap: 0 1.25rem; }
  .told { min-width: 0; }
  .older { opacity: 0.75; }
  .chart { display: block; width: 100%; max-width: 44rem; height: auto; background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; margin: 0.35rem 0; }
  .chart text { font-size: 12px; fill: var(--_ink); }
  .chart .tick { fill: var(--_quiet); }
  .chart .name { font-weight: 600; }
  .grid { stroke: var(--_rule); }
  .wet { fill: var(--_water); stroke: var(--_water-edge); }
  .icing { fill: url(#ice); stroke: var(--_water-edge); }
  .key .icing { fill: var(--_sheet); stroke-width: 3; stroke-dasharray: 2 2; }
  .ice-ground { fill: var(--_sheet); }
  .ice-line { stroke: var(--_water-edge); stroke-width: 3; }
  .stopped { fill: none; stroke: var(--_quiet); stroke-dasharray: 4 3; }
  .whisker { fill: none; stroke: var(--_ink); stroke-width: 2; }
  .night { stroke: var(--_ink); stroke-width: 2; stroke-dasharray: 8 4; }
  .air { fill: none; stroke: var(--_quiet); stroke-width: 1.5; stroke-dasharray: 1 3; }
  .expected { fill: none; stroke: var(--_ink); stroke-width: 2; stroke-dasharray: 6 3; }
  .hottest { fill: none; stroke: var(--_ink); stroke-width: 3; }
  .limit { stroke: var(--_starves); stroke-width: 1.5; }
  .halo { stroke: var(--_sheet); stroke-width: 4; paint-order: stroke; stroke-linejoin: round; }
  .less { stroke-dasharray: 10 4; }
  .refused { stroke-dasharray: 3 3; }
  .asked { border: 2px solid var(--_accent); border-radius: 8px; background: var(--_sheet); padding: 0.35rem 0.75rem; margin: 0.6rem 0; }
  .key { list-style: none; padding: 0; }
  .key svg { vertical-align: middle; }
  th:first-child { text-align: left; }
  @media (max-width: 640px) { th, td { padding-inline: 0.3rem; } }
  @media (min-width: 900px) {
    .rest { display: grid; grid-template-columns: minmax(0, 1fr) 22rem; align-items: start; }
    .say { grid-column: 2; grid-row: 1; }
    .told { grid-column: 1; grid-row: 1; }
  }
  @media (prefers-reduced-motion: no-preference) { .older { transition: opacity 200ms 400ms; } }
  @media (forced-colors: active) { .wet { fill: CanvasText; } }
  @media print { .say { display: none; } .rest { display: block; } }
`;
