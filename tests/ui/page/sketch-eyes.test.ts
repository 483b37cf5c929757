import { expect, test } from "vitest";
import { contrastOf } from "./contrast.js";
import type { AxeWish } from "./line-page.js";
import { DESKTOP, PHONE, type SketchPage, visitSketch } from "./sketch-page.js";
import { YARD } from "./sketch-yard.js";

/** A window of 1280 by 900 enlarged to 200 %, for one who wants no motion and colours of their own. */
const ENLARGED = {
  viewport: { width: 640, height: 450 },
  deviceScaleFactor: 2,
  reducedMotion: "reduce",
  forcedColors: "active",
} as const;

const PARTS = ["source barrel", "run row", "joint bend", "row drinkers"];
/** All that changes when another part is chosen. */
const PANEL: AxeWish = { within: ["headfall-line", "headfall-part"] };

/** Nothing found by axe, and nothing beyond the right edge. */
async function expectInOrder(sketch: SketchPage, where: string, wish: AxeWish = {}): Promise<void> {
  expect(await sketch.line.accessibilityFaults(wish), where).toEqual([]);
  expect(await sketch.scrollsSideways(), where).toBe(false);
}

/** A press on it would reach it: it is there, enabled, at rest, and lies under nothing else. */
async function expectInReach(sketch: SketchPage, names: readonly string[]): Promise<void> {
  for (const name of names) await sketch.button(name).first().click({ trial: true });
}

test("at 200 %, without motion and in forced colours, every view, part and panel is in order and in reach", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    const { page } = sketch;
    await expectInReach(sketch, ["Save the plan", "Share", "Above", "Side", "Table"]);
    for (const view of ["Side", "Table", "Above"] as const) {
      await sketch.button(view).click();
      await expectInOrder(sketch, view);
    }
    await expectInReach(sketch, ["Choose and move", "Draw a run", "Put drinkers", "Closer", "Further away"]);
    for (const part of PARTS) {
      await sketch.part(part).focus();
      await page.keyboard.press("Enter");
      await expect.poll(() => sketch.panel.locator("h2").textContent()).not.toBe("The whole plan");
      await expectInOrder(sketch, part, part === PARTS[0] ? {} : PANEL);
      await expectInReach(
        sketch,
        ["All parts", "Delete", "Duplicate"].slice(0, part.startsWith("joint") ? 2 : 3),
      );
    }
    await sketch.panel.getByRole("button", { name: "All parts" }).click();
    await expectInOrder(sketch, "the whole plan", PANEL);
    await page.locator("headfall-line section[part=drinker] [data-how]").nth(1).click();
    await sketch.how.waitFor();
    await expectInOrder(sketch, "how a number was got");
    await page.keyboard.press("Escape");
  }, ENLARGED);
});

test("at 200 %, without motion and in forced colours, every dialog is in order and can be left by Escape", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    const { page } = sketch;
    const openers = {
      plans: page.locator("h1 button"),
      share: sketch.button("Share"),
      print: sketch.button(/^Print to scale/),
    };
    for (const [name, opener] of Object.entries(openers)) {
      await opener.click();
      const dialog = page.getByRole("dialog");
      await dialog.waitFor();
      await expectInOrder(sketch, name);
      await page.keyboard.press("Escape");
      await dialog.waitFor({ state: "hidden" });
      await expect.poll(() => opener.evaluate((button) => button.matches(":focus"))).toBe(true);
    }
  }, ENLARGED);
});

test("in the table on a phone, the panel and the last row scroll clear of all else", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    await sketch.turnTo("Table");
    await expectInReach(sketch, ["Add a source", "Add drinkers", "All parts", "Delete point far"]);
  }, PHONE);
});

test.each([
  ["Bright sun", "dark"],
  ["Dark", "light"],
] as const)(
  "%s, chosen on a device set to %s, shows every verdict at 7 to 1 or better",
  async (light, device) => {
    await visitSketch(
      async (sketch) => {
        const { page } = sketch;
        const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
        const before = await paper();
        await page.getByRole("combobox", { name: "Light" }).selectOption({ label: light });
        await expect.poll(paper).not.toBe(before);
        const pairs = await sketch.line.verdictColours();
        expect(pairs).toHaveLength(8);
        for (const { colour, paper: back } of pairs)
          expect(contrastOf(colour, back)).toBeGreaterThanOrEqual(7);
        // And as it stands at the head of the drawing.
        const shown = await page
          .locator("headfall-line .counts .verdict")
          .first()
          .evaluate((verdict) => getComputedStyle(verdict).color);
        expect(contrastOf(shown, await paper())).toBeGreaterThanOrEqual(7);
        expect(await sketch.line.accessibilityFaults({ rules: ["color-contrast"] })).toEqual([]);
      },
      { ...DESKTOP, colorScheme: device },
    );
  },
);
