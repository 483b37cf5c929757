import type { BrowserContextOptions, Page } from "playwright";
import { expect, test } from "vitest";
import type { LinePage } from "./line-page.js";
import { visitRoom } from "./room-page.js";

const PHONE = { width: 360, height: 740 };

/** The page with a drum under a coop roof on it, in the room of the rain. */
const inRain = (visit: (page: Page, line: LinePage) => Promise<void>, options: BrowserContextOptions = {}) =>
  visitRoom(
    { example: "alder-bank-rain-on-the-coop", sign: "drum", room: "Rain", ready: "h2" },
    visit,
    options,
  );

const chooseSeattle = async (page: Page) => {
  await page.getByRole("button", { name: "Seattle, 2012 to 2015" }).click();
  await page.locator("headfall-rain #calendar").waitFor({ timeout: 30_000 });
};
const shown = async (page: Page) =>
  ((await page.locator("headfall-rain").evaluate((view) => view.shadowRoot!.textContent)) ?? "").replace(
    /\s+/g,
    " ",
  );

test("the example is fetched when it is chosen and not before, gone through by the worker, and comes to what the command does", async () => {
  await inRain(async (page) => {
    const fetched: string[] = [];
    page.on("request", (request) => fetched.push(request.url()));
    await page.waitForTimeout(200);
    expect(fetched.filter((url) => url.endsWith(".csv"))).toEqual([]);
    await chooseSeattle(page);
    expect(fetched.filter((url) => /\/assets\/weather-[^/]+\.csv$/.test(url))).toHaveLength(1);
    expect(page.workers().length).toBeGreaterThan(0);
    // As docs/how-to/rain-barrel.md prints it, from the command.
    expect(await shown(page)).toContain(
      "Not by itself: 70 of 1461 days were short, about 18 a year, at most 30 in a row; 317 L of usable water would never have failed.",
    );
    expect(await shown(page)).toContain("a data set of the US Government");
  });
});

test("an example that was fetched once works without a network", async () => {
  await inRain(
    async (page) => {
      await page.waitForFunction(() => navigator.serviceWorker.controller?.state === "activated");
      await chooseSeattle(page);
      await page.context().setOffline(true);
      await page.reload();
      // The page comes back to its room.
      await chooseSeattle(page);
      await page.context().setOffline(false);
    },
    { serviceWorkers: "allow" },
  );
});

test("what is said of the roof is one edit, undone from this room, and the days follow", async () => {
  await inRain(async (page) => {
    await chooseSeattle(page);
    const area = page.getByRole("textbox", { name: "Area" });
    await area.fill("1 m2");
    await area.press("Enter");
    await expect.poll(() => shown(page)).not.toContain("70 of 1461 days were short");
    await page.getByRole("button", { name: /^Undo: area/ }).click();
    await expect.poll(() => shown(page)).toContain("70 of 1461 days were short");
  });
});

test("a hundred years of a station's file are gone through with the page in use, and its years turned over", async () => {
  await inRain(async (page) => {
    await page.getByLabel("Your own: days and rain").setInputFiles({
      name: "hundred.dly",
      mimeType: "text/plain",
      buffer: Buffer.from(hundredYears()),
    });
    // The page answers while the worker reads.
    await page.getByLabel("Birds drink").selectOption("expect");
    await page.locator("headfall-rain #calendar").waitFor({ timeout: 30_000 });
    expect(await shown(page)).toContain("36525 days, 1920-01-01 to 2019-12-31");
    expect(await page.locator("headfall-rain figure.year").count()).toBe(4);
    await page.getByRole("button", { name: "Earlier" }).click();
    await page.locator("headfall-rain figure.year", { hasText: "2012" }).waitFor();
  });
});

test("nothing scrolls sideways on a phone, all that can be pressed is 44 px high, and axe objects to nothing", async () => {
  await inRain(
    async (page, line) => {
      await chooseSeattle(page);
      await page.locator("headfall-rain").evaluate((view) => {
        for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
      });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        PHONE.width,
      );
      const low = await page
        .locator("headfall-rain")
        .locator("button, select, summary, input")
        .evaluateAll((all) =>
          all.filter((each) => each.getBoundingClientRect().height < 44).map((each) => each.outerHTML),
        );
      expect(low).toEqual([]);
      expect(await line.faultsInBothLights()).toEqual([]);
    },
    { viewport: PHONE, hasTouch: true },
  );
});

test("on paper there is the calendar, without what would be pressed", async () => {
  await inRain(async (page) => {
    await chooseSeattle(page);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("headfall-rain figure.year").first().isVisible()).toBe(true);
    expect(await page.getByRole("button", { name: "Next short day" }).isVisible()).toBe(false);
    expect(await page.getByLabel("Birds drink").isVisible()).toBe(false);
    // What is folded away on the screen is on the paper.
    expect(await page.getByText("the greatest K of the record").isVisible()).toBe(true);
  });
});

/** Fixed columns, rain alone: 10 mm each fifth day of a hundred years. */
function hundredYears(): string {
  const lines: string[] = [];
  for (let year = 1920; year < 2020; year += 1)
    for (let month = 1; month <= 12; month += 1) {
      const last = new Date(Date.UTC(year, month, 0)).getUTCDate();
      const cells = Array.from({ length: 31 }, (_, k) => (k >= last ? -9999 : k % 5 === 0 ? 100 : 0));
      const values = cells.map((value) => `${String(value).padStart(5)}   `).join("");
      lines.push(`ZZ000099999${year}${String(month).padStart(2, "0")}PRCP${values}`);
    }
  return lines.join("\n");
}
