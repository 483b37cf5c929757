/**
 * `npm run bench`: figures taken side by side in one run, a table of every bar at the end, and all of it as JSON in
 * node_modules/.cache/headfall-bench.json. Nothing here passes or fails.
 *   npm run bench                    every part, in full
 *   npm run bench -- bars            the parts that a bar hangs on, shortly
 *   npm run bench -- laws rings      some parts
 *   npm run bench -- bars --write    also writes the table into docs/method/speed.md; `-- --write` alone measures nothing
 */

import { printBars } from "./bars.mjs";
import { measureBatch } from "./batch.mjs";
import { measureBirds } from "./birds.mjs";
import { openBook, openPart } from "./book.mjs";
import { measureChecks } from "./checks.mjs";
import { measureCure } from "./cure.mjs";
import { measureHosts } from "./hosts.mjs";
import { measureLaws } from "./laws.mjs";
import { measureMemory } from "./memory.mjs";
import { measureMishaps } from "./mishaps.mjs";
import { measureOnPage } from "./page.mjs";
import { measureLongDrags } from "./page-memory.mjs";
import { measureRings } from "./rings.mjs";
import { measureScipy } from "./scipy.mjs";
import { measureSure } from "./sure.mjs";
import { measureTrouble } from "./trouble.mjs";
import { writeSpeed } from "./write-speed.mjs";

/** Each part: what is told above it, and how it is measured; `inBars` where a bar hangs on it. */
const PARTS = {
  laws: {
    title: "One cold solve against the bare cost of its own laws, as often as it evaluates them",
    measure: measureLaws,
    inBars: true,
  },
  rings: {
    title: "10,000 points with 500 rings against the tree of that size",
    measure: measureRings,
    inBars: true,
  },
  scipy: {
    title: "The same network and tolerance by a sparse Newton written with scipy",
    measure: measureScipy,
    inBars: true,
  },
  checks: {
    title: "A whole check of 60 drinkers: four moments, both laws, to the verdicts",
    measure: measureChecks,
    inBars: true,
  },
  birds: {
    title: "Birds and time",
    measure: (bench, isShort) => measureBirds(bench, isShort ? { pairs: 1 } : {}),
    inBars: true,
  },
  cure: {
    title: "The cheapest cure: 12 runs of 6 sizes, 20 heights of the stand, 4e10 plans",
    measure: measureCure,
    inBars: true,
  },
  memory: {
    title: "Memory: what a prepared line holds, what its solver allocates, what solves leave behind",
    measure: measureMemory,
    inBars: true,
  },
  page: {
    title: "The page, as shipped, with the processor slowed down four times",
    measure: measureOnPage,
    inBars: true,
  },
  drags: {
    title: "The page dragged for long: what is left on its heap",
    measure: (bench, isShort) => measureLongDrags(bench, isShort ? { seconds: 90 } : {}),
    inBars: true,
  },
  mishaps: {
    title:
      "All mishaps of a plan and the guards of the worst twelve (wanted: 2 s for 60 drinkers, 60 s for 5,000)",
    measure: ({ row }) => measureMishaps(row),
  },
  trouble: {
    title: "What is wrong: faults made in the examples, told by a keeper who errs, looked for",
    measure: ({ row }) => measureTrouble(row),
  },
  sure: {
    title:
      "Sure or close: even draws against plain ones, samples that decide, and what 10,000 fresh plans say",
    measure: ({ row }) => measureSure(row),
  },
  batch: { title: "Many plans as JSON lines, through threads", measure: ({ row }) => measureBatch(row) },
  hosts: {
    title: "Many plans dealt out by GNU parallel, over processes or over logins",
    measure: ({ row }) => measureHosts(row),
  },
};

const words = process.argv.slice(2);
const asked = words.filter((word) => word !== "--write");
const isShort = asked.includes("bars");
const names = Object.keys(PARTS).filter((name) => {
  if (asked.length === 0) return !words.includes("--write");
  return asked.includes(name) || (isShort && PARTS[name].inBars);
});
const unknown = asked.filter((name) => name !== "bars" && PARTS[name] === undefined);
if (unknown.length > 0)
  throw new Error(
    `No part is called ${unknown.join(", ")}; there are bars, ${Object.keys(PARTS).join(", ")}.`,
  );

const book = openBook();
console.log(book.machine);
for (const name of names) {
  console.log(`\n${PARTS[name].title}`);
  const part = openPart(book, name);
  await PARTS[name].measure(part, isShort);
  part.keep();
}
printBars(book);
if (words.includes("--write")) writeSpeed(book);
