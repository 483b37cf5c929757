/**
 * The bars of the page, measured in a real browser on the page as shipped: script before the first verdict, time to
 * it, and frames while a hand drags, with the processor slowed down four times as on a phone.
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { chromium } from "playwright";
import { preview } from "vite";
import { buildPage } from "../../.ci/build.mjs";
import { BROWSER_SWITCHES, ensureBrowser } from "../browser/find-browser.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const SLOWDOWN = 4;
const PHONE = { width: 360, height: 740 };

/** @returns rows of {what, ...figures} */
export async function measurePage() {
  const folder = mkdtempSync(join(tmpdir(), "headfall-page-"));
  await buildPage(folder);
  const server = await preview({
    configFile: here("../../packages/ui/vite.config.ts"),
    logLevel: "error",
    build: { outDir: folder },
    preview: { host: "127.0.0.1", port: 0, open: false },
  });
  const browser = await chromium.launch({ executablePath: await ensureBrowser(), args: BROWSER_SWITCHES });
  try {
    const address = server.resolvedUrls.local[0];
    const verdicts = [];
    for (let k = 0; k < 5; k += 1) verdicts.push(await firstVerdict(browser, address, folder));
    verdicts.sort((a, b) => a.ms - b.ms);
    return [
      { what: "first verdict on the example, slowed 4x (bars: 1500 ms, 100 kB gzip)", ...verdicts[2] },
      {
        what: "dragging the stand, 60 drinkers, from the side (bar: no task over 50 ms)",
        ...(await drag(browser, address, "side")),
      },
      {
        what: "dragging a joint, 60 drinkers, from above (bar: no task over 50 ms)",
        ...(await drag(browser, address, "above")),
      },
    ];
  } finally {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Opens the page as a returning visitor with the example would, and waits for the verdict to be painted. */
async function firstVerdict(browser, address, folder) {
  const page = await slowPage(browser, { viewport: PHONE });
  const scripts = new Set();
  page.on("response", (response) => {
    const name = new URL(response.url()).pathname.split("/").at(-1);
    if (name.endsWith(".js")) scripts.add(name);
  });
  await page.addInitScript(() => {
    window.addEventListener(
      "line-checked",
      () =>
        requestAnimationFrame(() =>
          requestAnimationFrame(() => {
            window.shownAt ??= performance.now();
          }),
        ),
      true,
    );
  });
  await page.goto(`${address}#example`);
  await page.waitForFunction(() => window.shownAt !== undefined);
  const ms = await page.evaluate(() => window.shownAt);
  const entry = /src="\.?\/?assets\/([^"]+\.js)"/.exec(readFileSync(join(folder, "index.html"), "utf8"))[1];
  const needed = importsOf(folder, entry);
  const bytes = [...needed].reduce(
    (sum, name) => sum + gzipSync(readFileSync(join(folder, "assets", name)), { level: 9 }).length,
    0,
  );
  await page.context().close();
  return {
    ms,
    "kB gzip": bytes / 1000,
    files: needed.size,
    "files in all": readdirSync(join(folder, "assets")).length,
  };
}

/** The entry and all that it imports before it runs. */
function importsOf(folder, entry, seen = new Set()) {
  if (seen.has(entry)) return seen;
  seen.add(entry);
  const text = readFileSync(join(folder, "assets", entry), "utf8");
  for (const [, name] of text
    .matchAll(/\bfrom\s*["']\.\/([^"']+\.js)["']|\bimport\s*["']\.\/([^"']+\.js)["']/g)
    .map((m) => [m[0], m[1] ?? m[2]]))
    importsOf(folder, name, seen);
  return seen;
}

async function slowPage(browser, options) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWDOWN });
  return page;
}

/** Drags a handle to and fro for two seconds, and tells how long frames and tasks took meanwhile. */
async function drag(browser, address, view) {
  const page = await slowPage(browser, { viewport: PHONE });
  await page.goto(`${address}#example`);
  await page.locator("headfall-line").waitFor();
  await page.evaluate(async (view) => {
    const line = document.querySelector("headfall-line");
    await line.whole;
    const plan = structuredClone(line.plan);
    Object.assign(plan.runs[2], { length: "18 m" });
    Object.assign(plan.runs[2].drinkers, { count: 60, busiest: 20 });
    line.plan = plan;
    line.view = view;
    await line.whole;
  }, view);
  await page.waitForTimeout(2500);
  const handle = await page.evaluate(() => {
    const line = document.querySelector("headfall-line");
    const inside = line.view === "side" ? "headfall-profile-hands" : "headfall-above";
    const root = line.shadowRoot.querySelector(inside).shadowRoot;
    const found =
      line.view === "side"
        ? root.querySelector("[role=slider]")
        : root.querySelector("[data-part^=joint], [data-part]");
    found.scrollIntoView({ block: "center" });
    const { x, y, width, height } = found.getBoundingClientRect();
    return { x: x + width / 2, y: y + height / 2 };
  });
  await page.evaluate(() => {
    window.frames_ = [];
    window.tasks_ = [];
    new PerformanceObserver((list) =>
      window.tasks_.push(...list.getEntries().map(({ duration }) => duration)),
    ).observe({ type: "longtask" });
    let last = performance.now();
    const tick = (now) => {
      window.frames_.push(now - last);
      last = now;
      requestAnimationFrame(tick);
    };
    requestAnimationFrame(tick);
  });
  await page.mouse.move(handle.x, handle.y);
  await page.mouse.down();
  for (let k = 0; k < 120; k += 1) {
    await page.mouse.move(handle.x, handle.y - 20 * Math.sin(k / 8));
    await page.waitForTimeout(16);
  }
  await page.mouse.up();
  const { frames, tasks } = await page.evaluate(() => ({ frames: window.frames_, tasks: window.tasks_ }));
  await page.context().close();
  frames.sort((a, b) => a - b);
  const at = (share) => frames[Math.floor(share * (frames.length - 1))];
  return {
    "median frame ms": at(0.5),
    "95 % ms": at(0.95),
    "tasks over 50 ms": tasks.length,
    "longest task ms": Math.max(0, ...tasks),
  };
}
