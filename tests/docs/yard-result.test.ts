import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { buildCommand, headfall } from "../command/run-headfall.js";
import { keysIn, namesInCode } from "./documents.js";

beforeAll(buildCommand, 120_000);

const page = readFileSync(new URL("../../docs/reference/yard-result.md", import.meta.url), "utf8");
const documented = namesInCode(page);

test("every key that headfall yard --json prints, and every code of its findings, is in yard-result.md", () => {
  const run = headfall(["yard", "docs/examples/alder-bank-yard.json", "--json", "--weeks", "1"]);
  expect(run.stderr).toBe("");
  const document = JSON.parse(run.stdout);
  expect(document).toMatchObject({ format: "headfall yard", version: 1, day: "2026-05-04" });
  expect([...new Set(keysIn(document))].filter((key) => !documented.has(key))).toEqual([]);
  for (const pen of document.pens)
    for (const { code } of pen.findings) expect(documented.has(code), code).toBe(true);
});
