/**
 * A long search for plans that break a promise, on all cores but one.
 *   npm run night                                     1,000,000 random plans and 100,000 hostile documents
 *   npm run night -- --plans 5000 --documents 500     fewer
 *   npm run night -- --seed 42000                     from this number on; each plan has a number, and is always the same
 *   npm run night -- --jobs 2                         threads
 * What is found is made small, printed, and written to a file, to be made a test of in tests/regress. Stopped, it tells how to go on.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { bundleForNode } from "./bundle.mjs";
import { runBlocks } from "./run-blocks.mjs";

const top = fileURLToPath(new URL("../..", import.meta.url));
const folder = `${top}node_modules/.cache/night`;
const BLOCK = 100;

const { values } = parseArgs({
  options: {
    plans: { type: "string", default: "1000000" },
    documents: { type: "string", default: "100000" },
    seed: { type: "string", default: "1" },
    jobs: { type: "string", default: String(Math.max(1, availableParallelism() - 1)) },
  },
});
const [plans, documents, seed, jobs] = ["plans", "documents", "seed", "jobs"].map((name) => {
  const number = Number(values[name]);
  if (!Number.isInteger(number) || number < 0)
    throw new Error(`--${name} is ${values[name]}; it is a whole number`);
  return number;
});

mkdirSync(folder, { recursive: true });
const worker = await bundleForNode({
  entry: fileURLToPath(new URL("night-worker.ts", import.meta.url)),
  folder,
  name: "night-worker.mjs",
});
let faulty = 0;
for (const [kind, count] of [
  ["plans", plans],
  ["documents", documents],
]) {
  const done = await runBlocks({ worker, jobs, kind, from: seed, to: seed + count, block: BLOCK, tellFound });
  process.stdout.write(`${done.cases} ${kind} from number ${seed}: ${done.found} with a fault\n`);
  faulty += done.found;
  if (done.isStopped) {
    process.stdout.write(
      `Stopped. To go on: npm run night -- --${kind} ${seed + count - done.next} --seed ${done.next}\n`,
    );
    break;
  }
}
process.exitCode = faulty > 0 ? 1 : 0;

function tellFound({ kind, number, faults, document }) {
  const path = `${folder}/${kind}-${number}.json`;
  if (document !== undefined) writeFileSync(path, `${JSON.stringify(document, null, 2)}\n`);
  const keep = document === undefined ? "" : `\n  ${path}, to be made a test of in tests/regress`;
  process.stdout.write(`${kind} ${number}: ${faults.slice(0, 3).join("\n  ")}${keep}\n`);
}
