import type { Page } from "playwright";
import { expect, test } from "vitest";
import { LinePage } from "./line-page.js";
import { visitRested } from "./rested-visit.js";

/** Opens the page and asks a number of the table of runs how it was got. */
async function askLoss(page: Page): Promise<void> {
  await new LinePage(page).settled();
  const cell = page
    .locator("headfall-line #runs-column-7")
    .locator("xpath=ancestor::table")
    .locator("tbody tr")
    .first();
  await cell.locator("[data-how*=runLoss]").first().click();
  await page.locator("headfall-how [part=panel]").waitFor();
}

const panelOf = (page: Page) => page.locator("headfall-how [part=panel]");

test("a number touched on the whole page tells formula, figures, range, second opinion and source", async () => {
  await visitRested(
    async ({ page }) => {
      await askLoss(page);
      const words = (await panelOf(page).textContent()) ?? "";
      for (const told of [
        "h = lost in the pipe + lost in its fittings",
        "Second opinion",
        "made for Re 4,000",
        "[hooper-1981]",
      ])
        expect(words).toContain(told);
      await page.keyboard.press("Escape");
      await panelOf(page).waitFor({ state: "detached" });
    },
    { viewport: { width: 1280, height: 900 } },
  );
});

test("at 360 px what is told is a sheet at the bottom that leaves half of the screen to the drawing", async () => {
  await visitRested(
    async ({ page }) => {
      await askLoss(page);
      const box = (await panelOf(page).boundingBox())!;
      expect(Math.round(box.x)).toBe(0);
      expect(Math.round(box.width)).toBe(360);
      expect(Math.round(box.y + box.height)).toBe(740);
      expect(box.height).toBeLessThanOrEqual(370);
      const isWide = await page.evaluate(() => document.documentElement.scrollWidth > 360);
      expect(isWide).toBe(false);
    },
    { viewport: { width: 360, height: 740 }, hasTouch: true },
  );
});
