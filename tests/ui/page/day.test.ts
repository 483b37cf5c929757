import type { BrowserContextOptions, Page } from "playwright";
import { expect, test } from "vitest";
import type { LinePage } from "./line-page.js";
import { visitRoom } from "./room-page.js";

const PHONE = { width: 360, height: 740 };

/** The page with meat birds on it, in the room of the day. */
const duringDay = (
  visit: (page: Page, line: LinePage) => Promise<void>,
  options: BrowserContextOptions = {},
) =>
  visitRoom(
    { example: "alder-bank-meat-birds", sign: "cord line", room: "Day", ready: "svg.marks" },
    visit,
    options,
  );

const now = (page: Page) => page.locator("headfall-day .clock").textContent();

test("the day is run by the page's worker and played when asked, and stands still once its watcher goes elsewhere", async () => {
  await duringDay(async (page, line) => {
    expect(page.workers().length).toBeGreaterThan(0);
    const before = await now(page);
    await page.waitForTimeout(300);
    expect(await now(page)).toBe(before);
    await page.getByRole("button", { name: "Play" }).click();
    await expect.poll(() => now(page)).not.toBe(before);
    await line.enter("Line");
    await page.waitForTimeout(100);
    await line.enter("Day");
    await page.getByRole("button", { name: "Play" }).waitFor();
  });
});

test("a hundred days are run and told, with the page in use", async () => {
  await duringDay(async (page) => {
    await page.getByRole("button", { name: "Run a hundred days" }).click();
    await page.getByRole("slider", { name: "Time of day" }).press("Home");
    expect(await now(page)).toBe("00:00");
    await page.locator("headfall-day table.days").waitFor({ timeout: 30_000 });
  });
});

test("nothing scrolls sideways on a phone, all that can be pressed is 44 px high, and axe objects to nothing", async () => {
  await duringDay(
    async (page, line) => {
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        PHONE.width,
      );
      const low = await page
        .locator("headfall-day")
        .locator("button, select, summary, input")
        .evaluateAll((all) =>
          all.filter((each) => each.getBoundingClientRect().height < 44).map((each) => each.outerHTML),
        );
      expect(low).toEqual([]);
      expect(await line.accessibilityFaults()).toEqual([]);
    },
    { viewport: PHONE, hasTouch: true },
  );
});

test("with the system's own colours birds that wait are still told from birds that drink", async () => {
  await duringDay(
    async (page) => {
      const fill = (kind: string) =>
        page.locator(`headfall-day .key .bird.${kind}`).evaluate((bird) => getComputedStyle(bird).fill);
      expect(await fill("drinks")).not.toBe(await fill("waits"));
    },
    { forcedColors: "active" },
  );
});

test("on paper there is the day, without what would be pressed", async () => {
  await duringDay(async (page) => {
    await page.emulateMedia({ media: "print" });
    expect(await page.getByRole("slider", { name: "Time of day" }).isVisible()).toBe(false);
    expect(await page.getByRole("button", { name: "Another day" }).isVisible()).toBe(false);
    expect(await page.locator("headfall-day svg.chart").first().isVisible()).toBe(true);
  });
});
