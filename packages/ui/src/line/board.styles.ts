import { css } from "lit";

/** What follows the first verdict: the figures of the chosen part, the switch between views, saving. */
export const boardStyles = css`
  .figures { margin: 0.5rem 0; }
  .figure-list { display: grid; grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr)); gap: 0 0.75rem; margin: 0.25rem 0; }
  .figure-list > div { display: flex; flex-direction: column; border-top: 1px solid var(--_rule); padding-top: 0.2rem; }
  .figure-list dt { color: var(--_quiet); font-size: 0.85rem; }
  .figure-list dd { margin: 0; }
  /* Chosen, in bold, they are as high as before. */
  @media (max-width: 480px) { .tools > * { font-size: 0.875rem; line-height: 1.2; } }
  @media print { .board ~ .save, .undo, .views, .tools { display: none; } }
`;
