import { css } from "lit";

export const saveStyles = css`
  :host { display: block; background: var(--_paper); }
  h3 { font-size: 1rem; margin: 0.75rem 0 0.35rem; }
  h2 { font-size: 1.15rem; margin: 0; }
  .buttons { display: grid; grid-template-columns: repeat(auto-fill, minmax(14rem, 1fr)); gap: 0.5rem; }
  .field { display: block; font-weight: 600; margin-bottom: 0.35rem; max-width: 28.5rem; }
  .field select { display: block; width: 100%; font-weight: 400; }
  .tick { display: flex; align-items: center; gap: 0.6rem; min-height: 44px; cursor: pointer; }
  .tick input { accent-color: var(--_accent); width: 1.15rem; height: 1.15rem; margin: 0; flex: none; }
  button[disabled] { opacity: 0.6; cursor: default; }
  .told { min-height: 1.45em; margin: 0.5rem 0 0; font-weight: 600; overflow-wrap: anywhere; }
  .quiet { margin: 0; }
  dialog {
    width: min(72rem, 100vw); max-width: 100vw; max-height: 100dvh; margin: auto; padding: 0.75rem;
    background: var(--_paper); color: var(--_ink); border: 1px solid var(--_edge); border-radius: 8px; overflow: auto;
  }
  dialog::backdrop { background: rgb(0 0 0 / 0.5); }
  .head { display: flex; justify-content: space-between; align-items: center; gap: 1rem; margin-bottom: 0.5rem; }
`;
