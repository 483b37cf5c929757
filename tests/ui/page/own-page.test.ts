import { copyFileSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildStandalone } from "../../../.ci/build.mjs";
import { browserOfTests } from "./harness.js";

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

const folder = mkdtempSync(join(top, "node_modules", ".cache", "own-page-"));
let server: Awaited<ReturnType<typeof serveFolder>>;

beforeAll(async () => {
  await buildStandalone(folder);
  server = await serveFolder(folder);
});

afterAll(() => {
  server?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Opens an example page beside the one file, and lets `visit` use it. */
async function visitExample(name: string, visit: (page: Page) => Promise<void>): Promise<void> {
  copyFileSync(join(top, "docs", "examples", name), join(folder, name));
  const context = await (await browserOfTests()).newContext();
  try {
    const page = await context.newPage();
    const faults: string[] = [];
    page.on("pageerror", (error) => faults.push(error.message));
    page.on("request", (request) => {
      const url = request.url();
      if (!url.startsWith(server.address) && !/^(data|blob):/.test(url)) faults.push(`request to ${url}`);
    });
    await page.goto(`${server.address}${name}`);
    await visit(page);
    expect(faults).toEqual([]);
  } finally {
    await context.close();
  }
}

test("a page of one's own shows a line from the one file headfall.js, and says what README prints", async () => {
  await visitExample("own-page.html", async (page) => {
    const answer = await page.locator("#answer").textContent();
    expect(answer).toMatch(
      /^run 1 10 \(40 ft along\) does well with the water lowest and the birds busiest: /,
    );
    expect(readFileSync(join(top, "README.md"), "utf8")).toContain(answer);
    await page.locator("headfall-line").getByText("10 good").first().waitFor();
  });
});

test("a page of one's own can be told of every step, undo it, and give the element colours of its own", async () => {
  await visitExample("sketch-page.html", async (page) => {
    await expect.poll(() => page.locator("#verdict").textContent()).toBe("good");
    const line = page.locator("headfall-line");
    await line.evaluate(async (element: HTMLElement & { whole: Promise<void> }) => element.whole);
    await line.evaluate((element) => {
      const edit = {
        change: { kind: "set", path: ["sources", 0, "stand"], value: "4 ft", what: "stand 4 ft" },
        gesture: undefined,
      };
      element.dispatchEvent(Object.assign(new Event("edit-wanted"), edit));
    });
    await expect.poll(() => page.locator("#step").textContent()).toBe("edit: stand 4 ft");
    await expect.poll(() => page.locator("#verdict").textContent()).not.toBe("good");
    await line.getByRole("button", { name: "Undo: stand 4 ft" }).click();
    await expect.poll(() => page.locator("#step").textContent()).toBe("undo: none");
    await expect.poll(() => page.locator("#verdict").textContent()).toBe("good");
    const mark = line.locator(".counts .good").first();
    expect(await mark.evaluate((element) => getComputedStyle(element).color)).toBe("rgb(0, 66, 79)");
  });
});

test("a page of one's own can use the views by themselves, with a store between them", async () => {
  await visitExample("views-page.html", async (page) => {
    const said = page.locator("#said");
    await expect.poll(() => said.textContent()).toBe("Drag anything.");
    const stand = page.getByRole("slider", { name: "stand of tote" });
    await stand.focus();
    // Held down, so that the handle stays in the hand until it is given up.
    await page.keyboard.down("PageUp");
    await expect.poll(() => stand.getAttribute("aria-valuetext")).toBe("50 cm");
    expect(await said.textContent()).toBe("stand of tote");
    await page.keyboard.press("Escape");
    await page.keyboard.up("PageUp");
    await expect.poll(() => stand.getAttribute("aria-valuetext")).toBe("40 cm");
    await page.getByRole("button", { name: /^source tote/ }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Source: tote" }).waitFor();
    await page.keyboard.press("r");
    await page.getByRole("heading", { name: "Run: run 2" }).waitFor();
  });
});

test("a page of one's own can show the birds and how long their water lasts, without a line around them", async () => {
  await visitExample("rooms-page.html", async (page) => {
    const birds = page.locator("headfall-birds");
    await birds.locator(".answer").waitFor();
    await birds.locator(".drunk").waitFor({ state: "attached", timeout: 20_000 });
    await page
      .locator("headfall-time")
      .getByText("Until the first bird goes without")
      .waitFor({ timeout: 20_000 });
    const count = birds.getByRole("textbox", { name: "How many" });
    await count.fill("60");
    await count.press("Enter");
    await expect.poll(() => page.locator("#said").textContent()).toContain("number");
    await birds.locator(".answer [data-how]").first().click();
    await birds.getByRole("dialog").getByText("A day's water of all birds, to size on").waitFor();
  });
});

test("the one file for pages of one's own has nothing to do with storage or with working offline", () => {
  const text = readFileSync(join(folder, "headfall.js"), "utf8");
  expect(text).toContain("headfall-line");
  expect(text).not.toMatch(/serviceWorker|indexedDB|localStorage|BroadcastChannel/);
});
