import { expect, test } from "vitest";
import {
  checkDocument,
  depthDried,
  EVAPORATION_BY_AIR,
  type Heat,
  type HeatPart,
  heatOfDrying,
  heatOfPlan,
  sunAt,
  sunRiseOfVessel,
  writeHeatAnswer,
  writeHeatWaterer,
} from "../../../../packages/hydraulics/src/index.js";
import { throughDay } from "../../../../packages/hydraulics/src/physics/sun.js";

function heatOf(waterers: readonly Record<string, unknown>[], more: Record<string, unknown> = {}): Heat {
  const reading = checkDocument({
    headfall: 1,
    weather: { high: "33 degC", low: "21 degC", wind: "1.5 m/s", sun: "900 W/m2" },
    sources: [],
    runs: [],
    pens: [{ id: "hens", birds: { kind: "hen", count: 12 }, waterers }],
    ...more,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = heatOfPlan(reading.plan);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.heat;
}
const partOf = (waterer: Record<string, unknown>, more?: Record<string, unknown>): HeatPart =>
  heatOf([waterer], more).parts[0]!;
const meanOf = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0) / all.length;

test("heat and vapour go together as the psychrometric constant says: 67 Pa/K at sea level (FAO-56, table 2.2)", () => {
  // p(30 °C) - p(20 °C) = 4246 - 2339 Pa (IAPWS); a film of 1 W/(m² K) beside its radiation.
  expect(heatOfDrying({ film: 5.6, dew: 20 }, 30)).toBeCloseTo((4246 - 2339) / 67.4, 0);
  expect(heatOfDrying({ film: 10, dew: 30 }, 25)).toBe(0);
  // 28.4 W/m² dry a millimetre in a day (FAO-56: 2.45 MJ/kg).
  expect(depthDried(28.4) * 86_400).toBeCloseTo(1e-3, 4);
});

test("a closed bucket follows sun and air as a vessel does whose water is followed in closed form", () => {
  const { expected, volume } = partOf({ kind: "nipple-bucket-5gal" });
  const heat = heatOf([{ kind: "nipple-bucket-5gal" }]);
  const height = 0.36;
  // Of a plain cylinder: what it tends to, and how late; sizes differ a little, so to a degree.
  const radius = Math.sqrt(volume / (Math.PI * height));
  const wall = 2 * Math.PI * radius * height + Math.PI * radius ** 2;
  const film = 5.7 + 3.8 * 1.5;
  const towards = heat.air.map(
    (air, k) =>
      air +
      sunRiseOfVessel(
        { absorptance: 0.9, film, silhouette: 2 * radius * height, wall },
        sunAt({ peak: 900, dawn: heat.day.dawn, light: heat.day.light }, k * heat.step),
      ),
  );
  const closed = throughDay(towards, (4.19e6 * volume) / (film * wall));
  expect(expected.peak).toBeCloseTo(Math.max(...closed), 0);
  expect(meanOf(expected.water)).toBeCloseTo(meanOf(closed), 0);
});

test("in the shade open water stays cooler than the air by day, on the whole, and closed water as warm as it", () => {
  const pan = partOf({ kind: "rubber-pan-3gal", shade: true });
  const bucket = partOf({ kind: "nipple-bucket-5gal", shade: true });
  expect(pan.hottest.peak).toBeLessThan(33);
  expect(meanOf(pan.hottest.water)).toBeLessThan(27 - 1);
  expect(meanOf(pan.hottest.water)).toBeGreaterThan(21);
  expect(meanOf(bucket.hottest.water)).toBeCloseTo(meanOf(heatOf([{ kind: "pan" }]).air), 1);
  expect(pan.levers).toEqual([]);
});

test("what dries is within twice of what tables of open water give by the day's high", () => {
  const [, , hot] = EVAPORATION_BY_AIR.mmPerDay;
  for (const kind of ["rubber-pan-3gal", "dish-20cm", "trough-90cm"]) {
    const { waterer } = partOf({ kind });
    const mm = (1000 * waterer!.dried.expected) / waterer!.open;
    expect(mm).toBeGreaterThan(hot / 2);
    expect(mm).toBeLessThan(hot * 2);
  }
  expect(partOf({ kind: "nipple-bucket-5gal" }).waterer!.dried.expected).toBe(0);
});

test("a fount's ring is warm while its jar is not; white and shade make what they are said to make", () => {
  const fount = partOf({ kind: "fount-top-3gal" });
  expect(fount.kind).toBe("fount");
  expect(fount.hottest.peak).toBeGreaterThan(fount.expected.peak);
  expect(fount.hottest.less).toBeGreaterThan(4 * 3600);
  const [white, shade] = fount.levers;
  expect(white!.peak).toBeLessThan(fount.hottest.peak - 3);
  expect(shade!.peak).toBeLessThan(33);
  const pan = partOf({ kind: "pan-40cm" });
  expect(pan.levers[1]!.peak).toBe(partOf({ kind: "pan-40cm", shade: true }).hottest.peak);
});

test("filled anew whenever it is too warm it takes so many fills; with warm water none helps", () => {
  const cool = partOf({ kind: "pan-40cm" }, { water: "15 degC" }).waterer!.refresh;
  const mild = partOf({ kind: "pan-40cm" }, { water: "25 degC" }).waterer!.refresh;
  expect(cool.water).toBe(15);
  expect(cool.times!).toBeGreaterThan(0);
  expect(mild.times!).toBeGreaterThan(cool.times!);
  expect(mild.againAfter!).toBeLessThan(cool.againAfter!);
  expect(partOf({ kind: "pan-40cm" }, { water: "31 degC" }).waterer!.refresh.times).toBeUndefined();
  // Without a word of the plan it is as cool as the night.
  expect(partOf({ kind: "pan-40cm" }).waterer!.refresh.water).toBe(21);
});

test("loose waterers are told in words, and counted in the answer", () => {
  const heat = heatOf([
    { kind: "fount-1gal", id: "fount" },
    { kind: "dish-20cm", id: "dish" },
  ]);
  expect(writeHeatAnswer(heat, "metric")).toMatch(
    /^Water standing in (fount|dish) comes to \d\d °C, at worst \d\d °C/,
  );
  expect(writeHeatWaterer(heat.parts[1]!, "metric")).toMatch(
    /^dish: \d+ mL of its 568 mL dry away in such a day, \d+ mL in still air\. (No filling keeps up|Emptied and filled)/,
  );
});

// Recorded: how much side and surface each shape shows to sun and air is geometry that no source works out.
test("the warmest that each shape of loose waterer gets is what it was when this was written", () => {
  const kinds = [
    "fount-1gal",
    "pan-40cm",
    "rubber-pan-8qt",
    "trough-90cm",
    "bell-bucket-5gal",
    "nipple-bucket-5gal",
  ];
  const peaks = kinds.map((kind) => [kind, partOf({ kind }).hottest.peak.toFixed(3)]);
  expect(peaks).toEqual([
    ["fount-1gal", "51.301"],
    ["pan-40cm", "45.900"],
    ["rubber-pan-8qt", "45.779"],
    ["trough-90cm", "46.796"],
    ["bell-bucket-5gal", "47.614"],
    ["nipple-bucket-5gal", "35.994"],
  ]);
});

test("each is told as what it is to its keeper: pan, bucket or fount", () => {
  const kinds = ["pan-40cm", "trough-90cm", "nipple-bucket-5gal", "fount-1gal", "bell-bucket-5gal"];
  expect(heatOf(kinds.map((kind) => ({ id: kind, kind }))).parts.map(({ kind }) => kind)).toEqual([
    ...["pan", "pan", "bucket", "fount", "fount"],
  ]);
});
