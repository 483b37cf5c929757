import type { BrowserContextOptions, Page } from "playwright";
import { expect, test } from "vitest";
import type { LinePage } from "./line-page.js";
import { visitRoom } from "./room-page.js";

const PHONE = { width: 360, height: 740 };

/** The page with the yard on it, in the room of frost and heat. */
const inWeather = (
  visit: (page: Page, line: LinePage) => Promise<void>,
  options: BrowserContextOptions = {},
) =>
  visitRoom(
    { example: "alder-bank-yard", sign: "hen line", room: "Weather", ready: "#heat" },
    visit,
    options,
  );

const shown = async (page: Page) =>
  ((await page.locator("headfall-weather").evaluate((view) => view.shadowRoot!.textContent)) ?? "").replace(
    /\s+/g,
    " ",
  );

test("the room Weather comes to what the commands do; what keeps the sun off a run is one step that can be undone", async () => {
  await inWeather(async (page) => {
    expect(await shown(page)).toContain("-8 °C for 13 h from dusk (18:00), wind 3 m/s");
    expect(await shown(page)).toContain("hen line (drinker pins) stops first, 18 min after dusk");
    expect(await shown(page)).toContain("yard pan, hung bell: filled at dawn, it stays open");
    // Loose waterers are warm too: this run stays the one drawn when it is cool.
    await page.getByLabel("Part drawn").selectOption({ label: "hen line" });
    const worst = async () => Number(/At worst (\d+) °C/.exec(await shown(page))?.[1]);
    const before = await worst();
    expect(before).toBeGreaterThan(50);
    await page.getByLabel("Sun kept off").fill("100 %");
    await page.getByLabel("Sun kept off").press("Enter");
    await expect.poll(worst).toBeLessThan(35);
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: /^Undo/ }).click();
    await expect.poll(worst).toBe(before);
  });
});

test("on a phone in forced colours nothing is cut off, and axe has nothing to say", async () => {
  await inWeather(
    async (page, line) => {
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
      expect(await line.accessibilityFaults()).toEqual([]);
      for (const chart of await page.locator("headfall-weather svg.chart").all())
        expect((await chart.boundingBox())!.width).toBeLessThanOrEqual(360);
    },
    { viewport: PHONE, forcedColors: "active" },
  );
});
