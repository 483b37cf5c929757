/**
 * Writes docs/reference/licences.md from package-lock.json: what comes with the library and the page, and what is
 * needed only to work on them.
 *   npm run licences
 */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/** Tools of which something stays in what they make, and what that is. */
export const LEAVES_SOMETHING = {
  "vega-datasets": "one file of daily weather, an example in room *Rain*",
  "workbox-precaching": "in the page's `sw.js`, that works offline",
  "workbox-routing": "in the page's `sw.js`",
  "workbox-strategies": "in the page's `sw.js`",
  minisearch: "in the search of the documents as pages",
};

const locked = () => JSON.parse(readFileSync(here("../package-lock.json"), "utf8")).packages;

/** All packages that a package of ours needs when it runs, itself left out: name to its entry in the lock. */
export function neededBy(folder) {
  const packages = locked();
  const found = new Map();
  const follow = (path) => {
    const { dependencies = {} } = packages[path];
    for (const name of Object.keys(dependencies)) {
      const at = placeOf(packages, path, name);
      if (found.has(at)) continue;
      found.set(at, { name, ...packages[at] });
      follow(packages[at].link ? packages[at].resolved : at);
    }
  };
  follow(folder);
  return [...found.values()].filter(({ link }) => !link);
}

/** Where npm has put a package that another one asks for: beside it or in a folder above. */
function placeOf(packages, from, name) {
  for (let at = from; ; at = at.slice(0, Math.max(0, at.lastIndexOf("/")))) {
    const path = `${at === "" ? "" : `${at}/`}node_modules/${name}`;
    if (path in packages) return path;
    if (at === "") throw new Error(`${name}, which ${from} needs, is not in the lock`);
  }
}

/** The page as text. */
export function licencesPage() {
  const library = neededBy("packages/hydraulics");
  const page = neededBy("packages/ui").filter(({ name }) => !library.some((one) => one.name === name));
  const packages = Object.entries(locked()).filter(([path]) => path.includes("node_modules/"));
  const leaving = packages.flatMap(([path, entry]) => {
    const name = path.slice(path.lastIndexOf("node_modules/") + 13);
    return name in LEAVES_SOMETHING ? [{ ...entry, name }] : [];
  });
  const others = packages.filter(([, { dev }]) => dev);
  return `# Licences

Headfall is under the [MIT licence](../../LICENSE). This list of what it is made with is written by \`npm run licences\` from
\`package-lock.json\`, and a test holds it to that. No package listed here runs a script when it is installed.

## What comes with the library

Needed by \`@headfall/hydraulics\` when it runs.

${table(library)}
## What comes with the page besides

Needed by \`@headfall/ui\`. A bundler takes only what is used: of d3 a few of its parts, of mathjs what reads and works out typed sums.

${table(page)}
Their notices come with what takes them in: \`licences.md\` in the page's folder, \`headfall.licences.md\` beside \`headfall.js\`.

Of the tools, something stays in what they make:

| package | version | licence | what stays |
|---|---|---|---|
${leaving.map(({ name, version, license }) => `| ${name} | ${version} | ${license} | ${LEAVES_SOMETHING[name]} |\n`).join("")}
## What is needed only to work on it

Compilers, bundlers, tests: ${others.length} packages, copies for other systems counted. Nothing else of them is in the library or the page.

| licence | packages |
|---|---|
${tally(others.map(([, { license }]) => license))}
The registry's list of known weaknesses is asked by \`npm audit\`, which needs the network and a registry that answers it; no test does.
`;
}

const table = (packages) => `| package | version | licence |
|---|---|---|
${packages
  .sort((a, b) => (a.name < b.name ? -1 : 1))
  .map(({ name, version, license }) => `| ${name} | ${version} | ${license} |\n`)
  .join("")}`;

function tally(licences) {
  const counts = new Map();
  for (const one of licences) counts.set(one, (counts.get(one) ?? 0) + 1);
  return [...counts]
    .sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))
    .map(([licence, count]) => `| ${licence} | ${count} |\n`)
    .join("");
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(here("reference/licences.md"), licencesPage());
