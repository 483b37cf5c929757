/** How the index of words is made and read: the same where it is written and in the browser. */
export const INDEX_OPTIONS = {
  fields: ["title", "page", "text"],
  storeFields: ["title", "page", "kind", "weight", "way", "shown"],
  processTerm: wordStem,
};

export const SEARCH_OPTIONS = {
  boost: { title: 4, page: 3 },
  prefix: (/** @type {string} */ term) => term.length > 2,
  fuzzy: (/** @type {string} */ term) => (term.length > 4 ? 0.25 : false),
  combineWith: "AND",
  boostDocument: (_id, _term, stored) => Number(stored?.weight ?? 1),
};

/** A word without its plural: "founts" is found by "fount". Undefined for what is no word. */
export function wordStem(term) {
  const word = term.toLowerCase();
  if (!/[\p{L}\p{N}]/u.test(word)) return undefined;
  return /[^su]s$/.test(word) && word.length > 3 ? word.slice(0, -1) : word;
}
