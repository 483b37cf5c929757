import { expect, test } from "vitest";
import { isTypeScript, readTree } from "./source-files.js";

/** What makes parts of a page, or code, of a text. */
const MADE_OF_TEXT =
  /\b(?:innerHTML|outerHTML|insertAdjacentHTML|srcdoc|unsafeHTML|unsafeSVG|unsafeCSS|document\.write|eval\(|new Function\b|createContextualFragment)/;

test("no part of the page is made of a text as markup, and no code either, so that a name stays a name", () => {
  const files = readTree("packages", (path) => isTypeScript(path) && path.includes("/src/"));
  expect(files.length).toBeGreaterThan(100);
  expect(files.filter(({ text }) => MADE_OF_TEXT.test(text)).map(({ path }) => path)).toEqual([]);
  expect(MADE_OF_TEXT.test("row.innerHTML = name")).toBe(true);
});
