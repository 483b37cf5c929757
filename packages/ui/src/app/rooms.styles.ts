import { css } from "lit";

/** The way from room to room: four buttons beside each other on a phone, all in one row where there is room for it. */
export const roomStyles = css`
  .rooms { display: flex; flex-wrap: wrap; align-items: center; gap: 0.35rem 0.75rem; border-bottom: 1px solid var(--_rule); padding-bottom: 0.35rem; }
  .rooms nav { display: grid; grid-template-columns: repeat(4, minmax(0, 1fr)); flex: 1 1 100%; gap: 0.25rem; }
  .rooms nav button { min-width: 0; padding: 0 0.2rem; background: none; border-color: transparent; }
  .rooms nav button[aria-current] {
    font-weight: 700; border: 1px solid var(--_edge); background: var(--_sheet); box-shadow: inset 0 -4px 0 var(--_accent);
  }
  .rooms .steps { display: flex; gap: 0.35rem; margin-left: auto; }
  .rooms .steps button:disabled { color: var(--_quiet); border-style: dashed; cursor: default; }
  headfall-line[hidden] { display: none; }
  @media (min-width: 720px) {
    .rooms nav { display: flex; flex: 1 1 0; }
    .rooms nav button { flex: 1 1 0; max-width: 9rem; }
  }
  @media (forced-colors: active) { .rooms nav button[aria-current] { border: 3px solid; } }
  @media print { .rooms { display: none; } }
`;
