import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { CURE_KINDS } from "../../packages/hydraulics/src/search/cure-answer.js";
import { buildCommand, headfall } from "../command/run-headfall.js";
import { namesInCode } from "./documents.js";

beforeAll(buildCommand, 120_000);

const page = readFileSync(new URL("../../docs/reference/cure-result.md", import.meta.url), "utf8");
const documented = namesInCode(page);

/** Keys of a document; those of the plans in it have a page of their own. */
const keysIn = (value: unknown): string[] => {
  if (typeof value !== "object" || value === null) return [];
  if (Array.isArray(value)) return value.flatMap(keysIn);
  return Object.entries(value).flatMap(([key, inside]) => [key, ...(key === "plan" ? [] : keysIn(inside))]);
};

const BROODER = "docs/examples/alder-bank-brooder.json";
const HEN_HOUSE = "docs/examples/alder-bank-hen-house.json";

test.each([
  ["headfall cure", ["cure", BROODER, "--weeks", "0", "--margin", "20cm"]],
  [
    "headfall cure",
    ["cure", HEN_HOUSE, "--weeks", "0", "--margin", "90cm", "--stand-most", "0.5 m", "--most", "40"],
  ],
  ["headfall front", ["cure", BROODER, "--weeks", "0", "--front", "margin"]],
])("every key of %s, as %j prints it, is in cure-result.md", (format, words) => {
  const run = headfall([...words, "--json"]);
  expect(run.stderr).toBe("");
  const document = JSON.parse(run.stdout);
  expect(document).toMatchObject({ format, version: 1 });
  expect([...new Set(keysIn(document))].filter((key) => !documented.has(key))).toEqual([]);
});

test("every kind of remedy is in cure-result.md", () => {
  expect(CURE_KINDS.filter((kind) => !documented.has(kind))).toEqual([]);
});
