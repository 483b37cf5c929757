import { css } from "lit";

export const timeStyles = css`
  .rest { display: flex; flex-direction: column; gap: 0 1.25rem; }
  .told { min-width: 0; }
  .older { opacity: 0.75; }
  .field input[type="number"] { font: inherit; min-height: 44px; width: 6rem; color: var(--_ink); background: var(--_sheet); border: 1px solid var(--_edge); border-radius: 6px; padding: 0 0.75rem; }
  .chart { display: block; width: 100%; max-width: 44rem; height: auto; background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; margin: 0.35rem 0; }
  .chart text { font-size: 12px; fill: var(--_ink); }
  .chart .tick { fill: var(--_quiet); }
  .chart .letter { font-weight: 700; }
  .grid { stroke: var(--_rule); }
  .level-line { fill: none; stroke: var(--_water-edge); stroke-width: 2.5; }
  .level-band { fill: var(--_water); stroke: var(--_water-edge); stroke-width: 0.75; stroke-dasharray: 3 2; fill-opacity: 0.55; }
  .outlet { stroke: var(--_ink); stroke-dasharray: 6 3; }
  .mark { stroke: var(--_ink); stroke-dasharray: 1 3; }
  .figures > div { display: flex; flex-wrap: wrap; align-items: center; gap: 0 1rem; min-height: 44px; }
  .key { list-style: none; padding: 0; }
  .key svg { vertical-align: middle; }
  th:first-child { text-align: left; }
  @media (max-width: 640px) {
    th, td { padding-inline: 0.3rem; }
    /* Days over hours. */
    .spans td { white-space: normal; min-width: 4.6rem; }
  }
  .cautions { border-left: 5px solid var(--_starves); padding-left: 0.9rem; margin-top: 1.25rem; }
  @media (min-width: 900px) {
    .rest { display: grid; grid-template-columns: minmax(0, 1fr) 22rem; align-items: start; }
    .say { grid-column: 2; grid-row: 1; }
    .told { grid-column: 1; grid-row: 1; }
  }
  @media (prefers-reduced-motion: no-preference) { .older { transition: opacity 200ms 400ms; } }
  @media (forced-colors: active) { .level-band { fill: none; } }
  @media print { .say, .buttons { display: none; } .rest { display: block; } }
`;
