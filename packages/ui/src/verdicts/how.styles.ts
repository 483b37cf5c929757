import { css } from "lit";

/** Numbers that can be pressed, and what is told of them; for every element that shows either. */
export const howStyles = css`
  button.number {
    font: inherit; font-variant-numeric: tabular-nums; color: inherit; background: none; border: 0; border-radius: 3px;
    min-height: 24px; min-width: 24px; padding: 0 0.15rem; text-align: inherit;
    text-decoration: underline dotted; text-decoration-thickness: 1.5px; text-underline-offset: 0.2em; text-decoration-color: var(--_accent);
  }
  .number .verdict { border-bottom: 1.5px dotted var(--_accent); }
  button.number:hover { color: var(--_accent); text-decoration-style: solid; }
  button.number.roomy { min-height: 44px; min-width: 44px; }
  @media (pointer: coarse) { td button.number, th button.number { min-height: 32px; } }

  .formula { font-family: ui-monospace, monospace; font-size: 0.9rem; overflow-wrap: anywhere; margin: 0.15rem 0; }
  .filled { font-weight: 600; }
  .step + .step { margin-top: 0.6rem; padding-top: 0.6rem; border-top: 1px solid var(--_rule); }
  .onward { margin: 0; font-size: 0.9rem; }
  .onward .symbol { color: var(--_quiet); }
  .opinion { margin: 0.5rem 0; }
  .valid { list-style: none; padding: 0; margin: 0.5rem 0; }
  .valid li { display: flex; gap: 0.5rem; margin: 0.25rem 0; }
  .range-mark { flex: none; color: var(--_good); }
  .outside .range-mark { color: var(--_starves); }
  .parts-frame { overflow: auto; max-height: 16rem; border: 1px solid var(--_rule); border-radius: 6px; margin: 0.5rem 0; }
  table.parts { border-collapse: collapse; width: 100%; font-size: 0.85rem; font-variant-numeric: tabular-nums; }
  .parts caption { text-align: left; padding: 0.35rem 0.5rem; color: var(--_quiet); }
  .parts th, .parts td { padding: 0.2rem 0.5rem; border-top: 1px solid var(--_rule); text-align: right; white-space: nowrap; }
  .parts th:first-child { text-align: left; white-space: normal; font-weight: 400; }
  .worded th, .worded td { white-space: normal; text-align: left; vertical-align: top; }
  .parts thead th, .parts thead th:first-child { font-weight: 600; }
`;

/** The panel: beside the drawing on a wide screen, a sheet below it on a narrow one. */
export const howPanelStyles = css`
  .panel {
    position: fixed; inset: auto 1rem 1rem auto; margin: 0; width: min(24rem, calc(100vw - 2rem)); max-height: min(32rem, 62vh);
    padding: 0; border: 2px solid var(--_edge); border-radius: 10px; background: var(--_sheet); color: var(--_ink);
    box-shadow: 0 6px 24px rgb(0 0 0 / 25%); overflow: hidden;
  }
  .panel:popover-open { display: flex; flex-direction: column; }
  header { display: flex; align-items: center; gap: 0.5rem; padding: 0.35rem 0.35rem 0.35rem 0.9rem; border-bottom: 1px solid var(--_rule); }
  h2 { font-size: 1rem; margin: 0; flex: 1; min-width: 0; overflow-wrap: anywhere; }
  header button { flex: none; min-width: 44px; }
  .told { padding: 0.6rem 0.9rem 0.9rem; overflow: auto; overscroll-behavior: contain; }
  .told p { margin: 0.35rem 0; max-width: 75ch; }
  .main-result { font-size: 1.5rem; font-weight: 700; font-variant-numeric: tabular-nums; margin: 0 0 0.35rem; }
  @media (max-width: 640px) {
    .panel { inset: auto 0 0 0; width: 100vw; max-width: none; max-height: 48vh; max-height: 48dvh; border-width: 2px 0 0; border-radius: 12px 12px 0 0; }
  }
  @media print { .panel { display: none; } }
`;
