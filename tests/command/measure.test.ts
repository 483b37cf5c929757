import { beforeAll, expect, test } from "vitest";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

/** Nipples near what they need: how near hangs on the stand. */
const lane = (stand: string, kind = "nipple-side-action") =>
  JSON.stringify({
    headfall: 1,
    name: "Alder Bank, the lane",
    sources: [{ vessel: "55 gallon drum", stand, level: { full: "75 cm", lowest: "8 cm" } }],
    runs: [
      {
        id: "lane",
        length: "18 m",
        fall: "-30 cm",
        pipe: "1/2 in PVC schedule 40",
        drinkers: { kind, count: 3, first: "15 m", every: "30 cm" },
      },
    ],
  });

test("headfall measure says what to measure, within what, and which drinkers that settles; status 1", () => {
  const run = headfall(["measure", "-", "--samples", "200"], lane("46 cm"));
  expect(run).toMatchObject({ status: 1, stderr: "" });
  expect(run.stdout).toMatch(
    /^Alder Bank, the lane: what to measure again\n3 of 3 verdicts are close calls\.\n\nWorth measuring, the most first\n {2}Measure the flow of Side-action nipple, low pressure \(jug and watch\) within \d+ % \(now 40 %\): makes sure of lane 1, lane 2, lane 3/,
  );
  expect(run.stdout).toMatch(/\n {2}lane 1 \(good, else starves; \d+ % agree\): /);
  expect(run.stdout).toMatch(
    /Its head to spare is moved most by the flow of Side-action nipple, low pressure \(jug and watch\) \(40 %\) by \d+ (mm|cm), /,
  );
});

test("headfall measure says so where nothing is close; status 0", () => {
  const run = headfall(["measure", "-", "--samples", "100"], lane("80 cm", "cup-trigger"));
  expect(run.stdout).toBe(
    "Alder Bank, the lane: what to measure again\nNothing: every verdict is sure with the measurements as they are.\n",
  );
  expect(run.status).toBe(0);
});

test("headfall check tells it too, below the verdicts; with no samples it does not", () => {
  const run = headfall(["check", "-", "--samples", "200"], lane("46 cm"));
  expect(run.stdout).toMatch(/\n\nWhat to measure again\n {2}Measure the flow of [^\n]+\n[\s\S]*\n\nRuns, /);
  expect(headfall(["check", "-", "--samples", "0"], lane("46 cm")).stdout).not.toContain("measure again");
});

test("headfall measure refuses samples and seeds that are none", () => {
  expect(headfall(["measure", "-", "--samples", "many"], lane("46 cm"))).toMatchObject({
    status: 2,
    stderr:
      'headfall: --samples is a whole number from 0 to 100000, not "many". See: headfall help measure\n',
  });
  expect(headfall(["measure", "-", "--seed", "-1"], lane("46 cm")).status).toBe(2);
});
