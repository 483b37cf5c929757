import { type Browser, type BrowserContextOptions, firefox, type Locator } from "playwright";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { findSecondBrowser, NO_SECOND_BROWSER } from "../../browser/find-second-browser.mjs";
import { countMarks } from "./count-marks.js";
import { beginVisit, sharedVisit, visitIn, watchForFaults } from "./harness.js";
import { PlansPage } from "./plans-page.js";
import { SwitchableServer } from "./switchable-server.js";

const PHONE = { width: 360, height: 740 };
const DESKTOP = { width: 1280, height: 900 };

const executablePath = findSecondBrowser();
if (executablePath === undefined)
  process.stdout.write(`The tests in a second engine are skipped. ${NO_SECOND_BROWSER}\n`);

let browser: Browser | undefined;

beforeAll(async () => {
  if (executablePath !== undefined)
    browser = await firefox.launch({ channel: "moz-firefox", executablePath });
});

afterAll(() => browser?.close());

/** Opens the page in Firefox, all of it there, and fails when anything was logged, thrown or asked of elsewhere. */
async function visitPlans(
  visit: (plans: PlansPage) => Promise<void>,
  options: BrowserContextOptions & { path?: string } = {},
): Promise<void> {
  await visitIn(browser!, async ({ page }) => visit(await whole(page)), { viewport: DESKTOP, ...options });
}

async function whole(page: PlansPage["page"]): Promise<PlansPage> {
  const plans = new PlansPage(page);
  await plans.ready();
  await plans.line.settled();
  return plans;
}

const runsOf = (plans: PlansPage) =>
  plans.page
    .locator("headfall-line")
    .evaluate((line: HTMLElementTagNameMap["headfall-line"]) => line.plan!.runs.length);

/** Drags by the mouse from the middle of what is found, so many pixels across and down. */
async function dragBy(plans: PlansPage, selector: string, across: number, down: number): Promise<void> {
  const grip = plans.page.locator(selector).first();
  await grip.scrollIntoViewIfNeeded();
  const box = (await grip.boundingBox())!;
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await plans.page.mouse.move(from.x, from.y);
  await plans.page.mouse.down();
  await plans.page.mouse.move(from.x + across, from.y + down, { steps: 12 });
  await plans.page.mouse.up();
}

/** By real keys: a text put in by script is not taken for a change in this engine. */
async function typeInto(field: Locator, text: string): Promise<void> {
  await field.click();
  await field.press("Control+A");
  await field.pressSequentially(text);
  await field.press("Enter");
}

describe.skipIf(executablePath === undefined)("in Firefox", () => {
  const share = sharedVisit(() => beginVisit(browser!, { viewport: DESKTOP }));
  /** The same in one visit: whoever changes the plan puts back what was there. */
  const onTheSamePage = (use: (plans: PlansPage) => Promise<void>) =>
    share(async ({ page }) => use(await whole(page)));

  test("the page opens on the example with a verdict on every drinker, as in the first engine", async () => {
    await onTheSamePage(async (plans) => {
      expect(await plans.line.counts()).toBe("24 good");
      expect(await countMarks(plans.page)).toBeGreaterThan(5);
    });
  });

  test("a run is drawn with the mouse from above, taken back, and done again", async () => {
    await onTheSamePage(async (plans) => {
      await plans.button("Draw a run").click();
      await dragBy(plans, "headfall-above [data-part='joint hen line end']", 30, 90);
      await expect.poll(() => runsOf(plans)).toBe(4);
      await plans.button(/^Undo/).click();
      await expect.poll(() => runsOf(plans)).toBe(3);
      await plans.button(/^Redo/).click();
      await expect.poll(() => runsOf(plans)).toBe(4);
      await plans.button(/^Undo/).click();
      await expect.poll(() => runsOf(plans)).toBe(3);
    });
  });

  test("the stand is dragged from the side, in one step to undo, and the verdicts follow", async () => {
    await onTheSamePage(async (plans) => {
      await dragBy(plans, "headfall-profile-hands [data-key='stand 0']", 0, 90);
      await expect.poll(() => plans.stand()).toMatch(/^-?\d+(\.\d+)? cm$/);
      expect(Number.parseFloat((await plans.stand())!)).toBeLessThan(20);
      await expect.poll(() => plans.line.counts()).not.toBe("24 good");
      await plans.page.keyboard.press("Control+z");
      await expect.poll(() => plans.stand()).toBe("45 cm");
      await expect.poll(() => plans.line.counts()).toBe("24 good");
    });
  });

  test("a figure is typed in the table, and a wrong one is refused by its reason", async () => {
    await onTheSamePage(async (plans) => {
      const cell = plans.page
        .locator("headfall-plan-table")
        .getByRole("textbox", { name: "Stand of barrel" });
      await typeInto(cell, "2 ft 6 in");
      await expect.poll(() => plans.stand()).toBe("2 ft 6 in");
      await typeInto(cell, "3 bananas");
      await plans.page
        .locator("headfall-plan-table")
        .getByText(/3 bananas/)
        .first()
        .waitFor();
      expect(await plans.stand()).toBe("2 ft 6 in");
      await plans.button(/^Undo/).click();
      await expect.poll(() => plans.stand()).toBe("45 cm");
    });
  });

  test("what was changed is there after a reload", async () => {
    await onTheSamePage(async (plans) => {
      await plans.raiseStand("72 cm");
      await plans.saved();
      await plans.reload();
      expect(await plans.stand()).toBe("72 cm");
      await plans.raiseStand("45 cm");
    });
  });

  test("a plan shared as a link opens as the same plan in another browser", async () => {
    let link = "";
    await visitPlans(async (plans) => {
      await plans.raiseStand("2 ft 6 in");
      await plans.button("Share").click();
      link = await plans.dialog.getByLabel("Link").inputValue();
    });
    expect(new URL(link).hash).toMatch(/^#plan=.{100}/);
    await visitPlans(
      async (plans) => {
        await plans.notice("This plan came by a link").waitFor();
        expect(await plans.stand()).toBe("2 ft 6 in");
        expect(new URL(plans.page.url()).hash).toBe("");
      },
      { path: new URL(link).hash },
    );
  });

  test("how a number was got is told when it is pressed, and Escape closes it", async () => {
    await onTheSamePage(async (plans) => {
      await plans.page.locator("headfall-line [data-how*=runLoss]").first().click();
      const panel = plans.page.locator("headfall-how [part=panel]");
      await expect.poll(() => panel.textContent()).toContain("h = lost in the pipe + lost in its fittings");
      await plans.page.keyboard.press("Escape");
      await panel.waitFor({ state: "detached" });
    });
  });

  test("after one visit the page opens again with the server gone, and keeps what is changed then", async () => {
    const server = await SwitchableServer.start(inject("pageFolder"));
    const context = await browser!.newContext({ viewport: DESKTOP });
    try {
      const page = await context.newPage();
      const faults = watchForFaults(page, server.address);
      const plans = new PlansPage(page);
      await page.goto(server.address);
      await plans.ready();
      await page.waitForFunction(() => navigator.serviceWorker.controller?.state === "activated");
      await server.close();
      await plans.reload();
      await plans.raiseStand("72 cm");
      await plans.saved();
      await plans.reload();
      expect(await plans.stand()).toBe("72 cm");
      expect(faults).toEqual([]);
    } finally {
      await context.close();
      await server.close();
    }
  });

  describe.each([
    ["on a desktop, in light", DESKTOP, "light"],
    ["on a phone, in the dark", PHONE, "dark"],
  ] as const)("%s", (_where, viewport, colorScheme) => {
    test("axe finds nothing in any view or dialog, and nothing scrolls sideways", async () => {
      await visitPlans(
        async (plans) => {
          const sound = async () => {
            expect(await plans.line.accessibilityFaults()).toEqual([]);
            const room = await plans.page.evaluate(() => document.documentElement.scrollWidth);
            expect(room).toBeLessThanOrEqual(viewport.width);
          };
          for (const view of viewport === PHONE ? ["Above", "Side", "Table"] : []) {
            await plans.button(view).click();
            await sound();
          }
          await plans.page.locator("headfall-line [data-how*=runLoss]").first().click();
          await plans.page.locator("headfall-how [part=panel]").waitFor();
          await sound();
          await plans.page.keyboard.press("Escape");
          await plans.openList();
          await sound();
        },
        { viewport, colorScheme },
      );
    });
  });
});
