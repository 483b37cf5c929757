import { css } from "lit";

export const quantityFieldStyles = css`
  :host { display: block; }
  label { display: block; font-weight: 600; }
  .row { display: flex; gap: 0.5rem; align-items: center; flex-wrap: nowrap; }
  input { scroll-margin-top: var(--_clear, 0); }
  input[type="range"] { flex: 1 1 6rem; min-width: 5rem; touch-action: pan-y; }
  input[type="text"] { flex: 0 0 7.5rem; width: 7.5rem; font-variant-numeric: tabular-nums; }
  input[type="text"][aria-invalid="true"] { border: 2px solid var(--_dry); }
  ::placeholder { color: var(--_quiet); opacity: 1; font-style: italic; }
  .ends { display: flex; justify-content: space-between; font-size: 0.8rem; margin: -0.35rem 8.5rem 0 0; }
  .note { font-size: 0.85rem; margin: 0.1rem 0 0; }
  @media (forced-colors: active) { input { border: 1px solid; } }
`;
