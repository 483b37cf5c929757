import { css } from "lit";

/** What all rooms beside the line have in common; each adds its own after it. */
export const roomStyles = css`
  :host { display: block; background: var(--_paper); overflow-wrap: break-word; }
  h2 { font-size: 1.15rem; margin: 0.75rem 0 0.25rem; }
  h3 { font-size: 1.05rem; margin: 1.25rem 0 0.35rem; }
  h4 { font-size: 1rem; margin: 0.6rem 0 0.2rem; }
  p { margin: 0.35rem 0; max-width: 70ch; }
  ul { padding-left: 1.25rem; margin: 0.35rem 0; }
  li { margin: 0.3rem 0; max-width: 75ch; }
  dl, dd { margin: 0; }
  .answer { display: flex; flex-wrap: wrap; gap: 0.25rem 2rem; border-bottom: 1px solid var(--_rule); padding-bottom: 0.35rem; }
  .answer dt { font-weight: 600; }
  .large { font-size: 1.6rem; font-weight: 700; }
`;
