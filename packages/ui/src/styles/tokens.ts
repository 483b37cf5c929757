import { css } from "lit";

/**
 * The palette, in one place. Light is made for bright sun: words and verdict marks keep at least 7:1 against the
 * paper. A page may set any of the `--headfall-...` properties; the `--_` ones are private.
 *
 * @cssprop --headfall-paper  behind everything
 * @cssprop --headfall-sheet  fields, buttons, tables and drawings
 * @cssprop --headfall-ink  letters
 * @cssprop --headfall-quiet  letters that matter less
 * @cssprop --headfall-rule  rules between things
 * @cssprop --headfall-edge  borders of what can be pressed or typed into
 * @cssprop --headfall-accent  what can be pressed, what is chosen
 * @cssprop --headfall-on-accent  letters on it
 * @cssprop --headfall-focus  the outline of where the keyboard is
 * @cssprop --headfall-water  water in a vessel
 * @cssprop --headfall-water-edge  its surface, and the grade line
 * @cssprop --headfall-earth  the ground
 * @cssprop --headfall-earth-edge  its edge
 * @cssprop --headfall-pipe  pipe
 * @cssprop --headfall-good  verdict good
 * @cssprop --headfall-drips  verdict drips
 * @cssprop --headfall-starves  verdict starves
 * @cssprop --headfall-dry  verdict dry, and what is wrong
 * @cssprop --headfall-font  the letters
 */
const palette = css`
  --_paper: var(--headfall-paper, light-dark(#fbf9f3, #101a17));
  --_sheet: var(--headfall-sheet, light-dark(#ffffff, #18241f));
  --_ink: var(--headfall-ink, light-dark(#16241f, #eef4ef));
  --_quiet: var(--headfall-quiet, light-dark(#43534c, #b9c8bf));
  --_rule: var(--headfall-rule, light-dark(#c5ccc0, #3a4c44));
  --_edge: var(--headfall-edge, light-dark(#66756d, #8fa097));
  --_accent: var(--headfall-accent, light-dark(#0a4f63, #8fd6e6));
  --_on-accent: var(--headfall-on-accent, light-dark(#ffffff, #0c1a1c));
  --_focus: var(--headfall-focus, light-dark(#9a3d00, #ffc98a));
  --_water: var(--headfall-water, light-dark(#a9d6e4, #1f5364));
  --_water-edge: var(--headfall-water-edge, light-dark(#0a5a73, #86d0e6));
  --_earth: var(--headfall-earth, light-dark(#e6dac5, #35291b));
  --_earth-edge: var(--headfall-earth-edge, light-dark(#75562f, #c8a774));
  --_pipe: var(--headfall-pipe, light-dark(#2e3a36, #dbe5de));
  --_good: var(--headfall-good, light-dark(#06504a, #7fe3cb));
  --_drips: var(--headfall-drips, light-dark(#3d359b, #c0bcff));
  --_starves: var(--headfall-starves, light-dark(#763900, #ffbd7d));
  --_dry: var(--headfall-dry, light-dark(#8d0a3b, #ffa9bd));
  --_font: var(--headfall-font, system-ui, sans-serif);
`;

/** For the document of a page. */
export const pageTokens = css`
  :root { ${palette} }
`;

/** For elements. */
export const tokens = css`
  :host {
    ${palette}
    font-family: var(--_font);
    color: var(--_ink);
    line-height: 1.45;
  }
  .good { color: var(--_good); }
  .drips { color: var(--_drips); }
  .starves { color: var(--_starves); }
  .dry { color: var(--_dry); }
  time { white-space: nowrap; }

  @media print {
    :host { color-scheme: light; }
  }
`;
