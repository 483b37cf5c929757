import { css } from "lit";

export const buildStyles = css`
  .buttons { display: flex; flex-wrap: wrap; gap: 0.5rem; align-items: end; margin: 0.5rem 0; }
  .work { display: flex; flex-wrap: wrap; align-items: center; gap: 0.35rem 0.75rem; margin: 0.5rem 0; }
  .work progress { flex: 1 1 8rem; }
  .older { opacity: 0.55; }
  .hurts { border-left: 5px solid var(--_starves); padding-left: 0.9rem; }
  .cautions { border-left: 5px solid var(--_starves); padding-left: 0.9rem; margin-top: 1.25rem; }
  .bars { padding-left: 1.5rem; }
  .bar { display: block; width: 100%; height: 26px; margin-top: 0.2rem; }
  .bar .stock { fill: none; stroke: var(--_rule); stroke-width: 1; vector-effect: non-scaling-stroke; }
  .bar .piece { fill: var(--_water); stroke: var(--_pipe); stroke-width: 1; vector-effect: non-scaling-stroke; }
  .bar .rest { stroke: var(--_quiet); stroke-width: 1; vector-effect: non-scaling-stroke; }
  .steps li { margin: 0.45rem 0; }
  td.wrap, th.wide { white-space: normal; }
  .cards th.wide { grid-column: 1 / -1; }
  .pair { display: grid; grid-template-columns: repeat(auto-fit, minmax(9rem, 1fr)); gap: 0.25rem 0.75rem; align-items: end; }
  .choice { display: flex; flex-direction: column; }
  @media (min-width: 900px) {
    .rest { display: grid; grid-template-columns: minmax(15rem, 22rem) minmax(0, 1fr); gap: 0 2rem; align-items: start; }
  }
  @media (forced-colors: active) {
    .bar .piece { fill: CanvasText; forced-color-adjust: none; stroke: Canvas; }
    .bar .stock, .bar .rest { stroke: CanvasText; }
  }
  @media print { .say, .buttons, .work { display: none; } }
`;
