import { existsSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { listDocuments, proseOf, readDocument, TOP } from "./documents.js";

const links = listDocuments().flatMap((file) =>
  [...proseOf(readDocument(file)).matchAll(/\]\(([^)\s]+)\)/g)]
    .map((found) => found[1]!)
    .filter((target) => !/^[a-z]+:/.test(target))
    .map((target) => ({ file, target })),
);

/** Anchors as they are made from headings: lower case, no punctuation, dashes for spaces. */
function anchorsOf(file: string): string[] {
  return [...readDocument(file).matchAll(/^#+ (.+)$/gm)].map((found) =>
    found[1]!
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s-]/gu, "")
      .trim()
      .replaceAll(/\s/g, "-"),
  );
}

function isBroken({ file, target }: { file: string; target: string }): boolean {
  const [path, anchor] = target.split("#") as [string, string?];
  const place = path === "" ? file : join(dirname(file), path);
  if (!existsSync(join(TOP, place))) return true;
  if (anchor === undefined || statSync(join(TOP, place)).isDirectory()) return false;
  return place.endsWith(".md") && !anchorsOf(place).includes(anchor);
}

describe("relative links", () => {
  it("are found in the documents", () => {
    expect(links.length).toBeGreaterThan(10);
  });

  it("lead to a file, folder or heading of the checkout", () => {
    expect(links.filter(isBroken).map(({ file, target }) => `${file}: ${target}`)).toEqual([]);
  });
});
