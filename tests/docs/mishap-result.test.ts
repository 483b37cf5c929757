import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { GUARD_KINDS } from "../../packages/hydraulics/src/judge/mishaps/guard.js";
import { WATERER_GUARD_KINDS } from "../../packages/hydraulics/src/judge/mishaps/waterers/waterer-guard.js";
import { MISHAP_KINDS } from "../../packages/hydraulics/src/model/mishap.js";
import { WATERER_MISHAP_KINDS } from "../../packages/hydraulics/src/model/waterer-mishap.js";
import { buildCommand, headfall } from "../command/run-headfall.js";
import { keysIn, namesInCode } from "./documents.js";

beforeAll(buildCommand, 120_000);

const page = readFileSync(new URL("../../docs/reference/mishap-result.md", import.meta.url), "utf8");
const documented = namesInCode(page);

test.each(["five-days-away", "rain-barrel"])(
  "every key of headfall mishaps --json, of %s, is in mishap-result.md",
  (name) => {
    const run = headfall([
      "mishaps",
      `docs/examples/alder-bank-${name}.json`,
      "--day",
      "2026-07-04",
      "--json",
    ]);
    expect(run.stderr).toBe("");
    const document = JSON.parse(run.stdout);
    expect(document).toMatchObject({ format: "headfall mishaps", version: 1 });
    expect(document.mishaps.length).toBeGreaterThan(8);
    expect([...new Set(keysIn(document))].filter((key) => !documented.has(key))).toEqual([]);
  },
);

test("every key of mishaps of loose waterers, of a plan without a line, is in mishap-result.md", () => {
  const yard = JSON.parse(
    readFileSync(new URL("../../docs/examples/alder-bank-yard.json", import.meta.url), "utf8"),
  );
  const pens = yard.pens.filter((pen: { drinkers: string[] }) => pen.drinkers.length === 0);
  const alone = {
    ...yard,
    sources: [],
    runs: [],
    pens: pens.map((pen: object) => ({ ...pen, birds: { kind: "hen", count: 9 } })),
  };
  const run = headfall(["mishaps", "-", "--json"], JSON.stringify(alone));
  expect(run).toMatchObject({ status: 0, stderr: "" });
  const document = JSON.parse(run.stdout);
  expect(document.mishaps).toEqual([]);
  expect(document.waterers.length).toBeGreaterThan(20);
  expect([...new Set(keysIn(document))].filter((key) => !documented.has(key))).toEqual([]);
});

test("every kind of mishap and of guard is in mishap-result.md", () => {
  for (const kind of [...MISHAP_KINDS, ...GUARD_KINDS, ...WATERER_MISHAP_KINDS, ...WATERER_GUARD_KINDS])
    expect([...documented]).toContain(kind);
});
