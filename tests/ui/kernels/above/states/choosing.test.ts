import { describe, expect, test } from "vitest";
import type { Selected } from "../../../../../packages/ui/src/kernels/selected.js";
import { PLACED, planOf } from "../../../fixtures/placed-plan.js";
import { around, Hand } from "./hand.js";

describe("a tap", () => {
  test.each([
    ["the barrel", 0, 0, { kind: "source", source: 0 }],
    ["a joint", 10, 0, { kind: "joint", joint: "tee" }],
    ["a run", 5, 0.1, { kind: "run", run: 0 }],
    ["a corner", 14, 0, { kind: "run", run: 1 }],
    ["a drinker", 12, 0, { kind: "drinkers", run: 1, group: 0, number: 2 }],
    ["empty ground", 5, 3, undefined],
  ])("on %s chooses it", (_, x, y, part) => {
    expect(new Hand().tap(x, y).wishes).toEqual([{ kind: "choose", part }]);
  });

  test("on what is chosen already chooses what lies beneath, and in the end the uppermost again", () => {
    const trough = planOf({
      ...PLACED,
      runs: PLACED.runs.map((run) =>
        run.id === "yard line" ? { ...run, drinkers: { kind: "trough-float" } } : run,
      ),
    });
    const chosen = [
      { kind: "joint", joint: "yard" },
      { kind: "drinkers", run: 2, group: 0, number: 0 },
    ] as const;
    const run = { kind: "run", run: 2 } as const;
    const tapped = (selected: Selected | undefined) => new Hand(around({ selected }, trough)).tap(10, 5).last;
    expect(tapped(undefined)).toEqual({ kind: "choose", part: chosen[0] });
    expect(tapped(chosen[0])).toEqual({ kind: "choose", part: chosen[1] });
    expect(tapped(chosen[1])).toEqual({ kind: "choose", part: run });
    expect(tapped(run)).toEqual({ kind: "choose", part: chosen[0] });
    // And what is chosen is what is dragged.
    const drag = new Hand(around({ selected: chosen[1] }, trough)).down(10, 5).move(10, 3.5);
    expect(drag.changes).toMatchObject([{ kind: "moveDrinkers", run: 2 }]);
    expect(new Hand(around({}, trough)).down(10, 5).move(10, 6.5).changes).toMatchObject([
      { kind: "moveJoint" },
    ]);
  });

  test("may wander by a few pixels", () => {
    const hand = new Hand().down(5, 0).move(5.1, 0.05).up(5.1, 0.05);
    expect(hand.wishes).toEqual([{ kind: "choose", part: { kind: "run", run: 0 } }]);
  });

  test("reaches further with a finger than with a mouse", () => {
    const finger = new Hand();
    finger.type = "touch";
    expect(finger.tap(5, 0.45).last).toMatchObject({ part: { kind: "run" } });
    expect(new Hand().tap(5, 0.45).last).toEqual({ kind: "choose", part: undefined });
  });

  test("twice on empty ground shows the whole plan, but not when slow or elsewhere", () => {
    expect(new Hand().tap(5, 3).tap(5.1, 3).last).toEqual({ kind: "fit" });
    const slow = new Hand().tap(5, 3);
    slow.time += 900;
    expect(slow.tap(5, 3).last).toMatchObject({ kind: "choose" });
    expect(new Hand().tap(5, 3).tap(8, 3).last).toMatchObject({ kind: "choose" });
  });

  test("on a run with the drinkers in the hand hangs ten nipples around the press", () => {
    const hand = new Hand(around({ tool: "drinkers" })).tap(5, 0);
    const drinkers = { kind: "nipple-side-action", count: 10, first: "365 cm", every: "30 cm" };
    expect(hand.changes).toEqual([{ kind: "addDrinkers", run: 0, drinkers }]);
  });

  test("on anything else with the drinkers in the hand chooses it", () => {
    expect(new Hand(around({ tool: "drinkers" })).tap(10, 0).last).toMatchObject({ kind: "choose" });
  });

  test("on a run with the pencil in the hand chooses it, and draws nothing", () => {
    expect(new Hand(around({ tool: "run" })).tap(5, 0).wishes).toEqual([
      { kind: "choose", part: { kind: "run", run: 0 } },
    ]);
  });
});
