import { html, type TemplateResult } from "lit";

const DATE = /(\d{4}-\d{2}-\d{2})/;

/**
 * Words with each date in them kept on one line: browsers break 2026-11-30 at a hyphen. How a `time` looks is said in
 * the tokens.
 */
export const wholeDates = (words: string): (string | TemplateResult)[] =>
  words.split(DATE).map((part, at) => (at % 2 === 0 ? part : html`<time datetime=${part}>${part}</time>`));
