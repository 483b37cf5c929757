import { css } from "lit";

/** Fields one under the other, and buttons in a row. */
export const fieldStyles = css`
  .field { margin: 0.6rem 0; min-width: 0; }
  .field > label { display: block; font-weight: 600; }
  .field > select, .field > input:is([type="text"], [type="date"], [type="time"]) { width: 100%; }
  input:is([type="date"], [type="time"]) {
    font: inherit; min-height: 44px; color: var(--_ink); background: var(--_sheet); border: 1px solid var(--_edge);
    border-radius: 6px; padding: 0 0.75rem; max-width: 100%;
  }
  textarea {
    font: inherit; color: var(--_ink); background: var(--_sheet); border: 1px solid var(--_edge);
    border-radius: 6px; padding: 0.4rem 0.75rem; width: 100%; min-height: 88px; resize: vertical;
  }
  input:placeholder-shown { text-overflow: ellipsis; }
  ::placeholder { color: var(--_quiet); opacity: 1; font-style: italic; }
  .box { display: inline-flex; align-items: center; justify-content: center; min-width: 44px; min-height: 44px; }
  .box input { width: 1.5rem; height: 1.5rem; margin: 0; accent-color: var(--_accent); }
  .tick { display: flex; flex-wrap: wrap; align-items: center; }
  .tick > label { min-height: 44px; display: flex; align-items: center; flex: 1; }
  .tick > p { flex: 1 0 100%; }
  p.label { font-weight: 600; margin: 0.6rem 0 0; }
  input[type="file"] { font: inherit; color: var(--_ink); width: 100%; min-height: 44px; padding: 0; }
  input[type="file"]::file-selector-button {
    font: inherit; min-height: 44px; color: var(--_ink); background: var(--_sheet); border: 1px solid var(--_edge);
    border-radius: 6px; padding: 0 0.75rem; margin-right: 0.6rem; cursor: pointer;
  }
  .note { font-size: 0.85rem; margin: 0.1rem 0 0; }
  .pair { display: grid; grid-template-columns: repeat(auto-fit, minmax(8rem, 1fr)); gap: 0 0.75rem; }
  .pair > .field:has(> .problem) { grid-column: 1 / -1; }
  :is(input[type="text"], select, textarea)[aria-invalid="true"] { border: 2px solid var(--_dry); }
  .buttons { display: flex; flex-wrap: wrap; gap: 0.4rem; margin: 0.6rem 0; }
  fieldset { border: 1px solid var(--_rule); border-radius: 8px; padding: 0.25rem 0.75rem 0.6rem; margin: 0.75rem 0; min-width: 0; }
  legend { font-weight: 600; padding: 0 0.3rem; }
  details { border-top: 1px solid var(--_rule); margin-top: 0.5rem; }
`;
