import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const example = readFileSync(new URL("../../docs/examples/alder-bank-yard.json", import.meta.url), "utf8");
const yard = (waterers: unknown[], more: Record<string, unknown> = {}) =>
  JSON.stringify({
    headfall: 1,
    sources: [],
    runs: [],
    pens: [{ id: "hens", birds: { kind: "hen", count: 6 }, waterers, ...more }],
  });
const day = ["--day", "2026-07-04"];

test("headfall yard tells each waterer, what to do, slopes, weeks, change-overs, openings and cautions", () => {
  const run = headfall(["yard", "-", "--weeks", "1"], example);
  expect(run.stderr).toBe("");
  expect(run.status).toBe(1);
  for (const title of [
    "Alder Bank, the yard: its loose waterers, 2026-05-04",
    "What to do",
    "On its slope",
    "Each coming week",
    "Changing over",
    "If it is opened, shut or warmed",
    "Cautions",
  ])
    expect(run.stdout.split("\n")).toContain(title);
  expect(run.stdout).toContain(
    "- uphill fount: on 7 % (4.0°) it runs out; it drains from 6.3 % (3.6°) on. Turn its hole sideways, or shim the lower edge by 8.8 mm at least, 16 mm to make it level.",
  );
});

test("headfall yard exits with 0 where the birds are well served", () => {
  const run = headfall(["yard", "-", "--units", "us", ...day], yard([{ kind: "nipple-bucket-5gal" }]));
  expect(run.stderr).toBe("");
  expect(run.status).toBe(0);
  expect(run.stdout).toContain("46 lb");
});

test("headfall yard --json: SI, the words beside the figures", () => {
  const run = headfall(
    ["yard", "-", "--json", "--weeks", "2", ...day],
    yard([{ kind: "fount-1gal" }], { slope: "7 %" }),
  );
  expect(run.status).toBe(1);
  const result = JSON.parse(run.stdout);
  expect(result).toMatchObject({ format: "headfall yard", version: 1, day: "2026-07-04", region: "EU" });
  const [pen] = result.pens;
  const [fount] = pen.waterers;
  expect(fount).toMatchObject({ kind: "fount-1gal", works: "vacuum", slope: 0.07, gives: 0, hole: "uphill" });
  expect(fount.tilt.drainsAt).toBeCloseTo(0.012 / 0.19, 12);
  expect(fount.weeks).toHaveLength(3);
  expect(pen.findings[0].sentence).toMatch(/nothing to drink from/);
  expect(fount.sentences[0]).toContain("it runs out");
});

test("headfall yard of a plan without waterers says how to add them", () => {
  const run = headfall(
    ["yard", "-", ...day],
    JSON.stringify({ headfall: 1, sources: [{ vessel: "bucket-5gal" }], runs: [] }),
  );
  expect(run.status).toBe(0);
  expect(run.stdout).toContain("Say which stand or hang in a pen with its `waterers`.");
});

test("what is asked of a line says that there is none", () => {
  const run = headfall(["lasts", "-", ...day], yard([{ kind: "pan-40cm" }]));
  expect(run.status).toBe(2);
  expect(run.stderr).toContain(
    "the plan has loose waterers only. Ask headfall yard, or add a source and a run.",
  );
});
