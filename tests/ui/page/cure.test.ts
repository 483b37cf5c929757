import type { Page } from "playwright";
import { expect, test } from "vitest";
import { LinePage } from "./line-page.js";
import { visitRested } from "./rested-visit.js";

const PHONE = { width: 360, height: 740 };
/** Alder Bank's house at the end of a long thin feed: invented, and most of its nipples starve. */
const LONG_FEED = JSON.stringify({
  headfall: 1,
  name: "Alder Bank, long feed",
  money: "EUR",
  sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "30 cm", level: { lowest: "10 cm" } }],
  points: [
    { id: "gate", ground: "0 cm", above: "20 cm" },
    { id: "end", ground: "5 cm", above: "20 cm" },
  ],
  runs: [
    { id: "feed", to: "gate", length: "30 m", pipe: "pvc-sch40-1/2" },
    {
      id: "house",
      from: "gate",
      to: "end",
      length: "12 m",
      pipe: "pvc-sch40-1/2",
      drinkers: { kind: "nipple-side-action", count: 24, first: "1 m", every: "40 cm", busiest: 12 },
    },
  ],
  shelf: [
    { pipe: "pvc-sch40-1/2", price: 1.1 },
    { pipe: "pvc-sch40-3/4", price: 1.6, onHand: "8 m" },
  ],
  prices: { stand: 3 },
});

const higher = (page: Page) =>
  page.locator("headfall-cure article.cure").filter({ hasText: "Another height of the stand" });

test("on a phone a line that starves is cured by the page's worker with one press, and undone from another room", async () => {
  await visitRested(
    async ({ page }) => {
      const line = new LinePage(page);
      await line.settled();
      await line.open("as-built.json", LONG_FEED.replace("long feed", "as built").replace("30 cm", "31 cm"));
      await page.getByText("Alder Bank, as built").first().waitFor();
      await line.open("long-feed.json", LONG_FEED);
      await page.getByText("Alder Bank, long feed").first().waitFor();
      await line.enter("Cure");
      await page.getByRole("button", { name: "What would make it work?" }).click();
      await higher(page).waitFor({ timeout: 40_000 });
      expect(page.workers().length).toBeGreaterThan(0);
      expect(await higher(page).textContent()).toMatch(/Raise the stand of "barrel".*EUR.*24 good/s);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        PHONE.width,
      );
      await higher(page).getByRole("button", { name: "Do it" }).click();
      await page.getByText("Done: another height of the stand.").waitFor();
      await line.enter("Line");
      await expect.poll(() => line.counts()).toContain("24 good");
      await line.enter("Birds");
      await page.getByRole("button", { name: "Undo: another height of the stand" }).click();
      await line.enter("Line");
      await expect.poll(() => line.counts()).toContain("starve");
      await line.enter("Cure");
      await page.getByRole("button", { name: "Choose from your plans" }).click();
      await page.locator("headfall-cure").getByLabel("Alder Bank, as built").check();
      await page.locator("headfall-cure table.beside").waitFor({ timeout: 20_000 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        PHONE.width,
      );
      expect(await line.accessibilityFaults()).toEqual([]);
    },
    { viewport: PHONE, hasTouch: true },
  );
});
