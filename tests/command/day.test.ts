import { beforeAll, expect, test } from "vitest";
import { penPlan } from "../hydraulics/judge/birds/pens.js";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const day = ["--day", "2026-07-04"];
const hens = (count: number, drinkers: number) =>
  JSON.stringify(
    penPlan({
      birds: { kind: "hen", count, age: "40 weeks", lay: "90 %" },
      drinkers: { count: drinkers },
      more: { name: "Alder Bank, hens", weather: { high: "21 degC", hotSpell: { high: "32 degC" } } },
    }),
  );
const few = hens(12, 4);
const document = (words: readonly string[], plan = few) =>
  JSON.parse(headfall(["day", "-", "--json", ...day, ...words], plan).stdout);

test("headfall day tells each pen's day, each drinker's, the water, and how it was got", () => {
  const run = headfall(["day", "-", "--seed", "3", ...day], few);
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toMatch(
    /^Alder Bank, hens: a simulated day on 2026-07-04 \(seed 3\)\nhens: 12 birds came \d+ times and drank [\d.]+ L; every bird got its water\./,
  );
  for (const d of [1, 2, 3, 4]) expect(run.stdout).toMatch(new RegExp(`\\nhen line ${d} +\\d+ +\\d+ mL `));
  expect(run.stdout).toMatch(
    /\n- drunk [\d.]+ L, spilled \d+ mL, drawn [\d.]+ L\n- barrel: from 40 cm to [\d.]+ cm\n/,
  );
  expect(run.stdout).toContain("The same seed gives the same day.");
  expect(run.stdout).toContain("look at the birds every day");
});

test("headfall day says of a pen whose birds drink from loose waterers that none drinks at the line, and no dry drinkers", () => {
  const yard = "docs/examples/alder-bank-yard.json";
  expect(headfall(["day", yard, ...day]).stdout).toMatch(/\nquail hutch: no bird drinks at the line\.\n/);
  const { pens } = JSON.parse(headfall(["day", yard, "--json", ...day]).stdout);
  expect(pens.find(({ birds }: { birds: number }) => birds === 0)).toMatchObject({ dry: 0 });
  for (const pen of pens) if (pen.birds === 0) expect(pen.dryFrom).toBeUndefined();
});

test("headfall day: the same seed the same to the letter, another seed another day", () => {
  const run = (seed: string) => headfall(["day", "-", "--json", "--seed", seed, ...day], few).stdout;
  expect(run("9")).toBe(run("9"));
  expect(run("10")).not.toBe(run("9"));
});

test("headfall day --json balances to the last digit and gives lists, not objects of numbers", () => {
  const result = document([]);
  expect(result).toMatchObject({
    format: "headfall day",
    version: 1,
    seed: 1,
    plan: { name: "Alder Bank, hens" },
  });
  const { start, poured, drawn, end, drunk, spilled } = result.balance;
  expect(Math.abs(start + poured - drawn - end)).toBeLessThan(1e-12);
  expect(Math.abs(drunk + spilled - drawn)).toBeLessThan(1e-12);
  expect(result.birds).toHaveLength(12);
  expect(Array.isArray(result.levels.level[0])).toBe(true);
});

test("headfall day --days 5: on one worker, two or seven the same, to the letter", () => {
  const run = (jobs: string, ...more: string[]) =>
    headfall(["day", "-", "--days", "5", "--jobs", jobs, ...more, ...day], few);
  const one = run("1");
  expect(one).toMatchObject({ status: 0, stderr: "" });
  expect(one.stdout).toMatch(/^Alder Bank, hens: 5 simulated days \(seeds 1 to 5\)\n/);
  expect(run("2")).toEqual(one);
  expect(run("7")).toEqual(one);
  expect(run("2", "--json")).toEqual(run("1", "--json"));
});

test("headfall day --days summarises the very days of their seeds", () => {
  const summary = document(["--days", "3", "--seed", "4", "--jobs", "2"]);
  expect(summary).toMatchObject({ format: "headfall days", version: 1, days: 3, seeds: { from: 4, to: 6 } });
  const drawn = ["4", "5", "6"].map((seed) => document(["--seed", seed]).balance.drawn as number);
  expect(summary.drawn.most).toBe(Math.max(...drawn));
  expect(summary.drawn.middle).toBe(drawn.sort((a, b) => a - b)[1]);
});

test("headfall day ends with 1 where some bird came short, one day or many", () => {
  const crowded = hens(220, 1);
  const run = headfall(["day", "-", ...day], crowded);
  expect(run.status).toBe(1);
  expect(run.stdout).toMatch(/\d+ of them came short of it by a fifth or more/);
  expect(headfall(["day", "-", "--days", "2", ...day], crowded).status).toBe(1);
});

test("headfall day --weather hot, --figure size: more is drunk", () => {
  const drunk = (...words: string[]) => document(words).balance.drunk as number;
  const plain = drunk();
  expect(drunk("--weather", "hot") / plain).toBeGreaterThan(1.7);
  expect(drunk("--figure", "size")).toBeGreaterThan(plain);
  expect(headfall(["day", "-", "--units", "us", ...day], few).stdout).toMatch(/drunk [\d.]+ (gal|qt)/);
});

test.each([
  [["--seed", "-1"], undefined],
  [["--seed", "x"], '--seed is a whole number from 0 to 4294967295, not "x".'],
  [["--days", "many"], '--days is a whole number from 0 to 100000, not "many".'],
  [["--days", "0"], "--days is a whole number from 1 to 100000."],
  [["--jobs", "65"], '--jobs is a whole number from 0 to 64, not "65".'],
  [["--jobs", "0"], "--jobs is a whole number from 1 to 64."],
  [["--figure", "most"], "--figure is expect or size."],
  [["--weather", "cold"], "--weather is plan or hot."],
  [["--samples", "3"], "Unknown option '--samples'."],
  [["--day", "2026-02-30"], '--day is a day such as 2026-07-04, not "2026-02-30".'],
])("headfall day %o is refused with status 2, in one sentence", (words, sentence) => {
  const run = headfall(["day", "-", ...words], few);
  expect(run).toMatchObject({ status: 2, stdout: "" });
  expect(run.stderr).toMatch(/^headfall: [^\n]* See: headfall help day\n$/);
  if (sentence !== undefined) expect(run.stderr).toBe(`headfall: ${sentence} See: headfall help day\n`);
});
