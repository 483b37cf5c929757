import { css } from "lit";

/** Dialogs over the page; on a phone they take its whole width. */
export const dialogStyles = css`
  dialog {
    width: min(44rem, 100vw); max-width: 100vw; max-height: 100dvh; margin: auto; padding: 0;
    color: var(--_ink); background: var(--_paper);
    border: 1px solid var(--_edge); border-radius: 10px; overflow: auto; overscroll-behavior: contain;
  }
  dialog::backdrop { background: rgb(0 0 0 / 0.55); }
  dialog .inside { padding: 0 0.9rem 1rem; }
  dialog header {
    display: flex; justify-content: space-between; align-items: center; gap: 1rem;
    position: sticky; top: 0; background: var(--_paper); padding: 0.6rem 0; z-index: 1;
  }
  dialog h2, dialog h3 { margin: 0; }
  dialog h2 { font-size: 1.25rem; }
  dialog h3 { font-size: 1.05rem; margin-top: 1rem; }
  dialog p { margin: 0.4rem 0; overflow-wrap: anywhere; }
  dialog .acts { display: flex; flex-wrap: wrap; gap: 0.4rem; margin: 0.5rem 0; }
  dialog label.wide { display: grid; gap: 0.15rem; margin: 0.6rem 0; }
  dialog input[type="text"] { width: 100%; }
  dialog ul { list-style: none; margin: 0; padding: 0; }
  dialog li { border-top: 1px solid var(--_rule); padding: 0.45rem 0; }
  dialog li .acts { margin: 0.3rem 0 0; }
  dialog li .acts button { padding: 0 0.45rem; }
  dialog .plan {
    display: block; width: 100%; text-align: left; padding: 0.35rem 0.6rem; overflow-wrap: anywhere; white-space: normal;
  }
  dialog .plan small { display: block; color: var(--_quiet); }
  dialog .plan[aria-current] { border: 2px solid var(--_accent); }
  dialog .shut { border-left: 4px solid var(--_edge); padding-left: 0.6rem; }
  dialog label.button { display: inline-flex; align-items: center; position: relative; }
  dialog label.button:focus-within { outline: 3px solid var(--_focus); outline-offset: 2px; }
  dialog label.button input { position: absolute; inset: 0; width: 100%; opacity: 0; cursor: pointer; }
  dialog .card { border: 0; padding: 0; margin: 0; background: none; }
`;
