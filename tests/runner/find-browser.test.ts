import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { ensureBrowser, findBrowser, NO_BROWSER } from "../browser/find-browser.mjs";

describe.skipIf(process.platform === "win32")("findBrowser", () => {
  let folder: string;

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "headfall-browsers-"));
    vi.stubEnv("CHROME_PATH", "");
  });

  afterEach(() => {
    vi.unstubAllEnvs();
    rmSync(folder, { recursive: true });
  });

  /** A program that answers anything asked of it with this exit code. */
  function program(name: string, exitCode: number): string {
    const path = join(folder, name);
    writeFileSync(path, `#!/bin/sh\nexit ${exitCode}\n`);
    chmodSync(path, 0o755);
    return path;
  }

  test("takes the browser that CHROME_PATH names", async () => {
    const chosen = program("mine", 0);
    vi.stubEnv("CHROME_PATH", chosen);
    expect(await findBrowser()).toBe(chosen);
  });

  test("stops with one line when CHROME_PATH names one that does not run, and looks no further", async () => {
    vi.stubEnv("CHROME_PATH", join(folder, "gone"));
    await expect(findBrowser()).rejects.toThrow(/^CHROME_PATH is ".*gone", which does not answer --version/);
    await expect(ensureBrowser()).rejects.toThrow(/^CHROME_PATH is ".*gone"/);
  });

  test("passes over a program on PATH that bears the name but does not answer", async () => {
    program("chromium", 1);
    const second = program("google-chrome", 0);
    vi.stubEnv("PATH", folder + delimiter + process.env["PATH"]);
    expect(await findBrowser()).toBe(second);
  });

  test("the advice when there is none is one line that says what to install", () => {
    expect(NO_BROWSER.split("\n")).toHaveLength(1);
    expect(NO_BROWSER).toMatch(/install Chromium .*CHROME_PATH/);
  });
});
