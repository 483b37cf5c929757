import { describe, expect, test } from "vitest";
import { wishesOfKey } from "../../../../../packages/ui/src/above/states/keys.js";
import { wheelFactor } from "../../../../../packages/ui/src/above/states/wheel.js";
import { toPixel, type Viewport } from "../../../../../packages/ui/src/kernels/above/viewport.js";
import { around, Hand, VIEW } from "./hand.js";

const viewOf = (hand: Hand): Viewport => (hand.last as { view: Viewport }).view;

test("one finger on empty ground moves the sheet with it", () => {
  const hand = new Hand().down(5, 3).move(6, 2);
  expect(viewOf(hand)).toEqual({ scale: 40, left: 140, top: 340 });
  expect(hand.up(6, 2).state).toEqual({ name: "idle" });
});

test("a sheet being moved goes back where it was by Escape", () => {
  expect(viewOf(new Hand().down(5, 3).move(6, 2).giveUp())).toEqual(VIEW);
});

describe("two fingers", () => {
  test("hold the ground under them, moved apart and aside", () => {
    const hand = new Hand().down(4, 3).down(6, 3, 2).move(2, 3).move(6, 3, 2);
    const view = viewOf(hand);
    expect(view.scale).toBeCloseTo(80, 9);
    // What lay under the first finger at 4 m lies where that finger is now.
    const held = toPixel(view, { x: 4, y: 3 });
    const finger = toPixel(VIEW, { x: 2, y: 3 });
    expect([held.x, held.y]).toEqual([expect.closeTo(finger.x, 9), expect.closeTo(finger.y, 9)]);
  });

  test("lifted one by one leave the other moving the sheet, and choose nothing", () => {
    const hand = new Hand().down(4, 3).down(6, 3, 2).move(7, 3, 2).up(4, 3);
    expect(hand.state).toMatchObject({ name: "panning", pointer: 2 });
    expect(hand.up(7, 3, 2).state).toEqual({ name: "idle" });
    expect(hand.wishes.every(({ kind }) => kind === "view")).toBe(true);
  });
});

describe("keys", () => {
  const press = (key: string, changes = {}, isShift = false) =>
    wishesOfKey({ key, isShift, middle: { x: 200, y: 150 }, gesture: "key 1" }, around(changes));

  test("plus and minus enlarge and shrink about the middle, 0 shows the whole plan", () => {
    expect(press("+")).toEqual([{ kind: "view", view: { scale: 50, left: 75, top: 337.5 } }]);
    expect((press("-")[0] as { view: Viewport }).view.scale).toBe(32);
    expect(press("0")).toEqual([{ kind: "fit" }]);
  });

  test("arrows move the sheet while nothing is chosen: right shows what is further right", () => {
    expect(press("ArrowRight")).toEqual([{ kind: "view", view: { ...VIEW, left: 52 } }]);
    expect(press("ArrowUp")).toEqual([{ kind: "view", view: { ...VIEW, top: 348 } }]);
  });

  test("arrows move a chosen joint by one step, with Shift by ten", () => {
    const selected = { kind: "joint", joint: "pen" };
    expect(press("ArrowLeft", { selected })).toEqual([
      {
        kind: "edit",
        gesture: "key 1",
        change: { kind: "moveJoint", joint: "pen", place: { x: 13.9, y: 3 } },
      },
    ]);
    expect(press("ArrowUp", { selected }, true)).toMatchObject([{ change: { place: { x: 14, y: 4 } } }]);
  });

  test("arrows move a chosen run with both its ends and its corners, as one step", () => {
    const wishes = press("ArrowUp", { selected: { kind: "run", run: 1 } });
    expect(wishes.map((wish) => wish.kind === "edit" && [wish.change.kind, wish.gesture])).toEqual([
      ["moveJoint", "key 1"],
      ["moveJoint", "key 1"],
      ["moveCorner", "key 1"],
    ]);
  });

  test("arrows slide chosen drinkers along their run", () => {
    const [wish] = press("ArrowRight", { selected: { kind: "drinkers", run: 1, group: 0 } });
    expect(wish).toMatchObject({ change: { kind: "moveDrinkers", run: 1, group: 0, first: 1.1 } });
  });

  test("Delete and d take out and duplicate what is chosen, and mean nothing while nothing is", () => {
    const selected = { kind: "run", run: 1 };
    expect(press("Delete", { selected })).toEqual([
      { kind: "edit", change: { kind: "delete", part: selected } },
    ]);
    expect(press("Backspace", { selected })).toHaveLength(1);
    expect(press("d", { selected })).toEqual([
      { kind: "edit", change: { kind: "duplicate", part: selected } },
    ]);
    expect([...press("Delete"), ...press("d"), ...press("Escape"), ...press("x")]).toEqual([]);
  });

  test("r draws a run straight on from a chosen joint, aside where one leaves already, and a tee from a chosen run", () => {
    const drawn = (selected: object) => {
      const [wish] = press("r", { selected });
      return wish?.kind === "edit" ? wish.change : undefined;
    };
    expect(drawn({ kind: "joint", joint: "yard" })).toEqual({
      kind: "drawRun",
      from: { kind: "joint", joint: "yard" },
      to: { kind: "place", place: { x: 10, y: 7 } },
      corners: [],
    });
    // From the tee the run goes on to the right and another leaves upward, so the new one goes down.
    expect(drawn({ kind: "joint", joint: "tee" })).toMatchObject({ to: { place: { x: 10, y: -2 } } });
    expect(drawn({ kind: "run", run: 0 })).toMatchObject({
      from: { kind: "onRun", run: 0, along: 5 },
      to: { place: { x: expect.closeTo(5, 9), y: -2 } },
    });
    expect(press("r")).toEqual([]);
    expect(press("r", { selected: { kind: "drinkers", run: 1, group: 0 } })).toEqual([]);
  });

  test("n hangs drinkers in the middle of a chosen run", () => {
    expect(press("n", { selected: { kind: "run", run: 0 } })).toMatchObject([
      { change: { kind: "addDrinkers", run: 0, drinkers: { count: 10, first: "365 cm" } } },
    ]);
    expect(press("n", { selected: { kind: "joint", joint: "tee" } })).toEqual([]);
  });

  test("Escape lets go of what is chosen", () => {
    expect(press("Escape", { selected: { kind: "run", run: 1 } })).toEqual([
      { kind: "choose", part: undefined },
    ]);
  });

  test("a part that is gone from the plan is moved by no key", () => {
    expect(press("ArrowUp", { selected: { kind: "run", run: 9 } })).toEqual([]);
    expect(press("ArrowUp", { selected: { kind: "joint", joint: "gone" } })).toEqual([]);
  });
});

test("wheelFactor enlarges by about a quarter a notch, by pixels or by lines, and finely for a pinch", () => {
  const pixels = { deltaY: -120, deltaMode: 0, ctrlKey: false };
  expect(wheelFactor(pixels)).toBeCloseTo(1.27, 2);
  expect(wheelFactor({ ...pixels, ctrlKey: true })).toBe(wheelFactor(pixels));
  expect(wheelFactor({ ...pixels, deltaY: 120 }) * wheelFactor(pixels)).toBeCloseTo(1, 12);
  expect(wheelFactor({ deltaY: -3, deltaMode: 1, ctrlKey: false })).toBeCloseTo(1.1, 2);
  expect(wheelFactor({ deltaY: -4, deltaMode: 0, ctrlKey: true })).toBeCloseTo(1.04, 2);
  expect(wheelFactor({ ...pixels, deltaY: -1e6 })).toBeLessThan(2);
});
