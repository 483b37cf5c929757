import { balanceRain, type RainRecord, runOff } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import {
  roofWithoutShortDays,
  sizeWithoutShortDays,
} from "../../../../packages/hydraulics/src/judge/rain/rain-sizes.js";

test("roofWithoutShortDays names a roof that leaves no short day where it rains often enough, and a five-hundredth less leaves one", () => {
  // Three millimetres each fourth day.
  const rain = Float64Array.from({ length: 120 }, (_, k) => (k % 4 === 0 ? 0.003 : 0));
  const often = { rain } as unknown as RainRecord;
  const demand = new Float64Array(120).fill(0.003);
  const roof = { area: 1, runoff: 0.9, wetting: 0, firstFlush: 0 };
  const usable = 0.02;
  const short = (area: number) =>
    balanceRain(
      { inflow: runOff({ ...roof, area }, rain), demand, capacity: usable, start: usable },
      "drawnFirst",
    ).shortDays;
  const area = roofWithoutShortDays(roof, often, demand, usable)!;
  expect(short(area)).toBe(0);
  expect(short(area * (1 - 2e-3))).toBeGreaterThan(0);
  // Four days' 12 L less the 20 in the vessel spread over all: some 4.4 m² shed what is drunk.
  expect(area).toBeGreaterThan(3.5);
  expect(area).toBeLessThan(4.5);
});

test("sizeWithoutShortDays is what is drunk from one rain to the next, and a day's draw more: yield after spillage", () => {
  // Thirty litres fall each tenth day, three are drunk each day. By Jenkins' rule a day ends no fuller than the vessel
  // less what was drawn: to have 30 L left then, it holds 33.
  const inflow = Float64Array.from({ length: 100 }, (_, k) => (k % 10 === 9 ? 0.03 : 0));
  const demand = new Float64Array(100).fill(0.003);
  expect(sizeWithoutShortDays(inflow, demand, 0.03)!).toBeCloseTo(0.033, 4);
  expect(
    sizeWithoutShortDays(
      inflow.map((one) => one / 2),
      demand,
      0.03,
    ),
  ).toBeUndefined();
});
