import { beforeAll, expect, test } from "vitest";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const PLAN = "docs/examples/alder-bank-rain-on-the-coop.json";

test("headfall rain tells the short days, and ends with 1 when there are some", () => {
  const run = headfall(["rain", PLAN, "--example", "seattle"]);
  expect(run.stderr).toBe("");
  expect(run.stdout).toMatch(/of 1461 days were short/);
  expect(run.status).toBe(1);
});

test("headfall rain --json balances to the millilitre", () => {
  const result = JSON.parse(headfall(["rain", PLAN, "--example", "newyork", "--json"]).stdout);
  expect(result.format).toBe("headfall rain");
  expect(result.runs).toHaveLength(4);
  for (const { balance } of result.runs) {
    const { start, given, over, end } = balance.sums;
    expect(Math.abs(start + balance.sums.in - given - over - end)).toBeLessThan(1e-6);
  }
});

test("headfall rain asks which record when none is named", () => {
  const run = headfall(["rain", PLAN]);
  expect(run.status).toBe(2);
  expect(run.stderr).toContain("--record");
});
