import { css } from "lit";

export const mishapsStyles = css`
  .large { font-size: 1.35rem; }
  .large.dry { color: var(--_dry); }
  .large.good { color: var(--_good); }
  .work { display: flex; flex-wrap: wrap; align-items: center; gap: 0.35rem 0.75rem; margin: 0.5rem 0; }
  progress { flex: 1 1 10rem; min-width: 6rem; height: 1.25rem; accent-color: var(--_accent); }
  .choice { display: inline-flex; align-items: center; flex-wrap: wrap; gap: 0.1rem 0.4rem; max-width: 100%; }
  .older { opacity: 0.75; }
  .told { min-width: 0; }
  .row.chosen { border: 2px solid var(--_accent); }
  .rank { display: inline-block; min-width: 1.6em; color: var(--_quiet); font-variant-numeric: tabular-nums; }
  .harm { margin: 0.1rem 0; }
  .hours { display: block; width: 100%; max-width: 40rem; height: 18px; }
  .hours .day { fill: none; stroke: var(--_edge); stroke-width: 1; vector-effect: non-scaling-stroke; }
  .hours .span { fill: var(--_dry); }
  .hours .span.over { fill: none; stroke: var(--_good); stroke-width: 3; stroke-dasharray: 6 4; vector-effect: non-scaling-stroke; }
  .hours .hour { stroke: var(--_ink); stroke-width: 1; vector-effect: non-scaling-stroke; }
  .figures { display: flex; flex-wrap: wrap; gap: 0 1.75rem; }
  .figures > div { display: flex; align-items: center; gap: 0.5rem; min-height: 44px; }
  .figures dt { color: var(--_quiet); }
  .figures dd { font-variant-numeric: tabular-nums; font-weight: 600; }
  .who { list-style: none; padding: 0; }
  .who li { display: flex; flex-wrap: wrap; gap: 0.1rem 0.6rem; align-items: center; }
  .guard { border-left: 5px solid var(--_good); padding-left: 0.7rem; }
  .guard button.number { color: var(--_quiet); }
  button[aria-pressed="true"] { border: 2px solid var(--_accent); font-weight: 700; }
  .struck { margin: 0.5rem 0; }
  .drawing { position: relative; border: 1px solid var(--_rule); border-radius: 8px; overflow: hidden; background: var(--_sheet); }
  .drawing .place { position: absolute; inset: 0 auto auto 0; pointer-events: none; }
  .place circle { fill: none; stroke: var(--_focus); stroke-width: 3; }
  .place path { fill: none; stroke: var(--_focus); stroke-width: 3; stroke-linecap: round; stroke-linejoin: round; }
  .drips-typed { display: flex; flex-wrap: wrap; gap: 0.35rem 1.5rem; }
  .typed { display: flex; flex-direction: column; }
  .typed input { width: 9rem; }
  .cautions { border-left: 5px solid var(--_starves); padding-left: 0.9rem; margin-top: 1.25rem; }
  @media (min-width: 1000px) {
    .beside { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); gap: 0 1.5rem; align-items: start; }
    .beside > .struck { position: sticky; top: 0.5rem; }
  }
  @media (prefers-reduced-motion: no-preference) { .older { transition: opacity 200ms 400ms; } }
  @media (forced-colors: active) {
    .hours .span { fill: CanvasText; forced-color-adjust: none; }
    .hours .span.over { fill: none; stroke: CanvasText; }
    .place circle, .place path { stroke: CanvasText; }
  }
  @media print {
    .buttons, .work, .drips-typed { display: none; }
    .beside { display: block; }
  }
`;
