import { expect, test } from "vitest";
import { DESKTOP, PHONE, type SketchPage, visitSketch } from "./sketch-page.js";
import { YARD } from "./sketch-yard.js";

/** What can be taken hold of, which way it is drawn [px], and where the plan says it. */
const DRAGS = [
  { name: "stand of barrel", by: 60, from: "60 cm", typed: (plan: Yard) => plan.sources[0].stand },
  {
    name: "full water level of barrel",
    by: 60,
    from: undefined,
    typed: (plan: Yard) => plan.sources[0].level?.full,
  },
  { name: "height of the pipe at far", by: -60, from: "25 cm", typed: (plan: Yard) => plan.points[1].above },
  {
    name: "height of feed, reading 1",
    by: -170,
    from: "5 cm",
    typed: (plan: Yard) => plan.runs[0].survey[0].fall,
  },
] as const;

type Yard = {
  sources: [{ stand: string; level?: { full?: string } }];
  points: [unknown, { above: string }];
  runs: [{ survey: [{ fall: string }] }];
};

const MOMENTS = ["Full, idle", "Full, busiest", "Lowest, busiest", "Ordinary hour"] as const;

async function yardOf(sketch: SketchPage): Promise<Yard> {
  return (await sketch.saved()) as unknown as Yard;
}

test("on a phone, whatever is dragged from the side changes the verdicts under the finger, and undo takes it back", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    await sketch.turnTo("Side");
    for (const { name, by, from, typed } of DRAGS) {
      const before = await sketch.line.counts();
      await sketch.handle(name).scrollIntoViewIfNeeded();
      const grip = await sketch.gripOf(name);
      await sketch.fingers.down(grip);
      await sketch.fingers.move({ x: grip.x, y: grip.y + by });
      await expect.poll(() => sketch.line.counts(), { message: name }).not.toBe(before);
      await sketch.line.settled();
      const underHand = await sketch.line.counts();
      await sketch.fingers.up();
      await sketch.line.settled();
      expect(await sketch.line.counts()).toBe(underHand);
      expect(typed(await yardOf(sketch)), name).toMatch(/^-?[\d.]+ (cm|m)$/);
      expect(typed(await yardOf(sketch)), name).not.toBe(from);
      await sketch.undo();
      await expect.poll(() => sketch.line.counts()).toBe(before);
      expect(typed(await yardOf(sketch)), name).toBe(from);
    }
    expect(await sketch.saved()).toEqual(YARD);
  }, PHONE);
});

test("on a desktop, the same is done by keys, and a held key changes the verdicts before it is let go", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    for (const { name, by, from, typed } of DRAGS) {
      const before = await sketch.line.counts();
      const handle = sketch.handle(name);
      await handle.focus();
      const key = by > 0 ? "PageDown" : "PageUp";
      const spoken = await handle.getAttribute("aria-valuetext");
      await expect
        .poll(
          async () => {
            await sketch.page.keyboard.down(key);
            return sketch.line.counts();
          },
          { message: name, interval: 150 },
        )
        .not.toBe(before);
      await sketch.page.keyboard.up(key);
      expect(await handle.getAttribute("aria-valuetext")).not.toBe(spoken);
      expect(typed(await yardOf(sketch)), name).not.toBe(from);
      await handle.focus();
      await sketch.page.keyboard.press("ControlOrMeta+z");
      await expect.poll(() => sketch.line.counts()).toBe(before);
      expect(typed(await yardOf(sketch)), name).toBe(from);
    }
  }, DESKTOP);
});

test("each of the four moments is drawn by a tap, and both extremes at once", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    await sketch.turnTo("Side");
    const { page } = sketch;
    const lines = new Set<string>();
    for (const moment of MOMENTS) {
      await page.getByText(moment, { exact: true }).last().tap();
      await expect(page.getByRole("radio", { name: moment }).isChecked()).resolves.toBe(true);
      const line = () => page.locator("headfall-profile path.chosen").first().getAttribute("d");
      await expect.poll(async () => lines.has((await line())!)).toBe(false);
      lines.add((await line())!);
      await expect
        .poll(() => page.locator("headfall-line [part=drinker]").textContent())
        .toMatch(new RegExp(`Figures: .*${moment.split(/[ ,]/)[0]}`, "i"));
    }
    expect(lines.size).toBe(MOMENTS.length);
    await page.getByText("Both ends at once").tap();
    await expect.poll(() => page.locator("headfall-profile-hands .bar").count()).toBeGreaterThan(6);
    await expect(page.locator("headfall-profile-hands .band-key").isVisible()).resolves.toBe(true);
  }, PHONE);
});

test("the moments are gone through by arrow keys", async () => {
  await visitSketch(async (sketch) => {
    const { page } = sketch;
    const isChosen = (name: string) => page.getByRole("radio", { name }).isChecked();
    await page.getByRole("radio", { name: "Full, idle" }).focus();
    await page.keyboard.press("Space");
    for (const moment of [...MOMENTS.slice(1), "Both ends at once"]) {
      await page.keyboard.press("ArrowRight");
      await expect.poll(() => isChosen(moment)).toBe(true);
    }
    await expect.poll(() => page.locator("headfall-profile-hands .bar").count()).toBeGreaterThan(6);
  }, DESKTOP);
});
