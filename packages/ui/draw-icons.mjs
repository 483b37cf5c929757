/**
 * Draws the icons of the installed page from the SVG ones, with the browser that the tests use. Run it after an icon
 * was changed, and commit what it writes:
 *   node packages/ui/draw-icons.mjs
 */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright";
import { BROWSER_SWITCHES, ensureBrowser } from "../../tests/browser/find-browser.mjs";

const at = (name) => fileURLToPath(new URL(`public/${name}`, import.meta.url));

const PICTURES = [
  { from: "icon.svg", to: "icon-192.png", size: 192 },
  { from: "icon.svg", to: "icon-512.png", size: 512 },
  { from: "icon-maskable.svg", to: "icon-maskable-512.png", size: 512 },
];

const browser = await chromium.launch({ executablePath: await ensureBrowser(), args: BROWSER_SWITCHES });
try {
  for (const { from, to, size } of PICTURES) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    const picture = `data:image/svg+xml;base64,${readFileSync(at(from)).toString("base64")}`;
    await page.setContent(
      `<style>body { margin: 0 } img { display: block }</style><img src="${picture}" width="${size}" height="${size}">`,
    );
    writeFileSync(at(to), await page.screenshot({ omitBackground: true }));
    await page.close();
  }
} finally {
  await browser.close();
}
