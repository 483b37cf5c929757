import fc from "fast-check";
import { expect, test } from "vitest";
import { editOf } from "../../../../packages/ui/src/kernels/side/edit-of.js";
import { moveHand, takeInHand } from "../../../../packages/ui/src/kernels/side/hand-drag.js";
import { nearestHandle, placeHandles } from "../../../../packages/ui/src/kernels/side/place-handles.js";
import { scalesOf } from "../../../../packages/ui/src/kernels/side/side-scales.js";
import { levelNeighbours } from "../../../../packages/ui/src/kernels/side/snap-height.js";
import { editPlan } from "../../../../packages/ui/src/store/edit-plan.js";
import { randomPlan } from "../../../arbitraries/plans.js";
import { type DrawnPlan, drawPlan, madePlan } from "./drawn-plan.js";

const tally = { made: 0, refused: 0 };

function drawRandom(seed: number, drinker: number): DrawnPlan | undefined {
  const plan = madePlan(randomPlan(seed));
  try {
    return drawPlan(plan, { drinker });
  } catch (error) {
    // Some random plans contradict themselves, or have no drinker of that number.
    if (/^(\[|No pipe)/.test((error as Error).message)) return undefined;
    throw error;
  }
}

test("every drag on any plan is refused with its reason, or ends where the hand is, within a pixel", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 1e6 }),
      fc.nat(5),
      fc.nat(1000),
      fc.integer({ min: -50, max: 50 }),
      fc.constantFrom("metric" as const, "us" as const),
      (seed, drinker, pick, down, system) => {
        const drawn = drawRandom(seed, drinker);
        if (drawn === undefined) return;
        const handle = drawn.handles[pick % drawn.handles.length]!;
        const taken = takeInHand(handle, levelNeighbours(handle, drawn.handles), "drag");
        const { height } = moveHand(taken, handle, down, scalesOf(drawn.layout).perMetreUp, system);
        expect(height).toBeGreaterThanOrEqual(handle.low - 1e-9);
        expect(height).toBeLessThanOrEqual(handle.high + 1e-9);
        const edited = editPlan(drawn.plan, editOf(handle, height, system), system);
        if (!edited.ok) {
          expect(edited.because.length).toBeGreaterThan(20);
          tally.refused++;
          return;
        }
        tally.made++;
        const anew = drawPlan(edited.plan, { drinker, heldHeights: drawn.layout.heights });
        const placed = placeHandles(anew.handles, anew.layout, handle.key);
        const found = placed.find((one) => one.handle.key === handle.key)!;
        expect(Math.abs(found.spot.y - scalesOf(anew.layout).y(height))).toBeLessThan(1);
        expect(nearestHandle(placed, found.grip)?.handle.key).toBe(handle.key);
      },
    ),
    { numRuns: 80 },
  );
  // The hand's limits are there so that hardly any drag is refused.
  expect(tally.made).toBeGreaterThan(40);
  expect(tally.refused / tally.made).toBeLessThan(0.05);
}, 60_000);
