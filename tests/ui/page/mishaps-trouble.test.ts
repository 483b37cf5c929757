import type { BrowserContextOptions, Page } from "playwright";
import { expect, test } from "vitest";
import { drawn } from "./harness.js";
import { LinePage } from "./line-page.js";
import { visitRested } from "./rested-visit.js";

const PHONE = { width: 360, height: 740 };

/** The page with the hen house of the examples on it, in one of its rooms. */
const inRoom = (
  name: "Mishaps" | "Trouble",
  visit: (page: Page, line: LinePage) => Promise<void>,
  options: BrowserContextOptions = {},
) =>
  visitRested(async ({ page }) => {
    const line = new LinePage(page);
    await line.settled();
    await enter(line, name);
    await visit(page, line);
  }, options);

async function enter(line: LinePage, name: "Mishaps" | "Trouble"): Promise<void> {
  await line.enter(name);
  await line.page.locator(`headfall-${name.toLowerCase()} h2`).waitFor();
}

const shown = async (page: Page, tag: string) =>
  ((await page.locator(tag).evaluate((view) => view.shadowRoot!.textContent)) ?? "").replace(/\s+/g, " ");

/** What is lower than a thumb needs, or wider than the phone. */
async function tooSmall(page: Page, tag: string): Promise<readonly string[]> {
  await page.locator(tag).evaluate((view) => {
    for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
  });
  await drawn(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
  return page
    .locator(tag)
    .locator("button, select, summary, input")
    .evaluateAll((all) =>
      all.filter((each) => each.getBoundingClientRect().height < 44).map((each) => each.outerHTML),
    );
}

test("mishaps are run by the worker, and one is shown on the drawing; a phone has all of it under a thumb", async () => {
  await inRoom(
    "Mishaps",
    async (page) => {
      await page.locator("headfall-mishaps .rows").waitFor({ timeout: 30_000 });
      expect(page.workers().length).toBeGreaterThan(0);
      const stuck = page.locator("headfall-mishaps li.row", { hasText: "stuck open" });
      expect((await stuck.textContent())!.replace(/\s+/g, " ")).toMatch(
        /after .* To the ground ?\d+ L.*Guard:/,
      );
      const draw = stuck.getByRole("button", { name: "Show on the drawing" });
      expect(await draw.isVisible()).toBe(false);
      await stuck.locator("summary").first().click();
      await draw.click();
      await stuck.locator("svg.place circle").waitFor();
      // On paper all of them are open.
      await page.emulateMedia({ media: "print" });
      expect(await page.locator("headfall-mishaps .guard").last().isVisible()).toBe(true);
      await page.emulateMedia({ media: null });
      expect(await tooSmall(page, "headfall-mishaps")).toEqual([]);
    },
    { viewport: PHONE, hasTouch: true },
  );
});

test("a barrel found empty one morning: the look that is asked for is taken and answered, and what to do is told", async () => {
  await inRoom(
    "Trouble",
    async (page, line) => {
      const causes = page.locator("headfall-trouble .causes > li");
      await page
        .getByRole("group", { name: "Water in it, barrel" })
        .getByRole("button", { name: "empty" })
        .click();
      await causes.first().waitFor({ timeout: 30_000 });
      // What emptied it is a drinker that runs, or a pipe that came apart; nothing broken is far behind.
      expect(await causes.nth(0).locator("h4").textContent()).toMatch(/hen line 1 to 24 .*stuck open/);
      expect(await causes.nth(1).locator("h4").textContent()).toMatch(/apart|cap/);
      const asked = page.locator("headfall-trouble .look strong").first();
      expect(await asked.textContent()).toMatch(/^Pour some water in, then/);
      // The keeper pours some in, and sees one nipple run: it is told as a drip at that one.
      await page.getByRole("list", { name: "What you see there" }).first().getByRole("button").last().click();
      await expect.poll(() => shown(page, "headfall-trouble")).toMatch(/Told so far barrel found empty; /);
      await page.locator("headfall-trouble summary", { hasText: "hen line" }).first().click();
      await page
        .getByRole("group", { name: "hen line 7", exact: true })
        .getByRole("button", { name: "drips" })
        .click();
      await expect
        .poll(() => causes.nth(0).locator("h4").textContent(), { timeout: 20_000 })
        .toMatch(/^1\. Hen line 7 is stuck open/);
      expect(await causes.nth(0).textContent()).toContain("take it out, rinse it in clean water");
      // What is likeliest stays in sight where it is pressed, and leads down to the look.
      expect(await page.locator("headfall-trouble .likeliest").boundingBox()).toMatchObject({ y: 0 });
      await page.getByRole("button", { name: "To the one look" }).click();
      expect(await page.locator("headfall-trouble #look").evaluate((look) => look.matches(":focus"))).toBe(
        true,
      );
      expect(await tooSmall(page, "headfall-trouble")).toEqual([]);
      expect(await line.accessibilityFaults()).toEqual([]);
      // It is no part of the plan, and still there on coming back.
      await enter(line, "Mishaps");
      await enter(line, "Trouble");
      expect(await shown(page, "headfall-trouble")).toContain("hen line 7 dripping");
      await page.emulateMedia({ media: "print" });
      expect(await page.getByRole("button", { name: "Clear all" }).isVisible()).toBe(false);
      expect(await causes.nth(1).locator("ul li").first().isVisible()).toBe(true);
      // What each answer of the look would mean is no use on paper without the answer.
      for (const answer of await page
        .getByRole("list", { name: "What you see there" })
        .getByRole("button")
        .all())
        expect(await answer.isVisible()).toBe(true);
    },
    { viewport: PHONE, hasTouch: true },
  );
});
