/**
 * Writes docs/reference/sizes.md: what a page's bundler takes from the built library for one import.
 *   node docs/write-sizes.mjs
 */
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "vite";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/** What is imported, and what for. */
export const IMPORTS = [
  ["headLossHazenWilliams", "one formula"],
  ["volumeAtLevel", "the water in a vessel at a level"],
  ["readQuantity", "a quantity as typed, with its units"],
  ["readPlan", "a plan file, or all that is wrong with it"],
  ["checkPlan", "heads, flows and verdicts"],
  ["*", "everything"],
];

/** Bytes of one import, minified, as they are and through gzip. */
export async function sizeOf(name) {
  const from = JSON.stringify(here("../packages/hydraulics/dist/index.js"));
  const code =
    name === "*"
      ? `import * as all from ${from}; globalThis.kept = all;`
      : `import { ${name} } from ${from}; globalThis.kept = ${name};`;
  const entry = "\0one-import";
  const plugin = {
    name: "one-import",
    resolveId: (id) => (id === "one-import" ? entry : undefined),
    load: (id) => (id === entry ? code : undefined),
  };
  const { output } = await build({
    configFile: false,
    root: here(".."),
    logLevel: "silent",
    plugins: [plugin],
    build: { write: false, target: "es2022", rollupOptions: { input: "one-import" }, modulePreload: false },
  });
  const text = output.map((piece) => piece.code ?? "").join("");
  return { bytes: Buffer.byteLength(text), gzip: gzipSync(text, { level: 9 }).length };
}

const inKilobytes = (bytes) => (bytes / 1000).toFixed(1);

async function writePage() {
  const rows = [];
  for (const [name, what] of IMPORTS) {
    const { bytes, gzip } = await sizeOf(name);
    rows.push(`| \`${name}\` | ${what} | ${inKilobytes(bytes)} | ${inKilobytes(gzip)} |`);
  }
  return `# What an import weighs

A bundler takes from \`@headfall/hydraulics\` only what is used. This is written by \`npm run sizes\`, from the built package, minified by the
bundler of the page, in kB of 1000 bytes; a test holds it to a tenth.

| import | what | kB | kB, gzip |
|---|---|---|---|
${rows.join("\n")}
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(here("reference/sizes.md"), await writePage());
