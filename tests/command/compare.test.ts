import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildCommand, HEN_HOUSE, headfall, RAIN_BARREL } from "./run-headfall.js";

const folder = mkdtempSync(join(tmpdir(), "headfall-compare-"));
const higher = join(folder, "higher.json");
beforeAll(() => {
  buildCommand();
  const text = readFileSync(HEN_HOUSE, "utf8").replace('"45 cm"', '"60 cm"');
  writeFileSync(higher, text);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true }));

test("headfall compare stands two plans side by side, marks the better figure and tells what differs", () => {
  const { status, stdout, stderr } = headfall(["compare", HEN_HOUSE, higher, "--samples", "0"]);
  expect(stderr).toBe("");
  expect(status).toBe(0);
  expect(stdout).toMatch(/drinkers that are good +24 of 24 \* +0 of 24/);
  expect(stdout).toMatch(/^drip +0 \* +24$/m);
  expect(stdout).toMatch(/highest stand +45 cm \* +60 cm/);
  expect(stdout).toContain('Every drinker is good in "Alder Bank, hen house (plan 1)" only.');
  expect(stdout).toContain('sources[0].stand (barrel): "60 cm", the first has "45 cm"');
  expect(stdout).not.toContain("verdicts that are sure");
});

test("headfall compare --json gives what check and lasts give for each plan by itself", () => {
  const { variants } = JSON.parse(headfall(["compare", HEN_HOUSE, higher, RAIN_BARREL, "--json"]).stdout);
  expect(variants).toHaveLength(3);
  for (const [v, file] of [HEN_HOUSE, higher, RAIN_BARREL].entries()) {
    const checked = JSON.parse(headfall(["check", file, "--json"]).stdout);
    const lasting = JSON.parse(headfall(["lasts", file, "--json"]).stdout);
    const { figures } = variants[v];
    expect(figures.counts).toEqual(checked.counts);
    expect(figures.worst.margin).toBe(
      Math.min(...checked.drinkers.map(({ margin }: { margin: number }) => margin)),
    );
    expect(figures.lasts).toBe(lasting.cases.size.firstDry?.after ?? null);
  }
  expect(variants[0].differences).toEqual([]);
  expect(variants[1].differences).toEqual([
    { path: "sources[0].stand", part: "barrel", first: "45 cm", other: "60 cm" },
  ]);
});

test("headfall compare ends with 1 where no plan works, and with 2 where one cannot be read or is missing", () => {
  expect(headfall(["compare", higher, higher, "--samples", "0"]).status).toBe(1);
  const alone = headfall(["compare", HEN_HOUSE]);
  expect(alone).toMatchObject({ status: 2, stdout: "" });
  expect(alone.stderr).toContain("Name two or more plan files.");
  const missing = headfall(["compare", HEN_HOUSE, join(folder, "none.json")]);
  expect(missing).toMatchObject({ status: 2, stdout: "" });
  expect(missing.stderr).toContain("none.json");
  const many = headfall(["compare", ...Array.from({ length: 13 }, () => HEN_HOUSE)]);
  expect(many.stderr).toContain("12 plans at a time");
});

test("every key of headfall compare --json is in its reference", () => {
  const page = readFileSync("docs/reference/compare-result.md", "utf8");
  const document = JSON.parse(headfall(["compare", HEN_HOUSE, higher, "--json", "--samples", "20"]).stdout);
  const keys = new Set<string>();
  for (const variant of document.variants) {
    for (const key of [...Object.keys(variant), ...Object.keys(variant.figures)]) keys.add(key);
    for (const difference of variant.differences) for (const key of Object.keys(difference)) keys.add(key);
  }
  expect([...keys].filter((key) => !new RegExp(`\\b${key}\\b`).test(page))).toEqual([]);
  expect(keys.size).toBeGreaterThan(20);
});
