import { expect, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { buildSheetOf } from "../../../../packages/hydraulics/src/judge/build/build-of-plan.js";
import { GUST } from "../../../../packages/hydraulics/src/judge/build/stand-loads.js";
import { writeLoadLines } from "../../../../packages/hydraulics/src/report/build/load-words.js";

const G = 9.80665;
const BARREL = { shape: "upright", diameter: "50 cm", height: "80 cm" };

function loadOf(source: object, keys: object = {}) {
  const reading = checkDocument({
    headfall: 1,
    water: "4 degC",
    sources: [{ vessel: BARREL, level: { full: "60 cm" }, ...source }],
    runs: [{ length: "1 m", drinkers: { kind: "nipple-side-action", count: 1 } }],
    ...keys,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = buildSheetOf(reading.plan, { samples: 1 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.sheet.loads[0]!;
}

const water = 1000 * (Math.PI / 4) * 0.25 * 0.6;

test("a barrel on the ground presses with its own bottom, as its level says, with no stand to weigh", () => {
  const load = loadOf({ footing: { vessel: 0 } });
  expect([load.on, load.feet]).toEqual(["bottom", 0]);
  expect(load.full).toBeCloseTo(water, 1);
  expect(load.pressure).toBeCloseTo(1000 * G * 0.6, -1);
});

test("pads take the load from bare feet: the pressure goes with their area", () => {
  const bare = loadOf({ stand: "50 cm", footing: { feet: 4, foot: "10 cm" } });
  const pads = loadOf({
    stand: "50 cm",
    footing: { feet: 4, foot: "10 cm", pad: { length: "40 cm", width: "20 cm" } },
  });
  expect(bare.pressure).toBeCloseTo((bare.full * G) / 0.04, 6);
  expect(pads.pressure).toBeCloseTo(bare.pressure! / 8, 6);
  expect(pads.on).toBe("pads");
});

test("the pad that is advised brings the soil to half of what it is presumed to bear", () => {
  const load = loadOf({ stand: "50 cm" }, { soil: "clay" });
  expect((load.full * G) / (4 * load.padSide ** 2)).toBeCloseTo(load.soil.presumed / 2, 6);
});

test("the middle of the mass is that of water, vessel and stand by hand, and the tilt follows from it", () => {
  const load = loadOf({ stand: "50 cm", footing: { vessel: 8, weighs: 20, width: "60 cm" } });
  const centre = (water * 0.8 + 8 * 0.9 + 20 * 0.25) / (water + 28);
  expect(load.centre).toBeCloseTo(centre, 3);
  expect(load.tilt).toBeCloseTo(Math.atan(0.6 / (2 * centre)), 3);
});

test("the water to keep lets it stand in a hard gust by the rule, to the newton metre", () => {
  const { wind } = loadOf({ footing: { vessel: 5 } });
  const moment = 0.613 * GUST ** 2 * 0.8 * (0.5 * 0.8) * 0.4;
  expect(((5 + 1000 * wind!.keep!) * G * 0.5 * 2) / (2 * 3)).toBeCloseTo(moment, 0);
});

test("more water never lets less wind tip it, and a lying drum or an unknown weight has no figure", () => {
  const { wind } = loadOf({ footing: { vessel: 5 } });
  expect(wind!.empty).toBeLessThan(wind!.lowest);
  expect(wind!.lowest).toBeLessThan(wind!.full);
  expect(wind!.emptyAllowed).toBeLessThan(wind!.empty);
  expect(loadOf({}).wind).toBeUndefined();
  const lying = { vessel: { shape: "lying", diameter: "60 cm", length: "90 cm" }, level: { full: "50 cm" } };
  expect(loadOf({ ...lying, footing: { vessel: 10 } }).wind).toBeUndefined();
});

test("an overflow too small for a downpour is told with the bore that passes it", () => {
  const load = loadOf({ roof: { area: "60 m2", overflow: "20 mm" } });
  expect(load.downpour!.flow).toBeCloseTo((60 * 0.1) / 3600, 9);
  expect(load.downpour!.passes).toBeLessThan(load.downpour!.flow);
  expect(writeLoadLines(load, "metric").join("\n")).toMatch(/passes only .*: fit \d+ mm or more/);
});
