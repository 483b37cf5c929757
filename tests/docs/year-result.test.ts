import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { buildCommand, headfall } from "../command/run-headfall.js";
import { keysIn, namesInCode } from "./documents.js";

beforeAll(buildCommand, 120_000);

const page = readFileSync(new URL("../../docs/reference/year-result.md", import.meta.url), "utf8");
const documented = namesInCode(page);

test.each([
  ["docs/examples/alder-bank-eighty-five-chicks.json", "7"],
  ["docs/examples/alder-bank-yard.json", "8"],
])("every key of headfall year, as %s prints it, is in year-result.md", (plan, weeks) => {
  const run = headfall(["year", plan, "--weeks", weeks, "--json"]);
  expect(run.stderr).toBe("");
  const document = JSON.parse(run.stdout);
  expect(document).toMatchObject({ format: "headfall year", version: 1 });
  expect([...new Set(keysIn(document))].filter((key) => !documented.has(key))).toEqual([]);
  for (const { from, to } of document.periods)
    for (const day of [from, to]) expect(day).toMatch(/^\d{4}-\d\d-\d\d$/);
});
