import { afterEach, describe, expect, test } from "vitest";
import { userEvent } from "vitest/browser";
import "../../../packages/ui/src/define.js";
import { pressMouse, SideHarness } from "../fixtures/side-hands.js";

afterEach(() => document.body.replaceChildren());

const TO_CHICKS = { plan: "rainBarrel", drinker: 4 } as const;

async function focused(side: SideHarness, key: string): Promise<void> {
  side.handle(key).focus();
  await side.settled();
}

describe("with keys", () => {
  test.each([
    ["{ArrowUp}", "46 cm"],
    ["{ArrowDown}", "44 cm"],
    ["{Shift>}{ArrowUp}{/Shift}", "55 cm"],
    ["{PageDown}", "35 cm"],
    ["{Home}", "0 cm"],
  ])("%s on the stand makes it %s", async (keys, stand) => {
    const side = await SideHarness.open();
    await focused(side, "stand 0");
    await userEvent.keyboard(keys);
    await side.settled();
    expect(side.store.plan.sources[0]!.stand).toBe(stand);
    expect(side.handle("stand 0").getAttribute("aria-valuetext")).toBe(stand);
  });

  test("keys pressed one after another are one step to undo, and Escape gives them up", async () => {
    const side = await SideHarness.open();
    const before = side.store.plan;
    await focused(side, "stand 0");
    await userEvent.keyboard("{ArrowUp}{ArrowUp}{PageUp}");
    await side.settled();
    expect(side.store.plan.sources[0]!.stand).toBe("57 cm");
    expect(side.texts).toContain("57 cm, +12 cm");
    await userEvent.keyboard("{Escape}");
    expect(side.store.plan).toBe(before);
    await userEvent.keyboard("{ArrowDown}{ArrowDown}");
    side.handle("stand 0").blur();
    side.store.undo();
    expect(side.store.plan).toBe(before);
  });

  test("an arrow goes by half an inch for those who read inches", async () => {
    const side = await SideHarness.open({ system: "us" });
    await focused(side, "stand 0");
    await userEvent.keyboard("{ArrowUp}");
    expect(side.store.plan.sources[0]!.stand).toBe("1 ft 6 in");
  });

  test("End puts the full level at the brim, and no farther", async () => {
    const side = await SideHarness.open();
    await focused(side, "water 0");
    await userEvent.keyboard("{End}{ArrowUp}");
    expect(side.refused).toEqual([]);
    expect(side.store.plan.sources[0]!.level!.full).toBe("85 cm");
  });

  test("left and right go from handle to handle", async () => {
    const side = await SideHarness.open();
    await focused(side, "joint wall");
    const focusedKey = () => side.hands.shadowRoot!.activeElement?.getAttribute("data-key");
    await userEvent.keyboard("{ArrowRight}");
    const next = focusedKey();
    expect(next).not.toBe("joint wall");
    await userEvent.keyboard("{ArrowLeft}");
    expect(focusedKey()).toBe("joint wall");
    expect(side.edits).toEqual([]);
  });

  test("Insert surveys a height in the middle of the longest piece, and goes there; Delete takes it out", async () => {
    const side = await SideHarness.open(TO_CHICKS);
    await focused(side, "reading 2 0");
    const before = side.store.plan.runs[2]!.survey!;
    await userEvent.keyboard("{Insert}");
    expect(side.refused).toEqual([]);
    expect(side.store.plan.runs[2]!.survey).toHaveLength(3);
    const focusedKey = () => side.hands.shadowRoot!.activeElement?.getAttribute("data-key");
    await expect.poll(focusedKey).toBe("reading 2 2");
    await userEvent.keyboard("{Delete}");
    expect(side.store.plan.runs[2]!.survey).toEqual(before);
    await expect.poll(focusedKey).not.toBeNull();
  });

  test("+ draws the line closer, - wider, and 0 whole", async () => {
    const side = await SideHarness.open();
    await focused(side, "joint wall");
    const span = () => side.profile.layout!.window[1] - side.profile.layout!.window[0];
    const whole = span();
    await userEvent.keyboard("++");
    await side.settled();
    expect(span()).toBeCloseTo(whole / 1.6 ** 2, 6);
    await userEvent.keyboard("-");
    await side.settled();
    expect(span()).toBeCloseTo(whole / 1.6, 6);
    await userEvent.keyboard("0");
    await side.settled();
    expect(span()).toBeCloseTo(whole, 9);
  });
});

describe("the buttons under the drawing", () => {
  test("two presses before the next drawing are two steps", async () => {
    const side = await SideHarness.open();
    const [from, to] = side.profile.layout!.window;
    const closer = side.button("Closer");
    closer.click();
    closer.click();
    await side.settled();
    const [closerFrom, closerTo] = side.profile.layout!.window;
    expect(closerTo - closerFrom).toBeCloseTo((to - from) / 1.6 ** 2, 6);
  });

  test("draw closer, wider and whole", async () => {
    const side = await SideHarness.open();
    expect(side.button("Wider").disabled).toBe(true);
    await userEvent.click(side.button("Closer"));
    await side.settled();
    expect(side.profile.window).toBeDefined();
    await userEvent.click(side.button("Whole line"));
    await side.settled();
    expect(side.profile.window).toBeUndefined();
    expect(side.button("Whole line").disabled).toBe(true);
  });

  test("add a height to the chosen run", async () => {
    const side = await SideHarness.open();
    side.hands.selected = { kind: "run", run: 0 };
    await side.settled();
    await userEvent.click(side.button("Add a height"));
    expect(side.refused).toEqual([]);
    expect(side.store.plan.runs[0]!.survey).toHaveLength(1);
    expect(side.edits[0]!.change).toMatchObject({ kind: "addReading", run: 0, along: 4.5 });
  });
});

describe("a press on the drawing", () => {
  test("chooses the drinker under it, and says so in both ways", async () => {
    const side = await SideHarness.open();
    const said: unknown[] = [];
    side.hands.addEventListener("part-chosen", ({ part }) => said.push(part));
    side.hands.addEventListener("drinker-chosen", ({ drinker }) => said.push(drinker));
    const { drinkers, rail } = side.profile.layout!;
    await pressMouse(side.spot({ x: drinkers[4]!.x, y: rail.top + 12 }));
    expect(said).toEqual([4, { kind: "drinkers", run: 2, group: 0, number: 4 }]);
  });

  test("on nothing chooses nothing", async () => {
    const side = await SideHarness.open();
    const said: unknown[] = [];
    side.hands.addEventListener("part-chosen", ({ part }) => said.push(part));
    await pressMouse(side.spot({ x: 350, y: 20 }));
    expect(said).toEqual([undefined]);
  });

  test("twice on the pipe surveys a height there", async () => {
    const side = await SideHarness.open();
    const [start, wall] = side.profile.layout!.pipe as [{ x: number; y: number }, { x: number; y: number }];
    const middle = side.spot({ x: (start.x + wall.x) / 2, y: (start.y + wall.y) / 2 });
    await pressMouse(middle);
    await pressMouse(middle);
    expect(side.edits.map(({ change }) => change)).toMatchObject([{ kind: "addReading", run: 0 }]);
    await side.settled();
    expect(side.has("reading 0 0")).toBe(true);
  });
});

describe("what lies over the drawing", () => {
  test("is the length, fall and flow of each run", async () => {
    const side = await SideHarness.open();
    expect(side.texts).toContain("7.2 m, level");
    expect(side.texts.filter((text) => /L\/min$/.test(text)).length).toBeGreaterThan(1);
  });

  test("is the outline of what was chosen elsewhere", async () => {
    const side = await SideHarness.open();
    expect(side.hands.renderRoot.querySelector(".outline")).toBeNull();
    side.hands.selected = { kind: "source", source: 0 };
    await side.settled();
    expect(side.hands.renderRoot.querySelector("rect.outline")).not.toBeNull();
  });

  test("is with the band a bar for each drinker, and the band of the one looked at in words", async () => {
    const side = await SideHarness.open({ shows: "band" });
    expect(side.hands.renderRoot.querySelectorAll(".bound.needs").length).toBe(24);
    expect(side.hands.renderRoot.querySelectorAll(".firm")).toHaveLength(2);
    expect(side.texts.some((text) => /^[\d.]+ to [\d.]+ cm$/.test(text))).toBe(true);
  });
});
