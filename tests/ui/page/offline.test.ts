import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { BrowserContext } from "playwright";
import { afterAll, afterEach, beforeAll, beforeEach, expect, inject, test } from "vitest";
import { browserOfTests } from "./harness.js";
import { writeLaterPage } from "./later-page.js";
import { PlansPage } from "./plans-page.js";
import { SwitchableServer } from "./switchable-server.js";

const cache = fileURLToPath(new URL("../../../node_modules/.cache/", import.meta.url));
const HEN_HOUSE = "Alder Bank, hen house";
let second = "";
let context: BrowserContext;
let server: SwitchableServer;
let thrown: string[];

beforeAll(() => {
  if (inject("pageProblem") !== "") throw new Error(inject("pageProblem"));
  second = mkdtempSync(join(cache, "page-second-"));
  writeLaterPage(inject("pageFolder"), second);
});

afterAll(() => rmSync(second, { recursive: true, force: true }));

beforeEach(async () => {
  context = await (await browserOfTests()).newContext({ viewport: { width: 1280, height: 900 } });
  server = await SwitchableServer.start(inject("pageFolder"));
  thrown = [];
});

afterEach(async () => {
  await context.close();
  await server.close();
  expect(thrown).toEqual([]);
});

/** Opens a tab and waits until the page could do without the network. */
async function openTab(): Promise<PlansPage> {
  const page = await context.newPage();
  page.on("pageerror", ({ message }) => thrown.push(message));
  await page.goto(server.address);
  const plans = new PlansPage(page);
  await plans.ready();
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === "activated");
  return plans;
}

const build = (plans: PlansPage) => plans.page.locator("meta[name=build]").count();

test("after one visit, with the server gone, the page opens, is edited, saved and opened again, by a link too", async () => {
  const plans = await openTab();
  const { address } = server;
  await server.close();
  await expect(fetch(address)).rejects.toThrow();
  await plans.reload();
  await plans.raiseStand("72 cm");
  await plans.saved();
  await plans.openList();
  await plans.press("Copy Alder Bank, hen house");
  await plans.listedOnce(2);
  await plans.closeDialog();
  await plans.button("Share").click();
  const link = await plans.dialog.getByLabel("Link").inputValue();
  expect(link).toContain("#plan=");
  await plans.page.close();
  const again = new PlansPage(await context.newPage());
  await again.page.goto(address);
  await again.ready();
  expect(await again.stand()).toBe("72 cm");
  const other = new PlansPage(await context.newPage());
  await other.page.goto(link);
  await other.notice("This plan came by a link").waitFor();
  expect(await other.stand()).toBe("72 cm");
});

test("in the very first visit, parts fetched later come although the server is gone", async () => {
  const plans = await openTab();
  await server.close();
  await plans.openList();
  await plans.press("Alder Bank, two pens");
  await expect.poll(() => plans.name()).toBe("Alder Bank, two pens");
});

test("a newer page waits until it is wanted; put off, it asks again at the next visit; then it takes over, and nothing is lost", async () => {
  const plans = await openTab();
  server.turnTo(second);
  await plans.reload();
  expect(await build(plans)).toBe(0);
  await plans.button("Later").click();
  await plans.notice("A newer Headfall").waitFor({ state: "detached" });
  await plans.raiseStand("71 cm");
  await plans.saved();
  await plans.reload();
  expect(await build(plans)).toBe(0);
  await plans.notice("A newer Headfall is ready").waitFor();
  expect(await plans.ownFaults()).toEqual([]);
  await plans.raiseStand("72 cm");
  await plans.button("Use it now").click();
  await expect.poll(() => build(plans)).toBe(1);
  await plans.ready();
  expect(await plans.stand()).toBe("72 cm");
  expect(await plans.name()).toBe(HEN_HOUSE);
});

test("other tabs are told that the page was renewed, and renew themselves when asked, with what was just typed", async () => {
  const [one, other] = [await openTab(), await openTab()];
  server.turnTo(second);
  await one.reload();
  await one.button("Use it now").click();
  await expect.poll(() => build(one)).toBe(1);
  await other.notice("renewed in another tab").waitFor();
  await other.raiseStand("73 cm");
  await other.button("Renew this tab").click();
  await expect.poll(() => build(other)).toBe(1);
  await other.ready();
  expect(await other.stand()).toBe("73 cm");
});

test("a part that cannot be fetched is told kindly, and comes once the network is back", async () => {
  const page = await context.newPage();
  await page.route(/plans-dialog/, (route) => route.abort());
  await page.goto(server.address);
  const plans = new PlansPage(page);
  await plans.ready();
  await page.locator("h1 button").click();
  await plans.notice("could not be fetched").waitFor();
  await plans.raiseStand("72 cm");
  await plans.saved();
  await page.unroute(/plans-dialog/);
  await plans.reload();
  await plans.openList();
  expect(await plans.listed()).toEqual([HEN_HOUSE]);
});

test("the page can be installed: a manifest with a name, icons that exist, and one that may be cut to any shape", async () => {
  const folder = inject("pageFolder");
  const manifest = JSON.parse(readFileSync(join(folder, "manifest.webmanifest"), "utf8"));
  expect(manifest).toMatchObject({ name: "Headfall", start_url: "./", scope: "./", display: "standalone" });
  const icons = manifest.icons as { src: string; sizes: string; purpose: string }[];
  for (const { src, sizes } of icons.filter(({ src }) => src.endsWith(".png"))) {
    const png = readFileSync(join(folder, src));
    expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`).toBe(sizes);
  }
  expect(icons.map(({ sizes }) => sizes)).toEqual(expect.arrayContaining(["192x192", "512x512"]));
  expect(icons.filter(({ purpose }) => purpose === "maskable").length).toBeGreaterThan(0);
  const plans = await openTab();
  const devtools = await context.newCDPSession(plans.page);
  const { installabilityErrors } = await devtools.send("Page.getInstallabilityErrors");
  expect(installabilityErrors.filter(({ errorId }) => errorId !== "in-incognito")).toEqual([]);
});
