import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { cdp, userEvent } from "vitest/browser";
import { PLACED } from "../fixtures/placed-plan.js";
import { AboveBench, nextFrame, withPlace } from "./above-bench.js";

let bench: AboveBench;
beforeEach(async () => {
  bench = await new AboveBench().show();
});
afterEach(() => document.body.replaceChildren());

const click = (x: number, y: number) => userEvent.click(bench.drawing, { position: bench.at(x, y) });
const drag = (from: [number, number], to: [number, number]) =>
  userEvent.dragAndDrop(bench.drawing, bench.drawing, {
    sourcePosition: bench.at(...from),
    targetPosition: bench.at(...to),
  });

describe("with the mouse", () => {
  test("a press on a part chooses it, and the keyboard goes on from there", async () => {
    await click(5, 0);
    expect(bench.chosen).toEqual([{ kind: "run", run: 0 }]);
    expect(bench.above.shadowRoot!.activeElement).toBe(bench.part("run 0"));
    await click(4, 3);
    expect(bench.chosen[1]).toBeUndefined();
  });

  test("a joint dragged asks to be moved, all in one gesture", async () => {
    await drag([14, 3], [14, 4]);
    expect(bench.edits.length).toBeGreaterThan(0);
    const last = bench.edits[bench.edits.length - 1]!;
    expect(last.change).toMatchObject({ kind: "moveJoint", joint: "pen", place: { x: 14 } });
    expect((last.change as unknown as { place: { y: number } }).place.y).toBeCloseTo(4, 1);
    expect(new Set(bench.edits.map(({ gesture }) => gesture)).size).toBe(1);
    expect(last.gesture).toMatch(/^above \d+$/);
  });

  test("two drags are two gestures", async () => {
    await drag([14, 3], [14, 4]);
    await drag([10, 5], [10, 6]);
    expect(new Set(bench.edits.map(({ gesture }) => gesture)).size).toBe(2);
  });

  test("a run is drawn with the pencil, from joint to joint", async () => {
    await bench.redrawn({ tool: "run" });
    await drag([14, 3], [10, 5]);
    expect(bench.edits.map(({ change }) => change)).toMatchObject([
      { kind: "drawRun", from: { kind: "joint", joint: "pen" }, to: { kind: "joint", joint: "yard" } },
    ]);
  });

  test("drinkers are hung by a press on a run", async () => {
    await bench.redrawn({ tool: "drinkers" });
    await click(4, 0);
    expect(bench.edits[0]!.change).toMatchObject({ kind: "addDrinkers", run: 0, drinkers: { count: 10 } });
  });

  test("two presses on empty ground show the whole plan", async () => {
    await userEvent.click(bench.above.shadowRoot!.querySelectorAll("button")[0]!);
    const near = bench.scale;
    await userEvent.dblClick(bench.drawing, { position: { x: 40, y: 380 } });
    await bench.redrawn();
    expect(bench.scale).toBeLessThan(near);
  });

  test("the wheel is the page's until the drawing has the focus or a modifier is held", async () => {
    const wheel = (changes: WheelEventInit = {}) => {
      const event = new WheelEvent("wheel", {
        deltaY: -120,
        cancelable: true,
        clientX: 200,
        clientY: 100,
        ...changes,
      });
      bench.drawing.dispatchEvent(event);
      return event.defaultPrevented;
    };
    const before = bench.scale;
    expect(wheel()).toBe(false);
    expect(wheel({ ctrlKey: true })).toBe(true);
    await bench.redrawn();
    expect(bench.scale).toBeGreaterThan(before);
    bench.drawing.focus();
    expect(wheel()).toBe(true);
  });

  test("the wheel keeps what is under the pointer under it", async () => {
    bench.drawing.focus();
    const pen = bench.middleOf("joint pen");
    const sheet = bench.drawing.getBoundingClientRect();
    const at = { clientX: sheet.x + pen.x, clientY: sheet.y + pen.y };
    bench.drawing.dispatchEvent(new WheelEvent("wheel", { deltaY: -300, cancelable: true, ...at }));
    await bench.redrawn();
    const after = bench.middleOf("joint pen");
    // The event rounds its place to whole pixels.
    expect(Math.hypot(after.x - pen.x, after.y - pen.y)).toBeLessThan(0.8);
  });
});

describe("with fingers", () => {
  beforeEach(async () => {
    document.body.replaceChildren();
    bench = await new AboveBench().show(400);
  });

  /** Fingers at places of the drawing, by the browser's own input; the frame of the test may be shown smaller. */
  const touches = async (kind: string, points: { x: number; y: number }[]) => {
    const frame = window.frameElement!.getBoundingClientRect();
    const shown = frame.width / window.innerWidth;
    const sheet = bench.drawing.getBoundingClientRect();
    const touchPoints = points.map(({ x, y }, id) => ({
      x: frame.x + (x + sheet.x) * shown,
      y: frame.y + (y + sheet.y) * shown,
      id,
    }));
    await (cdp() as unknown as { send(method: string, params: object): Promise<void> }).send(
      "Input.dispatchTouchEvent",
      { type: kind, touchPoints },
    );
  };

  test("two of them enlarge the drawing, and neither moves nor chooses a part", async () => {
    const before = bench.scale;
    const [one, other] = [
      { x: 150, y: 330 },
      { x: 250, y: 330 },
    ] as const;
    await touches("touchStart", [one]);
    await touches("touchStart", [one, other]);
    await touches("touchMove", [
      { x: 100, y: 330 },
      { x: 300, y: 330 },
    ]);
    await touches("touchEnd", []);
    await expect.poll(() => bench.scale / before).toBeCloseTo(2, 1);
    expect([...bench.edits, ...bench.chosen]).toEqual([]);
  });

  test("one on empty ground moves the drawing", async () => {
    const before = bench.middleOf("source 0");
    await touches("touchStart", [{ x: 100, y: 350 }]);
    await touches("touchMove", [{ x: 120, y: 340 }]);
    await touches("touchMove", [{ x: 150, y: 320 }]);
    await touches("touchEnd", []);
    await expect.poll(() => bench.middleOf("source 0").x - before.x).toBeCloseTo(50, 0);
    expect(bench.middleOf("source 0").y - before.y).toBeCloseTo(-30, 0);
  });

  test("one on a joint drags it, and the page does not scroll meanwhile", async () => {
    const pen = bench.middleOf("joint pen");
    await touches("touchStart", [pen]);
    await touches("touchMove", [{ x: pen.x, y: pen.y + 20 }]);
    await touches("touchMove", [{ x: pen.x, y: pen.y + 40 }]);
    await touches("touchEnd", []);
    await expect.poll(() => bench.edits[0]?.change).toMatchObject({ kind: "moveJoint", joint: "pen" });
    expect(getComputedStyle(bench.drawing).touchAction).toBe("none");
  });
});

test("a finger held still on a run draws another run from there", async () => {
  bench.drawing.setPointerCapture = () => undefined;
  const sheet = bench.drawing.getBoundingClientRect();
  const finger = (kind: string, { x, y }: { x: number; y: number }) =>
    bench.drawing.dispatchEvent(
      new PointerEvent(kind, {
        pointerId: 7,
        pointerType: "touch",
        clientX: sheet.x + x,
        clientY: sheet.y + y,
        bubbles: true,
      }),
    );
  finger("pointerdown", bench.at(5, 0));
  const menu = new MouseEvent("contextmenu", { bubbles: true, cancelable: true });
  bench.drawing.dispatchEvent(menu);
  expect(menu.defaultPrevented).toBe(true);
  await expect
    .poll(() => bench.above.shadowRoot!.querySelector(".tag-words")?.textContent)
    .toMatch(/draw a run/);
  for (let i = 1; i <= 10; i++) finger("pointermove", bench.at(5, -i / 5));
  finger("pointerup", bench.at(5, -2));
  expect(bench.edits.map(({ change }) => change)).toMatchObject([
    { kind: "drawRun", from: { kind: "onRun", run: 0 } },
  ]);
});

describe("with the keyboard", () => {
  test("Tab walks through the parts, Enter chooses one, and its focus is seen", async () => {
    bench.drawing.focus();
    await userEvent.keyboard("{Tab}{Tab}");
    expect(bench.above.shadowRoot!.activeElement).toBe(bench.part("run 0"));
    await bench.redrawn();
    expect(bench.above.shadowRoot!.querySelectorAll(".focused").length).toBeGreaterThan(0);
    await userEvent.keyboard("{Enter}");
    expect(bench.chosen).toEqual([{ kind: "run", run: 0 }]);
  });

  test("the focus stays on its part when the plan is drawn anew, with more parts before it too", async () => {
    bench.part("run 2").focus();
    await bench.redrawn({ plan: withPlace(PLACED, "yard", "9 m", "6 m") });
    expect(bench.above.shadowRoot!.activeElement).toBe(bench.part("run 2"));
    const joints = [...(PLACED.points ?? []), { id: "gate", place: { x: "0 m", y: "-4 m" } }];
    const runs = PLACED.runs.map((run, i) =>
      i === 0 ? { ...run, drinkers: { kind: "nipple-side-action", count: 3, every: "1 m" } } : run,
    );
    await bench.redrawn({ plan: { ...PLACED, points: joints, runs } });
    expect(bench.above.shadowRoot!.activeElement).toBe(bench.part("run 2"));
  });

  test("arrows move what is chosen, Delete takes it out, and none of them scrolls the page", async () => {
    bench.above.selected = { kind: "joint", joint: "pen" };
    bench.part("joint pen").focus();
    await userEvent.keyboard("{ArrowUp}{Delete}d");
    expect(bench.edits.map(({ change }) => change.kind)).toEqual(["moveJoint", "delete", "duplicate"]);
    const key = new KeyboardEvent("keydown", { key: "ArrowDown", bubbles: true, cancelable: true });
    bench.drawing.dispatchEvent(key);
    expect(key.defaultPrevented).toBe(true);
  });

  test("plus enlarges, 0 shows the whole plan again, arrows move the view while nothing is chosen", async () => {
    const [scale, at] = [bench.scale, bench.middleOf("source 0")];
    bench.drawing.focus();
    await userEvent.keyboard("+");
    await bench.redrawn();
    expect(bench.scale).toBeCloseTo(scale * 1.25, 3);
    await userEvent.keyboard("0{ArrowRight}");
    await bench.redrawn();
    expect(bench.scale).toBeCloseTo(scale, 3);
    expect(bench.middleOf("source 0").x).toBeCloseTo(at.x - 48, 3);
  });

  test("Escape during a drag gives it up, and lets what is chosen be", async () => {
    bench.drawing.setPointerCapture = () => undefined;
    const sheet = bench.drawing.getBoundingClientRect();
    const pointer = (kind: string, { x, y }: { x: number; y: number }) =>
      bench.drawing.dispatchEvent(
        new PointerEvent(kind, { pointerId: 1, clientX: sheet.x + x, clientY: sheet.y + y, bubbles: true }),
      );
    pointer("pointerdown", bench.at(14, 3));
    pointer("pointermove", bench.at(14, 4));
    await userEvent.keyboard("{Escape}");
    expect(bench.givenUp).toEqual([bench.edits[0]!.gesture]);
    expect(bench.chosen).toEqual([]);
    pointer("pointermove", bench.at(14, 5));
    pointer("pointerup", bench.at(14, 5));
    await nextFrame();
    expect(bench.edits).toHaveLength(1);
  });

  test("a click that comes from a reader or a voice chooses the part", () => {
    bench.part("joint tee").dispatchEvent(new MouseEvent("click", { detail: 0, bubbles: true }));
    expect(bench.chosen).toEqual([{ kind: "joint", joint: "tee" }]);
  });
});
