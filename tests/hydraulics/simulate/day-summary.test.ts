import { expect, test } from "vitest";
import { type DayRow, summariseDays } from "../../../packages/hydraulics/src/simulate/day-summary.js";

const rowOf = (seed: number, drawn: number, short: number): DayRow =>
  ({ seed, drawn, pens: [{ pen: "hens", birds: 24, short }] }) as unknown as DayRow;

test("summariseDays gives the middle day of twenty, those that one in ten lies below and above, and the most", () => {
  // In no order of what was drawn: 7 and 20 have no common divisor.
  const rows = Array.from({ length: 20 }, (_, k) => rowOf(100 + k, 1 + ((7 * k) % 20), k % 4 === 0 ? k : 0));
  const { days, seeds, drawn, pens } = summariseDays(rows);
  expect([days, seeds]).toEqual([20, { from: 100, to: 119 }]);
  expect(drawn).toEqual({ low: 3, middle: 11, high: 19, most: 20 });
  // On the days 4, 8, 12 and 16 of twenty; on day 0 none came short.
  expect(pens[0]).toMatchObject({ pen: "hens", birds: 24, daysShort: 0.2, short: { middle: 0, most: 16 } });
});

test("summariseDays of one day is that day", () => {
  const [only] = [summariseDays([rowOf(5, 3, 2)])];
  expect(only.drawn).toEqual({ low: 3, middle: 3, high: 3, most: 3 });
  expect(only.pens[0]).toMatchObject({ daysShort: 1, short: { low: 2, middle: 2, high: 2, most: 2 } });
});
