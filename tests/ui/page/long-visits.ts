/**
 * Tests of the page that take longest, for what they look at does: a second engine, a server gone and back, tabs and
 * storage against each other, links in other browsers, very large lines. They are most of the time of all visits;
 * `npm test -- --all` makes them, as does naming one.
 */
export const LONG_VISITS = [
  "day",
  "offline",
  "own-page",
  "pictures",
  "plans",
  "plans-kept",
  "plans-tabs",
  "rain",
  "second-engine",
  "share",
  "sheet-print",
  "site",
  "sketch-eyes",
  "sketch-large",
].map((name) => `tests/ui/page/${name}.test.ts`);
