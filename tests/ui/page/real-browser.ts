import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "playwright";
import { BROWSER_SWITCHES, findBrowser, NO_BROWSER } from "../../browser/find-browser.mjs";

/** A browser with a profile of its own that outlives it, so that it can be killed and started again. */
export class RealBrowser {
  readonly #profile = mkdtempSync(join(tmpdir(), "headfall-profile-"));
  #process: ChildProcess | undefined;
  #browser: Browser | undefined;

  /** Starts it and opens a page. */
  async start(address: string): Promise<Page> {
    const path = await findBrowser();
    if (path === undefined) throw new Error(NO_BROWSER);
    const switches = ["--headless=new", "--remote-debugging-port=0", `--user-data-dir=${this.#profile}`];
    // A group of its own, so that the kill reaches all of its processes at once.
    this.#process = spawn(path, [...BROWSER_SWITCHES, ...switches, "about:blank"], {
      detached: true,
      stdio: ["ignore", "ignore", "pipe"],
    });
    this.#browser = await chromium.connectOverCDP(await controlAddress(this.#process));
    const page = await this.#browser.contexts()[0]!.newPage();
    await page.goto(address);
    return page;
  }

  /** Ends it as a power cut would: nothing is told, nothing finished. */
  async kill(): Promise<void> {
    const child = this.#process;
    this.#process = undefined;
    if (child?.pid === undefined || child.exitCode !== null) return;
    const exited = once(child, "exit");
    process.kill(-child.pid, "SIGKILL");
    await exited;
    await this.#browser?.close().catch(() => undefined);
  }

  async forget(): Promise<void> {
    await this.kill();
    rmSync(this.#profile, { recursive: true, force: true, maxRetries: 10 });
  }
}

/** The browser says on stderr where it can be driven. */
function controlAddress(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = "";
    child.stderr!.on("data", (chunk) => {
      said += chunk;
      const address = /ws:\/\/\S+/.exec(said)?.[0];
      if (address !== undefined) resolve(address);
    });
    child.once("exit", () => reject(new Error(`The browser ended at once: ${said}`)));
  });
}
