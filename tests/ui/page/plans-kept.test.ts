import type { Page } from "playwright";
import { expect, inject, test } from "vitest";
import { visitPage } from "./harness.js";
import { PlansPage } from "./plans-page.js";
import { RealBrowser } from "./real-browser.js";

/** Opens the page with a script run before its own. */
async function visitAfter(before: () => void, visit: (plans: PlansPage) => Promise<void>): Promise<void> {
  await visitPage(
    async ({ page }) => {
      const plans = new PlansPage(page);
      await plans.ready();
      await visit(plans);
    },
    { before },
  );
}

async function started(browser: RealBrowser): Promise<PlansPage> {
  const plans = new PlansPage(await browser.start(inject("pageAddress")));
  await plans.ready();
  return plans;
}

/** From now on, a saving begins and never ends: it is kept waiting for answers without end. */
async function holdSavings(page: Page): Promise<void> {
  await page.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = function (value: unknown) {
      const asked = put.call(this, value);
      asked.addEventListener("success", () => document.body.setAttribute("data-in-a-save", ""));
      const askOn = () => {
        this.get("nothing").onsuccess = askOn;
      };
      askOn();
      return asked;
    };
  });
}

test("killed in the middle of a save, the browser has the last saved state, whole", async () => {
  const browser = new RealBrowser();
  try {
    const before = await started(browser);
    await before.raiseStand("70 cm");
    await before.saved();
    const saved = await before.records();
    await holdSavings(before.page);
    await before.raiseStand("80 cm");
    await before.page.locator("body[data-in-a-save]").waitFor();
    await browser.kill();
    const after = await started(browser);
    expect(await after.records()).toEqual(saved);
    expect(await after.stand()).toBe("70 cm");
    await after.raiseStand("90 cm");
    await after.saved();
  } finally {
    await browser.forget();
  }
});

test("killed at any moment while edits go on, the browser has every edit that was called saved, and a whole plan", async () => {
  const browser = new RealBrowser();
  try {
    let least = 0;
    for (let round = 0; round < 3; round++) {
      const plans = await started(browser);
      if (round > 0) {
        const found = Number.parseInt((await plans.stand()) ?? "", 10);
        expect(found).toBeGreaterThanOrEqual(least);
        expect(await plans.records()).toMatchObject([
          { plan: { headfall: 1, sources: [{ stand: `${found} cm` }] } },
        ]);
      }
      for (let edit = 1; edit <= 6; edit++) {
        const stand = 10 + round * 50 + edit;
        await plans.raiseStand(`${stand} cm`);
        if (edit % 2 === 1) continue;
        await plans.saved();
        least = stand;
      }
      await plans.raiseStand(`${10 + round * 50 + 7} cm`);
      await plans.page.waitForTimeout(270 + 25 * round);
      await browser.kill();
    }
  } finally {
    await browser.forget();
  }
});

test("where storage is denied, the page says so politely, goes on in memory, and offers a file", async () => {
  const deny = () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("denied", "SecurityError");
    };
    for (const name of ["localStorage", "sessionStorage"]) {
      Object.defineProperty(globalThis, name, {
        get: () => {
          throw new DOMException("denied", "SecurityError");
        },
      });
    }
  };
  await visitAfter(deny, async (plans) => {
    await plans.notice("does not let the page keep anything").waitFor();
    await plans.raiseStand("72 cm");
    await expect.poll(() => plans.page.locator(".kept").textContent()).toBe("Not saved");
    const file = await plans.fileFrom(() => plans.button("Save the plan as a file").click());
    expect(JSON.parse(file.text).sources[0].stand).toBe("72 cm");
    expect(await plans.ownFaults()).toEqual([]);
    await plans.page.getByRole("combobox", { name: "Light" }).selectOption("dark");
    await plans.openList();
    await plans.dialog.getByText("No plans can be kept").waitFor();
    await plans.press("Alder Bank, two pens");
    await expect.poll(() => plans.name()).toBe("Alder Bank, two pens");
    await plans.openList();
    expect(await plans.listed()).toEqual(["Alder Bank, hen house"]);
    await plans.dialog.locator(".plan").first().click();
    await expect.poll(() => plans.stand()).toBe("72 cm");
  });
});

test("where there is no database at all, a plan can be opened, changed and shared all the same", async () => {
  const remove = () => Object.defineProperty(globalThis, "indexedDB", { value: undefined });
  await visitAfter(remove, async (plans) => {
    await plans.button("Draw a line of your own").click();
    await plans.button("Bucket, 20 L").click();
    await expect.poll(() => plans.name()).toBe("My line");
    await plans.notice("The plan is not saved").waitFor();
    await plans.button("Share").click();
    expect(await plans.dialog.getByLabel("Link").inputValue()).toContain("#plan=");
  });
});

test("when room runs out, the page says so; once there is room, the next change saves everything", async () => {
  await visitPage(async ({ page }) => {
    const plans = new PlansPage(page);
    await plans.ready();
    const browser = await page.context().newCDPSession(page);
    const origin = new URL(page.url()).origin;
    await browser.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1 });
    await plans.raiseStand("71 cm");
    await plans.notice("is used up").waitFor();
    expect(await plans.records()).toEqual([]);
    expect(await plans.stand()).toBe("71 cm");
    await browser.send("Storage.overrideQuotaForOrigin", { origin });
    await plans.lengthen("11 m");
    await plans.saved();
    await plans.notice("is used up").waitFor({ state: "detached" });
    await plans.reload();
    expect([await plans.stand(), await plans.length()]).toEqual(["71 cm", "11 m"]);
  });
});

test("when every put is refused for want of room, nothing is lost while plans are changed for others", async () => {
  const fill = () => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  };
  await visitAfter(fill, async (plans) => {
    await plans.raiseStand("72 cm");
    await plans.notice("is used up").waitFor();
    await plans.openList();
    await plans.press("Alder Bank, rain barrel");
    await expect.poll(() => plans.name()).toBe("Alder Bank, rain barrel");
    await plans.openList();
    expect(await plans.listed()).toEqual(["Alder Bank, hen house"]);
    await plans.dialog.locator(".plan").first().click();
    await expect.poll(() => plans.stand()).toBe("72 cm");
  });
});

test("plans kept by a newer page are left alone, and this page says why it keeps nothing", async () => {
  await visitPage(async ({ page }) => {
    const plans = new PlansPage(page);
    await plans.ready();
    // The page that is open stands aside for it.
    await page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const opening = indexedDB.open("headfall", 99);
          opening.onerror = () => reject(opening.error);
          opening.onsuccess = () => {
            opening.result.close();
            resolve();
          };
        }),
    );
    await plans.raiseStand("71 cm");
    await plans.notice("a newer Headfall keeps the plans here").waitFor();
    await plans.reload();
    await plans.notice("a newer Headfall keeps the plans here").waitFor();
    await plans.raiseStand("72 cm");
    expect(await plans.stand()).toBe("72 cm");
    const databases = await page.evaluate(async () =>
      (await indexedDB.databases()).map(({ name, version }) => [name, version]),
    );
    expect(databases).toContainEqual(["headfall", 99]);
  });
});
