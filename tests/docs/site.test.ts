import { describe, expect, it } from "vitest";
import { renderSite } from "../../docs/site/build-site.mjs";
import { buildSearchIndex } from "../../docs/site/search-index.mjs";
import { SEARCH_OPTIONS, wordStem } from "../../docs/site/search-terms.mjs";
import { pageOf, readPages } from "../../docs/site/site-pages.mjs";
import { readPlan } from "../../packages/hydraulics/src/index.js";
import { findFences, listDocuments, readDocument } from "./documents.js";

// Fails with every link that leads nowhere.
const pages = renderSite();
const index = buildSearchIndex(pages);
const waysFor = (asked: string) => index.search(asked, SEARCH_OPTIONS).map((found) => String(found["way"]));

/** Renders one document that stands at `path`, on a site of its own. */
const renderAlone = (path: string, text: string) => renderSite([pageOf(path, text)])[0]!;

describe("the site", () => {
  it("has a page of every document of docs/, each in the list of all pages of each", () => {
    const documents = listDocuments().filter((path) => path.startsWith("docs/"));
    expect(pages.map(({ page }) => `docs/${page.path}`).sort()).toEqual(documents.sort());
    const home = pages.find(({ page }) => page.out === "index.html")!.html;
    for (const { page } of pages) expect(home).toContain(`<a href="${page.out}"`);
  });

  it("begins with the first ten minutes, and tells each journey as the list of documents does", () => {
    const paths = readPages().map(({ path }) => path);
    expect(paths.slice(0, 3)).toEqual(["README.md", "tutorial.md", "how-to/sketch-a-line.md"]);
  });

  it("has no script and no style in its pages, only files of its own", () => {
    for (const { page, html } of pages) {
      expect([page.path, /<script(?! src=| type="module" src=)|<style| style=| on\w+=/.test(html)]).toEqual([
        page.path,
        false,
      ]);
      expect(html.match(/<(script|link|img)[^>]* (src|href)="(https?:)?\/\//g)).toBeNull();
    }
  });

  it("shows a plan to work on in the tutorial and in at least five how-tos, each of which can be read", () => {
    const live = pages.filter(({ rendered }) => rendered.hasLive).map(({ page }) => page.path);
    expect(live).toContain("tutorial.md");
    expect(live.filter((path) => path.startsWith("how-to/")).length).toBeGreaterThanOrEqual(5);
    for (const path of live) {
      for (const { text } of findFences(
        readDocument(`docs/${path}`).split("<!-- live:").slice(1).join(""),
      ).filter(({ language }) => language === "json"))
        expect([path, readPlan(text).ok]).toEqual([path, true]);
    }
  });
});

describe("search", () => {
  it.each([
    ["fount", "how-to/founts-on-a-hill.html"],
    ["rain barrel", "how-to/rain-barrel.html"],
    ["chicks friday", "how-to/chicks-arrive.html"],
    ["away", "how-to/going-away.html"],
    ["friction", "method/friction.html"],
  ])("for %s leads to %s among the first five", (asked, way) => {
    expect(
      waysFor(asked)
        .slice(0, 5)
        .map((found) => found.split("#")[0]),
    ).toContain(way);
  });

  it("finds words half typed, misspelt, in the plural or not; and nothing for nonsense", () => {
    expect(waysFor("nippl").length).toBeGreaterThan(5);
    expect(waysFor("nippel").length).toBeGreaterThan(5);
    expect(waysFor("founts")).toEqual(waysFor("fount"));
    expect(waysFor("xyzzyx")).toEqual([]);
    expect([wordStem("Barrels"), wordStem("glass"), wordStem("--")]).toEqual(["barrel", "glass", undefined]);
  });
});

describe("a page", () => {
  it("leads to the pages of other documents, to copies of files, and says what leads nowhere", () => {
    const { rendered } = renderAlone(
      "how-to/one.md",
      "# One\n\n[Pipes](../../reference-tables/pipes.csv) [here](#one)",
    );
    expect(rendered.html).toContain('href="../files/reference-tables/pipes.csv"');
    expect(rendered.files).toEqual(["../reference-tables/pipes.csv"]);
    expect(() => renderAlone("one.md", "# One\n\n[Two](two.md), [there](#there)")).toThrow(
      /no page two\.html\none\.md: one\.html has no heading #there/,
    );
    expect(() => renderAlone("one.md", "# One\n\n[Two](two.csv)")).toThrow(/two\.csv, which is not there/);
  });

  it("shows signs of the document as signs, whatever they say", () => {
    const { html, rendered } = renderAlone(
      "one.md",
      '# A <b> "c"\n\n<script>alert(1)</script> x<sub>2</sub>\n',
    );
    expect(rendered.html).toContain("&lt;script&gt;alert(1)&lt;/script&gt; x<sub>2</sub>");
    expect(html).toContain("<title>A &lt;b&gt; &quot;c&quot; · Headfall</title>");
  });

  it("gives headings of one name anchors of their own", () => {
    const { rendered } = renderAlone("one.md", "# One\n\n## `a_b` c\n\n## `a_b` c\n");
    expect(rendered.headings.map(({ anchor }) => anchor)).toEqual(["one", "a_b-c", "a_b-c-1"]);
  });

  it("keeps comments to itself, and refuses one that asks for what cannot be shown", () => {
    expect(renderAlone("one.md", "# One\n\n<!-- of no\nconcern -->\n\nText").rendered.html).not.toContain(
      "concern",
    );
    expect(() => renderAlone("one.md", "# One\n\n<!-- live: lake -->\n\nText")).toThrow(/no such element/);
    expect(() => renderAlone("one.md", "# One\n\n<!-- live: line -->\n\nText")).toThrow(/neither a link/);
  });
});
