/** One document: its text as HTML, its headings, where it leads to, and what a search should find in it. */
import { existsSync, statSync } from "node:fs";
import { posix } from "node:path";
import MarkdownIt from "markdown-it";
import { headingAnchor } from "./heading-anchor.mjs";
import { livePlaces } from "./live-places.mjs";
import { DOCS, outOf } from "./site-pages.mjs";

const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false });
markdown.use(livePlaces);

/** Tables scroll inside themselves, so that the page does not scroll sideways on a phone. */
markdown.renderer.rules.table_open = () => '<div class="scroll"><table>\n';
markdown.renderer.rules.table_close = () => "</table></div>\n";
// The policy of the pages takes no style of a single cell.
for (const cell of ["th_open", "td_open"]) {
  markdown.renderer.rules[cell] = (tokens, at, options, _env, self) => {
    const token = tokens[at];
    const side = /right|center/.exec(token.attrGet("style") ?? "")?.[0];
    token.attrs = side === undefined ? null : [["class", side]];
    return self.renderToken(tokens, at, options);
  };
}
markdown.renderer.rules.heading_close = (tokens, at) =>
  ` <a class="anchor" href="#${tokens[at].meta}" aria-hidden="true" tabindex="-1">#</a></${tokens[at].tag}>\n`;
// Lowered and raised letters are the only HTML the documents use.
markdown.inline.ruler.before("html_inline", "sub_sup", (state, isSilent) => {
  const found = /^<(\/?(?:sub|sup))>/.exec(state.src.slice(state.pos, state.pos + 6));
  if (found === null) return false;
  if (!isSilent) state.push("html_inline", "", 0).content = found[0];
  state.pos += found[0].length;
  return true;
});

/**
 * @param page   of `readPages`
 * @returns {{html: string, headings: {level: number, text: string, anchor: string}[],
 *   links: {target: string, anchor: string}[], files: string[], hasLive: boolean,
 *   sections: {title: string, anchor: string, text: string}[]}}
 *   links to other pages by their place on the site; other files it leads to, by their path from docs/
 */
export function renderPage(page) {
  const tokens = markdown.parse(page.text, {});
  const headings = markHeadings(tokens);
  const { links, files } = turnLinks(tokens, page);
  const hasLive = tokens.some(
    ({ type, content }) => type === "html_block" && content.includes('class="live"'),
  );
  const html = markdown.renderer.render(tokens, markdown.options, {});
  return { html, headings, links, files, hasLive, sections: sectionsOf(tokens, page.title) };
}

const wordsOf = (inline) =>
  (inline.children ?? [])
    .map(({ type, content }) => (/^(text|code_inline)$/.test(type) ? content : " "))
    .join("");

function markHeadings(tokens) {
  const taken = new Set();
  return tokens.flatMap((token, at) => {
    if (token.type !== "heading_open") return [];
    const text = wordsOf(tokens[at + 1])
      .replace(/ +/g, " ")
      .trim();
    const anchor = headingAnchor(text, taken);
    token.attrSet("id", anchor);
    tokens[at + 2].meta = anchor;
    return [{ level: Number(token.tag[1]), text, anchor }];
  });
}

/** Turns what leads to documents and files into what leads to pages and copies; all else is left. */
function turnLinks(tokens, page) {
  const links = [];
  const files = [];
  const inside = tokens.flatMap((token) => token.children ?? []);
  for (const token of inside.filter(({ type }) => type === "link_open" || type === "image")) {
    const key = token.type === "image" ? "src" : "href";
    const address = token.attrGet(key);
    if (/^[a-z]+:/.test(address)) continue;
    const [path, anchor = ""] = address.split("#");
    const place = path === "" ? page.path : posix.join(posix.dirname(page.path), path);
    const { target, isFile } = targetOf(place, page);
    if (isFile) files.push(place);
    else links.push({ target, anchor: decodeURIComponent(anchor) });
    const way = posix.relative(posix.dirname(page.out), target) || posix.basename(target);
    token.attrSet(key, `${path === "" ? "" : way}${anchor === "" ? "" : `#${anchor}`}`);
  }
  return { links, files };
}

function targetOf(place, page) {
  if (place.endsWith(".md") && !place.startsWith("../")) return { target: outOf(place), isFile: false };
  if (!existsSync(`${DOCS}${place}`)) throw new Error(`${page.path} leads to ${place}, which is not there.`);
  if (statSync(`${DOCS}${place}`).isDirectory()) {
    return { target: posix.join(place, "index.html"), isFile: false };
  }
  return { target: fileTarget(place), isFile: true };
}

/** Where a file that is no page goes: its own place, or under files/ when it is not of docs/. HTML is shown, not run. */
export const fileTarget = (place) => place.replace(/^(\.\.\/)+/, "files/").replace(/\.html$/, ".html.txt");

/** The text from one heading to the next, headings of the fourth rank and below left in. */
function sectionsOf(tokens, title) {
  const sections = [{ title, anchor: "", text: "" }];
  tokens.forEach((token, at) => {
    if (token.type === "heading_open" && /^h[23]$/.test(token.tag)) {
      sections.push({ title: wordsOf(tokens[at + 1]), anchor: tokens[at + 2].meta, text: "" });
    } else if (token.type === "inline" && tokens[at - 1]?.tag !== "h1") {
      if (tokens[at - 1]?.type !== "heading_open" || tokens[at - 1].tag > "h3")
        sections.at(-1).text += `${wordsOf(token)} `;
    } else if (token.type === "fence") sections.at(-1).text += `${token.content} `;
  });
  return sections.map((section) => ({ ...section, text: section.text.replace(/\s+/g, " ").trim() }));
}
