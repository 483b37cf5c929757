import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { visitPage } from "./harness.js";

test("the built page opens under its title without an error and asks nothing of any other host", async () => {
  await visitPage(async ({ page, faults }) => {
    expect(await page.title()).toContain("Headfall");
    expect(faults).toEqual([]);
  });
});

test("the built page opens without sideways scrolling on a screen 360 px wide", async () => {
  await visitPage(
    async ({ page }) => {
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    },
    { viewport: { width: 360, height: 740 } },
  );
});

test("the page refuses an inline script, by the policy it carries itself", async () => {
  const visit = visitPage(async ({ page, faults }) => {
    await page.evaluate(() => {
      const script = document.createElement("script");
      script.textContent = "document.title = 'taken over'";
      document.head.append(script);
    });
    expect(await page.title()).toContain("Headfall");
    expect(faults.join()).toMatch(/error logged: .*script-src 'self'/s);
  });
  await expect(visit).rejects.toThrow("The page had faults");
});

test("a visit fails when the page asks another host for anything", async () => {
  const visit = visitPage(async ({ page }) => {
    await page.route("http://127.0.0.2:9/**", (route) => route.abort());
    await page.evaluate(() => fetch("http://127.0.0.2:9/figures").catch(() => undefined));
  });
  await expect(visit).rejects.toThrow(/default-src|request to elsewhere/);
});

test("a visit fails when the page throws an error that nothing catches", async () => {
  const visit = visitPage(async ({ page }) => {
    // The page may be at its first verdict, and comes to it only after that.
    const thrown = page.waitForEvent("pageerror");
    await page.evaluate(() => setTimeout(() => Promise.reject(new Error("burst pipe")), 0));
    await thrown;
  });
  await expect(visit).rejects.toThrow("error thrown: burst pipe");
});

test("the served page carries its policy in the header too, and in the page for hosts that send none", async () => {
  const answer = await fetch(inject("pageAddress"));
  const policy = answer.headers.get("content-security-policy") ?? "";
  expect(policy).toContain("default-src 'self'");
  expect(policy).not.toContain("unsafe");
  expect(await answer.text()).toContain('http-equiv="Content-Security-Policy"');
});

test("the built page names its own files relative to itself, so that it works in a sub-folder", () => {
  const folder = inject("pageFolder");
  const html = readFileSync(join(folder, "index.html"), "utf8");
  const addresses = [...html.matchAll(/(?:src|href)="([^"]*)"/g)].map((match) => match[1]);
  expect(addresses.length).toBeGreaterThan(0);
  expect(addresses.filter((address) => !address?.startsWith("./"))).toEqual([]);
  expect(readdirSync(folder)).toContain("index.html");
});
