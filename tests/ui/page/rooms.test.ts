import { readFileSync } from "node:fs";
import { deflateRawSync } from "node:zlib";
import type { Page } from "playwright";
import { expect, test } from "vitest";
import { ROOMS } from "../../../packages/ui/src/app/room-list.js";
import { LinePage } from "./line-page.js";
import { visitRested } from "./rested-visit.js";

const MEAT_BIRDS = readFileSync("docs/examples/alder-bank-meat-birds.json", "utf8");

const rooms = (page: Page) => page.getByRole("navigation", { name: "Rooms of this plan" });
const room = (page: Page, name: string) => new LinePage(page).room(name);

/** The page with meat birds on it, in their room. */
async function amongBirds(page: Page): Promise<LinePage> {
  const line = new LinePage(page);
  await line.settled();
  await line.open("meat-birds.json", MEAT_BIRDS);
  await page.getByText("cord line").first().waitFor();
  await line.enter("Birds");
  await page.locator("headfall-birds .answer").waitFor();
  await page.locator("headfall-birds .drunk").waitFor({ state: "attached" });
  return line;
}

const ROOMS_IN_ORDER = ROOMS.map(({ label }) => label);

test("where the window is wide the rooms stand in one row, in no less than that nothing is cut off, and axe objects to nothing by light and by dark", async () => {
  await visitRested(
    async ({ page }) => {
      const line = await amongBirds(page);
      expect(await line.faultsInBothLights()).toEqual([]);
      for (const [width, most] of [
        [1280, 1],
        [720, 2],
      ] as const) {
        await page.setViewportSize({ width, height: 800 });
        const buttons = await placesOfButtons(page);
        expect(buttons.length).toBe(ROOMS_IN_ORDER.length + 1);
        expect(new Set(buttons.map(({ top }) => top)).size).toBeLessThanOrEqual(most);
        expect(buttons.filter(({ height, isCut }) => height < 44 || isCut)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      }
    },
    { viewport: { width: 1280, height: 800 } },
  );
});

test("on a phone one button says which room it is and opens the others, each with a word on it", async () => {
  await visitRested(
    async ({ page }) => {
      const line = await amongBirds(page);
      const which = page.locator(".rooms .which");
      expect(await which.textContent()).toContain("Birds");
      expect(await line.room("Day").isVisible()).toBe(false);
      await which.press("Enter");
      const buttons = await placesOfButtons(page);
      expect(buttons.length).toBe(ROOMS_IN_ORDER.length + 1);
      expect(buttons.filter(({ height, isCut }) => height < 44 || isCut)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
      expect(await line.accessibilityFaults()).toEqual([]);
      await page.keyboard.press("Escape");
      expect(await line.room("Day").isVisible()).toBe(false);
      await line.enter("Day");
      await page.locator("headfall-day").waitFor();
      expect(await which.textContent()).toContain("Day");
      expect(await which.evaluate((button) => button === document.activeElement)).toBe(true);
    },
    { viewport: { width: 360, height: 800 } },
  );
});

const placesOfButtons = (page: Page) =>
  page.locator("#room-list button").evaluateAll((all) =>
    all.map((button) => ({
      top: button.getBoundingClientRect().top,
      height: button.getBoundingClientRect().height,
      isCut: button.scrollWidth > button.clientWidth,
    })),
  );

test("the room one is in says so; the line waits hidden until one comes back by keyboard, or a view wants it", async () => {
  await visitRested(async ({ page }) => {
    await amongBirds(page);
    expect(await room(page, "Birds").getAttribute("aria-current")).toBe("page");
    expect(await page.locator("headfall-line").isVisible()).toBe(false);
    await room(page, "Line").focus();
    await page.keyboard.press("Enter");
    await page.locator("headfall-line .counts").waitFor();
    expect(await room(page, "Line").getAttribute("aria-current")).toBe("page");
    expect(await page.locator("headfall-birds").isVisible()).toBe(false);
    await room(page, "Birds").click();
    await page.locator("headfall-birds .answer").waitFor();
    await page.locator("headfall-birds").evaluate((view) => {
      view.dispatchEvent(
        new CustomEvent("room-wanted", { bubbles: true, composed: true, detail: { room: "line" } }),
      );
    });
    await page.locator("headfall-line .counts").waitFor();
    expect(await page.locator("headfall-birds").isVisible()).toBe(false);
  });
});

test("what is said of the birds changes the verdicts of the line, and is undone from the birds' room by button and by key, but in a field a key means the field's own text", async () => {
  await visitRested(async ({ page }) => {
    const line = await amongBirds(page);
    const count = page.getByRole("textbox", { name: "How many" });
    const busiest = page.locator("headfall-birds dt", { hasText: "Drinkers at work" }).locator("xpath=../dd");
    await expect.poll(() => busiest.textContent()).toBe("3 of 6");
    await count.fill("300");
    await count.press("Enter");
    await expect.poll(() => busiest.textContent()).toBe("6 of 6");
    await page.getByRole("button", { name: /^Undo: number/ }).click();
    await expect.poll(() => count.inputValue()).toBe("40");
    await count.fill("80");
    await count.press("Enter");
    await room(page, "Birds").focus();
    await page.keyboard.press("Control+z");
    await expect.poll(() => count.inputValue()).toBe("40");
    await line.enter("Line");
    await line.settled();
    expect(await line.counts()).toContain("6 good");
    await line.enter("Birds");
    await count.fill("80");
    await count.press("Enter");
    await page.getByRole("button", { name: /^Undo: number/ }).waitFor();
    await count.focus();
    await page.keyboard.press("Control+z");
    await page.waitForTimeout(100);
    expect(await page.getByRole("button", { name: /^Undo: number/ }).isEnabled()).toBe(true);
  });
});

test("on a plan of today's date, birds that hatched are as old as they are today", async () => {
  await visitRested(async ({ page }) => {
    const line = new LinePage(page);
    await line.settled();
    const { day: _, ...undated } = JSON.parse(MEAT_BIRDS) as { day: string };
    await line.open("undated.json", JSON.stringify(undated));
    await page.getByText("cord line").first().waitFor();
    await line.enter("Birds");
    const today = await page.evaluate(() => {
      const now = new Date();
      return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
    });
    await page.locator("headfall-birds", { hasText: `old on ${today}.` }).waitFor();
  });
});

test("the page comes back to its room when it is loaded again, and the browser's buttons go from room to room", async () => {
  await visitRested(async ({ page }) => {
    const line = await amongBirds(page);
    const current = () => rooms(page).locator("[aria-current] .name").textContent();
    await page.getByText("Saved", { exact: true }).waitFor();
    await page.reload();
    await line.settled();
    await page.locator("headfall-birds .answer").waitFor();
    expect(new URL(page.url()).hash).toBe("#birds");
    await line.enter("Day");
    await page.locator("headfall-day .answer").waitFor();
    await page.goBack();
    await page.locator("headfall-birds .answer").waitFor();
    expect(await current()).toBe("Birds");
    await page.goForward();
    await page.locator("headfall-day .answer").waitFor();
    await line.enter("Line");
    await page.locator("headfall-line .counts").waitFor();
    expect(new URL(page.url()).hash).toBe("");
    await page.goBack();
    await page.locator("headfall-day .answer").waitFor();
    expect(await current()).toBe("Day");
  });
});

test("a link to a plan that comes while one is in a room opens that plan, on its line, and is taken out of the address", async () => {
  await visitRested(async ({ page }) => {
    await amongBirds(page);
    const link = deflateRawSync(MEAT_BIRDS.replace("Alder Bank, meat birds", "Sent here")).toString(
      "base64url",
    );
    await page.evaluate((packed) => {
      location.hash = `#plan=${packed}`;
    }, link);
    await page
      .getByRole("button", { name: /Sent here|open/ })
      .first()
      .waitFor();
    await page.locator("headfall-line .counts").waitFor();
    await expect.poll(() => new URL(page.url()).hash).toBe("");
    expect(await room(page, "Line").getAttribute("aria-current")).toBe("page");
  });
});

test("on a phone what a keeper wants first stands at the top of the birds' room, the rest folded; on paper all of it is shown, and nothing that would be pressed", async () => {
  await visitRested(
    async ({ page }) => {
      await amongBirds(page);
      const lowest = await page
        .locator("headfall-birds")
        .locator(".answer, .findings, .sound")
        .evaluateAll((all) => Math.max(...all.map((each) => each.getBoundingClientRect().bottom)));
      expect(lowest).toBeLessThan(740);
      expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThan(4000);
      const table = page.locator("headfall-birds .drunk");
      expect(await table.isVisible()).toBe(false);
      await page.emulateMedia({ media: "print" });
      expect(await table.isVisible()).toBe(true);
      expect(await page.getByRole("button", { name: "Add a pen" }).isVisible()).toBe(false);
    },
    { viewport: { width: 360, height: 740 }, hasTouch: true },
  );
});
