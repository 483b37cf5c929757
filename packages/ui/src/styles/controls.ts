import { css } from "lit";

/** What can be pressed or typed into: 44 px for a thumb, an outline that shows where the keyboard is. */
export const controls = css`
  *, *::before, *::after { box-sizing: border-box; }
  button, select, input[type="text"], .button {
    font: inherit;
    min-height: 44px;
    color: var(--_ink);
    background: var(--_sheet);
    border: 1px solid var(--_edge);
    border-radius: 6px;
    padding: 0 0.75rem;
    max-width: 100%;
  }
  button, select, .button { cursor: pointer; }
  button:hover, .button:hover { border-color: var(--_accent); color: var(--_accent); }
  button.chief { background: var(--_accent); color: var(--_on-accent); border-color: var(--_accent); }
  input[type="range"] { accent-color: var(--_accent); min-height: 44px; margin: 0; cursor: pointer; }
  summary { min-height: 44px; display: flex; align-items: center; gap: 0.5rem; cursor: pointer; }
  summary::before { content: "+"; font-weight: 700; width: 1em; text-align: center; color: var(--_accent); }
  details[open] > summary::before { content: "\\2212"; }
  summary::-webkit-details-marker { display: none; }
  :focus-visible { outline: 3px solid var(--_focus); outline-offset: 2px; border-radius: 4px; }
  [aria-invalid="true"], input[type="text"][aria-invalid="true"] { border: 2px solid var(--_dry); }
  .problem { color: var(--_dry); margin: 0.25rem 0 0; }
  .quiet { color: var(--_quiet); }
  .spoken {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
    contain: strict;
  }
`;
