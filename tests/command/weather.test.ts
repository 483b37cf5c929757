import { writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const YARD = "docs/examples/alder-bank-yard.json";
const HEN_HOUSE = "docs/examples/alder-bank-hen-house.json";

test("headfall frost tells the night, what stops first, what to drain, refills; and in US units", () => {
  const run = headfall(["frost", YARD]);
  expect(run).toMatchObject({ status: 1, stderr: "" });
  expect(run.stdout).toMatch(
    /^Alder Bank, the yard: a night of frost\n-8 °C for 13 h from dusk \(18:00\), wind 3 m\/s, water at 10 °C when it begins\n.+ stops first, \d+ min after dusk/,
  );
  expect(run.stdout).toMatch(
    /Before the night\n- Shut the tap of every vessel and drain the pipe, [\d.]+ mL in all/,
  );
  expect(run.stdout).toMatch(/yard pan: filled at dawn/);
  const us = headfall(["frost", YARD, "--units", "us"]);
  expect(us.stdout).toContain("17.6 °F for 13 h");
  // What is taken where the plan is silent is told as it would be typed there.
  expect(us.stdout.split("\nNot in the plan\n")[0]).not.toContain("°C");
});

test("headfall frost --low --hours --wind go before the plan; a warm night stops nothing", () => {
  const run = headfall(["frost", HEN_HOUSE, "--low", "-15 degC", "--hours", "9", "--wind", "10 mph"]);
  expect(run.stdout).toContain("-15 °C for 9 h");
  expect(run.stdout).toContain("wind 4.5 m/s");
  const warm = headfall(["frost", HEN_HOUSE, "--low=0C"]);
  expect(warm).toMatchObject({ status: 0, stderr: "" });
  expect(warm.stdout).toContain("Nothing freezes");
});

test.each([
  [["--low", "5 degC"], '--low: found "5 degC". It is from -40 to 0 °C.'],
  [["--low=-8"], "--low: found"],
  [["--wind", "3"], 'Add the unit, for instance "3 m/s" or "3 mph".'],
  [["--hours", "2 weeks"], "--hours"],
  [["--record", "/nowhere/at/all"], "cannot read /nowhere/at/all"],
  [["--example", "newyork", "--low=-8C"], "--low is one night's; a record has its own."],
  [["--record", "x", "--degrees", "K"], "--degrees is one of C, F, tenths of C"],
])("headfall frost %j is refused in one sentence", (words, sentence) => {
  const run = headfall(["frost", HEN_HOUSE, ...words]);
  expect(run).toMatchObject({ status: 2, stdout: "" });
  expect(run.stderr).toContain(sentence);
});

test("headfall frost --record reads a table of one's own, and asks what it leaves open", () => {
  const file = join(tmpdir(), `lows-${process.pid}.csv`);
  writeFileSync(file, "date,tmin\n2025-12-01,20\n2025-12-02,35\n2025-12-03,14\n");
  const asked = headfall(["frost", HEN_HOUSE, "--record", file]);
  expect(asked.status).toBe(2);
  expect(asked.stderr).toContain("Which unit are the temperatures in: C, F, tenths of C?");
  expect(asked.stderr).toContain("Say it with --degrees.");
  const told = headfall(["frost", HEN_HOUSE, "--record", file, "--degrees", "F"]);
  expect(told).toMatchObject({ status: 1, stderr: "" });
  expect(told.stdout).toMatch(
    /2025-12-01 to 2025-12-03, 3 of 3 days known\n.* the coldest -10 °C on 2025-12-03/,
  );
});

test("headfall heat tells water by the hour, what to flush and what each change would do", () => {
  const run = headfall(["heat", YARD, "--high", "36C", "--sun", "800 W/m2"]);
  expect(run).toMatchObject({ status: 1, stderr: "" });
  expect(run.stdout).toMatch(
    /^Alder Bank, the yard: a hot day\n21 °C to 36 °C, clear sun of 800 W\/m² at noon/,
  );
  expect(run.stdout).toMatch(/\nThe birds drink [\d.]+ L that day to size on, [\d.]+ L to expect\.\n/);
  expect(run.stdout).toMatch(/Water standing in hen line comes to \d\d °C, at worst \d\d °C/);
  expect(run.stdout).toMatch(/white, and kept clean: \d\d °C/);
  expect(headfall(["heat", YARD, "--sun", "5 kW/m2"]).stderr).toContain("It is from 0 to 1200 W/m².");
  expect(headfall(["heat", HEN_HOUSE, "--high", "20C", "--sun", "0 W/m2"]).status).toBe(0);
});

test("headfall heat tells of loose waterers, and by a record hot days by year", () => {
  const run = headfall(["heat", YARD]);
  expect(run.stdout).toMatch(/\nLoose waterers\n- chick jars: \d+ mL of its 1\.09 L dry away in such a day/);
  expect(run.stdout).toMatch(/yard pan: .* It stays under 30 °C all day\./);
  const file = join(tmpdir(), `highs-${process.pid}.csv`);
  writeFileSync(file, "date,tmin C,tmax C\n2025-07-01,16,31\n2025-07-02,17,34\n2025-07-03,14,24\n");
  const record = headfall(["heat", HEN_HOUSE, "--record", file]);
  expect(record).toMatchObject({ status: 1, stderr: "" });
  expect(record.stdout).toMatch(
    /2025-07-01 to 2025-07-03, 3 of 3 days known\n.* the hottest 34 °C on 2025-07-02/,
  );
  expect(record.stdout).toMatch(/\n2025 +3 +2 +2 +2 +2025-07-01 +2025-07-02 +34 °C/);
  expect(headfall(["heat", HEN_HOUSE, "--record", file, "--high", "36C"]).stderr).toContain("one day's");
});
