/**
 * Writes docs/reference/api/: every public name of both packages with what its comment says, a page for each folder of
 * the sources. Needs the packages to be built.
 *   npm run api                      write
 *   node docs/write-api.mjs --check  write nothing; exit status 1 when something is out of date
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { writePage } from "./api-page.mjs";
import { readApi } from "./read-api.mjs";
import { RESULTS } from "./run-examples.mjs";

const at = (path) => new URL(path, import.meta.url);
const folder = at("reference/api/");
const sources = JSON.parse(readFileSync(at("../reference-tables/sources.json"), "utf8"));
const entryOf = (name) => fileURLToPath(at(`../packages/${name}/dist/index.d.ts`));

/** Folders of the library, in the order water flows through it, with what they hold. */
const FOLDERS = [
  ["units", "Days and quantities"],
  ["document", "Plans and records"],
  ["tables", "Tables"],
  ["birds", "Birds: formulas"],
  ["physics", "Water, air, sun, frost, loads: formulas"],
  ["numerics/cutting", "Cutting pipe from lengths"],
  ["numerics/lending", "Lending pieces over periods"],
  ["model", "Line, flock and yard in SI"],
  ["solve", "The line solved"],
  ["simulate", "Crowd, day, level and rain through time"],
  ["judge", "Verdicts"],
  ["judge/sureness", "Sure or close call"],
  ["judge/birds", "What birds drink and need"],
  ["judge/time", "How long it lasts, going away, marks, days"],
  ["judge/rain", "Rain"],
  ["judge/mishaps", "Mishaps and guards"],
  ["judge/mishaps/waterers", "Mishaps of loose waterers, and guards"],
  ["judge/trouble", "What is wrong, from what is seen"],
  ["judge/weather", "Frost and heat"],
  ["judge/yard", "Loose waterers"],
  ["judge/year", "A year and its kit"],
  ["judge/build", "Building"],
  ["search", "Comparing, and the smallest change"],
  ["report", "Words and documents of a check"],
  ["report/birds", "Words and documents of birds"],
  ["report/sureness", "Words and documents of measurements"],
  ["report/time", "Words and documents of time and rain"],
  ["report/mishaps", "Words and documents of mishaps"],
  ["report/trouble", "Words and documents of trouble"],
  ["report/weather", "Words and documents of frost and heat"],
  ["report/yard", "Words and documents of loose waterers"],
  ["report/year", "Words, tables and calendar of a year"],
  ["report/build", "Words, tables and sheets for building"],
  ["report/cure", "Words and documents of cures and comparisons"],
];

const folderOf = ({ path }) => path.slice(0, Math.max(0, path.lastIndexOf("/")));
const fileOf = (name) => `${name.replaceAll("/", "-")}.md`;
/** The heading of a name on its page; the second that differs by its capitals only ends in -1. */
function anchorOf(one, names) {
  const low = one.name.toLowerCase();
  const before = names.slice(0, names.indexOf(one)).filter(({ name }) => name.toLowerCase() === low).length;
  return before === 0 ? low : `${low}-${before}`;
}

const declaredAs = ({ text, name }) => /^(?:abstract )?\w+ (\w+)/.exec(text)?.[1] ?? name;

const anchorIn = (one) =>
  anchorOf(
    one,
    library.filter((other) => folderOf(other) === folderOf(one)),
  );

const library = readApi(entryOf("hydraulics"));
const elements = readApi(entryOf("ui"));
const pages = [...libraryPages(), ["ui.md", pageOfElements()]];
writeAll([["README.md", index()], ...pages]);

function libraryPages() {
  const places = new Map(library.map((one) => [`${one.path} ${declaredAs(one)}`, one]));
  const linkTo = (found) => {
    const one = places.get(`${found.path} ${found.name}`);
    return one && `${fileOf(folderOf(one))}#${anchorIn(one)}`;
  };
  const unknown = library.find((one) => !FOLDERS.some(([name]) => name === folderOf(one)));
  if (unknown !== undefined) throw new Error(`write-api: no page is named for ${folderOf(unknown)}/.`);
  return FOLDERS.map(([name, title]) => {
    const names = library.filter((one) => folderOf(one) === name);
    return [fileOf(name), writePage({ title, names, linkTo, sources })];
  });
}

function pageOfElements() {
  const linkTo = (found) => {
    const one = elements.find(({ path, name }) => path === found.path && name === found.name);
    return one && `#${anchorOf(one, elements)}`;
  };
  const names = elements.map((one) => (one.kind === "class" ? withLink(one) : one));
  return writePage({ title: "Elements, events and edits of @headfall/ui", names, linkTo, sources });
}

/** Elements and events have a page of their own, with all their properties. */
function withLink(one) {
  const words = one.comment.words.replace(/\s*@\w+[\s\S]*$/, "");
  const more = "Its properties, methods, events and parts: [elements](../elements.md).";
  return { ...one, comment: { ...one.comment, words: `${words}\n\n${more}` }, types: [] };
}

/** All names in the order of the alphabet, and the results that examples stand on. */
function index() {
  const rows = FOLDERS.map(([name, title]) => {
    const names = library.filter((one) => folderOf(one) === name);
    return `- [${title}](${fileOf(name)}): ${names.length} names`;
  });
  const link = (one, file, anchor) => `[\`${one.name}\`](${file}#${anchor})`;
  const before = readFileSync(new URL("README.md", folder), "utf8");
  const made = {
    pages: [...rows, `- [Elements, events and edits of @headfall/ui](ui.md): ${elements.length} names`].join(
      "\n",
    ),
    results: [
      "```ts",
      ...Object.entries(RESULTS).map(([name, text]) => `const ${name} = ${text};`),
      "```",
    ].join("\n"),
    names: library.map((one) => link(one, fileOf(folderOf(one)), anchorIn(one))).join(",\n"),
    elements: elements.map((one) => link(one, "ui.md", anchorOf(one, elements))).join(",\n"),
  };
  return before.replace(
    /(<!-- (\w+) -->\n)[\s\S]*?(<!-- end -->)/g,
    (_, start, name, end) => `${start}\n${made[name]}\n\n${end}`,
  );
}

function writeAll(files) {
  mkdirSync(folder, { recursive: true });
  const isCheck = process.argv.includes("--check");
  const stale = readdirSync(folder).filter((name) => !files.some(([file]) => file === name));
  const changed = files.filter(([file, text]) => {
    const url = new URL(file, folder);
    return !existsSync(url) || readFileSync(url, "utf8") !== text;
  });
  if (isCheck && stale.length + changed.length > 0) {
    const names = [...stale, ...changed.map(([file]) => file)].join(", ");
    process.stderr.write(`reference/api is out of date (${names}): run npm run api\n`);
    process.exitCode = 1;
  }
  if (isCheck) return;
  for (const name of stale) rmSync(new URL(name, folder));
  for (const [file, text] of changed) writeFileSync(new URL(file, folder), text);
}
