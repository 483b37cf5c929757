import { css } from "lit";

export const aboveStyles = css`
  :host { display: block; position: relative; height: clamp(280px, 38vh, 420px); overflow: hidden; background: var(--_sheet); }
  /* Its size is given: what moves inside lays nothing else out anew. */
  .drawing { display: block; width: 100%; height: 100%; contain: strict; touch-action: none; user-select: none; -webkit-user-select: none; cursor: grab; }
  .drawing.run, .drawing.drinkers { cursor: crosshair; }
  .drawing.busy { cursor: grabbing; }
  .drawing:focus-visible { outline: 3px solid var(--_focus); outline-offset: -3px; }
  text { font: 12px var(--_font); fill: var(--_ink); }
  .label { stroke: var(--_sheet); stroke-width: 3.5; paint-order: stroke; stroke-linejoin: round; pointer-events: none; }
  .label .first { font-weight: 600; }
  .back { fill: var(--_sheet); }
  .grid { fill: none; stroke: var(--_rule); stroke-width: 1; stroke-opacity: 0.45; }
  .pipe { fill: none; stroke: var(--_pipe); stroke-linejoin: round; stroke-linecap: round; }
  .feed { fill: none; stroke: var(--_water-edge); stroke-width: 2; stroke-dasharray: 2 5; stroke-linecap: round; }
  .flow { fill: var(--_water-edge); stroke: var(--_sheet); stroke-width: 1.25; }
  .cut-gap { stroke: var(--_sheet); }
  .cut { fill: none; stroke: var(--_pipe); stroke-width: 2; stroke-linejoin: round; }
  .corner { fill: var(--_sheet); stroke: var(--_ink); stroke-width: 2; }
  .joint { fill: var(--_pipe); stroke: var(--_sheet); stroke-width: 1.5; }
  .joint.end { fill: var(--_sheet); stroke: var(--_pipe); stroke-width: 2.25; }
  .vessel { fill: var(--_sheet); stroke: var(--_pipe); stroke-width: 2.25; }
  .brim { fill: var(--_water); stroke: var(--_water-edge); stroke-width: 1; }
  .mark-back { fill: var(--_sheet); }
  .unknown { fill: none; stroke: var(--_quiet); stroke-width: 1.5; stroke-dasharray: 2 2; }
  .several { stroke: var(--_quiet); stroke-width: 2; }
  .outline { fill: none; stroke-width: 2.5; }
  .outline.chosen { stroke: var(--_ink); }
  .outline.focused { stroke: var(--_focus); stroke-width: 3; stroke-dasharray: 5 3; }
  .casing { fill: none; stroke-linejoin: round; stroke-linecap: round; }
  .casing.chosen { stroke: var(--_ink); }
  .casing.focused { stroke: var(--_focus); }
  .casing.inner { stroke: var(--_sheet); }
  .part { outline: none; cursor: pointer; }
  .grip { fill: transparent; stroke: none; pointer-events: all; }
  .grip.way, .grip.marks { fill: none; stroke: transparent; stroke-width: 20; stroke-linecap: round; pointer-events: stroke; }
  .drawing.run .part, .drawing.drinkers .part { cursor: crosshair; }
  /* What is only looked at is not asked whether the pointer is on it; nor is anything while a hand drags. */
  .ink, .ghost, .drawing.busy .grip { pointer-events: none; }
  .drawn { fill: none; stroke: var(--_accent); stroke-width: 4; stroke-linejoin: round; stroke-linecap: round; stroke-dasharray: 1 7; }
  .guide { stroke: var(--_accent); stroke-width: 1.5; stroke-dasharray: 8 5; fill: none; }
  .meets { fill: none; stroke: var(--_accent); stroke-width: 3; }
  .tag { fill: var(--_ink); }
  .tag-words { fill: var(--_sheet); font-weight: 600; }
  .bar { fill: none; stroke: var(--_ink); stroke-width: 1.5; }
  .hint {
    position: absolute;
    inset: 0 0 auto;
    margin: 0;
    padding: 0.4rem 0.75rem;
    font-size: 0.875rem;
    line-height: 1.3;
    color: var(--_quiet);
    background: var(--_sheet);
    border-bottom: 1px solid var(--_rule);
    pointer-events: none;
  }
  .hint.inviting { color: var(--_ink); font-weight: 600; }
  .buttons { position: absolute; right: 8px; bottom: 8px; display: flex; gap: 6px; }
  .buttons button { width: 44px; padding: 0; display: grid; place-items: center; }
  .buttons svg { fill: none; stroke: currentColor; stroke-width: 2; stroke-linecap: round; stroke-linejoin: round; }
`;
