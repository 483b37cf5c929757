import { expect, test } from "vitest";
import { runMishap } from "../../../../packages/hydraulics/src/judge/mishaps/run-mishap.js";
import { asked } from "../../../laws/asked-plans.js";

test("of two vessels apart one runs out through its drinker: what stood in both is lost, drunk or left", () => {
  const found = asked({
    headfall: 1,
    sources: ["left", "right"].map((id) => ({ id, vessel: "bucket-5gal", stand: "60 cm" })),
    runs: ["left", "right"].map((from) => ({
      from,
      length: "2 m",
      fall: "30 cm",
      drinkers: { kind: "nipple-side-action", count: 1 },
    })),
    pens: [{ birds: { kind: "hen", count: 4 } }],
  });
  const both = found.fullVolumes.reduce((sum, one) => sum + one, 0);
  const { balance, empty } = runMishap(found, { kind: "drinkerStuckOpen", drinker: 0 });
  expect(balance.start).toBeCloseTo(both, 12);
  expect(balance.start + balance.poured - balance.drunk - balance.lost - balance.left).toBeCloseTo(0, 12);
  // All of the left is lost but for what birds drank of it before, and stands at its outlet.
  expect(balance.lost).toBeGreaterThan(0.6 * found.fullVolumes[0]!);
  expect(empty).toBeGreaterThan(0);
});
