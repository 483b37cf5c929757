import { beforeAll, expect, test } from "vitest";
import { penPlan } from "../hydraulics/judge/birds/pens.js";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const chicks = JSON.stringify(
  penPlan({
    birds: { kind: "pullet", count: 24, hatched: "2026-06-27" },
    above: "12 cm",
    run: { hung: true },
    more: { name: "Alder Bank, chicks", weather: { high: "21 degC", hotSpell: { high: "33 degC" } } },
  }),
);

test("headfall weeks tells a line a week, what to raise, and the hot spell", () => {
  const run = headfall(["weeks", "-", "--weeks", "3", "--day", "2026-07-04"], chicks);
  expect(run.stderr).toBe("");
  expect(run.stdout).toMatch(/^Alder Bank, chicks, week by week\n/);
  for (const day of ["2026-07-04", "2026-07-11", "2026-07-18", "2026-07-25"])
    expect(run.stdout.split(day)).toHaveLength(3);
  expect(run.stdout).toMatch(/\n {3}0 +2026-07-04 +7 days /);
  expect(run.stdout).toMatch(/Lines to raise\n[\s\S]* 0 +hen line .* as it is\n[\s\S]* 3 +hen line .* up \d/);
  expect(run.stdout).toContain("The same on days of the hot spell");
  expect(run.stdout).toContain("Look at the birds every day");
});

test("headfall weeks --json gives each week with verdicts, heads and what is raised", () => {
  const run = headfall(["weeks", "-", "--weeks", "2", "--day", "2026-07-04", "--json"], chicks);
  const result = JSON.parse(run.stdout);
  expect(result).toMatchObject({
    format: "headfall weeks",
    version: 1,
    plan: { name: "Alder Bank, chicks" },
  });
  expect(result.weeks).toHaveLength(3);
  expect(result.hotWeeks).toHaveLength(3);
  expect(result.weeks[1]).toMatchObject({
    week: 1,
    hot: false,
    day: "2026-07-11",
    pens: [{ pen: "hens", birds: 24 }],
  });
  expect(result.weeks[1].raised[0]).toMatchObject({ run: "hen line" });
  expect(run.status).toBe(
    [...result.weeks, ...result.hotWeeks].every(({ verdict }: { verdict: string }) => verdict === "good")
      ? 0
      : 1,
  );
});

test("headfall weeks (a plan without pens) says that every week is alike", () => {
  const run = headfall(["weeks", "docs/examples/alder-bank-rain-barrel.json", "--weeks", "1"]);
  expect(run.stderr).toBe("");
  expect(run.stdout).toContain("The plan has no pens, so every week is alike");
});

test("headfall weeks refuses a day and a number of weeks that are none, with status 2", () => {
  expect(headfall(["weeks", "-", "--day", "4 July"], chicks)).toMatchObject({
    status: 2,
    stderr: expect.stringContaining('--day is a day such as 2026-07-04, not "4 July".'),
  });
  expect(headfall(["weeks", "-", "--weeks", "200"], chicks)).toMatchObject({
    status: 2,
    stderr: expect.stringContaining("--weeks is a whole number from 0 to 104"),
  });
});

test("headfall check --day counts ages on that day, and tells of the birds", () => {
  const run = headfall(["check", "-", "--samples", "0", "--day", "2026-07-18", "--json"], chicks);
  const { flock } = JSON.parse(run.stdout);
  expect(flock).toMatchObject({ day: "2026-07-18", pens: [{ batches: [{ ageDays: 21 }] }] });
  const text = headfall(["check", "-", "--samples", "0", "--day", "2026-07-18"], chicks).stdout;
  expect(text).toMatch(/\nBirds\n {2}hens: 24 birds take /);
  expect(text).toContain("(from its birds)");
});
