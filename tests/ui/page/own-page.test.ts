import { copyFileSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright";
import { expect, test } from "vitest";
import { buildStandalone } from "../../../.ci/build.mjs";
import { BROWSER_SWITCHES, findBrowser } from "../../browser/find-browser.mjs";

const top = fileURLToPath(new URL("../../../", import.meta.url));
const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
};

/** Serves one folder's files, as any plain web server would. */
async function serveFolder(folder: string): Promise<{ address: string; close: () => void }> {
  const server = createServer((request, response) => {
    const name = (request.url ?? "/").replace(/^\/+/, "").replace(/[^\w./-]/g, "");
    try {
      const body = readFileSync(join(folder, name));
      response.writeHead(200, { "content-type": TYPES[extname(name)] ?? "text/plain" }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/`, close: () => server.close() };
}

test("a page of one's own shows a line from the one file headfall.js, and says what README prints", async () => {
  const cache = join(top, "node_modules", ".cache");
  const folder = mkdtempSync(join(cache, "own-page-"));
  const server = await serveFolder(folder);
  const executablePath = await findBrowser();
  const browser = await chromium.launch({
    ...(executablePath && { executablePath }),
    args: BROWSER_SWITCHES,
  });
  try {
    await buildStandalone(folder);
    copyFileSync(join(top, "docs", "examples", "own-page.html"), join(folder, "own-page.html"));
    const page = await browser.newPage();
    const faults: string[] = [];
    page.on("pageerror", (error) => faults.push(error.message));
    await page.goto(`${server.address}own-page.html`);
    const answer = await page.locator("#answer").textContent();
    expect(answer).toMatch(/^run 1 10 \(40 ft along\) does well: /);
    expect(readFileSync(join(top, "README.md"), "utf8")).toContain(answer);
    await page.locator("headfall-line").getByText("10 good").first().waitFor();
    expect(faults).toEqual([]);
  } finally {
    await browser.close();
    server.close();
    rmSync(folder, { recursive: true, force: true });
  }
});
