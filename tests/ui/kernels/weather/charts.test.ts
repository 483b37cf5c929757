import { readFileSync } from "node:fs";
import { frostOfPlan, heatOfPlan, readPlan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { layFrostBars, ROW } from "../../../../packages/ui/src/kernels/weather/frost-bars.js";
import { layHeatChart } from "../../../../packages/ui/src/kernels/weather/heat-chart.js";

const reading = readPlan(readFileSync("docs/examples/alder-bank-hen-house.json", "utf8"));
if (!reading.ok) throw new Error("the example does not read");
const { plan } = reading;

test("layFrostBars puts each part's bar on one axis, its ice after its cooling, and the end of the night in it", () => {
  const answer = frostOfPlan(plan, { low: -6, hours: 43_200, wind: 3 });
  if (!answer.ok) throw new Error("no frost");
  for (const width of [330, 660]) {
    const { bars, left, right, nightEnds, hours, bottom } = layFrostBars(answer.frost, width);
    expect(bars).toHaveLength(answer.frost.parts.length);
    expect(bottom).toBeGreaterThanOrEqual(bars.length * ROW.height);
    expect((nightEnds - left) / (right - left)).toBeCloseTo(0.8, 9);
    for (const { cold, stops, stopsLatest } of bars) {
      expect(cold).toBeGreaterThanOrEqual(left);
      expect(stops).toBeGreaterThanOrEqual(cold);
      expect(stopsLatest).toBeGreaterThanOrEqual(stops);
      expect(stopsLatest).toBeLessThanOrEqual(right);
    }
    expect(hours[0]).toEqual({ value: 0, at: left });
  }
  const { bars } = layFrostBars(answer.frost, 660);
  const vessel = bars.find(({ part }) => part.kind === "vessel")!;
  expect(vessel.goesOn).toBe(true);
});

test("layHeatChart draws water, air and limits inside its plot, hotter higher, in either unit", () => {
  const answer = heatOfPlan(plan, { high: 38 });
  if (!answer.ok) throw new Error("no heat");
  const [part] = answer.heat.parts;
  const limits = [
    { at: 30, words: "less" },
    { at: 44, words: "refused" },
  ];
  const request = { heat: answer.heat, part: part!, limits, width: 330, height: 260 };
  const metric = layHeatChart({ ...request, isUs: false });
  const us = layHeatChart({ ...request, isUs: true });
  const { plot } = metric;
  const [less, refused] = metric.limits;
  expect(refused!.y).toBeLessThan(less!.y);
  for (const { y } of metric.limits) {
    expect(y).toBeGreaterThan(plot.top);
    expect(y).toBeLessThan(plot.bottom);
  }
  // The words of each limit stand by its own line, within the plot.
  for (const { y, wordsX, wordsY } of metric.limits) {
    expect(Math.abs(wordsY - y)).toBeLessThan(15);
    expect(wordsX).toBeGreaterThan(plot.left);
    expect(wordsX).toBeLessThan(plot.right);
  }
  expect(metric.hottest.match(/[ML]/g)).toHaveLength(answer.heat.air.length + 1);
  expect(us.hottest).toBe(metric.hottest);
  const at86 = us.degrees.find(({ value }) => value === 80)!.at;
  expect(at86).toBeGreaterThan(less!.y);
});

test("layHeatChart puts the words of a limit where no curve goes through them", () => {
  const answer = heatOfPlan(plan, { high: 38 });
  if (!answer.ok) throw new Error("no heat");
  const words = "30 °C: drunk less";
  for (const part of answer.heat.parts) {
    const { heat } = answer;
    const limits = [{ at: 30, words }];
    const chart = layHeatChart({ heat, part, limits, isUs: false, width: 330, height: 260 });
    const [{ wordsX, wordsY }] = chart.limits as [(typeof chart.limits)[0]];
    const [from, to] = [wordsX, wordsX + 100];
    const spots = [...`${chart.hottest}${chart.expected}`.matchAll(/([\d.]+) ([\d.]+)/g)];
    const within = spots.filter(
      ([, x, y]) => Number(x) > from && Number(x) < to && Math.abs(Number(y) - wordsY + 4) < 6,
    );
    expect(within).toEqual([]);
  }
});
