import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { buildCommand, headfall } from "../command/run-headfall.js";
import { keysIn, namesInCode } from "./documents.js";

beforeAll(buildCommand, 120_000);

const page = readFileSync(new URL("../../docs/reference/time-results.md", import.meta.url), "utf8");
const AWAY = "docs/examples/alder-bank-five-days-away.json";
const RAIN = "docs/examples/alder-bank-rain-on-the-coop.json";
const MEAT_BIRDS = "docs/examples/alder-bank-meat-birds.json";

const CASES: readonly (readonly [format: string, words: readonly string[]])[] = [
  ["headfall lasts", ["lasts", AWAY]],
  ["headfall lasts", ["lasts", RAIN, "--day", "2026-07-04"]],
  ["headfall away", ["away", AWAY, "--days", "5"]],
  ["headfall away", ["away", AWAY, "--days", "20"]],
  ["headfall away", ["away", MEAT_BIRDS]],
  ["headfall mark", ["mark", AWAY, "--source", "bucket", "--level", "20 cm"]],
  ["headfall day", ["day", AWAY]],
  ["headfall days", ["day", AWAY, "--days", "2"]],
  ["headfall rain", ["rain", RAIN, "--example", "seattle"]],
];

test.each(CASES)("every key of %s, as %j prints it, is in its part of time-results.md", (format, words) => {
  const run = headfall([...words, "--json"]);
  expect(run.stderr).toBe("");
  const document = JSON.parse(run.stdout);
  expect(document).toMatchObject({ format, version: 1 });
  const documented = namesInCode(page, format);
  expect([...new Set(keysIn(document))].filter((key) => !documented.has(key))).toEqual([]);
  // Days are written as plans have them.
  for (const day of [document.day, document.firstDay, document.carrying?.day])
    if (day !== undefined) expect(day).toMatch(/^\d{4}-\d{2}-\d{2}$/);
});
