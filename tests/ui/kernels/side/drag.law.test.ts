import type { MomentName, Plan } from "@headfall/hydraulics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { editOf } from "../../../../packages/ui/src/kernels/side/edit-of.js";
import { moveHand, takeInHand } from "../../../../packages/ui/src/kernels/side/hand-drag.js";
import { placeHandles } from "../../../../packages/ui/src/kernels/side/place-handles.js";
import { readingPlaceAt } from "../../../../packages/ui/src/kernels/side/reading-place.js";
import { scalesOf } from "../../../../packages/ui/src/kernels/side/side-scales.js";
import { levelNeighbours } from "../../../../packages/ui/src/kernels/side/snap-height.js";
import type { UnitSystem } from "../../../../packages/ui/src/kernels/typed-quantity.js";
import { editPlan } from "../../../../packages/ui/src/store/edit-plan.js";
import type { PlanChange } from "../../../../packages/ui/src/store/plan-change.js";
import { cases } from "../../../runner/cases.js";
import { type DrawnPlan, drawPlan, examplePlan, handleIn } from "./drawn-plan.js";

const CASES: readonly { plan: string; drinker: number; moment: MomentName }[] = [
  { plan: "alder-bank-hen-house", drinker: 0, moment: "fullBusiest" },
  { plan: "alder-bank-hen-house", drinker: 0, moment: "lowestBusiest" },
  { plan: "alder-bank-hen-house", drinker: 0, moment: "ordinary" },
  { plan: "alder-bank-rain-barrel", drinker: 2, moment: "fullIdle" },
  { plan: "alder-bank-rain-barrel", drinker: 4, moment: "ordinary" },
  { plan: "alder-bank-two-pens", drinker: 0, moment: "lowestBusiest" },
  { plan: "alder-bank-two-pens", drinker: 10, moment: "fullBusiest" },
];
const SYSTEMS: readonly UnitSystem[] = ["metric", "us"];

function edited(plan: Plan, change: PlanChange, system: UnitSystem): Plan {
  const made = editPlan(plan, change, system);
  if (!made.ok) throw new Error(`${JSON.stringify(change)}: ${made.because}`);
  return made.plan;
}

/** Drags a handle by so many pixels, edits the plan, checks it again and draws it with the scale held. */
function drag(
  drawn: DrawnPlan,
  key: string,
  down: number,
  system: UnitSystem,
  { drinker, moment }: { drinker: number; moment: MomentName },
) {
  const handle = handleIn(drawn, key);
  const taken = takeInHand(handle, levelNeighbours(handle, drawn.handles), "drag");
  const moved = moveHand(taken, handle, down, scalesOf(drawn.layout).perMetreUp, system);
  const plan = edited(drawn.plan, editOf(handle, moved.height, system), system);
  const anew = drawPlan(plan, { drinker, moment, heldHeights: drawn.layout.heights });
  return { moved, anew };
}

describe.each(CASES)("a drag on $plan, drinker $drinker, $moment", (given) => {
  const drawn = drawPlan(examplePlan(given.plan), given);

  test.each(drawn.handles.map(({ key }) => key))("of %s puts it where the hand is, within a pixel", (key) => {
    fc.assert(
      fc.property(fc.integer({ min: -60, max: 60 }), fc.constantFrom(...SYSTEMS), (down, system) => {
        const { moved, anew } = drag(drawn, key, down, system, given);
        const spot = placeHandles(anew.handles, anew.layout, key).find(
          ({ handle }) => handle.key === key,
        )!.spot;
        expect(Math.abs(spot.y - scalesOf(anew.layout).y(moved.height))).toBeLessThan(1);
      }),
      cases(5),
    );
  });
});

describe("a surveyed height", () => {
  const given = { drinker: 4, moment: "fullBusiest" } as const;
  const drawn = drawPlan(examplePlan("alder-bank-rain-barrel"), given);

  test("put on the pipe by hand changes no height, and can then be dragged and taken out again", () => {
    const place = readingPlaceAt(drawn.checked, drawn.path, 12 * 0.3048 + 3.2, "metric")!;
    const withReading = drawPlan(edited(drawn.plan, { kind: "addReading", ...place }, "metric"), given);
    const keys = withReading.handles.map(({ key }) => key).filter((key) => key.startsWith("reading"));
    expect(keys).toEqual(["reading 2 0", "reading 2 1", "reading 2 2"]);
    const { y } = scalesOf(drawn.layout);
    const before = y(handleIn(drawn, "reading 2 1").height);
    expect(Math.abs(y(handleIn(withReading, "reading 2 1").height) - before)).toBeLessThan(1);
    const { anew, moved } = drag(withReading, "reading 2 2", -20, "metric", given);
    expect(handleIn(anew, "reading 2 2").height).toBeCloseTo(moved.height, 3);
    const gone = edited(anew.plan, { kind: "deleteReading", run: 2, reading: 2 }, "metric");
    expect(gone.runs[2]!.survey).toEqual(drawn.plan.runs[2]!.survey);
  });
});

describe("the vertical scale", () => {
  const given = { drinker: 0, moment: "fullBusiest" } as const;
  const drawn = drawPlan(examplePlan("alder-bank-hen-house"), given);

  test("stands still under a hand that stays on the drawing, and goes on in steps under one that leaves it", () => {
    const [low, high] = drawn.layout.heights;
    const lower = drag(drawn, "stand 0", 45, "metric", given).anew;
    expect(lower.layout.heights).toEqual([low, high]);
    // Without a hand the lower vessel would need less room.
    const free = drawPlan(lower.plan, given).layout.heights;
    expect(free[1]).toBeLessThanOrEqual(high);
    const higher = drag(drawn, "stand 0", -90, "metric", given).anew;
    expect(higher.layout.heights[0]).toBe(low);
    expect((higher.layout.heights[1] - high) / 0.5).toBeCloseTo(
      Math.round((higher.layout.heights[1] - high) / 0.5),
      9,
    );
    expect(higher.layout.heights[1]).toBeGreaterThan(high);
  });
});
