import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Locator, Page } from "playwright";
import { afterAll, describe, expect, test } from "vitest";
import { drawnPicture } from "./drawn-picture.js";
import { visitPage } from "./harness.js";
import { PlansPage } from "./plans-page.js";

/*
 * Stored pictures of the main views. Drawings are stored as the SVG text of what is seen; views of words and fields as
 * what a screen reader is told. After a change that was meant, run this file with -u and look at what became different.
 */

const stored = fileURLToPath(new URL("../pictures/", import.meta.url));
const plan = readFileSync(
  new URL("../../../docs/examples/alder-bank-two-pens.json", import.meta.url),
  "utf8",
);
const names = new Set<string>();

/** Compares with the stored file of that name; a run with -u writes it anew. */
async function expectStored(name: string, text: string): Promise<void> {
  names.add(name);
  await expect(text).toMatchFileSnapshot(`${stored}${name}`);
}

/** Opens the plan on a day that never changes, on a screen of that size. */
async function visitTwoPens(
  { width, height, light }: { width: number; height: number; light: "light" | "dark" },
  visit: (plans: PlansPage) => Promise<void>,
): Promise<void> {
  await visitPage(
    async ({ page }) => {
      const plans = new PlansPage(page);
      await page.clock.setFixedTime(new Date("2026-05-01T09:00:00Z"));
      await plans.ready();
      await plans.open({ name: "two-pens.json", text: plan });
      await expect.poll(() => plans.name()).toBe("Alder Bank, two pens");
      await plans.saved();
      await plans.line.settled();
      await visit(plans);
    },
    {
      viewport: { width, height },
      colorScheme: light,
      reducedMotion: "reduce",
      locale: "en-GB",
      timezoneId: "UTC",
    },
  );
}

/** The drawing once two frames in a row show the same. */
async function restedPicture(page: Page, drawing: Locator): Promise<string> {
  await drawing.waitFor();
  for (let before = ""; ; ) {
    const now = await drawnPicture(drawing);
    if (now === before) return now;
    before = now;
    await page.waitForTimeout(100);
  }
}

const SCREENS = [
  { screen: "1280", width: 1280, height: 900 },
  { screen: "360", width: 360, height: 740 },
];

describe.each(SCREENS)("on a screen $screen px wide", ({ screen, width, height }) => {
  const turnTo = async (plans: PlansPage, view: string) => {
    if (width === 360) await plans.button(view).click();
  };

  test.each(["light", "dark"] as const)(
    "the line from above, from the side and on paper look as they are stored, in %s colours",
    async (light) => {
      await visitTwoPens({ width, height, light }, async (plans) => {
        const { page } = plans;
        const expectDrawn = async (name: string, drawing: Locator, on = `-${screen}-${light}`) =>
          expectStored(`${name}${on}.svg`, await restedPicture(page, drawing));
        await turnTo(plans, "Above");
        await expectDrawn("above", page.locator("headfall-above svg.drawing"));
        await turnTo(plans, "Side");
        await expectDrawn("side", page.locator("headfall-profile svg[part=drawing]"));
        await expectDrawn("side-hands", page.locator("headfall-profile-hands svg").first());
        await plans.button("Print to scale ...").click();
        // Paper is the same, whatever the screen it was ordered from.
        await expectDrawn("sheet", page.locator("headfall-sheet svg.page").first(), "");
      });
    },
  );

  test("the tables, the list of plans and how a number was got say what is stored", async () => {
    await visitTwoPens({ width, height, light: "light" }, async (plans) => {
      const { page } = plans;
      const expectTold = async (name: string, part: Locator) =>
        expectStored(`${name}-${screen}.txt`, `${await part.ariaSnapshot()}\n`);
      await turnTo(plans, "Table");
      await expectTold("table", page.locator("headfall-plan-table"));
      await page.locator("headfall-line [data-how*=runLoss]").first().click();
      const panel = page.locator("headfall-how [part=panel]");
      await panel.waitFor();
      await expectTold("how", panel);
      await page.keyboard.press("Escape");
      await plans.openList();
      await plans.listedOnce(1);
      await expectTold("plans", plans.dialog);
    });
  });
});

test("every stored picture belongs to a view, and every view has one", () => {
  expect(readdirSync(stored).sort()).toEqual([...names].sort());
});

afterAll(() => names.clear());
