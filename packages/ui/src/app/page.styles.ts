import { css } from "lit";

/** The page around the line; the palette comes from the same tokens as the elements' own. */
export const pageStyles = css`
  *, *::before, *::after { box-sizing: border-box; }
  :root { color-scheme: light dark; }
  :root[data-light="sun"] { color-scheme: light; }
  :root[data-light="dark"] { color-scheme: dark; }
  body {
    margin: 0; background: var(--_paper); color: var(--_ink);
    font-family: var(--_font); line-height: 1.45; -webkit-text-size-adjust: 100%;
  }
  .page { max-width: 76rem; margin: 0 auto; padding: 0 0.75rem 3rem; }
  .top { display: flex; flex-wrap: wrap; gap: 0.4rem 0.75rem; align-items: center; padding: 0.6rem 0; }
  h1 { font-size: 1.35rem; margin: 0; letter-spacing: 0.01em; display: flex; flex-wrap: wrap; gap: 0.2rem 0.6rem; align-items: center; }
  h1 button {
    font-size: 1rem; font-weight: 400; max-width: 24rem; min-width: 0;
    overflow: hidden; text-overflow: ellipsis; white-space: nowrap;
  }
  h1 button::after { content: "\\25be"; margin-left: 0.5rem; }
  .kept { color: var(--_quiet); font-size: 0.9rem; }
  .more { display: none; }
  .tools {
    display: flex; flex-wrap: wrap; gap: 0.5rem; margin: 0 0 0 auto; position: static; inset: auto;
    width: auto; padding: 0; border: 0; background: none; color: inherit; overflow: visible;
  }
  .tools .button { display: inline-flex; align-items: center; position: relative; text-decoration: none; }
  .tools label.button:focus-within { outline: 3px solid var(--_focus); outline-offset: 2px; }
  .tools input[type="file"] { position: absolute; inset: 0; width: 100%; opacity: 0; cursor: pointer; }
  .note { color: var(--_quiet); font-size: 0.9rem; margin: 1.5rem 0 0; max-width: 80ch; overflow-wrap: anywhere; }
  .note h2 { font-size: 1.15rem; margin: 0; color: var(--_ink); }
  .note p { margin: 0.35rem 0; }
  .notice, .card { border: 1px solid var(--_edge); border-radius: 8px; background: var(--_sheet); padding: 0.5rem 0.9rem; margin: 0.5rem 0; }
  .notice p { margin: 0.25rem 0; overflow-wrap: anywhere; }
  .notice h2, .card h2 { font-size: 1.05rem; margin: 0.25rem 0; }
  .notice li { margin: 0.4rem 0; overflow-wrap: anywhere; }
  [role="alert"] .notice { border: 2px solid var(--_dry); }
  [role="alert"] .notice h2 { color: var(--_dry); }
  .acts { display: flex; flex-wrap: wrap; gap: 0.4rem; margin: 0.4rem 0; }
  main:focus, .card h2:focus { outline: none; }
  .dropping { outline: 4px dashed var(--_accent); outline-offset: -8px; }
  @media (max-width: 720px) { .tools > * { padding: 0 0.5rem; } }
  @media (max-width: 639px) {
    .top { flex-wrap: nowrap; gap: 0.5rem; }
    h1 { flex: 1; min-width: 0; flex-wrap: nowrap; gap: 0.5rem; font-size: 1.15rem; }
    h1 button { flex: 1; position: relative; padding: 0 1.6rem 0 0.6rem; font-size: 0.95rem; text-align: left; }
    h1 button::after { position: absolute; right: 0.6rem; }
    .kept { max-width: 4.5rem; font-size: 0.8rem; line-height: 1.15; }
    .more { display: block; }
    .card .acts button { flex: 1 1 100%; }
    .tools { margin: 0; }
    .tools > * { justify-content: center; text-align: center; }
    .tools:not(:popover-open) { display: none; }
    .tools:popover-open {
      position: absolute; inset: 4rem 0.75rem auto auto; width: 14rem; padding: 0.6rem; flex-direction: column;
      background: var(--_paper); border: 1px solid var(--_edge); border-radius: 8px; box-shadow: 0 4px 16px rgb(0 0 0 / 0.3);
    }
  }
  @media (prefers-reduced-motion: no-preference) {
    .notice { animation: appear 150ms ease-out; }
    @keyframes appear { from { opacity: 0; } }
  }
  @media print { .tools, .more, .notice, .card, .kept { display: none; } .page { padding: 0; } }
`;
