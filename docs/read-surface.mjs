/**
 * Reads all that versions promise: public names, commands and their options, keys of the plan file, documents. Needs the
 * packages to be built.
 *   node docs/read-surface.mjs          print it, a line each
 *   node docs/read-surface.mjs --add    add what is new to docs/public-surface.txt; what is gone stays, and versions.md tells of it
 */
import { readdirSync, readFileSync, realpathSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { readApi } from "./read-api.mjs";

const at = (path) => new URL(path, import.meta.url);
const LIST = at("public-surface.txt");

/** The lines of the list, as they were stored. */
export const storedSurface = () => readFileSync(LIST, "utf8").trim().split("\n");

/** The lines of the list, as the packages are now. */
export async function readSurface() {
  return [
    ...namesOf("hydraulics"),
    ...namesOf("ui"),
    ...(await commandsOf()),
    ...keysOf(JSON.parse(readFileSync(at("plan.schema.json"), "utf8"))),
    ...documentsOf(),
  ].sort();
}

function namesOf(name) {
  const entry = fileURLToPath(at(`../packages/${name}/dist/index.d.ts`));
  const isType = ({ kind }) => kind === "type" || kind === "interface";
  return readApi(entry).map((one) => `${name}: ${isType(one) ? "type" : "value"} ${one.name}`);
}

async function commandsOf() {
  const { COMMANDS } = await import("../packages/hydraulics/dist/command/help-commands.js");
  const { optionsOf } = await import("../packages/hydraulics/dist/command/command-options.js");
  const lists = Object.keys(COMMANDS).map(async (name) => {
    const { options, flags } = await optionsOf(name);
    return [`command: ${name}`, ...[...options, ...flags].map((option) => `command: ${name} --${option}`)];
  });
  return (await Promise.all(lists)).flat();
}

/** Every key of the plan file by its path; `[]` for the entries of a list, `*` for names of one's own. */
function keysOf(schema) {
  const found = new Set();
  const walk = (part, path) => {
    for (const one of part.anyOf ?? []) walk(one, path);
    for (const [key, inside] of Object.entries(part.properties ?? {})) {
      found.add(`plan: ${path}${key}`);
      walk(inside, `${path}${key}.`);
    }
    if (part.items !== undefined) walk(part.items, `${path.slice(0, -1)}[].`);
    if (typeof part.additionalProperties === "object") walk(part.additionalProperties, `${path}*.`);
  };
  walk(schema, "");
  return [...found];
}

/** Every document of the command, by its name and version. */
function documentsOf() {
  const folder = at("../packages/hydraulics/dist/report/");
  const texts = readdirSync(folder, { recursive: true })
    .filter((path) => /documents?\.js$/.test(path))
    .map((path) => readFileSync(new URL(path.replaceAll("\\", "/"), folder), "utf8"));
  const names = texts.flatMap((text) => [...text.matchAll(/"headfall ([a-z ]+)"/g)].map(([, name]) => name));
  return [...new Set(names)].map((name) => `document: headfall ${name}, version 1`);
}

if (realpathSync(process.argv[1] ?? ".") === fileURLToPath(import.meta.url)) {
  const surface = await readSurface();
  if (process.argv.includes("--add"))
    writeFileSync(LIST, `${[...new Set([...storedSurface(), ...surface])].sort().join("\n").trim()}\n`);
  else process.stdout.write(`${surface.join("\n")}\n`);
}
