import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { buildCommand, headfall } from "../command/run-headfall.js";
import { keysIn, namesInCode } from "./documents.js";

beforeAll(buildCommand, 120_000);

const page = readFileSync(new URL("../../docs/reference/weather-results.md", import.meta.url), "utf8");
const TWO_PENS = "docs/examples/alder-bank-two-pens.json";
const YARD = "docs/examples/alder-bank-yard.json";

test.each([
  ["headfall frost", ["frost", TWO_PENS, "--low=-8C"]],
  ["headfall frost", ["frost", YARD]],
  ["headfall heat", ["heat", TWO_PENS, "--high", "36C"]],
  ["headfall heat", ["heat", YARD]],
] as const)("every key of %s, as %j prints it, is in its part of weather-results.md", (format, words) => {
  const run = headfall([...words, "--json"]);
  expect(run.stderr).toBe("");
  const document = JSON.parse(run.stdout);
  expect(document).toMatchObject({ format, version: 1 });
  const documented = namesInCode(page, format);
  expect([...new Set(keysIn(document))].filter((key) => !documented.has(key))).toEqual([]);
});

test("every key of frost by a record is there too, its coldest night being a document of frost", () => {
  const run = headfall(["frost", YARD, "--example", "newyork", "--json"]);
  expect(run).toMatchObject({ status: 1, stderr: "" });
  const { worstNight, ...document } = JSON.parse(run.stdout);
  expect(document).toMatchObject({ format: "headfall frost record", firstDay: "2012-01-01", days: 1461 });
  expect(worstNight).toMatchObject({ format: "headfall frost", night: { low: -16 } });
  const documented = namesInCode(page, "headfall frost record");
  expect([...new Set(keysIn(document))].filter((key) => !documented.has(key))).toEqual([]);
});

test("every key of heat by a record is there too, its hottest day being a document of heat", () => {
  const run = headfall(["heat", TWO_PENS, "--example", "seattle", "--json"]);
  expect(run).toMatchObject({ status: 1, stderr: "" });
  const { worstDay, ...document } = JSON.parse(run.stdout);
  expect(document).toMatchObject({ format: "headfall heat record", firstDay: "2012-01-01", days: 1461 });
  expect(worstDay).toMatchObject({ format: "headfall heat", day: { high: 36 } });
  const documented = namesInCode(page, "headfall heat record");
  expect([...new Set(keysIn(document))].filter((key) => !documented.has(key))).toEqual([]);
});
