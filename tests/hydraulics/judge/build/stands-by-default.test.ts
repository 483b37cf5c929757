import { expect, test } from "vitest";
import { buildSheetOf } from "../../../../packages/hydraulics/src/judge/build/build-of-plan.js";
import { planOf } from "../trouble/ask.js";

function loadOf(source: object, keys: object = {}) {
  const plan = planOf({
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic", ...source }],
    runs: [{ length: "1 m", drinkers: { kind: "nipple-side-action", count: 1 } }],
    ...keys,
  });
  const answer = buildSheetOf(plan, { samples: 1, weeks: 0 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.sheet.loads[0]!;
}

test("a stand of which the plan says nothing has four feet of 9 cm on clay, and is tied to nothing", () => {
  const load = loadOf({ stand: "60 cm" });
  expect([load.feet, load.on, load.isTied]).toEqual([4, "feet", false]);
  expect(load.area).toBeCloseTo(4 * 0.09 ** 2, 12);
  expect(load.soil).toMatchObject({ id: "clay", isTyped: false });
  expect(loadOf({ stand: "60 cm" }, { soil: "clay" }).soil.isTyped).toBe(true);
  expect(loadOf({ stand: "60 cm", footing: { feet: 3, tied: true } })).toMatchObject({
    feet: 3,
    isTied: true,
  });
});

test("a drum of the table weighs what the table says, unless the plan does; one of the plan's own is not known", () => {
  const { vessel, water, full } = loadOf({});
  expect(vessel).toBeGreaterThan(5);
  expect(full).toBeCloseTo(water + vessel!, 9);
  expect(loadOf({ footing: { vessel: 3 } }).vessel).toBe(3);
  const own = loadOf({ vessel: { shape: "upright", diameter: "50 cm", height: "80 cm" } });
  expect([own.vessel, own.wind]).toEqual([undefined, undefined]);
  expect(own.full).toBe(own.water);
});

test("untied and full it stands in less wind than it tips in, and a stand makes that less", () => {
  const low = loadOf({}).wind!;
  expect(low.withStand).toBeUndefined();
  expect(low.emptyAllowed / low.empty).toBeLessThan(1);
  const high = loadOf({ stand: "60 cm", footing: { weighs: 0 } }).wind!;
  expect(high.withStand!).toBeLessThan(high.empty);
  // Twice as wide a stand stands in the root of twice the wind.
  const wide = (width: string) => loadOf({ stand: "60 cm", footing: { weighs: 0, width } }).wind!.withStand!;
  expect(wide("120 cm") / wide("60 cm")).toBeCloseTo(Math.SQRT2, 6);
});

test("a light vessel that no water keeps standing in a hard gust is given no litres to keep", () => {
  const tall = { vessel: { shape: "upright", diameter: "20 cm", height: "2 m" }, footing: { vessel: 4 } };
  expect(loadOf(tall).wind!.keep).toBeUndefined();
  expect(loadOf({}).wind!.keep!).toBeGreaterThan(0);
});
