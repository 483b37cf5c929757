import { mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { BrowserContext, Page } from "playwright";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { buildSite } from "../../../docs/site/build-site.mjs";
import { browserOfTests, watchForFaults } from "./harness.js";
import { LinePage } from "./line-page.js";
import { SwitchableServer } from "./switchable-server.js";

const folder = mkdtempSync(
  join(fileURLToPath(new URL("../../../node_modules/.cache/", import.meta.url)), "site-"),
);
let server: SwitchableServer;
let context: BrowserContext;
let page: Page;
let faults: string[];

beforeAll(() => buildSite(folder));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

beforeEach(async () => {
  server = await SwitchableServer.start(folder);
});

afterEach(async () => {
  await context.close();
  await server.close();
  // With the server gone, the browser says that it could not look for a newer site.
  expect(faults.filter((fault) => !/ERR_CONNECTION_REFUSED|sw\.js/.test(fault))).toEqual([]);
});

/** Opens a page of the site on a phone; keeping all of it for later takes long, and is done only where it is asked for. */
async function open(path: string, serviceWorkers: "allow" | "block" = "block"): Promise<void> {
  const viewport = { width: 360, height: 740 };
  context = await (await browserOfTests()).newContext({ viewport, serviceWorkers });
  page = await context.newPage();
  faults = watchForFaults(page, server.address);
  await page.goto(`${server.address}${path}`);
}

const sideways = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

const objections = () => new LinePage(page).accessibilityFaults({ except: ["headfall-line"] });

test("on a phone, a word leads to the page that tells of it; nothing scrolls sideways, axe finds nothing", async () => {
  await open("how-to/coop-line.html");
  expect(await sideways()).toBe(0);
  expect(await objections()).toEqual([]);
  await page.getByLabel("Search").fill("fount");
  await page
    .getByRole("link", { name: /^Founts on a hill/ })
    .first()
    .waitFor();
  expect(await objections()).toEqual([]);
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { level: 1, name: "Founts on a hill" }).waitFor();
  await page.getByRole("button", { name: "All pages" }).click();
  await page.getByRole("link", { name: "The first ten minutes" }).first().click();
  await page.getByRole("heading", { level: 1, name: "The first ten minutes" }).waitFor();
});

test("the plan of the first ten minutes is alive: it starves, is changed, and can be put back", async () => {
  await open("tutorial.html");
  const live = page.locator("figure.live").first();
  await live.scrollIntoViewIfNeeded();
  const line = live.locator("headfall-line");
  await line.getByText("12 starve").first().waitFor();
  await line.evaluate(async (element: HTMLElement & { whole: Promise<void> }) => element.whole);
  expect(await sideways()).toBe(0);
  await line.evaluate((element) => {
    const change = { kind: "set", path: ["sources", 0, "stand"], value: "50 cm", what: "stand 50 cm" };
    element.dispatchEvent(Object.assign(new Event("edit-wanted"), { change, gesture: undefined }));
  });
  await line.getByText("12 good").first().waitFor();
  await live.getByRole("button", { name: "As it was" }).click();
  await line.getByText("12 starve").first().waitFor();
});

test("after one visit, pages, search and plans are there with the server gone", async () => {
  await open("", "allow");
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === "activated");
  const { address } = server;
  await server.close();
  await page.goto(`${address}how-to/founts-on-a-hill.html`);
  await page.getByLabel("Search").fill("friction");
  await page.locator(".found a").first().waitFor();
  await page.locator("figure.live").scrollIntoViewIfNeeded();
  await page.locator("headfall-yard").getByRole("heading", { name: "brooder one" }).waitFor();
});
