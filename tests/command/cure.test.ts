import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { readPlan } from "../../packages/hydraulics/src/document/read-plan.js";
import { buildCommand, HEN_HOUSE, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const folder = mkdtempSync(join(tmpdir(), "headfall-cure-"));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** Cups on a stand of 20 cm that is too low for them; all figures invented. */
const LOW = JSON.stringify({
  headfall: 1,
  name: "Alder Bank, low stand",
  sources: [{ id: "drum", vessel: "drum-55gal-plastic", stand: "20 cm" }],
  points: [{ id: "end", ground: "0 cm", above: "30 cm" }],
  runs: [
    {
      id: "line",
      to: "end",
      length: "6 m",
      drinkers: { kind: "cup-trigger", count: 4, first: "4 m", every: "50 cm" },
    },
  ],
  shelf: [
    { pipe: "pvc-sch40-1/2", price: 1, onHand: "2 m" },
    { pipe: "pvc-sch40-1", price: 2 },
  ],
  prices: { stand: 3, regulator: 20 },
  money: "EUR",
});

test("headfall cure tells the cheapest change, its cost in the plan's money, and what was searched", () => {
  const run = headfall(["cure", "-"], LOW);
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toMatch(
    /^Alder Bank, low stand: 4 (starves|dry)\.\nThe smallest change that makes it work/,
  );
  expect(run.stdout).toMatch(
    /\n1\. Raise the stand of "drum" by \d+ cm, to \d+ cm\.\n {3}Cost: \d+\.\d\d EUR, /,
  );
  expect(run.stdout).toMatch(/\nSearched\n {2}another height of the stand: 31 plans, /);
});

test("headfall cure (nothing wrong) says so and ends with 0", () => {
  const run = headfall(["cure", HEN_HOUSE]);
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toContain("Nothing to cure");
});

test("headfall cure (nothing helps) ends with 1 and says what could give", () => {
  const high = LOW.replace("30 cm", "290 cm");
  const run = headfall(["cure", "-", "--stand-most", "1 m"], high);
  expect(run).toMatchObject({ status: 1, stderr: "" });
  expect(run.stdout).toContain("Nothing that was searched makes it work.");
  expect(run.stdout).toMatch(/What could give\n {2}Allow a stand of \d/);
});

test("headfall cure --apply writes the plan of a cure into a new file, and overwrites none", () => {
  const out = join(folder, "cured.json");
  const run = headfall(["cure", "-", "--apply", "1", "--out", out], LOW);
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(readPlan(readFileSync(out, "utf8"))).toMatchObject({ ok: true });
  expect(headfall(["check", out, "--samples", "0"]).status).toBe(0);
  const again = headfall(["cure", "-", "--apply", "1", "--out", out], LOW);
  expect(again).toMatchObject({ status: 2, stdout: "" });
  expect(again.stderr).toContain(`cannot write ${out}`);
});

test.each([
  [["--by", "weight"], '--by is money, parts, stand, not "weight".'],
  [["--margin", "5"], '--margin is a length from 0 m to 1 m, for instance "5 cm", not "5".'],
  [["--front", "width"], '--front is margin or height, not "width".'],
  [["--apply", "1"], "--apply and --out belong together: which cure, and into which file."],
  [["--apply", "7", "--out", join(folder, "seventh.json")], "--apply 7: there "],
])("headfall cure %j says what is wrong and ends with 2", (words, fault) => {
  const run = headfall(["cure", "-", ...words], LOW);
  expect(run).toMatchObject({ status: 2, stdout: "" });
  expect(run.stderr).toContain(fault);
});

test("headfall cure --front tells what a higher stand saves in pipe", () => {
  const run = headfall(["cure", "-", "--front", "height", "--units", "us"], LOW);
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toMatch(/What a higher stand saves in pipe\n.*\n *stand +of pipe +what to do\n/);
});
