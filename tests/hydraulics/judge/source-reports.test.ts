import { expect, test } from "vitest";
import type { SourceReport } from "../../../packages/hydraulics/src/judge/check-result.js";
import { ventDiameterFor } from "../../../packages/hydraulics/src/physics/vent.js";
import { headerTank } from "./header-tank.js";
import { checkOf, yard } from "./yard/yard.js";

const LANE = { length: "3 m", fall: "0 cm", drinkers: { kind: "plain", count: 2 } };
const sourceOf = (more: Parameters<typeof yard>[0] = { runs: [LANE] }): SourceReport =>
  checkOf(yard(more)).sources[0]!;
const AREA = (Math.PI / 4) * 0.57 ** 2;

test("a source holds what its levels say: full, usable above the lowest, dead below; and weighs with its water", () => {
  const { volumeFull, volumeUsable, volumeDead, massFull, surface } = sourceOf();
  expect([volumeFull, volumeUsable, volumeDead]).toEqual(
    [0.7, 0.6, 0.1].map((level) => expect.closeTo(AREA * level, 9)),
  );
  // Water at 20 °C; the barrel's own weight is not known.
  expect(massFull).toBeCloseTo(998.2 * AREA * 0.7, 1);
  expect(surface).toMatchObject({ fullIdle: 1.1, fullBusiest: 1.1, lowestBusiest: 0.5 });
});

test("the vent a source needs takes a hundredth of the head over its lowest drinker, at the busiest draw", () => {
  const report = sourceOf();
  expect(report.drawBusiest).toBeGreaterThan(0);
  const needed = ventDiameterFor({
    flow: report.drawBusiest,
    headAllowed: 0.01 * 0.5,
    density: checkOf(yard({ runs: [LANE] })).line.water.density,
  });
  expect(report.ventDiameterNeeded! / needed).toBeCloseTo(1, 9);
  expect(report.ventDiameter).toBeUndefined();
  const told = { vent: { opening: "6 mm" } };
  expect(sourceOf({ runs: [LANE], source: told }).ventDiameter).toBe(0.006);
});

test("a sealed source has no vent to size and stops on its own; one that feeds nobody needs none", () => {
  const sealed = sourceOf({ runs: [LANE], source: { vent: "sealed" } });
  expect([sealed.ventDiameterNeeded, sealed.ventDiameter]).toEqual([undefined, undefined]);
  expect(sealed.volumeBeforeStall!).toBeGreaterThan(0);
  expect(sourceOf().volumeBeforeStall).toBeUndefined();
  const idle = sourceOf({ runs: [{ length: "3 m" }] });
  expect([idle.drawBusiest, idle.ventDiameterNeeded]).toEqual([0, undefined]);
});

test("whether a header tank is kept full is told of that alone, against its busiest draw", () => {
  const [tote, tank] = checkOf(headerTank, { samples: 0, day: "2026-07-04" }).sources;
  expect([tote!.feedFlow, tote!.feedKeepsUp]).toEqual([undefined, undefined]);
  expect(tank!.feedFlow!).toBeGreaterThan(tank!.drawBusiest);
  expect(tank!.feedKeepsUp).toBe(true);
  const narrow = {
    ...headerTank,
    sources: [headerTank.sources[0], { ...headerTank.sources[1], feed: { from: "top", opening: "0.5 mm" } }],
  };
  const behind = checkOf(narrow, { samples: 0, day: "2026-07-04" });
  expect(behind.sources[1]!.feedKeepsUp).toBe(false);
  expect(behind.cautions).toContainEqual({
    code: "feedFallsBehind",
    source: "tank",
    feedFlow: behind.sources[1]!.feedFlow,
    draw: behind.sources[1]!.drawBusiest,
  });
});
