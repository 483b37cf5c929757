import { describe, expect, test } from "vitest";
import { type HitRequest, hitsBeneath, reachOf } from "../../../../packages/ui/src/kernels/above/hit.js";
import { layAbove } from "../../../../packages/ui/src/kernels/above/lay-above.js";
import { placeDrinkers } from "../../../../packages/ui/src/kernels/above/place-drinkers.js";
import { PLACED } from "../../fixtures/placed-plan.js";

const layout = layAbove(PLACED);
const drinkers = placeDrinkers(PLACED, layout, undefined);
const hit = (request: HitRequest) => hitsBeneath(request)[0];
const at = (x: number, y: number, reach = 0.5) => hit({ at: { x, y }, layout, drinkers, reach });

describe("hitsBeneath", () => {
  test("finds a joint before the runs that meet there, and before a drinker as near", () => {
    expect(at(10.3, 0.2)).toMatchObject({ kind: "joint", joint: { name: "tee" } });
    expect(at(10.6, 0, 1)).toMatchObject({ kind: "joint", joint: { name: "tee" } });
  });

  test("finds a drinker before its run, the nearest of them by its number in the group", () => {
    expect(at(11.6, 0.2)).toMatchObject({ kind: "drinkers", drinker: { run: 1, group: 0, number: 1 } });
  });

  test("finds a corner by its number on the run", () => {
    expect(at(14.2, -0.2)).toMatchObject({ kind: "corner", run: 1, corner: 0, place: { x: 14, y: 0 } });
  });

  test("finds a run, and says where along it and on which of its pieces", () => {
    const found = at(14.3, 2);
    expect(found).toMatchObject({ kind: "run", run: 1, piece: 1, place: { x: 14, y: 2 } });
    expect(found?.kind === "run" && found.along).toBeCloseTo(6, 9);
  });

  test("finds nothing on empty ground", () => {
    expect(at(5, 5)).toBeUndefined();
  });

  test("finds a source by all of its vessel as drawn", () => {
    const wide = { at: { x: -0.9, y: 0 }, layout, drinkers, reach: 0.1 };
    expect(hit(wide)).toBeUndefined();
    expect(hit({ ...wide, vesselReach: [1] })).toMatchObject({ kind: "joint", joint: { source: 0 } });
  });
});

test("hitsBeneath lists all that lies under a press, uppermost first", () => {
  const beneath = hitsBeneath({ at: { x: 10.6, y: 0 }, layout, drinkers, reach: 1 });
  expect(beneath.map(({ kind }) => kind)).toEqual(["joint", "drinkers", "run"]);
});

test("reachOf gives a finger more than a mouse", () => {
  expect([reachOf("touch"), reachOf("mouse")]).toEqual([22, 10]);
});
