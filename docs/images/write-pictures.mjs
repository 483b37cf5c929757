/**
 * Writes the pictures of the main views for people to look at: docs/images/*.png, from the built page.
 *   npm run pictures            all of them
 *   npm run pictures -- side    those whose name holds this word
 * The plan, the day and the language are always the same; fonts are those of the computer at hand.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright";
import { preview } from "vite";
import { buildPage } from "../../.ci/build.mjs";
import { BROWSER_SWITCHES, ensureBrowser } from "../../tests/browser/find-browser.mjs";
import { packPng } from "./pack-png.mjs";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const LARGEST = 120_000;
const PLAN = readFileSync(here("../examples/alder-bank-hen-house.json"), "utf8");
const SCREENS = [
  { screen: "desktop", viewport: { width: 1280, height: 900 } },
  { screen: "phone", viewport: { width: 360, height: 740 } },
];

/** How each view is come to. On a desktop both drawings and the table are on one page. */
const VIEWS = {
  above: (page) => turnTo(page, "Above", "headfall-above"),
  side: (page) => turnTo(page, "Side", "headfall-profile"),
  table: (page) => turnTo(page, "Table", "headfall-plan-table"),
  how: async (page) => {
    await turnTo(page, "Side", "headfall-profile");
    await page.locator("headfall-line [data-how*=drinkerHead]").first().click();
    await page.locator("headfall-how [part=panel]").waitFor();
  },
  plans: async (page) => {
    await page.locator("h1 button").click();
    await page.getByRole("dialog").getByRole("list", { name: "Your plans" }).locator("li").first().waitFor();
  },
  sheet: async (page) => {
    await page.getByRole("button", { name: "Print to scale ..." }).click();
    const sheet = page.locator("headfall-sheet svg.page").first();
    await sheet.waitFor();
    if (page.viewportSize().width < 640) await sheet.evaluate((svg) => svg.scrollIntoView({ block: "end" }));
  },
};

const wanted = process.argv[2] ?? "";
const folder = mkdtempSync(join(tmpdir(), "headfall-pictures-"));
const stops = [() => rmSync(folder, { recursive: true, force: true })];
try {
  await buildPage(folder);
  const server = await preview({
    configFile: here("../../packages/ui/vite.config.ts"),
    logLevel: "error",
    build: { outDir: folder },
    preview: { host: "127.0.0.1", port: 0, open: false },
  });
  stops.push(() => server.close());
  const browser = await chromium.launch({ executablePath: await ensureBrowser(), args: BROWSER_SWITCHES });
  stops.push(() => browser.close());
  await writeAll(browser, server.resolvedUrls.local[0]);
} finally {
  for (const stop of stops.reverse()) await stop();
}

async function writeAll(browser, address) {
  for (const { screen, viewport } of SCREENS) {
    for (const light of ["light", "dark"]) {
      for (const [view, come] of Object.entries(VIEWS)) {
        const name = `${view}-${screen}-${light}.png`;
        if (!name.includes(wanted)) continue;
        const picture = await pictureOf(browser, address, { viewport, light, come });
        write(name, picture);
        if (name === "above-desktop-light.png") write("page.png", picture);
      }
    }
  }
}

async function pictureOf(browser, address, { viewport, light, come }) {
  const context = await browser.newContext({
    viewport,
    colorScheme: light,
    reducedMotion: "reduce",
    locale: "en-GB",
    timezoneId: "UTC",
  });
  try {
    const page = await context.newPage();
    await page.clock.setFixedTime(new Date("2026-05-01T09:00:00Z"));
    await page.goto(address);
    const file = { name: "plan.json", mimeType: "application/json", buffer: Buffer.from(PLAN) };
    await page.getByLabel("Open a plan").setInputFiles(file);
    await page.locator(".kept", { hasText: /^Saved$/ }).waitFor();
    await page.getByText("How sure? ...").waitFor({ state: "detached" });
    await come(page);
    await page.waitForTimeout(300); // the last frame of what was just turned to
    return packPng(await page.screenshot({ animations: "disabled", caret: "hide" }));
  } finally {
    await context.close();
  }
}

/** On a phone the view is chosen; on a desktop it is scrolled to. */
async function turnTo(page, label, element) {
  const button = page.getByRole("button", { name: label, exact: true });
  if (await button.isVisible()) return button.click();
  if (label === "Above") return;
  await page.locator(element).evaluate((view) => view.scrollIntoView({ block: "start" }));
  await page.mouse.wheel(0, -60);
}

function write(name, picture) {
  if (picture.length > LARGEST)
    throw new Error(
      `${name} has ${picture.length} bytes, more than the ${LARGEST} that a picture here may have.`,
    );
  writeFileSync(here(name), picture);
  process.stdout.write(`${name}  ${Math.round(picture.length / 1000)} kB\n`);
}
