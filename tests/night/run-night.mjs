/**
 * A long search for hostile documents and random plans that break a promise, on all cores but one.
 *   npm run night                                     100,000 hostile documents, and 1,000,000 random plans solved at every moment
 *   npm run night -- --plans 5000 --documents 500     fewer
 *   npm run night -- --seed 42000                     from this number on; each plan has a number, and is always the same
 *   npm run night -- --checked-one-in 11              one plan in so many is checked in full as well
 *   npm run night -- --asked-one-in 1999              and one in so many asked every question there is
 *   npm run night -- --jobs 2                         threads
 *   npm run night -- --go-on                          from where the last night stopped, as it was asked
 * What is found is made small, printed, and written to a file, to be made a test of in tests/regress.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { bundleForNode } from "./bundle.mjs";
import { runBlocks } from "./run-blocks.mjs";

const top = fileURLToPath(new URL("../..", import.meta.url));
const folder = `${top}node_modules/.cache/night`;
/** How far the night has come, after every block: what was asked, and of each kind the cases done and those at fault. */
const diary = `${folder}/diary.json`;
const BLOCK = 500;

const { values } = parseArgs({
  options: {
    plans: { type: "string", default: "1000000" },
    documents: { type: "string", default: "100000" },
    seed: { type: "string", default: "1" },
    // Both without a divisor of what the sizes of plans go by, so that plans of every size come up.
    "checked-one-in": { type: "string", default: "11" },
    "asked-one-in": { type: "string", default: "1999" },
    jobs: { type: "string", default: String(Math.max(1, availableParallelism() - 1)) },
    "go-on": { type: "boolean", default: false },
  },
});
const jobs = whole("jobs", 1);
mkdirSync(folder, { recursive: true });
const night = values["go-on"] ? kept() : begun();
const worker = await bundleForNode({
  entry: fileURLToPath(new URL("night-worker.ts", import.meta.url)),
  folder,
  name: "night-worker.mjs",
});
for (const kind of ["documents", "plans"]) {
  const { count, done, found } = night[kind];
  const { isStopped } = await runBlocks({
    worker,
    oneIn: night.oneIn,
    jobs,
    kind,
    from: night.seed + done,
    to: night.seed + count,
    block: BLOCK,
    tellFound,
    tellDone: (next, faulty) => {
      Object.assign(night[kind], { done: next - night.seed, found: found + faulty });
      writeFileSync(diary, `${JSON.stringify(night, null, 2)}\n`);
    },
  });
  process.stdout.write(
    `${night[kind].done} ${kind} from number ${night.seed}: ${night[kind].found} with a fault\n`,
  );
  if (isStopped) {
    process.stdout.write("Stopped. To go on: npm run night -- --go-on\n");
    break;
  }
}
process.exitCode = night.plans.found + night.documents.found > 0 ? 1 : 0;

function begun() {
  return {
    seed: whole("seed", 0),
    oneIn: { checkedOneIn: whole("checked-one-in", 1), askedOneIn: whole("asked-one-in", 1) },
    documents: { count: whole("documents", 0), done: 0, found: 0 },
    plans: { count: whole("plans", 0), done: 0, found: 0 },
  };
}

function kept() {
  if (!existsSync(diary)) throw new Error("No night was begun here that could go on.");
  return JSON.parse(readFileSync(diary, "utf8"));
}

function whole(name, least) {
  const number = Number(values[name]);
  if (!Number.isInteger(number) || number < least)
    throw new Error(`--${name} is ${values[name]}; it is a whole number from ${least} up`);
  return number;
}

function tellFound({ kind, number, faults, document }) {
  const path = `${folder}/${kind}-${number}.json`;
  if (document !== undefined) writeFileSync(path, `${JSON.stringify(document, null, 2)}\n`);
  const keep = document === undefined ? "" : `\n  ${path}, to be made a test of in tests/regress`;
  process.stdout.write(`${kind} ${number}: ${faults.slice(0, 3).join("\n  ")}${keep}\n`);
}
