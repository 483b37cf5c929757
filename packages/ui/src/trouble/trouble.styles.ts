import { css } from "lit";

export const troubleStyles = css`
  .rest { display: flex; flex-direction: column; gap: 0 1.5rem; }
  .head { border-bottom: 1px solid var(--_rule); margin-bottom: 0.35rem; }
  .likeliest { min-height: 3.2rem; }
  .jump { display: none; }
  .told { min-width: 0; }
  .older { opacity: 0.75; }
  .work { display: flex; flex-wrap: wrap; align-items: center; gap: 0.35rem 0.75rem; margin: 0.5rem 0; }
  progress { flex: 1 1 10rem; min-width: 6rem; height: 1.25rem; accent-color: var(--_accent); }
  .choice { display: inline-flex; align-items: center; flex-wrap: wrap; gap: 0.1rem 0.4rem; }
  fieldset { border: 1px solid var(--_rule); border-radius: 8px; background: var(--_sheet); padding: 0.1rem 0.75rem 0.5rem; margin: 0.5rem 0; min-width: 0; }
  legend { font-weight: 700; padding: 0 0.25rem; }
  .run { border: 1px solid var(--_rule); border-radius: 8px; background: var(--_sheet); padding: 0 0.75rem; margin: 0.35rem 0; }
  .run[open] { padding-bottom: 0.5rem; }
  .row { padding: 0.2rem 0; }
  .row .label { display: block; font-size: 0.9rem; color: var(--_quiet); }
  .row.all { border-bottom: 2px solid var(--_rule); padding-bottom: 0.5rem; margin-bottom: 0.25rem; }
  .list .row + .row { border-top: 1px solid var(--_rule); }
  .answers { display: flex; flex-wrap: wrap; gap: 0.25rem; }
  .answers button { flex: 1 1 auto; min-width: 44px; max-width: 10rem; padding: 0 0.3rem; font-size: 0.9rem; background: var(--_paper); display: inline-flex; align-items: center; justify-content: center; gap: 0.25rem; }
  /* No wider than before the press: the row stays as it is under the thumb. */
  .answers button, .answers-of button { position: relative; }
  button[aria-pressed="true"] { outline: 3px solid var(--_accent); outline-offset: -2px; background: var(--_sheet); }
  button[aria-pressed="true"]::after { content: "\\2713"; position: absolute; inset: 1px 3px auto auto; line-height: 1; font-weight: 700; }
  button[aria-pressed="mixed"] { outline: 3px dashed var(--_accent); outline-offset: -2px; }
  button[aria-pressed]:focus-visible { outline: 3px solid var(--_focus); outline-offset: 2px; }
  .jug { display: flex; flex-wrap: wrap; gap: 0.35rem 1rem; align-items: end; padding-bottom: 0.5rem; }
  .typed { display: flex; flex-direction: column; min-width: 0; }
  .typed input { width: 8rem; }
  .buttons { display: flex; flex-wrap: wrap; gap: 0.35rem 0.6rem; }
  .causes { list-style: none; padding: 0; }
  .causes > li { max-width: none; background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; padding: 0.35rem 0.75rem; margin: 0.5rem 0; }
  .causes > li:first-child { border: 2px solid var(--_accent); }
  .press { margin: 0.35rem 0; }
  .drawing { position: relative; border: 1px solid var(--_rule); border-radius: 8px; overflow: hidden; background: var(--_sheet); }
  .rings { position: absolute; inset: 0 auto auto 0; pointer-events: none; }
  .rings circle { fill: none; stroke: var(--_focus); stroke-width: 3; }
  .two { background: var(--_sheet); border: 2px dashed var(--_accent); border-radius: 8px; padding: 0.35rem 0.75rem; margin: 0.5rem 0; }
  .causes h4, .two h4 { margin: 0.25rem 0; }
  .share { display: flex; align-items: center; gap: 0.6rem; margin: 0; max-width: none; }
  .bar { flex: 1 1 auto; max-width: 26rem; height: 14px; }
  .bar .whole { fill: none; stroke: var(--_edge); stroke-width: 1; vector-effect: non-scaling-stroke; }
  .bar .part { fill: var(--_accent); }
  .look { border: 2px solid var(--_accent); border-radius: 8px; background: var(--_sheet); padding: 0 0.75rem 0.5rem; margin: 0.75rem 0; }
  .look h3 { margin-top: 0.6rem; }
  .answers-of { list-style: none; padding: 0; }
  .answers-of li { display: grid; grid-template-columns: minmax(9rem, 1fr) minmax(0, 1fr); align-items: center; gap: 0.2rem 0.6rem; max-width: 40rem; }
  .answers-of button { width: 100%; }
  .cautions { border-left: 5px solid var(--_starves); padding-left: 0.9rem; margin-top: 1.25rem; }
  @media (max-width: 899px) {
    .head { position: sticky; top: 0; z-index: 2; background: var(--_paper); display: flex; flex-wrap: wrap; align-items: center; gap: 0 0.6rem; padding-bottom: 0.25rem; }
    .likeliest { flex: 1 1 12rem; }
    .jump { display: block; }
  }
  @media (min-width: 900px) {
    .rest { display: grid; grid-template-columns: minmax(0, 25rem) minmax(0, 1fr); align-items: start; }
  }
  @media (prefers-reduced-motion: no-preference) { .older { transition: opacity 200ms 400ms; } }
  @media (forced-colors: active) {
    .rings circle { stroke: CanvasText; }
    .bar .part { fill: CanvasText; forced-color-adjust: none; }
    button[aria-pressed="true"] { outline: 2px solid Highlight; }
  }
  @media print {
    .say, .buttons, .work, .jump { display: none; }
    .head { position: static; }
    .answers-of button { border: 0; padding: 0; text-align: left; min-height: 0; background: none; }
    .rest { display: block; }
    .likeliest { min-height: 0; }
    .likeliest:empty { display: none; }
    details::details-content { content-visibility: visible; block-size: auto; }
    .causes > li, .two, .look { break-inside: avoid; }
  }
`;
