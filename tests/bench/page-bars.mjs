/**
 * The bars of the page, measured in a real browser on the page as shipped: script before the first verdict, time to
 * it, frames while a hand drags, and the samples in the worker, with the processor slowed down four times as on a phone.
 * Whatever else the machine does only ever adds: of several rounds the least of each figure is told, save for the first
 * verdict, which is a median of visits.
 */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright";
import { preview } from "vite";
import { buildPage } from "../../.ci/build.mjs";
import { BROWSER_SWITCHES, ensureBrowser } from "../browser/find-browser.mjs";
import { measureDrag, measureHeap } from "./page-drag.mjs";
import { measureVisit } from "./page-visit.mjs";
import { measureSamples } from "./page-worker.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const SLOWDOWN = 4;
const VISITS = 5;
const ROUNDS = 3;
const WIDTHS = [360, 1280];
const STEPS = 120;
const STEPS_OF_LEAK = 1000;
const DRAGS = [
  { view: "side", handle: ".handle.stand .hit", what: "the stand, from the side" },
  { view: "above", handle: '[data-part="joint hung line"]', what: "a joint, from above" },
];

/** Calls `tell` with rows of {what, ...figures}. */
export const measurePage = (tell) =>
  withBuiltPage((browser, address, folder) => measureAll(browser, address, folder, tell));

/** Builds the page into a folder of its own, serves it, opens a browser, and clears all that away again. */
export async function withBuiltPage(measure) {
  const folder = mkdtempSync(join(tmpdir(), "headfall-page-"));
  await buildPage(folder);
  const server = await preview({
    configFile: here("../../packages/ui/vite.config.ts"),
    logLevel: "error",
    build: { outDir: folder },
    preview: { host: "127.0.0.1", port: 0, open: false },
  });
  const browser = await chromium.launch({
    executablePath: await ensureBrowser(),
    args: BROWSER_SWITCHES,
  });
  try {
    await measure(browser, server.resolvedUrls.local[0], folder);
  } finally {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function measureAll(browser, address, folder, tell) {
  const load = () => `load of the machine ${loadavg()[0].toFixed(1)}`;
  const visits = await repeated(VISITS, () => visit(browser, address, folder));
  visits.sort((a, b) => a["verdict painted ms"] - b["verdict painted ms"]);
  tell({ what: `first verdict (1500 ms, 100 kB), ${load()}`, ...visits[VISITS >> 1] });
  for (const width of WIDTHS)
    for (const { view, handle, what } of DRAGS) {
      const open = () => openWide(browser, address, width, view);
      const rounds = await repeated(ROUNDS, () => onPage(open, (page) => measureDrag(page, handle, STEPS)));
      tell({ what: `dragging ${what}, ${width} px (50 ms), ${load()}`, ...leastOf(rounds) });
    }
  for (const { view, handle, what } of DRAGS) {
    const open = () => openWide(browser, address, 1280, view, 1);
    const heap = await onPage(open, (page) => measureHeap(page, handle, STEPS_OF_LEAK));
    tell({ what: `twice 1,000 steps of ${what}`, ...heap });
  }
  const samples = await onPage(
    () => slowPage(browser, 360, 1),
    (page) => measureSamples(page, address, folder, exampleOf(60), SLOWDOWN),
  );
  tell({ what: `samples in the worker, times ${SLOWDOWN} (250 ms), ${load()}`, ...samples });
}

async function visit(browser, address, folder) {
  return onPage(
    () => slowPage(browser, 360),
    (page) => measureVisit(page, address, folder),
  );
}

/** The page with a line of 60 drinkers, whole, at rest, in one view where there is room for one. */
export async function openWide(browser, address, width, view, slowdown = SLOWDOWN) {
  const page = await slowPage(browser, width, slowdown);
  await page.goto(address);
  // With the card gone, nothing above the drawing changes any more.
  await page.getByRole("button", { name: "Look at an example" }).click();
  await page.locator(".card").waitFor({ state: "detached" });
  await page.evaluate(
    async ({ plan, view }) => {
      const line = document.querySelector("headfall-line");
      await line.whole;
      line.plan = plan;
      line.view = view;
      await line.whole;
    },
    { plan: exampleOf(60), view },
  );
  // Until it is saved, sampled, and kept for use without a network.
  await page.waitForTimeout(4000);
  return page;
}

/** The example with as many drinkers. */
function exampleOf(count) {
  const text = readFileSync(here("../../docs/examples/alder-bank-hen-house.json"), "utf8");
  const plan = JSON.parse(text);
  Object.assign(plan.runs[2], { length: `${count * 0.3} m` });
  Object.assign(plan.runs[2].drinkers, { count, busiest: count / 3 });
  return plan;
}

async function slowPage(browser, width, rate = SLOWDOWN) {
  const context = await browser.newContext({ viewport: { width, height: width < 500 ? 740 : 900 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
  return page;
}

async function onPage(open, measure) {
  const page = await open();
  try {
    return await measure(page);
  } finally {
    await page.context().close();
  }
}

async function repeated(times, measure) {
  const all = [];
  for (let k = 0; k < times; k += 1) all.push(await measure());
  return all;
}

function leastOf(rounds) {
  return Object.fromEntries(
    Object.keys(rounds[0]).map((key) => [key, Math.min(...rounds.map((each) => each[key]))]),
  );
}
