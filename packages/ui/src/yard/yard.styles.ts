import { css } from "lit";

export const yardStyles = css`
  .pen { border-top: 2px solid var(--_rule); margin-top: 0.35rem; }
  .pen > p { margin: 0.1rem 0; }
  .head { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: 0 0.75rem; padding-top: 0.25rem; }
  .head h3 { margin: 0; }
  .standing { display: inline-flex; align-items: center; gap: 0.35rem; font-weight: 600; }
  .standing svg { flex: none; }
  .standing.good { color: var(--_good); }
  .standing.mind { color: var(--_starves); }
  .standing.first { color: var(--_dry); }
  .older { opacity: 0.75; }
  .picture { display: block; width: 100%; max-width: 26rem; height: auto; background: var(--_paper); border: 1px solid var(--_rule); border-radius: 8px; }
  .ground { fill: none; stroke: var(--_ink); stroke-width: 2.5; }
  .limit { fill: none; stroke: var(--_starves); stroke-width: 1.5; stroke-dasharray: 7 5; }
  .wall { fill: none; stroke: var(--_ink); stroke-width: 2.5; stroke-linejoin: round; }
  .pin { fill: none; stroke: var(--_ink); stroke-width: 4; }
  .water { fill: var(--_water); stroke: none; }
  .level { fill: none; stroke: var(--_water-edge); stroke-width: 1.5; stroke-dasharray: 2 3; }
  .cord { fill: none; stroke: var(--_quiet); stroke-width: 1.5; }
  .hole { fill: var(--_paper); stroke: var(--_ink); stroke-width: 2; }
  .drop { fill: var(--_water-edge); }
  .figures > div { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: 0 1rem; min-height: 44px; border-top: 1px solid var(--_rule); }
  .figures dd { font-variant-numeric: tabular-nums; text-align: right; margin-left: auto; }
  .grave { border-left: 5px solid var(--_starves); list-style: none; padding-left: 0.9rem; }
  .grave li { margin: 0.15rem 0; }
  th:first-child { text-align: left; }
  @media (max-width: 640px) { th, td { padding-inline: 0.3rem; } }
  @media (min-width: 900px) { .sides { display: grid; grid-template-columns: minmax(0, 1fr) 20rem; gap: 0 1.25rem; align-items: start; } }
  @media (prefers-reduced-motion: no-preference) { .older { transition: opacity 200ms 400ms; } }
  @media (forced-colors: active) {
    .picture { background: Canvas; }
    .water { fill: GrayText; }
    .level, .drop { stroke: Highlight; }
  }
  @media print {
    .fields, button:not(.number), .pair { display: none; }
    .sides { display: block; }
    .picture { max-width: 13rem; }
    .figures > div { min-height: 0; }
    .figures button.number { min-height: 0; }
    .pen > .head { break-after: avoid; }
  }
`;
