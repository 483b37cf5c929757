import { describe, expect, test } from "vitest";
import {
  distance,
  nearestHandle,
  type PlacedHandle,
  placeHandles,
} from "../../../../packages/ui/src/kernels/side/place-handles.js";
import { drawPlan, examplePlan } from "./drawn-plan.js";

const EXAMPLES = ["alder-bank-hen-house", "alder-bank-rain-barrel", "alder-bank-two-pens"];

describe("placeHandles", () => {
  test("puts the foot, the water and the joints where the drawing has them", () => {
    const { handles, layout } = drawPlan(examplePlan("alder-bank-hen-house"));
    const spotOf = (key: string) =>
      placeHandles(handles, layout).find(({ handle }) => handle.key === key)!.spot;
    expect(spotOf("stand 0").y).toBeCloseTo(layout.vessel.bottom, 9);
    expect(spotOf("water 0").y).toBeCloseTo(layout.vessel.water, 9);
    expect(spotOf("outlet 0")).toEqual({
      x: layout.vessel.right,
      y: expect.closeTo(layout.vessel.outlet, 9),
    });
    expect(spotOf("joint wall")).toEqual({
      x: expect.closeTo(layout.pipe[1]!.x, 9),
      y: expect.closeTo(layout.pipe[1]!.y, 9),
    });
  });

  test("leaves out what lies beyond the edges of a line drawn closer, but never the vessel", () => {
    const { handles, layout } = drawPlan(examplePlan("alder-bank-hen-house"), { window: [10, 16] });
    expect(
      placeHandles(handles, layout)
        .map(({ handle }) => handle.key)
        .sort(),
    ).toEqual(["drop 2 0", "outlet 0", "stand 0", "water 0"]);
  });

  test("keeps one of several that would lie on each other: the one in hand if it is among them", () => {
    const { handles, layout } = drawPlan(examplePlan("alder-bank-hen-house"));
    const twin = { ...handles.find(({ key }) => key === "joint wall")!, key: "reading 9 9" };
    const keys = (inHand?: string) =>
      placeHandles([...handles, twin], layout, inHand).map(({ handle }) => handle.key);
    expect(keys()).not.toContain("reading 9 9");
    expect(keys("reading 9 9")).toContain("reading 9 9");
    expect(keys("reading 9 9")).not.toContain("joint wall");
  });
});

describe("nearestHandle", () => {
  const placed: readonly PlacedHandle[] = EXAMPLES.flatMap((name) => {
    const { handles, layout } = drawPlan(examplePlan(name), { width: 360 });
    return [placeHandles(handles, layout)];
  }).flat();

  test("takes every handle by its own grip, however near its neighbours are", () => {
    for (const name of EXAMPLES) {
      const { handles, layout } = drawPlan(examplePlan(name), { width: 360 });
      const all = placeHandles(handles, layout);
      for (const one of all) expect(nearestHandle(all, one.grip)?.handle.key).toBe(one.handle.key);
    }
  });

  test("takes the nearer of two whose targets overlap", () => {
    const [first] = placed as [PlacedHandle];
    const beside = (key: string, x: number): PlacedHandle => ({
      ...first,
      handle: { ...first.handle, key },
      grip: { x, y: 100 },
    });
    const pair = [beside("left", 100), beside("right", 120)];
    expect(nearestHandle(pair, { x: 109, y: 100 })?.handle.key).toBe("left");
    expect(nearestHandle(pair, { x: 111, y: 100 })?.handle.key).toBe("right");
  });

  test("reaches 22 px, half of a 44 px target, and no farther", () => {
    const [{ grip, handle }] = placed as [PlacedHandle];
    const alone = placed.slice(0, 1);
    expect(nearestHandle(alone, { x: grip.x + 21.9, y: grip.y })?.handle.key).toBe(handle.key);
    expect(nearestHandle(alone, { x: grip.x + 22.1, y: grip.y })).toBeUndefined();
    expect(distance(grip, { x: grip.x + 3, y: grip.y + 4 })).toBe(5);
  });
});
