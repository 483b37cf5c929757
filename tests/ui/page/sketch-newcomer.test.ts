import type { Locator, Page } from "playwright";
import { expect, test } from "vitest";
import { middleOf } from "./fingers.js";
import { DESKTOP, PHONE, type SketchPage, visitSketch } from "./sketch-page.js";

const OWN = "Draw a line of your own";
const BARREL = "Rain barrel, 50 US gal";

/** Most presses a newcomer needs on a phone, the drawn run counted as one. */
const MOST_PRESSES = 12;
/** What a newcomer has, reading included; the script's own steps are a small part of it [s]. */
const MOST_SECONDS = 60;

/** Counts every press that reaches the page, from now on. */
async function countPresses(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    const counted = window as unknown as { presses: number };
    counted.presses = 0;
    addEventListener("pointerdown", () => counted.presses++, { capture: true });
  });
  return () => page.evaluate(() => (window as unknown as { presses: number }).presses);
}

/** Ten drinkers are counted in the verdict, and it can be read where the hand is. */
async function expectVerdictOnTen({ line, page }: SketchPage): Promise<void> {
  const counted = async () =>
    [...(await line.counts()).matchAll(/\d+/g)].reduce((sum, [count]) => sum + Number(count), 0);
  await expect.poll(counted).toBe(10);
  await line.settled();
  expect(await line.counts()).toMatch(/^(\d+ (good|drips?|starves?|dry) ?)+$/);
  const sentence = (await page.locator("headfall-line .sentence").textContent()) ?? "";
  expect(sentence).toMatch(/(Worst|Weakest):\s+run 1 \d+ /);
}

test("a newcomer with a phone draws a line by finger and has a first verdict within twelve presses", async ({
  annotate,
}) => {
  await visitSketch(async (sketch) => {
    const { page, panel, fingers } = sketch;
    const presses = await countPresses(page);
    const began = performance.now();
    await sketch.button(OWN).tap();
    await sketch.button(BARREL).tap();
    const source = await middleOf(sketch.part("source barrel"));
    await fingers.drag(source, { x: source.x + 120, y: source.y + 4 });
    await fillByTouch(panel.getByLabel("How many"), "10");
    await fillByTouch(panel.getByLabel("One every"), "30 cm");
    await panel.getByRole("button", { name: "Put them" }).tap();
    await panel.getByRole("button", { name: "Its run: run 1" }).tap();
    await fillByTouch(panel.getByLabel("Fall", { exact: true }), "20 cm");
    await page.keyboard.press("Enter");
    await expectVerdictOnTen(sketch);
    const seconds = (performance.now() - began) / 1000;
    await annotate(`${await presses()} presses, ${seconds.toFixed(1)} s of the script's own steps`);
    expect(await presses()).toBeLessThanOrEqual(MOST_PRESSES);
    expect(seconds).toBeLessThan(MOST_SECONDS);
    await expect(sketch.isSeen(page.locator("headfall-line .counts"))).resolves.toBe(true);
    const { runs } = await sketch.saved();
    expect(runs).toMatchObject([{ from: "barrel", fall: "20 cm", drinkers: { count: 10, every: "30 cm" } }]);
  }, PHONE);
});

async function fillByTouch(field: Locator, words: string): Promise<void> {
  await field.tap();
  await field.fill(words);
}

/** Goes on with the tab key until that has the focus, or back with Shift. */
async function tabTo(page: Page, target: Locator, key = "Tab"): Promise<void> {
  for (let press = 0; press < 60; press++) {
    if (await target.evaluateAll((found) => found.some((node) => node.matches(":focus")))) return;
    await page.keyboard.press(key);
  }
  throw new Error(`Sixty presses of the tab key did not lead to ${target}`);
}

const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent);

test("from the keyboard alone, a line is begun, drawn, hung with drinkers and judged, and is heard of", async () => {
  await visitSketch(async (sketch) => {
    const { page, panel } = sketch;
    const press = async (target: Locator, ...keys: string[]) => {
      await tabTo(page, target);
      for (const key of keys) await page.keyboard.press(key);
    };
    const type = async (target: Locator, words: string, end: string) => {
      await press(target, "ControlOrMeta+a");
      await page.keyboard.type(words);
      await page.keyboard.press(end);
    };
    await press(sketch.button(OWN), "Enter");
    // What was pressed is gone; the keyboard is at what came in its place, and then at the line.
    await expect.poll(() => focused(page)).toBe("What holds the water?");
    await press(sketch.button(BARREL), "Enter");
    await expect.poll(() => page.locator("main").evaluate((main) => main.matches(":focus"))).toBe(true);
    await press(sketch.part("source barrel"), "Enter", "r");
    await expect.poll(() => panel.locator("h2").textContent()).toBe("Run: run 1");
    // The drawn run is two metres long, and chosen; arrows lengthen it by its end.
    await press(sketch.part("end point 1"), "Enter", "Shift+ArrowRight", "Shift+ArrowRight");
    await tabTo(page, sketch.part("run 1"), "Shift+Tab");
    await page.keyboard.press("Enter");
    await type(panel.getByLabel("How many"), "10", "Tab");
    await type(panel.getByLabel("One every"), "20 cm", "Enter");
    await press(panel.getByRole("button", { name: "Its run: run 1" }), "Enter");
    await type(panel.getByLabel("Fall", { exact: true }), "20 cm", "Enter");
    await expectVerdictOnTen(sketch);
    const spoken = page.locator("headfall-line [role=status]").first();
    await expect.poll(() => spoken.textContent()).toMatch(/^Verdict: .*\d/);
  }, DESKTOP);
});

test("from the table alone, by the roles and names that a screen reader tells, the same line is made", async () => {
  await visitSketch(async (sketch) => {
    const { page } = sketch;
    const press = (name: string) => page.getByRole("button", { name, exact: true }).click();
    const type = async (name: string, words: string) => {
      const field = page.getByRole("textbox", { name, exact: true });
      await field.fill(words);
      await field.press("Enter");
    };
    await press(OWN);
    await press(BARREL);
    await press("Table");
    await type("Stand of barrel", "70 cm");
    await page.getByRole("combobox", { name: "Add a run from" }).selectOption("barrel");
    await press("Add a run");
    await type("Length of run 1", "4 m");
    await type("Fall of run 1", "20 cm");
    await page.getByRole("combobox", { name: "Add drinkers to" }).selectOption("run 1");
    await press("Add drinkers");
    await type("How many, drinkers run 1", "10");
    await type("One every, drinkers run 1", "30 cm");
    await expectVerdictOnTen(sketch);
    expect(await sketch.saved()).toMatchObject({
      sources: [{ stand: "70 cm" }],
      runs: [{ length: "4 m", fall: "20 cm", drinkers: { count: 10, every: "30 cm" } }],
    });
  }, PHONE);
});
