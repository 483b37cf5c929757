import { expect, test } from "vitest";
import { frostOfPlan } from "../../../../packages/hydraulics/src/judge/weather/frost.js";
import { heatOfPlan } from "../../../../packages/hydraulics/src/judge/weather/heat.js";
import { planOf } from "../trouble/ask.js";

const HOUR = 3600;
const plan = (more: Record<string, unknown> = {}, run: Record<string, unknown> = {}) =>
  planOf({
    headfall: 1,
    weather: { high: "33 degC", low: "21 degC", wind: "1.5 m/s", sun: "900 W/m2" },
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "1 m", shade: "100 %" }],
    runs: [
      {
        ...{ id: "lane", length: "6 m", pipe: "pvc-sch40-3/4" },
        drinkers: { kind: "nipple-side-action", count: 4 },
        ...run,
      },
    ],
    ...more,
  });
function flushOf(run: Record<string, unknown> = {}, more: Record<string, unknown> = {}) {
  const answer = heatOfPlan(plan(more, run));
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return { heat: answer.heat, flush: answer.heat.flushes[0], lane: answer.heat.parts[0]! };
}

test("a warm run is flushed from when its water first is too warm to when it no longer is, never oftener than at its hottest", () => {
  const { flush, lane } = flushOf();
  const { water } = lane.hottest;
  expect(water[flush!.from / 900 - 1]).toBeLessThanOrEqual(30);
  expect(water[flush!.from / 900]).toBeGreaterThan(30);
  expect(water[flush!.to / 900 - 1]).toBeGreaterThan(30);
  expect(water[flush!.to / 900]).toBeLessThanOrEqual(30);
  const { times, againAfter } = flush!;
  const most = (flush!.to - flush!.from) / againAfter!;
  expect(times!).toBeLessThanOrEqual(most + 1);
  expect(times!).toBeGreaterThan(most / 3);
});

test("how soon it is too warm again is Newton's law: thicker foam makes it later, more bore too", () => {
  const { flush, heat, lane } = flushOf();
  // What dark pipe tends to in still air, and the shaded barrel's own water then.
  const tends = Math.max(...heat.air) + (0.95 * 900) / (Math.PI * 10);
  const barrel = heat.parts[1]!.hottest.water;
  const byHand = (cool: number) => lane.timeConstant * Math.log((tends - cool) / (tends - 30));
  expect(flush!.againAfter).toBeGreaterThan(0.8 * byHand(Math.max(...barrel)));
  expect(flush!.againAfter).toBeLessThan(1.25 * byHand(Math.min(...barrel)));
  const wide = flushOf({ pipe: "pvc-sch40-1" }).flush!;
  expect(wide.againAfter!).toBeGreaterThan(flush!.againAfter!);
  expect(wide.times!).toBeLessThan(flush!.times!);
});

test("no flush helps where the barrel's own water is too warm, or the run lies in warm ground; none is told of cool runs", () => {
  const hot = { sources: [{ id: "barrel", vessel: "bucket-5gal", stand: "1 m" }] };
  expect(flushOf({}, hot).flush).toMatchObject({ times: undefined, againAfter: undefined });
  // In the ground water is as warm as the ground at once.
  expect(flushOf({ buried: "60 cm" }).flush?.times).toBeUndefined();
  expect(flushOf({ drinkers: undefined }).flush).toBeUndefined();
});

test("a night begins at the end of the light, also where that is past midnight", () => {
  const duskOf = (weather: Record<string, unknown>) => {
    const answer = frostOfPlan(plan({ weather: { high: "5 degC", ...weather } }), { low: -5 });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.frost.dusk / HOUR;
  };
  expect(duskOf({})).toBe(18);
  expect(duskOf({ dawn: "08:00", light: "9 h" })).toBe(17);
  expect(duskOf({ dawn: "20:00", light: "10 h" })).toBe(6);
});
