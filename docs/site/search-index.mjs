/** The index of all words, section by section, made when the site is built. */
import MiniSearch from "minisearch";
import { INDEX_OPTIONS } from "./search-terms.mjs";

/** Of each section this much is kept to be shown below its title [signs]. */
const SHOWN = 150;

/**
 * @param pages  each with what `renderPage` made of it
 * @returns {MiniSearch} of one entry a section
 */
export function buildSearchIndex(pages) {
  const index = new MiniSearch(INDEX_OPTIONS);
  let id = 0;
  for (const { page, rendered } of pages) {
    for (const { title, anchor, text } of rendered.sections) {
      if (text === "" && anchor !== "") continue;
      const shown = text.length > SHOWN ? `${text.slice(0, text.lastIndexOf(" ", SHOWN))} ...` : text;
      const way = anchor === "" ? page.out : `${page.out}#${anchor}`;
      index.add({
        id: id++,
        title,
        page: page.title,
        kind: page.kind,
        weight: page.weight,
        way,
        text,
        shown,
      });
    }
  }
  return index;
}
