import { css } from "lit";

export const profileStyles = css`
  :host { display: block; }
  figure { margin: 0; }
  svg { display: block; width: 100%; touch-action: pan-y; }
  /* Its size is given: what moves inside lays nothing else out anew. */
  svg[part~="drawing"] { contain: strict; }
  text { font: 12px var(--_font); fill: var(--_ink); }
  text.quiet { fill: var(--_quiet); }
  .back { fill: var(--_sheet); }
  .ground { fill: var(--_earth); }
  .ground-line { fill: none; stroke: var(--_earth-edge); stroke-width: 2; }
  .pipe { fill: none; stroke: var(--_pipe); stroke-width: 3.5; stroke-linejoin: round; stroke-linecap: round; }
  .stand { stroke: var(--_pipe); stroke-width: 3; fill: none; }
  .vessel { fill: var(--_sheet); stroke: var(--_pipe); stroke-width: 2; }
  .water { fill: var(--_water); }
  .surface { stroke: var(--_water-edge); stroke-width: 2; }
  .level { stroke: var(--_water-edge); stroke-width: 1; stroke-dasharray: 2 2; }
  .band { fill: var(--_water); fill-opacity: 0.35; }
  .extreme { fill: none; stroke: var(--_water-edge); stroke-width: 1.25; }
  .extreme.highest { stroke-dasharray: 7 4; }
  .extreme.lowest { stroke-dasharray: 1.5 4; stroke-linecap: round; stroke-width: 2; }
  .chosen { fill: none; stroke: var(--_water-edge); stroke-width: 2.75; }
  .tick { stroke: var(--_rule); stroke-width: 1; }
  .air circle { fill: var(--_sheet); stroke: var(--_starves); stroke-width: 1.75; }
  .stem { stroke: var(--_pipe); stroke-width: 1.25; }
  .leader { stroke: var(--_rule); stroke-width: 1; }
  .arrow { stroke: var(--_ink); stroke-width: 1.5; fill: none; }
  .arrow-tip { fill: var(--_ink); }
  .looked-at { fill: none; stroke: var(--_ink); stroke-width: 1.75; }
  .halo { stroke: var(--_sheet); stroke-width: 5; paint-order: stroke; stroke-linejoin: round; }
  .loss-area { fill: var(--_starves); fill-opacity: 0.16; }
  .loss { fill: none; stroke: var(--_starves); stroke-width: 2; }
  .loss-other { fill: none; stroke: var(--_starves); stroke-width: 1.5; stroke-dasharray: 4 3; }
  .good { color: var(--_good); }
  .drips { color: var(--_drips); }
  .starves { color: var(--_starves); }
  .dry { color: var(--_dry); }
  .rail-word { fill: currentColor; font-weight: 700; }
  .bracket { stroke: currentColor; stroke-width: 2; }
  figcaption { font-size: 0.75rem; color: var(--_quiet); padding: 0.15rem 0.3rem 0.25rem; line-height: 1.35; }
  .key { display: inline-flex; align-items: center; gap: 0.35rem; margin-right: 0.7rem; white-space: nowrap; }
  /* A line of its own, of a height that is given: what the scales are changes at each step of a drag. */
  .scales { display: block; min-height: 1.35em; contain: size layout style; }
  @media (max-width: 21em) { .scales { min-height: 2.7em; } }
  .key svg { width: 24px; flex: none; }
`;
