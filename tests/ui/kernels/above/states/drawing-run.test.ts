import { describe, expect, test } from "vitest";
import { planOf } from "../../../fixtures/placed-plan.js";
import { around, Hand } from "./hand.js";

const pencil = () => new Hand(around({ tool: "run" }));

describe("a run drawn", () => {
  test("from a joint to empty ground ends there, straight and a sensible length away", () => {
    const hand = pencil()
      .down(10, 5)
      .stroke([
        [10, 5],
        [15.04, 5.1],
      ])
      .up(15.04, 5.1);
    expect(hand.changes).toEqual([
      {
        kind: "drawRun",
        from: { kind: "joint", joint: "yard" },
        to: { kind: "place", place: { x: 15, y: 5 } },
        corners: [],
      },
    ]);
  });

  test("keeps its corners", () => {
    const spots = [
      [10, 5],
      [15, 5.1],
      [15, 8],
    ] as const;
    const [change] = pencil().down(10, 5).stroke(spots).up(15, 8).changes as unknown as {
      corners: { x: number; y: number }[];
    }[];
    expect(change!.corners).toHaveLength(1);
    expect(change!.corners[0]!.x).toBeCloseTo(15, 1);
    expect(change!.corners[0]!.y).toBeCloseTo(5, 6);
  });

  test("from the middle of a run makes a tee there, and on another joint it meets that", () => {
    const hand = pencil()
      .down(5, 0)
      .stroke([
        [5, 0],
        [9.9, 4.9],
      ])
      .up(9.9, 4.9);
    const [change] = hand.changes as unknown as { from: { along: number }; to: object }[];
    expect(change).toMatchObject({ from: { kind: "onRun", run: 0 }, to: { kind: "joint", joint: "yard" } });
    expect(change!.from.along).toBeCloseTo(5, 9);
  });

  test("from a corner of a run makes a tee there", () => {
    const hand = pencil()
      .down(14, 0)
      .stroke([
        [14, 0],
        [16, 0],
      ])
      .up(16, 0);
    const [change] = hand.changes as unknown as { from: { along: number } }[];
    expect(change).toMatchObject({ from: { kind: "onRun", run: 1 }, to: { kind: "place" } });
    expect(change!.from.along).toBeCloseTo(4, 9);
  });

  test("to the middle of a run makes a tee there", () => {
    const hand = pencil()
      .down(10, 5)
      .stroke([
        [10, 5],
        [6, 4],
        [6, 0.1],
      ])
      .up(6, 0.1);
    const [change] = hand.changes as unknown as { to: { along: number } }[];
    expect(change).toMatchObject({ to: { kind: "onRun", run: 0 } });
    expect(change!.to.along).toBeCloseTo(6, 6);
  });

  test("from empty ground starts at the nearest loose end", () => {
    const hand = pencil()
      .down(8, 6)
      .stroke([
        [8, 6],
        [4, 6],
      ])
      .up(4, 6);
    expect(hand.changes).toMatchObject([{ kind: "drawRun", from: { kind: "joint", joint: "yard" } }]);
  });

  test("in a plan without pipe starts at the source, wherever it was pressed", () => {
    const empty = planOf({ headfall: 1, sources: [{ id: "drum", vessel: "drum-55gal-plastic" }], runs: [] });
    const hand = new Hand(around({ tool: "run" }, empty))
      .down(1, 1)
      .stroke([
        [1, 1],
        [5, 1],
      ])
      .up(5, 1);
    expect(hand.changes).toMatchObject([{ kind: "drawRun", from: { kind: "joint", joint: "drum" } }]);
  });

  test("shows its way, its length and what it will meet while it is drawn", () => {
    const hand = pencil()
      .down(10, 5)
      .stroke([
        [10, 5],
        [12, 5.05],
      ]);
    expect(hand.state).toMatchObject({
      ghost: {
        words: "2 m",
        way: [
          { x: 10, y: 5 },
          { x: 12, y: 5 },
        ],
      },
    });
    expect(
      hand.stroke([
        [12, 5],
        [14.1, 3.1],
      ]).state,
    ).toMatchObject({ ghost: { meets: { x: 14, y: 3 } } });
    expect(hand.changes).toEqual([]);
  });

  test("back to where it started is no run", () => {
    const hand = pencil()
      .down(10, 5)
      .stroke([
        [10, 5],
        [12, 6],
        [10.1, 5],
      ])
      .up(10.1, 5);
    expect(hand.wishes).toEqual([]);
  });

  test("is dropped by Escape, and by a second finger, which pinches", () => {
    expect(
      pencil()
        .down(10, 5)
        .stroke([
          [10, 5],
          [12, 5],
        ])
        .giveUp().state,
    ).toEqual({ name: "idle" });
    const pinch = pencil()
      .down(10, 5)
      .stroke([
        [10, 5],
        [12, 5],
      ])
      .down(14, 8, 2);
    expect(pinch.state.name).toBe("pinching");
    expect(pinch.up(12, 5).up(14, 8, 2).changes).toEqual([]);
  });
});

describe("a press held still", () => {
  test("on a run starts another run there, with no other tool taken", () => {
    const hand = new Hand().down(5, 0).hold();
    expect(hand.state).toMatchObject({ name: "drawing-run", ghost: { meets: { x: 5, y: 0 } } });
    hand
      .stroke([
        [5, 0],
        [5, -3],
      ])
      .up(5, -3);
    expect(hand.changes).toEqual([
      {
        kind: "drawRun",
        from: { kind: "onRun", run: 0, along: 5 },
        to: { kind: "place", place: { x: 5, y: -3 } },
        corners: [],
      },
    ]);
  });

  test("and let go there chooses the run", () => {
    const hand = new Hand().down(5, 0).hold().up(5, 0);
    expect(hand.wishes).toEqual([{ kind: "choose", part: { kind: "run", run: 0 } }]);
  });

  test.each([
    ["a joint", 10, 0],
    ["empty ground", 5, 3],
    ["a drinker", 12, 0],
  ])("on %s means no more than a press", (_, x, y) => {
    expect(new Hand().down(x, y).hold().state.name).toBe("pressing");
  });

  test("means nothing once the hand moves", () => {
    const hand = new Hand().down(14, 3).move(15, 4);
    const before = hand.state;
    expect(hand.hold().state).toBe(before);
    expect(new Hand().down(5, 3).move(6, 2).hold().state.name).toBe("panning");
  });
});
