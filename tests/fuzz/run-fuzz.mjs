/**
 * Gives a reader of text from outside ever stranger texts, led by which of its branches they reach.
 *   npm run fuzz                                   each reader for a minute
 *   npm run fuzz -- plan --seconds 600 --seed 3    one of them: plan, plans, rain, air, link, batch, survey
 * What makes a reader throw, take over a second, fill the memory, or read otherwise a second time is made small and printed.
 */
import { createHash } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { bundleForNode } from "../night/bundle.mjs";
import { countBranches } from "./count-branches.mjs";

const top = fileURLToPath(new URL("../..", import.meta.url));
const folder = `${top}node_modules/.cache/fuzz`;
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { seconds: { type: "string", default: "60" }, seed: { type: "string", default: "1" } },
});

mkdirSync(folder, { recursive: true });
const counted = countBranches(
  (id) => /packages\/(?:hydraulics|ui)\/src\/.*\.ts$/.test(id) && !id.includes(".generated."),
);
const path = await bundleForNode({
  entry: fileURLToPath(new URL("fuzzed.ts", import.meta.url)),
  folder,
  name: "fuzzed.mjs",
  plugins: [counted.plugin],
});
globalThis.__branches = new Uint32Array(counted.count());
const { READERS, beginWith, fuzz } = await import(pathToFileURL(path).href);

let faulty = 0;
for (const reader of positionals.length > 0 ? positionals : Object.keys(READERS)) {
  if (!(reader in READERS))
    throw new Error(`There is no reader ${reader}: ${Object.keys(READERS).join(", ")}.`);
  const { texts, kept, branches, found } = await fuzz({
    reader,
    seed: Number(values.seed),
    beginWith: await beginWith(reader),
    until: Date.now() + 1000 * Number(values.seconds),
    tellFound: (one) => tellFound(reader, one),
  });
  faulty += found;
  process.stdout.write(
    `${reader}: ${texts} texts, ${kept.length} kept, ${branches} branches, ${found} faults\n`,
  );
}
process.exitCode = faulty > 0 ? 1 : 0;

function tellFound(reader, { text, faults }) {
  const name = `${reader}-${createHash("sha256").update(text).digest("hex").slice(0, 8)}.txt`;
  writeFileSync(`${folder}/${name}`, text);
  process.stdout.write(
    `${reader}: ${faults[0]}\n  ${JSON.stringify(text.slice(0, 200))}\n  ${folder}/${name}, once mended to be kept in tests/fuzz/kept/\n`,
  );
}
