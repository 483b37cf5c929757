import { css } from "lit";

export const handsStyles = css`
  :host { display: block; }
  .over { position: absolute; top: 0; left: 0; overflow: hidden; }
  /* Its size is given: what moves inside lays nothing else out anew. */
  svg { display: block; contain: strict; touch-action: pan-y; user-select: none; -webkit-user-select: none; }
  svg.closer { cursor: grab; }
  text { font: 12px var(--_font); fill: var(--_ink); pointer-events: none; }
  .plate { fill: var(--_sheet); stroke: var(--_rule); }
  .halo { stroke: var(--_sheet); stroke-width: 5; paint-order: stroke; stroke-linejoin: round; }
  .handle { cursor: ns-resize; outline: none; }
  .hit { fill: transparent; }
  .grip { fill: var(--_sheet); stroke: var(--_accent); stroke-width: 2; }
  .tie { stroke: var(--_accent); stroke-width: 1.25; fill: none; }
  .handle:hover .grip, .handle.held .grip { fill: var(--_accent); }
  .handle:focus-visible .ring { stroke: var(--_focus); stroke-width: 3; }
  .ring { fill: none; stroke: none; }
  .said { fill: var(--_sheet); stroke: var(--_accent); stroke-width: 1.5; }
  text.figure { font-weight: 700; font-size: 14px; }
  .level-line { stroke: var(--_accent); stroke-width: 1.5; stroke-dasharray: 6 3; }
  .outline { fill: none; stroke: var(--_focus); stroke-width: 2; stroke-linejoin: round; stroke-linecap: round; }
  .outline.under { stroke-width: 12; stroke-opacity: 0.4; }
  .leader { stroke: var(--_edge); stroke-width: 1; fill: none; }
  .break { stroke: var(--_edge); stroke-width: 1.5; stroke-dasharray: 3 4; }
  .firm { fill: none; stroke: var(--_water-edge); stroke-width: 2.5; }
  .bar { stroke: var(--_ink); stroke-width: 3; }
  .bar.short, .bar.over { stroke-width: 5; }
  .bar.short { stroke: var(--_starves); }
  .bar.over { stroke: var(--_drips); }
  .bound { stroke: var(--_ink); stroke-width: 2; fill: none; }
  .bound.needs { stroke: var(--_starves); }
  .bound.holds { stroke: var(--_drips); }
  .tools { display: flex; flex-wrap: wrap; gap: 0.35rem; padding: 0.25rem 0.3rem; align-items: center; }
  .tools button { padding: 0 0.5rem; min-width: 44px; font-size: 0.9rem; }
  .tools button:disabled { color: var(--_quiet); border-style: dashed; cursor: default; }
  .band-key { font-size: 0.75rem; color: var(--_quiet); padding: 0 0.3rem; margin: 0; max-width: none; }
  @media (forced-colors: active) {
    .grip { stroke: CanvasText; fill: Canvas; }
    .handle:focus-visible .ring { stroke: Highlight; }
  }
  @media print {
    .tools, .handle { display: none; }
    /* Paper is as wide as it is: the drawing beneath is drawn smaller or larger, and this with it. */
    .over { right: 0; }
    .over svg { width: 100%; }
  }
`;
