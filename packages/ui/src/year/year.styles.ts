import { css } from "lit";

export const yearStyles = css`
  .rest { display: flex; flex-direction: column; gap: 0 1.25rem; }
  .told { min-width: 0; }
  .older { opacity: 0.75; }
  .work { display: flex; flex-wrap: wrap; align-items: center; gap: 0.5rem 0.75rem; margin: 0.5rem 0; }
  .work progress { flex: 1 1 10rem; }
  .chart { display: block; width: 100%; height: auto; background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; margin: 0.35rem 0; }
  .chart text { font-size: 12px; fill: var(--_ink); }
  .chart .tick { fill: var(--_quiet); }
  .chart .name { font-weight: 600; }
  .grid { stroke: var(--_rule); }
  .ground { fill: none; stroke: var(--_rule); }
  .wet { fill: var(--_water); stroke: var(--_water-edge); stroke-width: 0.5; }
  .short { fill: none; stroke: var(--_starves); stroke-width: 2.5; stroke-dasharray: 5 3; }
  .mark { fill: var(--_ink); stroke: var(--_sheet); }
  .change { fill: var(--_sheet); stroke: var(--_ink); stroke-width: 1.5; }
  .key { list-style: none; padding: 0; }
  .key svg { vertical-align: middle; }
  .days { list-style: none; padding: 0; }
  .days time { font-variant-numeric: tabular-nums; }
  .days time:first-child { font-weight: 600; margin-right: 0.35rem; }
  .piece { border-top: 1px solid var(--_rule); padding: 0.35rem 0; }
  th:first-child { text-align: left; }
  @media (max-width: 640px) { th, td { padding-inline: 0.3rem; } }
  @media (min-width: 900px) {
    .rest { display: grid; grid-template-columns: minmax(0, 1fr) 20rem; align-items: start; }
    .say { grid-column: 2; grid-row: 1; }
    .told { grid-column: 1; grid-row: 1; }
  }
  @media (forced-colors: active) { .wet { fill: CanvasText; } .short { stroke: Highlight; } }
  @media print { .say, .work, .files { display: none; } .rest { display: block; } }
`;
