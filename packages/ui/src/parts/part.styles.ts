import { css } from "lit";

export const partStyles = css`
  :host { display: block; background: var(--_paper); overflow-wrap: anywhere; }
  h2 { font-size: 1.15rem; margin: 0; flex: 1; }
  h3 { font-size: 0.95rem; margin: 0.75rem 0 0; }
  .head { display: flex; flex-wrap: wrap; align-items: center; gap: 0.25rem 0.75rem; }
  h2:focus { outline: none; }
  h2:focus-visible { outline: 3px solid var(--_focus); }
  .line { display: flex; flex-wrap: wrap; align-items: end; gap: 0 0.6rem; }
  .line > .field { flex: 1 1 7rem; }
  .line > .field > :is(input, select) { width: 100%; }
  .line > button { margin-bottom: 0.6rem; }
  .line > .problem { flex: 1 0 100%; }
  section > .buttons { margin-top: 0.2rem; }
  section > .buttons > button { flex: 1 1 auto; }
  section > .buttons > button.chief { flex-basis: 100%; }
  .small { border-collapse: collapse; width: 100%; }
  .small th { text-align: left; font-weight: 600; font-size: 0.85rem; }
  .small :is(td, th) { padding: 0.15rem 0.4rem 0.15rem 0; }
  .small input[type="text"] { width: 100%; min-width: 4.5rem; padding: 0 0.4rem; }
  .small button { padding: 0 0.5rem; font-size: 0.9rem; white-space: nowrap; overflow-wrap: normal; }
  .small thead th { overflow-wrap: normal; line-height: 1.2; vertical-align: bottom; }
  .small tbody th { font-weight: 400; font-size: 1rem; }
`;
