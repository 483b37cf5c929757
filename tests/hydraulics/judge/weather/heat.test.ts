import { expect, test } from "vitest";
import { readPlan } from "../../../../packages/hydraulics/src/document/read-plan.js";
import {
  type BirdsWeek,
  birdsForPlan,
} from "../../../../packages/hydraulics/src/judge/birds/birds-for-plan.js";
import { heatOfPlan } from "../../../../packages/hydraulics/src/judge/weather/heat.js";
import type { Heat } from "../../../../packages/hydraulics/src/judge/weather/heat-result.js";
import { waysToRuns } from "../../../../packages/hydraulics/src/judge/weather/ways-to-runs.js";
import { buildLine } from "../../../../packages/hydraulics/src/model/build-line.js";
import type { HeatAsked } from "../../../../packages/hydraulics/src/model/extremes.js";

const HOUR = 3600;

function read(more: Record<string, unknown>, run: Record<string, unknown> = {}) {
  const reading = readPlan(
    JSON.stringify({
      headfall: 1,
      weather: { high: "33 degC", low: "21 degC", wind: "1.6579 m/s", sun: "900 W/m2" },
      sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "1 m", shade: "100 %" }],
      runs: [
        { id: "feed", length: "12 m", pipe: "pvc-sch40-3/4", ...run },
        {
          id: "hen line",
          length: "6 m",
          pipe: "pvc-sch40-3/4",
          drinkers: { kind: "nipple-side-action", count: 8 },
          ...run,
        },
      ],
      ...more,
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function heatOf(plan: ReturnType<typeof read>, asked: HeatAsked = {}): Heat {
  const answer = heatOfPlan(plan, asked);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.heat;
}

const line = ({ parts }: Heat) => parts.find(({ id }) => id === "hen line")!;

test("dark pipe at 33 °C comes to some 54 °C, as garden hoses were measured to; white to some 38 °C", () => {
  // A wind of 1.658 m/s has the film of 12 W/(m² K) of the example worked by hand: 21.5 and 7.2 K over the air.
  expect(line(heatOf(read({}))).expected.peak).toBeGreaterThan(50);
  expect(line(heatOf(read({}))).expected.peak).toBeLessThan(54.5);
  const white = line(heatOf(read({}, { colour: "white" })));
  expect(white.expected.peak).toBeGreaterThan(37);
  expect(white.expected.peak).toBeLessThan(40.2);
  expect(white.levers.map(({ change }) => change)).not.toContain("white");
});

test("in full shade still water is no warmer than the air, and without sun neither", () => {
  for (const heat of [heatOf(read({}, { shade: "100 %" })), heatOf(read({}), { sun: 0 })]) {
    expect(line(heat).hottest.peak).toBeLessThanOrEqual(33 + 1e-9);
    expect(line(heat).hottest.refused).toBe(0);
  }
});

test("what a change is said to make is what the plan so changed comes to", () => {
  const levers = line(heatOf(read({}))).levers;
  const changed = {
    white: { colour: "white" },
    shade: { shade: "100 %" },
    lagging: { lagging: "25 mm" },
    buriedShallow: { buried: "15 cm" },
    buriedDeep: { buried: "30 cm" },
  };
  expect(levers.map(({ change }) => change)).toEqual(Object.keys(changed));
  for (const { change, peak } of levers)
    expect(line(heatOf(read({}, changed[change as keyof typeof changed]))).hottest.peak).toBeCloseTo(peak, 9);
});

test("deeper is never warmer, and lagging only takes the edge off", () => {
  const peaks = ["1 cm", "15 cm", "30 cm", "60 cm"].map(
    (buried) => line(heatOf(read({}, { buried }))).hottest.peak,
  );
  expect(peaks).toEqual([...peaks].sort((a, b) => b - a));
  const lagged = line(heatOf(read({}, { lagging: "25 mm" }))).hottest.peak;
  expect(lagged).toBeLessThan(line(heatOf(read({}))).hottest.peak);
  expect(lagged).toBeGreaterThan(40);
});

test("what to flush is all hot pipe up to the drinkers, again and again while the sun is on it", () => {
  const heat = heatOf(read({}));
  const [flush] = heat.flushes;
  expect(heat.flushes).toHaveLength(1);
  expect(flush!.volume).toBeCloseTo(heat.parts[0]!.volume + heat.parts[1]!.volume, 12);
  expect(flush!.from).toBeLessThan(line(heat).hottest.at);
  expect(flush!.times).toBeGreaterThan(3);
  expect(flush!.againAfter).toBeLessThan(HOUR / 2);
  // A shaded feed at 33 °C stays too warm itself; on a milder day only the sunny end has to go.
  const mild = { high: 29 };
  const shaded = heatOf(read({ runs: [{ ...read({}).runs[0], shade: "100 %" }, read({}).runs[1]] }), mild);
  expect(shaded.flushes[0]!.volume).toBeCloseTo(line(shaded).volume, 12);
});

test("a vessel follows hours late, and stays near the air", () => {
  const source = { id: "barrel", vessel: "drum-55gal-plastic", stand: "1 m" };
  const barrelOf = (more: Record<string, unknown>) =>
    heatOf(read({ sources: [{ ...source, ...more }] })).parts.find(({ kind }) => kind === "vessel")!;
  const barrel = barrelOf({});
  expect(barrel.hottest.peak).toBeGreaterThan(28);
  expect(barrel.hottest.peak).toBeLessThan(36);
  expect(barrel.hottest.at).toBeGreaterThan(14 * HOUR);
  expect(barrelOf({ shade: "50 %" }).hottest.peak).toBeLessThan(barrel.hottest.peak);
  expect(barrelOf({ colour: "white" }).hottest.peak).toBeCloseTo(barrel.levers[0]!.peak, 9);
});

test("a plan that names one temperature is given a clear night, and told so", () => {
  const heat = heatOf(read({ weather: { high: "33 degC" } }));
  expect(heat.day).toMatchObject({ high: 33, low: 21, sun: 900, wind: 1.5 });
  expect(heat.defaults.map(({ path }) => path)).toEqual(["weather.low", "weather.sun", "weather.wind"]);
  expect(heatOf(read({}), { high: 40 }).day).toMatchObject({ high: 40, low: 28 });
});

test("waysToRuns goes from source to run by the runs between, each after the one before it", () => {
  const built = buildLine(read({}));
  if (!built.ok) throw new Error("no line");
  expect(waysToRuns(built.line)).toEqual([
    { run: 0, source: 0, before: -1 },
    { run: 1, source: 0, before: 0 },
  ]);
});

test("what is drunk renews the pipes that get warm, and those in the shade need it not while the air is cool", () => {
  const { renewedEvery, draw, parts } = heatOf(
    read({
      pens: [{ birds: { kind: "hen", count: 12 } }],
      runs: [
        { id: "feed", length: "12 m", pipe: "pvc-sch40-3/4", shade: "100 %" },
        {
          id: "hen line",
          length: "6 m",
          pipe: "pvc-sch40-3/4",
          drinkers: { kind: "nipple-side-action", count: 8 },
        },
      ],
    }),
    { high: 27 },
  );
  const pipes = parts.filter(({ kind }) => kind === "pipe");
  const warm = pipes.filter(({ hottest }) => hottest.less > 0);
  expect([pipes.length, warm.map(({ id }) => id)]).toEqual([2, ["hen line"]]);
  expect(renewedEvery! * draw).toBeCloseTo(warm[0]!.volume, 12);
});

test("what all birds drink on the hot day is what the birds' own answer has, at the line and at loose waterers", () => {
  const pens = [
    { id: "hens", birds: { kind: "hen", count: 20 } },
    {
      id: "chicks",
      birds: { kind: "pullet", count: 12, age: "3 weeks" },
      drinkers: [],
      waterers: [{ kind: "fount-1gal" }],
    },
  ];
  for (const weather of [
    { high: "25 degC" },
    { high: "35 degC", low: "22 degC" },
    { high: "24 degC", low: "15 degC", hotSpell: { high: "38 degC", low: "26 degC" } },
  ]) {
    const plan = read({ pens, weather });
    const birds = birdsForPlan(plan);
    if (!birds.ok) throw new Error(JSON.stringify(birds.problems));
    const { intake, day } = heatOf(plan);
    const [{ hot }] = birds.birds.weeks as readonly [BirdsWeek];
    expect([intake!.size, intake!.expect]).toEqual([hot.size, hot.expect]);
    expect([day.high, intake!.night]).toEqual([birds.birds.hotDay.high, birds.birds.hotDay.low]);
    // A hotter day that is asked about makes them drink more.
    expect(heatOf(plan, { high: 42 }).intake!.size).toBeGreaterThan(intake!.size);
  }
  expect(heatOf(read({})).intake).toBeUndefined();
});
