import { createHash } from "node:crypto";
import { deflateRawSync } from "node:zlib";
import type { BrowserContextOptions } from "playwright";
import { expect, inject, test } from "vitest";
import { smallLine } from "../fixtures/stored-plans.js";
import { beginVisit, browserOfTests, sharedVisit } from "./harness.js";
import { PlansPage, visitPlans } from "./plans-page.js";
import { DESKTOP_SIZE } from "./screens.js";
import { SwitchableServer } from "./switchable-server.js";

const linkTo = (text: string | Buffer) => `#plan=${deflateRawSync(text).toString("base64url")}`;

const visitLink = (
  path: string,
  visit: (plans: PlansPage) => Promise<void>,
  options: BrowserContextOptions = {},
): Promise<void> => visitPlans(visit, { path, ...options });

test("a plan shared as a link opens as the same plan in another browser, and again as another plan there", async () => {
  let link = "";
  await visitLink(
    "",
    async (plans) => {
      await plans.raiseStand("2 ft 6 in");
      await plans.button("Share").click();
      await plans.press("Copy the link");
      await plans.dialog.getByText("The link is copied.").waitFor();
      link = await plans.page.evaluate(() => navigator.clipboard.readText());
      expect(await plans.dialog.getByLabel("Link").inputValue()).toBe(link);
    },
    { permissions: ["clipboard-read", "clipboard-write"] },
  );
  await visitLink(new URL(link).hash, async (plans) => {
    await plans.notice("This plan came by a link").waitFor();
    expect(await plans.stand()).toBe("2 ft 6 in");
    expect(new URL(plans.page.url()).hash).toBe("");
    await plans.saved();
    await plans.reload();
    expect(await plans.stand()).toBe("2 ft 6 in");
    await plans.raiseStand("1 m");
    await plans.saved();
    await plans.page.goto(link);
    await expect.poll(() => plans.stand()).toBe("2 ft 6 in");
    await plans.saved();
    expect(await plans.records()).toHaveLength(2);
  });
});

test("what stands in a link is sent to no server", async () => {
  const server = await SwitchableServer.start(inject("pageFolder"));
  const context = await (await browserOfTests()).newContext();
  try {
    const page = await context.newPage();
    const hash = linkTo(JSON.stringify(smallLine));
    await page.goto(server.address + hash);
    const plans = new PlansPage(page);
    await plans.saved();
    expect(await plans.name()).toBe(smallLine.name);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    expect(server.asked.length).toBeGreaterThan(10);
    for (let start = "#plan=".length; start + 12 <= hash.length; start += 12) {
      expect(server.asked.filter((asked) => asked.includes(hash.slice(start, start + 12)))).toEqual([]);
    }
  } finally {
    await context.close();
    await server.close();
  }
});

const share = sharedVisit(async () => beginVisit(await browserOfTests(), { viewport: DESKTOP_SIZE }));

test.each([
  ["is cut off", linkTo(JSON.stringify(smallLine)).slice(0, -20), "The link is broken"],
  ["holds no packed text", "#plan=%00<script>", "The link is broken"],
  ["unpacks without end", linkTo(Buffer.alloc(200_000_000, 32)), "holds more than a plan can be"],
  ["holds no plan", linkTo('{"headfall": 1, "sources": 4}'), "The link holds no plan that can be opened"],
  ["comes from a newer page", linkTo('{"headfall": 99}'), "Open it with a newer Headfall."],
])("a link that %s gives one clear message and harms nothing", async (_what, hash, words) => {
  await share(async ({ page }) => {
    const plans = new PlansPage(page);
    // Of the link before.
    for (const close of await plans.notice("").getByRole("button", { name: "Close" }).all())
      await close.click();
    await plans.raiseStand("72 cm");
    await plans.saved();
    const before = await plans.records();
    await plans.page.evaluate((end) => {
      location.hash = end;
    }, hash);
    await plans.notice(words).waitFor();
    expect(await plans.page.locator(".notice").count()).toBe(1);
    expect(await plans.stand()).toBe("72 cm");
    expect(new URL(plans.page.url()).hash).toBe("");
    await plans.page.goto(`about:blank`);
    await plans.page.goto(inject("pageAddress") + hash);
    await plans.ready();
    await plans.notice(words).waitFor();
    expect(await plans.stand()).toBe("72 cm");
    expect(await plans.records()).toEqual(before);
  });
});

test("a long link is told its length, and one too long to pass on is refused in favour of a file", async () => {
  // Names that cannot be packed any smaller.
  const named = (count: number) => ({
    name: "long.json",
    text: JSON.stringify({
      ...smallLine,
      runs: Array.from({ length: count }, (_, index) => ({
        id: createHash("sha512").update(`${index}`).digest("base64").slice(0, 80),
        length: "1 m",
      })),
    }),
  });
  await visitLink("", async (plans) => {
    await plans.open(named(60));
    await expect.poll(() => plans.name()).toBe(smallLine.name);
    await plans.button("Share").click();
    await plans.dialog.getByText(/It is [2-9],\d{3} signs long/).waitFor();
    await plans.closeDialog();
    await plans.open(named(400));
    await plans.saved();
    await plans.button("Share").click();
    await plans.dialog.getByText("too long to pass on").waitFor();
    expect(await plans.dialog.getByLabel("Link").count()).toBe(0);
    const file = await plans.fileFrom(() => plans.press("Save the plan as a file"));
    expect(JSON.parse(file.text).runs).toHaveLength(400);
  });
});

test("where copying is refused, the link is marked so that it can be copied by hand", async () => {
  await visitLink("", async (plans) => {
    await plans.page.evaluate(() => {
      navigator.clipboard.writeText = () => Promise.reject(new DOMException("no", "NotAllowedError"));
    });
    await plans.button("Share").click();
    await plans.press("Copy the link");
    await plans.dialog.getByText("The link is marked").waitFor();
    const marked = await plans.page.evaluate(() => {
      const { value, selectionStart, selectionEnd } = document.activeElement as HTMLInputElement;
      return [value.length, selectionStart, selectionEnd];
    });
    expect(marked).toEqual([marked[0], 0, marked[0]]);
  });
});
