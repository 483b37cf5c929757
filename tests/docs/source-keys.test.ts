import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { loadSources } from "../../reference-tables/load-tables.mjs";
import { listDocuments, readDocument } from "./documents.js";

/** How well a source is known: the words that may stand behind its key. */
const KNOWN = ["seen as quoted", "from memory", "seen"] as const;

/** Citations in the documents: `source: key, place, seen`, up to a semicolon, bracket or full stop at a line's end. */
const cited = listDocuments("docs/").flatMap((file) =>
  [...readDocument(file).matchAll(/\b[Ss]ource:\s+([a-z]\w*(?:-\w+)+)([^;)\n]*(?:\n[^;)\n]+)?)/g)].map(
    (found) => ({
      file,
      key: found[1]!,
      words: found[2]!,
    }),
  ),
);

const src = new URL("../../packages/hydraulics/src/", import.meta.url);

/** By key, every wording that follows an `@source` in the code. */
function wordingsInCode(): Map<string, string[]> {
  const wordings = new Map<string, string[]>();
  for (const file of readdirSync(src, { recursive: true, encoding: "utf8" })) {
    if (!file.endsWith(".ts") || file.endsWith(".generated.ts")) continue;
    for (const found of readFileSync(new URL(file, src), "utf8").matchAll(/@source\s+([\w-]+)([^\n]*)/g))
      wordings.set(found[1]!, [...(wordings.get(found[1]!) ?? []), found[2]!]);
  }
  return wordings;
}

describe("source: key, in the documents", () => {
  it("is found", () => {
    expect(cited.length).toBeGreaterThan(30);
  });

  it("names a key of sources.json", () => {
    const sources = loadSources();
    expect(cited.filter(({ key }) => !(key in sources)).map(({ file, key }) => `${file}: ${key}`)).toEqual(
      [],
    );
  });

  it("says seen or from memory as the code does", () => {
    const wordings = wordingsInCode();
    const differs = cited.filter(({ key, words }) => {
      const said = KNOWN.find((known) => words.includes(known));
      const inCode = wordings.get(key);
      return said !== undefined && inCode !== undefined && !inCode.some((wording) => wording.includes(said));
    });
    expect(differs.map(({ file, key, words }) => `${file}: ${key}${words}`)).toEqual([]);
  });
});
