import { beforeAll, expect, test } from "vitest";
import { penPlan } from "../hydraulics/judge/birds/pens.js";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const day = ["--day", "2026-07-04"];
const hens = (source: Record<string, unknown> = {}) => {
  const plan = penPlan({ more: { name: "Alder Bank, hens", weather: { high: "21 degC" } } });
  return JSON.stringify({ ...plan, sources: [{ ...plan.sources[0], ...source }] });
};
/** Of the barrel [m2]. */
const AREA = (Math.PI / 4) * 0.57 ** 2;

test("headfall mark tells the fall by tomorrow, its band, what less and more mean, and a mark a day", () => {
  const run = headfall(["mark", "-", ...day], hens());
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toMatch(
    /^Alder Bank, hens: the daily mark of barrel\nFrom 40 cm it should fall [\d.]+ cm by tomorrow at the same hour from 2026-07-04 \([\d.]+ L\); between [\d.]+ cm and [\d.]+ cm is as it should be\.\n/,
  );
  // Every fall within a day belongs to one answer: each begins where the one before ends.
  const [least, most] = /between ([\d.]+) cm and ([\d.]+) cm is as it should be/.exec(run.stdout)!.slice(1);
  const [stuck] = /Less than ([\d.]+) cm: something is stuck, and birds are thirsty\./
    .exec(run.stdout)!
    .slice(1);
  expect(run.stdout).toContain(`Between ${stuck} cm and ${least} cm: that may be how it was read.`);
  expect(run.stdout).toContain(`More than ${most} cm in a day: a leak`);
  const [, night = "0", leak] =
    /it (?:stands still|falls no more than ([\d.]+) cm)\. Up to ([\d.]+) cm may be how it was read; more means it leaks/.exec(
      run.stdout,
    )!;
  expect(Number(leak)).toBeGreaterThan(Number(night));
  expect(run.stdout).toMatch(
    /\nday +mark +holds +from +to\n +1 +[\d.]+ cm +[\d.]+ L +[\d.]+ cm +[\d.]+ cm\n/,
  );
  expect(run.stdout).toContain("look at the birds and their water every day");
});

test("headfall mark --json: the fall is the day's litres over the barrel's area", () => {
  const result = JSON.parse(headfall(["mark", "-", "--json", ...day], hens()).stdout);
  expect(result).toMatchObject({
    format: "headfall mark",
    version: 1,
    day: "2026-07-04",
    source: "barrel",
    isKeptFull: false,
  });
  expect(result.from).toBeCloseTo(0.4, 12);
  expect(result.fall.size).toBeCloseTo((24 * 270e-6 * 1.05) / AREA, 9);
  expect(result.sentences.length).toBeGreaterThan(2);
});

test("headfall mark --level begins where the water stands, in any unit", () => {
  const from = (level: string) =>
    JSON.parse(headfall(["mark", "-", "--json", "--level", level, ...day], hens()).stdout);
  expect(from("30 cm").from).toBeCloseTo(0.3, 12);
  expect(from("1 ft").from).toBeCloseTo(0.3048, 12);
  expect(from("30 cm").marks.length).toBeLessThan(from("40 cm").marks.length);
  expect(headfall(["mark", "-", "--units", "us", ...day], hens()).stdout).toMatch(/\d in\b[\s\S]*\d gal\b/);
});

test("headfall mark --source takes another source by its name", () => {
  const plan = JSON.parse(hens());
  const two = JSON.stringify({
    ...plan,
    sources: [...plan.sources, { id: "bucket", vessel: "bucket-5gal", stand: "60 cm" }],
    runs: [
      ...plan.runs,
      { id: "other", from: "bucket", length: "3 m", drinkers: { kind: "nipple-side-action", count: 2 } },
    ],
  });
  const run = headfall(["mark", "-", "--source", "bucket", ...day], two);
  expect(run.stderr).toBe("");
  expect(run.stdout).toMatch(/^Alder Bank, hens: the daily mark of bucket\n/);
  expect(headfall(["mark", "-", "--source", "well", ...day], two)).toEqual({
    status: 2,
    stdout: "",
    stderr: 'headfall: --source is one of barrel, bucket, not "well". See: headfall help mark\n',
  });
});

test("headfall mark (a barrel kept full by a hose) says that its level tells nothing", () => {
  const run = headfall(["mark", "-", ...day], hens({ refill: { hose: "3 L/min" } }));
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toMatch(/kept full/);
});

test.each([
  ["half", /^headfall: --level: found "half"\. A length is a number with its unit/],
  ["3 L", /^headfall: --level: found "3 L"\. A length is a number with its unit/],
  ["60 cm", /^headfall: --level is from the bottom up to the full level\./],
  ["-1 cm", /^headfall: /],
])("headfall mark --level %s is refused with status 2, in one line", (level, sentence) => {
  const run = headfall(["mark", "-", `--level=${level}`, ...day], hens());
  expect(run).toMatchObject({ status: 2, stdout: "" });
  expect(run.stderr).toMatch(sentence);
  expect(run.stderr.trimEnd().split("\n")).toHaveLength(1);
});
