import { beforeAll, expect, test } from "vitest";
import { penPlan } from "../hydraulics/judge/birds/pens.js";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const day = ["--day", "2026-07-04"];
const hens = (count = 24) =>
  JSON.stringify(
    penPlan({
      birds: { kind: "hen", count, age: "40 weeks", lay: "90 %" },
      more: {
        name: "Alder Bank, hens",
        weather: { high: "21 degC", hotSpell: { high: "32 degC", days: 2 } },
      },
    }),
  );

test("headfall away (it lasts) ends with 0 and tells what must stand there and what each failure does", () => {
  const run = headfall(["away", "-", "--days", "5", ...day], hens());
  expect(run).toMatchObject({ status: 0, stderr: "" });
  // Two hot days of 2 x 24 x 270 mL (Kentucky, Table 12.1: twice as much at 32 °C), three mild ones, a twentieth spilled.
  expect(run.stdout).toMatch(
    /^Alder Bank, hens: 5 days away\nIt lasts: 47\.\d L are needed on the cautious figure, 2 hot days at the beginning; [\d.]+ L of what stands there reach the birds\.\n/,
  );
  expect(run.stdout).toContain("\nFilled and standing\n- barrel: 102 L\n");
  expect(run.stdout).toContain("- If barrel gives nothing: the pen hens goes without at once.");
  expect(run.stdout).toContain("- If the drinkers hen line give nothing: the pen hens goes without at once.");
  expect(run.stdout).toContain(
    "Somebody should look at the birds and their water every day, also while you are away",
  );
});

test("headfall away (it does not last) ends with 1 and tells when, and what is missing", () => {
  const run = headfall(["away", "-", "--days", "14", ...day], hens());
  expect(run).toMatchObject({ status: 1, stderr: "" });
  expect(run.stdout).toMatch(/It does not last: the pen hens goes without after \d+ days/);
  expect(run.stdout).toMatch(/[\d.]+ L more must stand there, or somebody must fill it in between\./);
});

test("headfall away --json: what is needed is the sum of its days; what is missing is that less what is there", () => {
  const run = headfall(["away", "-", "--days", "14", "--json", ...day], hens());
  const result = JSON.parse(run.stdout);
  expect(run.status).toBe(1);
  expect(result).toMatchObject({
    format: "headfall away",
    version: 1,
    day: "2026-07-04",
    days: 14,
    hotDays: 2,
  });
  const mild = 24 * 270e-6 * 1.05;
  expect(result.needed).toBeCloseTo(12 * mild + 2 * 2 * mild, 4);
  expect(result.short).toBeCloseTo(result.needed - result.usable, 12);
  expect(result.lasts).toBeLessThan(14 * 86_400);
  expect(result.sentence).toMatch(/^It does not last/);
  expect(result.failures.map(({ kind, what }: { kind: string; what: string }) => [kind, what])).toEqual([
    ["source", "barrel"],
    ["drinkers", "hen line"],
  ]);
});

test("headfall away takes five days unless told, one day by its own word, and writes US units", () => {
  expect(headfall(["away", "-", ...day], hens()).stdout).toMatch(/^Alder Bank, hens: 5 days away\n/);
  const one = headfall(["away", "-", "--days", "1", "--units", "us", ...day], hens());
  expect(one.stdout).toMatch(/^Alder Bank, hens: 1 day away\nIt lasts: [\d.]+ gal are needed/);
  expect(one.stdout).toContain("a hot day at the beginning");
  expect(one.stdout).not.toMatch(/\d L\b/);
});

test.each([
  ["0", "--days is a whole number from 1 to 60."],
  ["61", '--days is a whole number from 0 to 60, not "61".'],
  ["a week", '--days is a whole number from 0 to 60, not "a week".'],
])("headfall away --days %s is refused with status 2", (days, sentence) => {
  expect(headfall(["away", "-", "--days", days], hens())).toEqual({
    status: 2,
    stdout: "",
    stderr: `headfall: ${sentence} See: headfall help away\n`,
  });
});

test("headfall away refuses options of others", () => {
  expect(headfall(["away", "-", "--seed", "1"], hens()).stderr).toBe(
    "headfall: Unknown option '--seed'. See: headfall help away\n",
  );
});
