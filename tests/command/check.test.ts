import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { MOMENTS } from "../../packages/hydraulics/src/model/moment.js";
import { FRICTION_LAWS } from "../../packages/hydraulics/src/solve/solution.js";
import { buildCommand, HEN_HOUSE, headfall, RAIN_BARREL } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const BROKEN = `{
  "headfall": 1,
  "sources": [{"vessel": "bathtub of gold"}],
  "runs": [
    {"length": "12 furlongs"},
    {"length": "3 m", "pipe": "spaghetti", "colour": "red"}
  ]
}`;

test("headfall check (all good) writes the verdicts, ends with 0 and leaves standard error clean", () => {
  const run = headfall(["check", HEN_HOUSE, "--samples", "20"]);
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toMatch(/^Alder Bank, hen house: 24 good/);
  for (const word of ["Why", "Runs, full and busiest", "Sources", "Cautions", "Taken as understood"])
    expect(run.stdout).toContain(`\n${word}\n`);
  expect(run.stdout).not.toContain("\u001b");
});

test("headfall check (something dry) ends with 1 and says why", () => {
  const run = headfall(["check", RAIN_BARREL, "--samples", "20"]);
  expect(run).toMatchObject({ status: 1, stderr: "" });
  expect(run.stdout).toContain("2 good, 1 starves, 4 dry");
  expect(run.stdout).toContain("x chick nipples");
});

test("headfall check (a broken plan) lists all problems at once on standard error, and ends with 2", () => {
  const run = headfall(["check", "-"], BROKEN);
  expect(run).toMatchObject({ status: 2, stdout: "" });
  const lines = run.stderr.trimEnd().split("\n");
  expect(lines[0]).toBe("standard input has 4 problems:");
  expect(lines.slice(1).map((line) => line.slice(0, 40).trim().split(" (")[0])).toEqual([
    "sources[0].vessel",
    "runs[0].length",
    "runs[1].pipe",
    "runs[1].colour",
  ]);
  expect(lines[2]).toBe(
    '  runs[0].length (line 5): found "12 furlongs". A length is a number with its unit: m, cm, mm, km, ft, in or yd. Write for instance "3.6 m" or "2 ft 6 in".',
  );
});

test("headfall check (heights that disagree) is a problem too: 2", () => {
  const plan = {
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic" }],
    points: [{ id: "wall", ground: "-20 cm" }],
    runs: [{ length: "3 m", to: "wall", fall: "30 cm" }],
  };
  const run = headfall(["check", "-"], JSON.stringify(plan));
  expect(run).toMatchObject({ status: 2, stdout: "" });
  expect(run.stderr).toContain("standard input has one problem:\n  runs[0].fall: found");
});

test("headfall check - reads standard input, byte order mark or not", () => {
  const text = readFileSync(HEN_HOUSE, "utf8");
  const plain = headfall(["check", "-", "--samples", "0"], text);
  expect(plain).toMatchObject({ status: 0, stderr: "" });
  expect(headfall(["check", "-", "--samples", "0"], `\ufeff${text}`)).toEqual(plain);
});

test("headfall check --json gives the documented document, the same each time", () => {
  const words = ["check", HEN_HOUSE, "--json", "--samples", "20", "--seed", "7"];
  const run = headfall(words);
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(headfall(words).stdout).toBe(run.stdout);
  const result = JSON.parse(run.stdout);
  expect(result).toMatchObject({
    format: "headfall check",
    version: 1,
    verdict: "good",
    counts: { good: 24 },
  });
  expect(result.madeFrom).toMatchObject({ seed: 7, samples: 20 });
  expect(result.drinkers).toHaveLength(24);
  for (const drinker of result.drinkers) {
    expect(drinker).toMatchObject({ verdict: "good", kind: "nipple-side-action", run: "hen line" });
    for (const moment of MOMENTS) {
      for (const law of FRICTION_LAWS) {
        const { staticHead, flowingHead, flow } = drinker.moments[moment][law];
        expect(staticHead).toBeGreaterThanOrEqual(flowingHead - 1e-9);
        expect(flow).toBeGreaterThanOrEqual(0);
      }
    }
  }
});

test("headfall check --units us writes US units; the plan's own words stay", () => {
  const run = headfall(["check", HEN_HOUSE, "--units", "us", "--samples", "0"]);
  expect(run.status).toBe(0);
  expect(run.stdout).toMatch(/fl oz\/min|gal/);
  expect(run.stdout).not.toMatch(/mL\/min/);
});

test("headfall check --samples 0 leaves open how sure it is", () => {
  expect(headfall(["check", HEN_HOUSE, "--samples", "0"]).stdout).not.toContain("Sure");
  // So few leave it in doubt.
  expect(headfall(["check", HEN_HOUSE, "--samples", "20"]).stdout).toContain(
    "Sure, though not beyond doubt: so in",
  );
});
