import { expect, test } from "vitest";
import { DRIP } from "../../../../packages/hydraulics/src/judge/asked-plan.js";
import { runMishap } from "../../../../packages/hydraulics/src/judge/mishaps/run-mishap.js";
import { withMishap } from "../../../../packages/hydraulics/src/model/with-mishap.js";
import { asked } from "../../../laws/asked-plans.js";

/** Two tanks of a quarter of a square metre, no birds; two nipples under each that neither drip nor starve. */
const found = asked({
  headfall: 1,
  sources: ["left", "right"].map((id) => ({
    ...{ id, vessel: { shape: "upright", diameter: "56 cm", height: "1 m" }, stand: "10 cm" },
    ...{ outlet: "2 cm", level: { full: "30 cm", lowest: "10 cm" } },
  })),
  runs: ["left", "right"].map((from) => ({
    ...{ id: `lane ${from}`, from, length: "2 m", fall: "5 cm" },
    drinkers: { kind: "nipple-side-action", count: 2 },
  })),
});
const AREA = (Math.PI / 4) * 0.56 ** 2;

test("a leak that makes nothing drip is told with what it takes in a night, from the vessel it runs out of alone", () => {
  const { leakRate, dripRate, drip, night } = runMishap(found, { kind: "drinkerStuckOpen", drinker: 3 });
  expect([dripRate, drip]).toEqual([0, []]);
  expect(leakRate).toBeGreaterThan(0);
  expect(night.lost).toBeGreaterThan(0);
  expect(night.falls[0]).toBe(0);
  expect(night.falls[1]! * AREA).toBeCloseTo(night.lost, 6);
  expect(night.lost).toBeLessThanOrEqual(leakRate * (86_400 - found.flock.weather.light));
});

test("what newly drips counts ten small drops a minute each, and lowers the level by as much in the dark", () => {
  const lid = asked({
    headfall: 1,
    sources: [
      {
        ...{ vessel: { shape: "upright", diameter: "56 cm", height: "1 m" }, stand: "30 cm", outlet: "2 cm" },
        ...{ level: { full: "90 cm" }, vent: { airTube: "10 cm" } },
      },
    ],
    runs: [{ length: "2 m", fall: "20 cm", drinkers: { kind: "nipple-side-action", count: 3 } }],
  });
  const { leakRate, dripRate, drip } = runMishap(lid, { kind: "lidOff", source: 0 });
  expect(leakRate).toBe(0);
  expect(drip).toEqual([0, 1, 2]);
  expect(dripRate).toBeCloseTo(3 * DRIP.expect, 15);
});

test("drinkers that a shut run leaves dry are told, those of the other are not", () => {
  const { dry, starve, drip } = runMishap(found, { kind: "runBlocked", run: 1 });
  expect([dry, starve, drip]).toEqual([[2, 3], [], []]);
  expect(withMishap(found.judged.line, { kind: "hoseOff", source: 0 })).toBe(found.judged.line);
});
