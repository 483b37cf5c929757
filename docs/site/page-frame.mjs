/** The page around a document: what it may load, the way to all others, and the text itself. */
import { posix } from "node:path";
import { pagesByKind } from "./site-pages.mjs";

/** What the pages may load: their own files and nothing else. */
export const CONTENT_POLICY = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

export const escapeText = (text) =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

/**
 * @param page      the document
 * @param rendered  what `renderPage` made of it
 * @param pages     all documents, in order
 */
export function framePage(page, rendered, pages) {
  const way = (out) => posix.relative(posix.dirname(page.out), out) || posix.basename(out);
  const name = page.out === "index.html" ? "Headfall: how to use it" : `${escapeText(page.title)} · Headfall`;
  return `<!doctype html>
<html lang="en" data-root="${way("index.html").replace(/index\.html$/, "")}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${CONTENT_POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${name}</title>
<link rel="icon" type="image/svg+xml" href="${way("icon.svg")}">
<link rel="stylesheet" href="${way("site.css")}">
<script src="${way("light.js")}"></script>
<script type="module" src="${way("site.js")}"></script>
</head>
<body>
<a class="skip" href="#text">Skip to the text</a>
<header class="top">
<a class="home" href="${way("index.html")}">Headfall <span>how to use it</span></a>
<form role="search" class="search" hidden>
<label for="sought">Search</label>
<input id="sought" type="text" inputmode="search" autocomplete="off" spellcheck="false" aria-controls="found">
<div id="found" class="found" hidden></div>
<p role="status" class="spoken"></p>
</form>
<button type="button" class="pages-button" popovertarget="pages">All pages</button>
<a class="app" href="${way("../index.html")}">Draw a line</a>
</header>
<div class="columns">
<nav id="pages" popover aria-label="All pages">
<button type="button" class="pages-button" popovertarget="pages" popovertargetaction="hide">Close</button>
${pagesByKind(pages)
  .map((kind) => kindView(kind, page, way))
  .join("\n")}
</nav>
<main id="text" tabindex="-1">
${contentsView(rendered.headings)}${rendered.html}${neighboursView(page, pages, way)}
</main>
</div>
</body>
</html>
`;
}

function kindView(kind, page, way) {
  const isOpen = kind.name === page.kind || kind.pages.length < 3;
  const items = kind.pages.map(({ out, title }) => {
    const here = out === page.out ? ' aria-current="page"' : "";
    return `<li><a href="${way(out)}"${here}>${escapeText(title)}</a></li>`;
  });
  return `<details class="kind"${isOpen ? " open" : ""}><summary>${kind.name}</summary><ul>\n${items.join("\n")}\n</ul></details>`;
}

/** What is on this page, where there is enough of it. */
function contentsView(headings) {
  const parts = headings.filter(({ level }) => level === 2);
  if (parts.length < 3) return "";
  const items = parts.map(({ anchor, text }) => `<li><a href="#${anchor}">${escapeText(text)}</a></li>`);
  return `<nav class="contents" aria-label="On this page"><details><summary>On this page</summary><ul>\n${items.join("\n")}\n</ul></details></nav>\n`;
}

/** The pages before and after it of the same kind. */
function neighboursView(page, pages, way) {
  const alike = pages.filter(({ kind }) => kind === page.kind);
  const at = alike.findIndex(({ out }) => out === page.out);
  const link = (other, word) =>
    other === undefined
      ? ""
      : `<a href="${way(other.out)}" rel="${word}"><span>${word === "prev" ? "Before" : "Next"}</span> ${escapeText(other.title)}</a>`;
  const both = link(alike[at - 1], "prev") + link(alike[at + 1], "next");
  return both === "" ? "" : `<nav class="neighbours" aria-label="Pages beside this one">${both}</nav>`;
}
