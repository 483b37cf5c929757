import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { beginWith } from "./begin-with.js";
import { faultsOfReading, fuzz } from "./fuzz-loop.js";
import { READERS } from "./readers.js";

const kept = fileURLToPath(new URL("kept/", import.meta.url));

/** A few texts each, the same every time; `npm run fuzz` goes on for as long as one likes. */
const TEXTS: Readonly<Record<string, number>> = { plan: 30, plans: 10, link: 30, batch: 5 };

test.each(Object.keys(READERS))("the reader of %s takes strange texts without a fault", async (reader) => {
  const found: unknown[] = [];
  const texts = TEXTS[reader] ?? 100;
  const tellFound = (one: unknown) => found.push(one);
  const ran = await fuzz({ reader, seed: 20_260_401, beginWith: await beginWith(reader), texts, tellFound });
  expect([ran.texts, found]).toEqual([texts, []]);
});

test.each(readdirSync(kept))("%s, which was once read wrongly, is read rightly", async (name) => {
  const reader = name.split("-")[0]!;
  expect(Object.keys(READERS)).toContain(reader);
  expect(await faultsOfReading(reader, readFileSync(kept + name, "utf8"))).toEqual([]);
});
