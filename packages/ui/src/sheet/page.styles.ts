import { css } from "lit";

/** How a page looks; widths are millimetres of paper. Paper is white, whatever the screen shows. */
export const pageStyles = css`
  .page { color-scheme: light; display: block; break-after: page; break-inside: avoid; }
  .page:last-child { break-after: auto; }
  .page text { font-family: Arial, Helvetica, "Liberation Sans", sans-serif; fill: #000; }
  .window text { stroke: #fff; stroke-width: 0.7; stroke-linejoin: round; paint-order: stroke; }
  .paper { fill: #fff; }
  .page path, .page circle { fill: none; stroke: #000; stroke-width: 0.25; stroke-linejoin: round; }
  .page .pipe { stroke: var(--_pipe); stroke-width: 0.8; }
  .page .unscaled { stroke: var(--_pipe); stroke-width: 0.8; stroke-dasharray: 2.4 1.2; }
  .page .stem { stroke: var(--_pipe); stroke-width: 0.25; }
  .page .ground { stroke: var(--_earth-edge); stroke-width: 0.5; }
  .page .vessel { stroke: var(--_pipe); stroke-width: 0.5; }
  .page .water { fill: var(--_water); stroke: var(--_water-edge); stroke-width: 0.25; }
  .page .level { stroke: var(--_water-edge); stroke-width: 0.35; stroke-dasharray: 1 0.7; }
  .page .leader { stroke: #555; stroke-width: 0.15; }
  .page .rule { stroke: #aaa; stroke-width: 0.15; }
  .page .frame { stroke-width: 0.35; }
  .page .check { stroke-width: 0.3; }
  .page .filled { fill: #000; stroke-width: 0.3; }
  .page .joint { fill: #fff; stroke: var(--_pipe); stroke-width: 0.35; }
  .page .mark { stroke: currentColor; stroke-width: 0.3; }
  .page .mark.good, .page .mark.drips { fill: currentColor; }
  .page.mono path, .page.mono circle { stroke: #000; }
  .page.mono .mark { color: #000; }
  .page.mono .water { fill: #e4e4e4; }
  .page.mono .leader { stroke: #444; }
  .page.mono .rule { stroke: #999; }
`;
