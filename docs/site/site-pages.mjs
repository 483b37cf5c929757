/** Which documents become pages, of what kind each is, and in what order they stand. */
import { readdirSync, readFileSync } from "node:fs";
import { posix } from "node:path";
import { fileURLToPath } from "node:url";

export const DOCS = fileURLToPath(new URL("..", import.meta.url));

/** The kinds of page, as they stand in the list: by what a reader comes for. The first that fits is taken. */
const KINDS = [
  { name: "To begin", fits: /^(README|tutorial)\.md$/, weight: 1.5 },
  { name: "To do something", fits: /^how-to\//, weight: 1.5 },
  { name: "To look something up", fits: /^(reference\/(?!api\/)|examples\/)/, weight: 0.8 },
  { name: "Names of the library", fits: /^reference\/api\//, weight: 0.7 },
  { name: "To check it by hand", fits: /^method\//, weight: 1 },
  { name: "To know why it is so", fits: /^decisions\//, weight: 0.8 },
  { name: "To look something up", fits: /^/, weight: 0.4 },
];

/** Where an order is written down: the links of these documents, in turn. */
const ORDER_OF = ["README.md", "method/README.md", "reference/api/README.md"];

const isDocument = (path) => path.endsWith(".md") && !/(^|\/)(site|dist|node_modules)\//.test(path);

/**
 * Every document of docs/, read.
 *
 * @returns {{path: string, text: string, title: string, kind: string, weight: number, out: string}[]}
 *   path from docs/; its first heading; its kind and how much that counts in a search; where the page goes
 */
export function readPages(folder = DOCS) {
  const paths = readdirSync(folder, { recursive: true })
    .map((path) => path.replaceAll("\\", "/"))
    .filter(isDocument);
  const pages = paths.map((path) => pageOf(path, readFileSync(`${folder}/${path}`, "utf8")));
  const rank = rankOf(pages);
  return pages.sort((a, b) => rank(a.path) - rank(b.path) || (a.path < b.path ? -1 : 1));
}

export function pageOf(path, text) {
  const { name, weight } = KINDS.find(({ fits }) => fits.test(path));
  const title = /^# (.+)$/m.exec(text)?.[1].replaceAll("`", "") ?? path;
  return { path, text, title, kind: name, weight, out: outOf(path) };
}

/** The pages by kind, in the order of kinds. */
export function pagesByKind(pages) {
  const names = [...new Set(KINDS.map(({ name }) => name))];
  return names
    .map((name) => ({ name, pages: pages.filter(({ kind }) => kind === name) }))
    .filter((kind) => kind.pages.length > 0);
}

/** A README is the page of its folder. */
export const outOf = (path) => path.replace(/README\.md$/, "index.md").replace(/\.md$/, ".html");

function rankOf(pages) {
  const told = ORDER_OF.flatMap((from) => [from, ...linksIn(pages.find(({ path }) => path === from))]);
  return (path) => (told.includes(path) ? told.indexOf(path) : told.length);
}

function linksIn(page) {
  if (page === undefined) return [];
  const links = [...page.text.matchAll(/\]\(([^)\s#]+)/g)].map((found) => found[1]);
  return links.map((link) => posix.join(posix.dirname(page.path), link));
}
