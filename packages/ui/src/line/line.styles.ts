import { css } from "lit";

export const lineStyles = css`
  :host { display: block; background: var(--_paper); overflow-wrap: break-word; }
  h2 { font-size: 1.15rem; margin: 1.5rem 0 0.5rem; }
  h3 { font-size: 1rem; margin: 1rem 0 0.25rem; }
  p { margin: 0.35rem 0; max-width: 70ch; }
  .verdict { display: inline-flex; align-items: center; gap: 0.35rem; font-weight: 700; }
  .inline-mark { flex: none; overflow: visible; }
  .sheet { background: var(--_sheet); border: 1px solid var(--_rule); border-radius: 8px; padding: 0.25rem 0.75rem 0.75rem; }

  .bar { display: flex; flex-wrap: wrap; align-items: center; gap: 0.35rem 0.75rem; min-height: 44px; margin: 0.35rem 0; }
  .undo, .views, .tools { display: flex; gap: 0.35rem; }
  .views, .bar .tools { flex: 1 1 auto; }
  .views > *, .tools > * { flex: 1; padding: 0 0.35rem; }
  .undo > * { padding: 0 0.5rem; }
  .tools { margin: 0.35rem 0; }
  .bar .tools { margin: 0; }
  /* No grid: what lies in one is never laid out by itself, and the counts would lay out the whole page. */
  .stays > * + * { margin-block-start: 0.35rem; }
  button[aria-pressed="true"] { border: 2px solid var(--_accent); font-weight: 700; color: var(--_ink); }
  button:disabled { color: var(--_quiet); border-style: dashed; cursor: default; }
  .progress { display: flex; flex-wrap: wrap; align-items: center; gap: 0.5rem; }
  .counts { display: flex; flex-wrap: wrap; align-items: center; gap: 0.1rem 1rem; margin: 0; font-size: 1.1rem; }
  .sentence { font-size: 1.05rem; margin: 0 0 0.35rem; min-height: 5.9em; }
  .sureness { font-weight: 700; }
  /* What is said anew at each step of a drag lays out and paints itself only, none of what stands around it. */
  .dragged :is(.counts, .sentence) { will-change: transform; }
  .dragged .sentence { contain: size layout style; block-size: var(--_height); }
  .stage { background: var(--_paper); padding: 0.25rem 0; }
  .drawing { position: relative; border: 1px solid var(--_rule); border-radius: 8px; overflow: hidden; contain: content; background: var(--_sheet); }

  fieldset { border: 0; padding: 0; margin: 0.5rem 0; min-width: 0; }
  legend { font-weight: 600; padding: 0; }
  .choices { display: grid; grid-template-columns: 1fr 1fr; gap: 0.4rem; }
  .choices label {
    display: flex; align-items: center; gap: 0.5rem; min-height: 44px; padding: 0 0.6rem;
    border: 1px solid var(--_edge); border-radius: 6px; background: var(--_sheet); cursor: pointer;
  }
  /* An odd one out at the end has the row to itself. */
  .choices label:last-child:nth-child(odd) { grid-column: 1 / -1; }
  .choices label:has(:checked) { border: 2px solid var(--_accent); font-weight: 700; padding: 0 calc(0.6rem - 1px); }
  .choices input { accent-color: var(--_accent); width: 1.15rem; height: 1.15rem; margin: 0; flex: none; }
  .field { margin: 0.75rem 0; }
  .field > label { display: block; font-weight: 600; }
  .field select { width: 100%; }

  .formula { font-family: ui-monospace, monospace; font-size: 0.9rem; overflow-wrap: anywhere; margin-block: 0.25rem; }
  .result { margin-left: auto; flex: none; font-weight: 700; font-variant-numeric: tabular-nums; }
  details { border-top: 1px solid var(--_rule); }
  details > :not(summary) { margin-left: 1.5rem; }
  ul { padding-left: 1.25rem; margin: 0.35rem 0; }
  li { margin: 0.25rem 0; max-width: 75ch; }
  .cautions { border-left: 5px solid var(--_starves); padding-left: 1.75rem; }
  /* What is out of sight is not laid out and painted again at every frame of a drag; tables are long, and never are. */
  .board ~ section { display: flow-root; }
  .board ~ :is(section, headfall-measure) { contain-intrinsic-size: auto 30rem; }
  .board ~ .deep { contain-intrinsic-size: auto 60rem; }
  .deep, .dragged ~ :is(section, headfall-measure) { content-visibility: auto; }
  .faults { border: 2px solid var(--_dry); border-radius: 8px; padding: 0.5rem 0.75rem; background: var(--_sheet); }

  /* A drawing stays in view while the hand is on a control, where the screen is tall enough for both; tables are long. */
  @media (max-width: 899px) and (min-height: 620px) {
    :host(:not([view="table"])) {
      /* Only the counts and the drawing stay; what stands over and under them moves on. */
      .stage { display: contents; }
      .stays { position: sticky; top: 0; z-index: 1; background: var(--_paper); padding-bottom: 0.25rem; }
      /* What the keyboard comes to is scrolled clear of it. */
      .controls { --_clear: 26rem; }
      .controls :is(input, select, button), summary { scroll-margin-top: 26rem; }
    }
  }
  @media (min-width: 560px) {
    .counts { min-height: 1.5em; }
    .dragged .counts { contain: size layout style; }
  }
  @media (min-width: 560px) and (max-width: 899px) { .sentence { min-height: 3em; } }
  @media (min-width: 900px) {
    .board { display: grid; grid-template-columns: minmax(0, 1fr) 21rem; grid-template-rows: auto 1fr; gap: 1rem 1.25rem; align-items: start; }
    .side { grid-column: 2; grid-row: 1 / span 2; position: sticky; top: 0.5rem; }
  }
  @media print {
    .controls { display: none; }
    .board { display: block; }
    .stays { position: static; }
    .deep { content-visibility: visible; }
  }
`;
