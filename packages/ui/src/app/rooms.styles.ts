import { css } from "lit";

/** The way from room to room: a row where the window is wide, else one button over a list. */
export const roomStyles = css`
  .rooms { display: flex; flex-wrap: wrap; align-items: center; gap: 0.35rem 0.75rem; border-bottom: 1px solid var(--_rule); padding-bottom: 0.35rem; }
  .rooms nav { flex: 1 1 100%; }
  .rooms nav button { min-width: 0; background: none; border-color: transparent; }
  .rooms nav button[aria-current] {
    font-weight: 700; border: 1px solid var(--_edge); background: var(--_sheet); box-shadow: inset 0 -4px 0 var(--_accent);
  }
  .rooms nav .which { display: flex; align-items: center; justify-content: space-between; gap: 1rem; width: 100%; border-color: var(--_edge); font-weight: 700; }
  .rooms .other { font-weight: 400; text-decoration: underline; }
  .rooms .list:not(.open) { display: none; }
  .rooms .group p { margin: 0.6rem 0 0.1rem; color: var(--_quiet); font-size: 0.85rem; }
  .rooms .group button { display: grid; grid-template-columns: 5.5rem 1fr; align-items: center; width: 100%; text-align: left; }
  .rooms .words { font-weight: 400; }
  .rooms .steps { display: flex; gap: 0.35rem; margin-left: auto; }
  .rooms .steps button:disabled { color: var(--_quiet); border-style: dashed; cursor: default; }
  headfall-line[hidden] { display: none; }
  @media (min-width: 720px) {
    .rooms nav { flex: 1 1 12rem; }
    .rooms nav .which, .rooms .group p, .rooms .words { display: none; }
    .rooms .list, .rooms .list:not(.open) { display: flex; flex-wrap: wrap; gap: 0.25rem 0.6rem; }
    .rooms .group { display: flex; gap: 0.15rem; }
    .rooms .group + .group { border-left: 1px solid var(--_rule); padding-left: 0.6rem; }
    .rooms .group button { display: block; width: auto; padding: 0 0.6rem; }
  }
  @media (forced-colors: active) { .rooms nav button[aria-current] { border: 3px solid; } }
  @media print { .rooms { display: none; } }
`;
