import { beforeAll, expect, test } from "vitest";
import { penPlan } from "../hydraulics/judge/birds/pens.js";
import { buildCommand, headfall } from "./run-headfall.js";

beforeAll(buildCommand, 120_000);

const day = ["--day", "2026-07-04"];
const hens = (source: Record<string, unknown> = {}, more: Record<string, unknown> = {}) => {
  const plan = penPlan({ more: { name: "Alder Bank, hens", weather: { high: "21 degC" }, ...more } });
  return JSON.stringify({ ...plan, sources: [{ ...plan.sources[0], ...source }] });
};
const hot = { weather: { high: "21 degC", hotSpell: { high: "33 degC" } } };

test("headfall lasts tells from when, how long to what, the range, and what is carried", () => {
  const run = headfall(["lasts", "-", ...day], hens());
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toMatch(
    /^Alder Bank, hens: how long the water lasts\nFull on 2026-07-04 at 07:00:\n- barrel: 102 L, of which 89\.3 L can be drawn; not filled again\n/,
  );
  for (const row of [
    "first bird without",
    "first drinker dry",
    "half of the drinkers dry",
    "nothing left to draw",
  ])
    expect(run.stdout).toMatch(new RegExp(`\\n${row}( +\\d+ days?( \\d+ h)?){3}\\n`));
  // 24 hens of 270 mL (Poultry CRC, Table 1) and a twentieth spilled.
  expect(run.stdout).toMatch(/\ndrawn on the first day +[\d.]+ L +6\.8 L +6\.8 L\n/);
  expect(run.stdout).toContain("To barrel, if what is drunk is carried:");
  expect(run.stdout).toContain("Look at the birds and their water every day");
});

test("headfall lasts --json: so many days as the barrel's water goes into the day's draw, litres balanced", () => {
  const result = JSON.parse(headfall(["lasts", "-", "--json", ...day], hens()).stdout);
  expect(result).toMatchObject({ format: "headfall lasts", version: 1, day: "2026-07-04", begins: 7 * 3600 });
  const area = (Math.PI / 4) * 0.57 ** 2;
  expect(result.sources).toMatchObject([{ source: "barrel", refill: { kind: "none" } }]);
  expect(result.sources[0].full).toBeCloseTo(area * 0.4, 12);
  expect(result.sources[0].usable).toBeCloseTo(area * 0.35, 12);
  const days = result.alone.size.empty / 86_400;
  const byHand = (area * 0.35) / (24 * 270e-6 * 1.05);
  // The last day follows the day's curve: most of it is drunk by evening, none of it at night.
  expect(Math.abs(days - byHand)).toBeLessThan(0.5);
  for (const { balance } of Object.values<{ balance: Record<string, number> }>(result.alone)) {
    const { start, poured, drawn, left } = balance as {
      start: number;
      poured: number;
      drawn: number;
      left: number;
    };
    expect(Math.abs(start + poured - drawn - left)).toBeLessThan(1e-9);
  }
  expect(result.carrying.sources).toEqual(["barrel"]);
});

test("headfall lasts ends with 1 where, filled as the plan says, some bird goes without in the heat", () => {
  const seldom = headfall(["lasts", "-", ...day], hens({ refill: { every: "9 days" } }, hot));
  expect(seldom.status).toBe(1);
  expect(seldom.stdout).toContain("filled up every 9 days");
  for (const title of ["Filled as the plan says", "If nobody comes any more"])
    expect(seldom.stdout.split("\n")).toContain(title);
  const daily = headfall(["lasts", "-", ...day], hens({ refill: { every: "1 day" } }, hot));
  expect(daily.status).toBe(0);
  expect(daily.stdout).toContain("filled up every day");
  expect(daily.stdout).toMatch(/\nfirst bird without +not +not +not\n/);
  const hose = headfall(["lasts", "-", ...day], hens({ refill: { hose: "2 L/min" } }, hot));
  expect(hose.status).toBe(0);
  expect(hose.stdout).toContain("kept full by a hose, 2 L/min at most");
});

test("headfall lasts --units us writes gallons and pounds", () => {
  const run = headfall(["lasts", "-", "--units", "us", ...day], hens());
  expect(run.status).toBe(0);
  expect(run.stdout).toMatch(/\d gal\b[\s\S]*\d lb\b/);
  expect(run.stdout).not.toMatch(/\d (L|kg)\b/);
});

test("headfall lasts (a plan without pens, with a roof) says what it leaves out", () => {
  const { pens: _, ...nobody } = JSON.parse(hens({ roof: { area: "10 m2" } }));
  const run = headfall(["lasts", "-", ...day], JSON.stringify(nobody));
  expect(run).toMatchObject({ status: 0, stderr: "" });
  expect(run.stdout).toContain("The plan has no pens of birds: nobody drinks.");
  expect(run.stdout).toContain("Rain is not counted");
});

test("headfall lasts refuses options of others, days that are none, and plans that are broken, with status 2", () => {
  expect(headfall(["lasts", "-", "--days", "3"], hens())).toEqual({
    status: 2,
    stdout: "",
    stderr: "headfall: Unknown option '--days'. See: headfall help lasts\n",
  });
  expect(headfall(["lasts", "-", "--day", "4 July"], hens())).toMatchObject({
    status: 2,
    stdout: "",
    stderr: 'headfall: --day is a day such as 2026-07-04, not "4 July". See: headfall help lasts\n',
  });
  const broken = headfall(["lasts", "-", ...day], hens({ refill: { every: "9 fortnights" } }));
  expect(broken).toMatchObject({ status: 2, stdout: "" });
  expect(broken.stderr).toContain('sources[0].refill.every (line 1): found "9 fortnights".');
  const shared = { pens: [{ birds: { kind: "hen", count: 1 } }, { birds: { kind: "hen", count: 1 } }] };
  const unclear = headfall(["lasts", "-", ...day], hens({}, shared));
  expect(unclear).toMatchObject({ status: 2, stdout: "" });
  expect(unclear.stderr).toContain(
    "pens[1].drinkers: found nothing. Only one pen may leave out which drinkers it reaches.",
  );
});
