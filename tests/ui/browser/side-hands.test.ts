import { afterEach, describe, expect, test } from "vitest";
import { userEvent } from "vitest/browser";
import "../../../packages/ui/src/define.js";
import { dragMouse, pressMouse, releaseMouse, SideHarness, touch } from "../fixtures/side-hands.js";
import { accessibilityFaults } from "./accessibility.js";

afterEach(() => {
  document.body.replaceChildren();
  document.body.removeAttribute("style");
  window.scrollTo(0, 0);
});

const below = ({ x, y }: { x: number; y: number }, down: number) => ({ x, y: y + down });
const steps = (from: { x: number; y: number }, down: number) =>
  [0, 0.25, 0.5, 0.75, 1].map((share) => below(from, share * down));

describe("headfall-profile-hands", () => {
  test.each(["henHouse", "rainBarrel"] as const)("has nothing that axe objects to on %s", async (plan) => {
    const side = await SideHarness.open({ plan, drinker: plan === "rainBarrel" ? 4 : 0, width: 340 });
    expect(await accessibilityFaults(side.hands)).toEqual([]);
  });

  test("names each handle, with its height in words and its limits", async () => {
    const side = await SideHarness.open();
    const wall = side.handle("joint wall");
    expect(wall.getAttribute("role")).toBe("slider");
    expect(wall.getAttribute("aria-orientation")).toBe("vertical");
    expect(wall.getAttribute("aria-label")).toBe("height of the pipe at wall");
    expect(wall.getAttribute("aria-valuetext")).toBe("10 cm above the ground");
    expect(wall.getAttribute("aria-valuenow")).toBe("10");
    expect(Number(wall.getAttribute("aria-valuemin"))).toBeLessThan(10);
    expect(Number(wall.getAttribute("aria-valuemax"))).toBeGreaterThan(10);
  });

  test("says heights in inches to those who read inches", async () => {
    const side = await SideHarness.open({ system: "us" });
    expect(side.handle("stand 0").getAttribute("aria-valuetext")).toBe("1 ft 5.75 in");
  });

  test("lies exactly over the drawing", async () => {
    const side = await SideHarness.open();
    const drawing = side.profile.renderRoot.querySelector("figure > svg")!.getBoundingClientRect();
    const over = side.hands.renderRoot.querySelector("svg")!.getBoundingClientRect();
    expect([over.x, over.y, over.width, over.height]).toEqual([
      drawing.x,
      drawing.y,
      drawing.width,
      drawing.height,
    ]);
  });
});

describe("when a handle is dragged with the mouse", () => {
  test("the plan follows in one step that can be undone, and its new height and change are shown", async () => {
    const side = await SideHarness.open();
    const grip = side.gripOf("stand 0");
    await dragMouse(steps(grip, -26), { holds: true });
    await side.settled();
    const typed = side.store.plan.sources[0]!.stand!;
    expect(typed).toMatch(/^\d+ cm$/);
    expect(Number.parseInt(typed, 10)).toBeGreaterThan(55);
    expect(side.texts.some((text) => text === `${typed}, +${Number.parseInt(typed, 10) - 45} cm`)).toBe(true);
    await releaseMouse(below(grip, -26));
    expect(new Set(side.edits.map(({ gesture }) => gesture)).size).toBe(1);
    side.store.undo();
    expect(side.store.plan.sources[0]!.stand).toBe("45 cm");
    expect(side.store.canUndo).toBeUndefined();
  });

  test("it ends under the mouse, within a snap of a centimetre", async () => {
    const side = await SideHarness.open();
    const grip = side.gripOf("joint wall");
    await dragMouse(steps(grip, 10));
    await side.settled();
    expect(side.refused).toEqual([]);
    const { heights, plot } = side.profile.layout!;
    const pixelsPerCm = (plot.bottom - plot.top) / (heights[1] - heights[0]) / 100;
    expect(Math.abs(side.gripOf("joint wall").y - (grip.y + 10))).toBeLessThanOrEqual(pixelsPerCm / 2 + 0.6);
  });

  test("the scale of heights stands still until it is let go", async () => {
    const side = await SideHarness.open();
    const { heights } = side.profile.layout!;
    const grip = side.gripOf("water 0");
    await dragMouse(steps(grip, 20), { holds: true });
    expect(side.profile.heldHeights).toEqual(heights);
    await side.settled();
    expect(side.profile.layout!.heights).toEqual(heights);
    await releaseMouse(below(grip, 20));
    expect(side.profile.heldHeights).toBeUndefined();
  });

  test("Escape gives the drag up, and the plan is as before", async () => {
    const side = await SideHarness.open();
    const grip = side.gripOf("water 0");
    const before = side.store.plan;
    await dragMouse(steps(grip, 30), { holds: true });
    expect(side.store.plan).not.toBe(before);
    await userEvent.keyboard("{Escape}");
    expect(side.store.plan).toBe(before);
    await releaseMouse(below(grip, 30));
    expect(side.store.plan).toBe(before);
  });

  test("a press that does not move changes nothing and chooses what the handle belongs to", async () => {
    const side = await SideHarness.open();
    const chosen: unknown[] = [];
    side.hands.addEventListener("part-chosen", ({ part }) => chosen.push(part));
    await pressMouse(side.gripOf("joint wall"));
    expect(chosen).toEqual([{ kind: "joint", joint: "wall" }]);
    expect(side.edits).toEqual([]);
  });
});

describe("when a line drawn closer is pulled by the mouse", () => {
  test("it moves along with it, and nothing is chosen", async () => {
    const side = await SideHarness.open();
    side.profile.window = [4, 12];
    await side.settled();
    let chosen = 0;
    side.hands.addEventListener("part-chosen", () => chosen++);
    const start = side.spot({ x: 400, y: 60 });
    await dragMouse([0, -20, -40, -60].map((right) => ({ x: start.x + right, y: start.y })));
    await side.settled();
    const { plot, window } = side.profile.layout!;
    expect(window[0]).toBeCloseTo(4 + (60 * 8) / (plot.right - plot.left), 1);
    expect(window[1] - window[0]).toBeCloseTo(8, 9);
    expect(chosen).toBe(0);
  });
});

describe("when the plan has gone on from what was checked", () => {
  test("handles of parts that are gone are gone too, and the rest stay", async () => {
    const side = await SideHarness.open({ plan: "rainBarrel", drinker: 4 });
    side.hands.plan = { ...side.store.plan, points: [], runs: side.store.plan.runs.slice(0, 1) };
    await side.settled();
    expect(side.has("reading 2 0")).toBe(false);
    expect(side.has("stand 0")).toBe(true);
  });
});

describe("when a finger", () => {
  const tall = () => {
    document.body.style.minHeight = "4000px";
  };

  test("drags a handle, the page stands still", async () => {
    tall();
    const side = await SideHarness.open({ width: 340 });
    await touch(steps(side.gripOf("water 0"), 40).map((spot) => [spot]));
    expect(side.edits.length).toBeGreaterThan(0);
    expect(window.scrollY).toBe(0);
  });

  test("starts off a handle, it scrolls the page and changes nothing", async () => {
    tall();
    const side = await SideHarness.open({ width: 340 });
    const start = side.spot({ x: 150, y: 90 });
    await touch([0, -40, -80, -120, -160].map((down) => [below(start, down)]));
    await expect.poll(() => window.scrollY).toBeGreaterThan(20);
    expect(side.edits).toEqual([]);
  });

  test("and another spread, the line is drawn closer", async () => {
    const side = await SideHarness.open({ width: 340 });
    const [left, right] = [side.spot({ x: 150, y: 80 }), side.spot({ x: 200, y: 80 })];
    const apart = (by: number) => [
      { x: left.x - by, y: left.y },
      { x: right.x + by, y: right.y },
    ];
    await touch([0, 10, 20, 30].map(apart));
    await side.settled();
    const [from, to] = side.profile.layout!.window;
    expect(to - from).toBeLessThan(16.8 * 0.7);
  });
});
