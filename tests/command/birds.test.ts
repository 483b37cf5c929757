import { beforeAll, expect, test } from "vitest";
import { penPlan } from "../hydraulics/judge/birds/pens.js";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const hens = (more: Record<string, unknown> = {}, count = 24) =>
  JSON.stringify(
    penPlan({
      birds: { kind: "hen", count, age: "40 weeks", lay: "90 %" },
      more: {
        name: "Alder Bank, hens",
        weather: { high: "21 degC", hotSpell: { high: "32 degC" } },
        ...more,
      },
    }),
  );
const day = ["--day", "2026-07-04"];

test("headfall birds tells the day's water, the weeks, origins, drinkers, heights and cautions", () => {
  const run = headfall(["birds", "-", "--weeks", "2", ...day], hens());
  expect(run.stderr).toBe("");
  expect(run.status).toBe(0);
  for (const title of [
    "Alder Bank, hens: its birds, 2026-07-04",
    "Each coming week",
    "Where it comes from, and how sure",
    "Drinkers",
    "Height of the drinkers above what the birds stand on",
    "Cautions",
  ])
    expect(run.stdout.split("\n")).toContain(title);
  for (const then of ["2026-07-04", "2026-07-11", "2026-07-18"]) expect(run.stdout).toContain(then);
  expect(run.stdout).toMatch(/hens: 5 nipples for 24 birds, by advice; it has 8\./);
  expect(run.stdout).toContain("rule that binds from 350 birds on, here advice: one nipple for 10 birds");
  expect(run.stdout).toContain("Look at the birds and their water every day");
  expect(run.stdout).toContain("a matter for a vet");
});

test("headfall birds --json: 24 hens of 270 mL (Poultry CRC, Table 1), what is spilled on top, and twice that at 32 °C", () => {
  const run = headfall(["birds", "-", "--json", "--weeks", "1", ...day], hens());
  const result = JSON.parse(run.stdout);
  expect(result).toMatchObject({ format: "headfall birds", version: 1, day: "2026-07-04", region: "EU" });
  const [pen] = result.pens;
  expect(pen.now.size).toBeCloseTo(24 * 270e-6 * (1 + pen.spilled), 9);
  expect(pen.hot.size / pen.now.size).toBeCloseTo(2, 2);
  expect(pen.now.expect).toBeLessThanOrEqual(pen.now.size);
  expect(pen.drinkers.devices).toMatchObject([{ device: "nipple", has: 8, needed: 5, because: "advice" }]);
  expect(result.weeks).toHaveLength(2);
  expect(result.weeks[0].now).toEqual(pen.now);
});

test("headfall birds ends with 1 where the pen has too few drinkers, and tells the law apart", () => {
  const run = headfall(["birds", "-", ...day], hens({ region: "Austria" }, 100));
  expect(run.status).toBe(1);
  expect(run.stdout).toMatch(/hens: 10 nipples for 100 birds, by a rule that binds; it has 8, 2 too few\./);
});

test("headfall birds warns that chicks and quail drown, and writes US units", () => {
  const quail = JSON.stringify(penPlan({ birds: { kind: "coturnix", count: 20, age: "3 days" } }));
  const run = headfall(["birds", "-", "--units", "us", ...day], quail);
  expect(run.stdout).toMatch(/they drown in open water, even shallow, until they are/);
  expect(run.stdout).toMatch(/fl oz|gal/);
  expect(run.stdout).toContain("no rule and no advice we know of speaks of coturnix quail");
});

test("headfall birds (a plan without pens) says that nobody drinks", () => {
  const { pens: _, ...plan } = penPlan();
  expect(headfall(["birds", "-"], JSON.stringify(plan))).toMatchObject({
    status: 0,
    stdout: expect.stringContaining("The plan has no pens, so nobody drinks"),
  });
});

test("headfall birds refuses a number of weeks that is none, with status 2", () => {
  expect(headfall(["birds", "-", "--weeks", "-1"], hens())).toMatchObject({ status: 2, stdout: "" });
});
