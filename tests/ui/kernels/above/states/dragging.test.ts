import { describe, expect, test } from "vitest";
import { around, Hand } from "./hand.js";

describe("a joint in the hand", () => {
  test("moves with it, in one gesture, without jumping to where it was taken hold of", () => {
    const hand = new Hand().down(14.1, 3.1).move(15.1, 4.6);
    expect(hand.last).toMatchObject({
      kind: "edit",
      gesture: "drag 1",
      change: { kind: "moveJoint", joint: "pen" },
    });
    const { place } = hand.changes[0] as unknown as { place: { x: number; y: number } };
    // 1.80 m of hand from the corner at (14, 0): 4.6 m away to the nearest step, in the hand's own direction.
    expect(Math.hypot(place.x - 14, place.y)).toBeCloseTo(4.6, 9);
    expect(Math.atan2(place.x - 14, place.y)).toBeCloseTo(Math.atan2(1, 4.5), 9);
  });

  test("keeps straight with its neighbour, and shows by what", () => {
    const hand = new Hand().down(14, 3).move(14.1, 4.2);
    expect(hand.changes).toEqual([{ kind: "moveJoint", joint: "pen", place: { x: 14, y: 4.2 } }]);
    expect(hand.state).toMatchObject({
      ghost: {
        words: "4.2 m, straight",
        guide: [
          { x: 14, y: 0 },
          { x: 14, y: 4.2 },
        ],
      },
    });
  });

  test("asks for nothing while it stays where it is", () => {
    expect(new Hand().down(14, 3).move(14, 3.3).move(14, 3.31).changes).toHaveLength(1);
    expect(new Hand().down(14, 3).move(14.2, 3.0).move(14.2, 3.01).wishes).toEqual([]);
  });

  test("taken away and back before that was drawn comes back", () => {
    const hand = new Hand().down(14, 3).move(14, 4.2).move(14, 3.02);
    expect(hand.changes).toEqual([
      { kind: "moveJoint", joint: "pen", place: { x: 14, y: 4.2 } },
      { kind: "moveJoint", joint: "pen", place: { x: 14, y: 3 } },
    ]);
  });

  test("laid on another joint and let go becomes one with it", () => {
    const hand = new Hand().down(14, 3).move(10.1, 4.9).up(10.1, 4.9);
    expect(hand.changes).toEqual([
      { kind: "moveJoint", joint: "pen", place: { x: 10, y: 5 } },
      { kind: "mergeJoints", joint: "pen", into: "yard" },
    ]);
    expect(hand.wishes.every((wish) => wish.kind === "edit" && wish.gesture === "drag 1")).toBe(true);
    expect(hand.state.name).toBe("idle");
  });

  test("a loose end laid on the middle of a run and let go makes a tee there", () => {
    const hand = new Hand().down(14, 3).move(6.1, 0.1);
    expect(hand.state).toMatchObject({ ghost: { words: expect.stringContaining("onto feed") } });
    hand.up(6.1, 0.1);
    const [moved, landed] = hand.changes as unknown as [{ place: { x: number } }, { along: number }];
    expect(hand.changes).toMatchObject([
      { kind: "moveJoint", joint: "pen" },
      { kind: "landJoint", joint: "pen", run: 0 },
    ]);
    expect(landed.along).toBeCloseTo(moved.place.x, 9);
    expect(hand.state.name).toBe("idle");
  });

  test("a joint where runs meet, or a source, crosses other runs without a tee", () => {
    const joint = new Hand().down(10, 0).move(14, 1.1).up(14, 1.1);
    expect(joint.changes.map(({ kind }) => kind)).toEqual(["moveJoint"]);
    const source = new Hand().down(0, 0).move(10.05, 2.5).up(10.05, 2.5);
    expect(source.changes.map(({ kind }) => kind)).toEqual(["moveJoint"]);
  });

  test("lifted off again is not merged", () => {
    const hand = new Hand().down(14, 3).move(10.1, 4.9).move(12, 6).up(12, 6);
    expect(hand.changes.map(({ kind }) => kind)).toEqual(["moveJoint", "moveJoint"]);
  });

  test("is given up by Escape, and the hand is free", () => {
    const hand = new Hand().down(14, 3).move(15, 4).giveUp();
    expect(hand.last).toEqual({ kind: "giveUp", gesture: "drag 1" });
    expect(hand.move(16, 5).up(16, 5).last).toEqual({ kind: "giveUp", gesture: "drag 1" });
  });

  test("does not mind a second finger", () => {
    const hand = new Hand().down(14, 3).move(15, 4).down(2, 2, 2).move(3, 3, 2);
    expect(hand.state.name).toBe("dragging-joint");
    expect(hand.changes).toHaveLength(1);
  });
});

describe("a corner in the hand", () => {
  test("moves with it", () => {
    const hand = new Hand().down(14, 0).move(15.02, 0.05);
    expect(hand.changes).toEqual([{ kind: "moveCorner", run: 1, corner: 0, place: { x: 15, y: 0 } }]);
  });

  test("taken away and back before that was drawn comes back", () => {
    const hand = new Hand().down(14, 0).move(15.02, 0.05).move(14.02, 0.05);
    expect(hand.changes.at(-1)).toEqual({ kind: "moveCorner", run: 1, corner: 0, place: { x: 14, y: 0 } });
  });

  test("that lies on the straight between its neighbours is taken out when let go", () => {
    const base = around();
    const spots = [
      { x: 10, y: 0 },
      { x: 12, y: 1.52 },
      { x: 14, y: 3 },
    ];
    const runs = base.layout.runs.map((run) => (run.index === 1 ? { ...run, spots } : run));
    const hand = new Hand({ ...base, drinkers: [], layout: { ...base.layout, runs } });
    hand.down(12, 1.52).move(12.3, 1.8).up(12.3, 1.8);
    expect(hand.changes[hand.changes.length - 1]).toEqual({ kind: "deleteCorner", run: 1, corner: 0 });
  });

  test("is given up by Escape", () => {
    expect(new Hand().down(14, 0).move(15, 0).giveUp().last).toEqual({ kind: "giveUp", gesture: "drag 1" });
  });
});

describe("the middle of a run in the hand", () => {
  test("gets a corner when the run is chosen", () => {
    const hand = new Hand(around({ selected: { kind: "run", run: 0 } })).down(5, 0).move(5, 1);
    expect(hand.changes[0]).toEqual({ kind: "addCorner", run: 0, before: 0, place: { x: 5, y: 0 } });
    expect(hand.changes[1]).toMatchObject({ kind: "moveCorner", run: 0, corner: 0 });
    expect(hand.wishes.every((wish) => wish.kind === "edit" && wish.gesture === "drag 1")).toBe(true);
  });

  test("moves the sheet when it is not", () => {
    const hand = new Hand().down(5, 0).move(6, 0);
    expect(hand.wishes).toEqual([{ kind: "view", view: { scale: 40, left: 140, top: 300 } }]);
  });
});

describe("drinkers in the hand", () => {
  test("slide along their run in whole steps, by the one that is held", () => {
    // The third, 2 m along, is taken 1.02 m further on.
    const hand = new Hand().down(12, 0).move(13.02, 0.3);
    expect(hand.changes).toMatchObject([{ kind: "moveDrinkers", run: 1, group: 0 }]);
    expect((hand.changes[0] as unknown as { first: number }).first).toBeCloseTo(2, 9);
    expect(hand.state).toMatchObject({ ghost: { words: "first at 2 m" } });
  });

  test("taken away and back before that was drawn come back", () => {
    const hand = new Hand().down(12, 0).move(13.02, 0.3).move(12.02, 0);
    expect(hand.changes.map((change) => (change as unknown as { first: number }).first)).toEqual([2, 1]);
  });

  test("stop with the last of them at the end of the run, and with the first at its start", () => {
    const far = new Hand().down(12, 0).move(14, 3.5);
    expect((far.changes[0] as unknown as { first: number }).first).toBeCloseTo(5, 9);
    const near = new Hand().down(12, 0).move(9, 0);
    expect((near.changes[0] as unknown as { first: number }).first).toBe(0);
  });
});
