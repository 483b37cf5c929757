import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { MARK_KINDS } from "../../packages/hydraulics/src/judge/build/build-sheet.js";
import { PART_KINDS } from "../../packages/hydraulics/src/judge/build/part-list.js";
import { buildCommand, headfall } from "../command/run-headfall.js";
import { keysIn, namesInCode } from "./documents.js";

beforeAll(buildCommand, 120_000);

const page = readFileSync(new URL("../../docs/reference/build-result.md", import.meta.url), "utf8");
const documented = namesInCode(page);

test.each(["to-build", "rain-barrel", "yard"])(
  "every key of headfall build --json, of %s, is in build-result.md",
  (name) => {
    const run = headfall(["build", `docs/examples/alder-bank-${name}.json`, "--day", "2026-07-04", "--json"]);
    expect(run.stderr).toBe("");
    const document = JSON.parse(run.stdout);
    expect(document).toMatchObject({ format: "headfall build", version: 1 });
    expect([...new Set(keysIn(document))].filter((key) => !documented.has(key))).toEqual([]);
    for (const { code } of document.steps) expect([...documented]).toContain(code);
  },
);

test("every kind of part and of mark is in build-result.md", () => {
  for (const kind of [...PART_KINDS, ...MARK_KINDS]) expect([...documented]).toContain(kind);
});
