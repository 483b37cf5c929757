import { css } from "lit";

export const measureStyles = css`
  :host { display: block; overflow-wrap: break-word; }
  h2 { font-size: 1.15rem; margin: 0.75rem 0 0.25rem; }
  h3 { font-size: 1.05rem; margin: 1rem 0 0.25rem; }
  p { margin: 0.35rem 0; max-width: 75ch; }
  ol { padding-left: 1.5rem; margin: 0.35rem 0; }
  li { margin: 0.3rem 0; max-width: 75ch; }
  summary { min-height: 44px; display: list-item; padding-block: 0.6rem; cursor: pointer; box-sizing: border-box; }
  .work { display: flex; flex-wrap: wrap; gap: 0.25rem 0.75rem; align-items: center; }
  @media print { .waiting, summary { display: none; } }
`;
