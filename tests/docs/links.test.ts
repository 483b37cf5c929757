import { existsSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { headingAnchor } from "../../docs/site/heading-anchor.mjs";
import { listDocuments, proseOf, readDocument, TOP } from "./documents.js";

const links = listDocuments().flatMap((file) =>
  [...proseOf(readDocument(file)).matchAll(/\]\(([^)\s]+)\)/g)]
    .map((found) => found[1]!)
    .filter((target) => !/^[a-z]+:/.test(target))
    .map((target) => ({ file, target })),
);

const anchors = new Map<string, Set<string>>();

/** The anchors of a document's headings, as the pages made of it have them. */
function anchorsOf(file: string): Set<string> {
  const known = anchors.get(file);
  if (known !== undefined) return known;
  const taken = new Set<string>();
  for (const found of readDocument(file).matchAll(/^#+ (.+)$/gm)) headingAnchor(found[1]!, taken);
  anchors.set(file, taken);
  return taken;
}

function isBroken({ file, target }: { file: string; target: string }): boolean {
  const [path, anchor] = target.split("#") as [string, string?];
  const place = path === "" ? file : join(dirname(file), path);
  if (!existsSync(join(TOP, place))) return true;
  if (anchor === undefined || statSync(join(TOP, place)).isDirectory()) return false;
  return place.endsWith(".md") && !anchorsOf(place).has(anchor);
}

describe("relative links", () => {
  it("are found in the documents", () => {
    expect(links.length).toBeGreaterThan(10);
  });

  it("lead to a file, folder or heading of the checkout", () => {
    expect(links.filter(isBroken).map(({ file, target }) => `${file}: ${target}`)).toEqual([]);
  });
});
