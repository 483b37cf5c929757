import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  BEHAVIOUR,
  BIRD_HABITS,
  buildDaySetting,
} from "../../../packages/hydraulics/src/simulate/day-setting.js";
import { lineOf } from "../model/built.js";
import { batch, flockOf, PLAIN_BIRD } from "./made-birds.js";

const line = lineOf([
  { length: "3 m", drinkers: { kind: "nipple-side-action", count: 2 } },
  { length: "3 m", drinkers: { kind: "bell", count: 2 } },
]);
const settingOf = (pens: Parameters<typeof flockOf>[1], figure: "expect" | "size" = "expect") =>
  buildDaySetting(line, flockOf(line, pens), [], figure, [0, 0, 0, 0]);

test("buildDaySetting has fewer bouts where most of what a pen can reach is open water, not half of it", () => {
  const batches = [batch(3)];
  const boutsOf = (drinkers: number[]) => settingOf([{ batches, drinkers }]).batches[0]!.bouts;
  expect(boutsOf([0, 1])).toBe(PLAIN_BIRD.boutsClosed);
  expect(boutsOf([0, 1, 2, 3])).toBe(PLAIN_BIRD.boutsClosed);
  expect(boutsOf([1, 2, 3])).toBe(PLAIN_BIRD.boutsOpen);
  expect(boutsOf([2, 3])).toBe(PLAIN_BIRD.boutsOpen);
});

test("buildDaySetting takes the batches that are there, by pen, each with the figure asked for", () => {
  const pens = [{ batches: [batch(3), batch(9, { ageDays: -1 })] }, { batches: [batch(5)], drinkers: [3] }];
  const { batches, places } = settingOf(pens);
  expect(batches.map(({ pen, index, count }) => [pen, index, count])).toEqual([
    [0, 0, 3],
    [1, 0, 5],
  ]);
  for (const { wanted } of batches) expect(wanted).toBeCloseTo(200e-6, 12);
  for (const { wanted } of settingOf(pens, "size").batches) expect(wanted).toBeCloseTo(270e-6, 12);
  expect(places).toEqual([1, 1, 5, 5]);
});

test("birds behave as the page about the day tells", () => {
  const page = readFileSync(new URL("../../../docs/method/day.md", import.meta.url), "utf8").replace(
    /\s+/g,
    " ",
  );
  const { spread, patience, retry, least, most } = BEHAVIOUR;
  expect(page).toContain(`with a standard deviation of ${100 * spread} %`);
  expect(page).toContain(`After ${patience} s it gives up, and comes back after ${retry} s on average`);
  expect(page).toContain(`no less than ${least} D / b and no more than ${most} D / b`);
  expect(BIRD_HABITS).toEqual({ bouts: "thirst", patience, retry, spread });
});
