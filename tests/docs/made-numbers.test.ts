import { writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { findFences, listDocuments, readDocument, TOP } from "./documents.js";
import { FIGURES } from "./made/figures.js";

/**
 * Numbers of the documents that the library computes: each stands in a block below `<!-- made: name -->`.
 * `HEADFALL_DOCS=write` writes them anew; then read the change before it is kept.
 */
const made = listDocuments("docs/").flatMap((file) =>
  findFences(readDocument(file)).flatMap((fence) =>
    fence.made === undefined ? [] : [{ file, name: fence.made }],
  ),
);

describe("numbers made by the library", () => {
  it("each stand in a document", () => {
    expect([...new Set(made.map(({ name }) => name))].sort()).toEqual(Object.keys(FIGURES).sort());
  });

  it.each(made)("$name in $file is what the library gives", ({ file, name }) => {
    const document = readDocument(file);
    const fence = findFences(document).find((one) => one.made === name);
    if (fence === undefined) throw new Error(`${file} has no block for ${name}`);
    const text = FIGURES[name]!();
    if (process.env.HEADFALL_DOCS === "write") {
      const rest = document.slice(fence.end).replace(/^\n?/, "\n");
      writeFileSync(`${TOP}${file}`, document.slice(0, fence.start) + text + rest);
    } else expect(fence.text).toBe(text);
  });
});
