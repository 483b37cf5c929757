import { expect, test } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildFlock } from "../../../packages/hydraulics/src/model/build-flock.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { flockAtLine } from "../../../packages/hydraulics/src/model/flock-at-line.js";
import { flockInDays, flockInHeat, flockInHottest } from "../../../packages/hydraulics/src/model/flock-on.js";

const hens = (more: Record<string, unknown>) => ({
  birds: { kind: "hen", count: 6, age: "30 weeks" },
  ...more,
});
const waterers = [{ kind: "pan-40cm" }];

function read(pens: readonly Record<string, unknown>[], more: Record<string, unknown> = {}) {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic" }],
    runs: [{ id: "lane", length: "3 m", drinkers: { kind: "nipple-side-action", count: 2 } }],
    pens,
    ...more,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const flocking = buildFlock(reading.plan, built.line);
  if (!flocking.ok) throw new Error(JSON.stringify(flocking.problems));
  return { plan: reading.plan, flock: flocking.flock };
}

test("birds of a pen with loose waterers and no drinkers count for nothing at the line; others there wait for some", () => {
  const { plan, flock } = read([
    hens({ id: "both", drinkers: ["lane"], waterers }),
    hens({ id: "loose", drinkers: [], waterers }),
    hens({ id: "nothing", drinkers: [] }),
  ]);
  const pens = flockAtLine(plan, flock).pens.map(({ id, batches, isElsewhere }) => [
    id,
    batches[0]!.count,
    isElsewhere,
  ]);
  expect(pens).toEqual([
    ["both", 6, undefined],
    ["loose", 0, true],
    ["nothing", 6, undefined],
  ]);
});

test("where every pen drinks from the line the flock is the very same", () => {
  const { plan, flock } = read([hens({ id: "both", waterers })]);
  expect(flockAtLine(plan, flock)).toBe(flock);
});

test("some days later each bird is as much older, whether its days are known or not", () => {
  const { flock } = read([hens({ id: "hens" })]);
  expect(flock.day).toBeUndefined();
  expect(flockInDays(flock, 10)).toMatchObject({ day: undefined });
  expect(flockInDays(flock, 10).pens[0]!.batches[0]!.ageDays).toBe(220);
  // Without a day nobody comes or goes.
  expect(flockInDays({ ...flock, roster: [] }, 10).pens[0]!.batches[0]!.ageDays).toBe(220);
  expect(flockInDays({ ...flock, day: 20_000 }, 10).day).toBe(20_010);
});

test("the hottest day is that of the hot spell, or one of 32 °C with the nights as far below", () => {
  const weather = (more: Record<string, unknown>) =>
    read([hens({ id: "hens" })], { weather: { high: "20 degC", low: "12 degC", ...more } }).flock;
  const air = ({ weather: { high, low } }: ReturnType<typeof weather>) => [high, low];
  expect(air(flockInHottest(weather({})))).toEqual([32, 24]);
  expect(air(flockInHottest(weather({ high: "36 degC" })))).toEqual([36, 12]);
  const spell = { hotSpell: { high: "29 degC", low: "20 degC" } };
  expect(air(flockInHottest(weather(spell)))).toEqual([29, 20]);
  expect(air(flockInHeat(weather(spell)))).toEqual([29, 20]);
  expect(air(flockInHeat(weather({})))).toEqual([20, 12]);
});
