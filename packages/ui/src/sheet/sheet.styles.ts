import { css } from "lit";

export const sheetStyles = css`
  :host { display: block; background: var(--_paper); }
  .board { display: grid; gap: 0.75rem 1.25rem; }
  fieldset { border: 0; padding: 0; margin: 0 0 0.6rem; min-width: 0; }
  legend, .field > label { font-weight: 600; padding: 0; display: block; }
  .field { margin: 0 0 0.6rem; }
  .field select { width: 100%; }
  .choices { display: grid; grid-template-columns: 1fr 1fr; gap: 0.4rem; }
  .choices label {
    display: flex; align-items: center; gap: 0.5rem; min-height: 44px; padding: 0 0.6rem;
    border: 1px solid var(--_edge); border-radius: 6px; background: var(--_sheet); cursor: pointer;
  }
  .choices label:has(:checked) { border: 2px solid var(--_accent); font-weight: 700; padding: 0 calc(0.6rem - 1px); }
  .choices input { accent-color: var(--_accent); width: 1.15rem; height: 1.15rem; margin: 0; flex: none; }
  .told { margin: 0.5rem 0; font-weight: 600; }
  .quiet { margin: 0; font-size: 0.9rem; }
  button.chief { width: 100%; font-weight: 700; }
  button[disabled] { opacity: 0.6; cursor: default; }
  .preview { min-width: 0; overflow-y: auto; }
  .preview .page { width: 100%; height: auto; border: 1px solid var(--_edge); margin-bottom: 0.75rem; }
  @media (min-width: 760px) {
    .board { grid-template-columns: 21rem minmax(0, 1fr); }
    .preview { max-height: 85vh; }
  }
`;
