import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { ANSWERS, CAUSE_CODES } from "../../packages/hydraulics/src/index.js";
import { buildCommand, HEN_HOUSE, headfall } from "../command/run-headfall.js";
import { keysIn, namesInCode } from "./documents.js";

beforeAll(buildCommand, 120_000);

const page = readFileSync(new URL("../../docs/reference/trouble-result.md", import.meta.url), "utf8");
const documented = namesInCode(page);

test("every key of headfall trouble, as it prints it, is on its page", () => {
  const told = [
    ["--level", "found-empty", "--dry", "1,2", "--after-filling", "2", "--jug", "3: 60 mL/min"],
    ["--dry", "3,17", "--fine", "1,2,4,8,12,16,18,22,24"],
  ];
  const documents = told.map((words) => {
    const run = headfall(["trouble", HEN_HOUSE, "--day", "2026-07-04", ...words, "--json"]);
    expect(run.stderr).toBe("");
    return JSON.parse(run.stdout);
  });
  for (const document of documents)
    expect(document).toMatchObject({ format: "headfall trouble", version: 1 });
  expect(documents[1].twoAtOnce.causes).toHaveLength(2);
  expect([...new Set(documents.flatMap(keysIn))].filter((key) => !documented.has(key))).toEqual([]);
});

test("every cause and every answer to a look is on it too", () => {
  const codes = [...CAUSE_CODES, ...Object.keys(ANSWERS), ...Object.values(ANSWERS).flat()];
  expect(codes.filter((code) => !documented.has(code))).toEqual([]);
});
