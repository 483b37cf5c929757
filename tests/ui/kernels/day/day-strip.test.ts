import { describe, expect, test } from "vitest";
import { indexDay } from "../../../../packages/ui/src/kernels/day/day-index.js";
import {
  layCrowdStrip,
  layLevelStrip,
  timeToX,
  xToTime,
} from "../../../../packages/ui/src/kernels/day/day-strip.js";
import { crowdedDay } from "./crowded-day.js";

const day = crowdedDay();
const crowd = (width: number) =>
  layCrowdStrip({ index: indexDay(day), pen: 0, places: 3, width, height: 150 });

describe("layCrowdStrip", () => {
  test("those that drink never stand above the line of all places, those that wait do", () => {
    const { drinking, both, placesY } = crowd(330);
    const top = (path: string) => Math.min(...[...path.matchAll(/V([\d.]+)/g)].map(([, y]) => Number(y)));
    expect(top(drinking)).toBeCloseTo(placesY!, 1);
    expect(top(both)).toBeLessThan(placesY!);
  });

  test("hours from midnight to midnight stand in order inside it, birds are counted whole", () => {
    for (const width of [330, 680]) {
      const { hours, plot, ticks } = crowd(width);
      expect(hours.map(({ value }) => value)).toContain(12);
      expect([hours[0]!.at, hours.at(-1)!.at]).toEqual([plot.left, plot.right]);
      expect(ticks.every(({ value }) => Number.isInteger(value))).toBe(true);
    }
  });

  test("a press finds the time that stands there, and no time beyond the day", () => {
    const strip = crowd(330);
    for (const time of [0, 20_000, 86_400]) expect(xToTime(strip, timeToX(strip, time))).toBeCloseTo(time, 6);
    expect([xToTime(strip, -5), xToTime(strip, 900)]).toEqual([0, 86_400]);
  });

  test("where nobody comes there is nothing above the ground line", () => {
    const index = indexDay({ ...day, events: { ...day.events!, count: 0 } });
    const { drinking, plot } = layCrowdStrip({ index, pen: 0, places: undefined, width: 330, height: 150 });
    expect([...drinking.matchAll(/V([\d.]+)/g)].every(([, y]) => Number(y) === plot.bottom)).toBe(true);
  });
});

test("layLevelStrip draws the first and the last level where their heights say", () => {
  const { line, plot, ticks } = layLevelStrip({
    time: Float64Array.of(0, 43_200, 86_400),
    level: Float64Array.of(0.4, 0.3, 0.2),
    full: 0.4,
    unit: 0.01,
    width: 330,
    height: 120,
  });
  expect(line).toBe(
    `M${plot.left} ${plot.top}L${(plot.left + plot.right) / 2} ${plot.bottom - ((plot.bottom - plot.top) * 3) / 4}L${plot.right} ${(plot.bottom + plot.top) / 2}`,
  );
  expect(ticks.map(({ value }) => value)).toEqual([0, 10, 20, 30, 40]);
});
