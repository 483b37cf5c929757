/**
 * Finds the browser that the tests drive, and on Debian as root installs it when there is none.
 * A browser counts only when it answers --version: some systems put a notice in its place.
 */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

/** The first found is taken. The shell has no windows of its own to draw: tests take two thirds of the time in it. */
const NAMES = [
  "chromium-headless-shell",
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "microsoft-edge",
];

const USUAL_PLACES = {
  darwin: [
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ],
  win32: [process.env.PROGRAMFILES, process.env["PROGRAMFILES(X86)"], process.env.LOCALAPPDATA]
    .filter((folder) => folder !== undefined)
    .flatMap((folder) => [
      join(folder, "Chromium", "Application", "chrome.exe"),
      join(folder, "Google", "Chrome", "Application", "chrome.exe"),
      join(folder, "Microsoft", "Edge", "Application", "msedge.exe"),
    ]),
  linux: ["/usr/bin", "/usr/local/bin", "/snap/bin"].flatMap((folder) =>
    NAMES.map((name) => join(folder, name)),
  ),
};

/** What to do when no browser is found, in one line. */
export const NO_BROWSER =
  'No browser to test with: install Chromium (Debian: "apt-get install chromium") or set CHROME_PATH to one.';

/** Switches for a browser that only tests: no window, no calls home, and root needs its sandbox off. */
export const BROWSER_SWITCHES = [
  ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
  "--disable-gpu",
  "--disable-dev-shm-usage",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/**
 * For pages that live for seconds: what a browser does beside to make long-lived ones quick takes more of the processor than
 * it saves. Code is optimized once it has run a hundred times as often as usual. Not where times are measured.
 */
export const SHORT_LIFE = [
  "--js-flags=--invocation-count-for-maglev=40000 --invocation-count-for-maglev-osr=10000 --invocation-count-for-turbofan=300000 --invocation-count-for-osr=50000",
];

/** Path of a browser on this computer, or undefined. Throws when CHROME_PATH names one that does not run. */
export async function findBrowser() {
  const chosen = process.env.CHROME_PATH;
  if (chosen) {
    if (answersVersion(chosen)) return chosen;
    throw new Error(`CHROME_PATH is "${chosen}", which does not answer --version: correct it or unset it.`);
  }
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .flatMap((folder) => NAMES.map((name) => join(folder, name)));
  const places = [...onPath, ...(USUAL_PLACES[process.platform] ?? [])];
  return places.find((path) => existsSync(path) && answersVersion(path)) ?? (await browserOfDriver());
}

/** Like findBrowser, but installs one where it may, and throws NO_BROWSER when there is none in the end. */
export async function ensureBrowser() {
  const found = await findBrowser();
  if (found !== undefined) return found;
  if (mayInstall()) {
    process.stderr.write("Installing Chromium for the tests (once) ...\n");
    aptGet("update", "-qq");
    aptGet("install", "-y", "-qq", "--no-install-recommends", "chromium-headless-shell");
    if ((await findBrowser()) === undefined)
      aptGet("install", "-y", "-qq", "--no-install-recommends", "chromium");
  }
  const installed = await findBrowser();
  if (installed === undefined) throw new Error(NO_BROWSER);
  return installed;
}

/** The browser that the driver brought itself, on computers where somebody fetched it. */
async function browserOfDriver() {
  const { chromium } = await import("playwright");
  const path = chromium.executablePath();
  return path && existsSync(path) && answersVersion(path) ? path : undefined;
}

function answersVersion(path) {
  if (process.platform === "win32") return existsSync(path); // there, --version opens a window
  return spawnSync(path, ["--version"], { stdio: "ignore", timeout: 20_000 }).status === 0;
}

function mayInstall() {
  if (process.env.SKIP_BROWSER_INSTALL === "1") return false;
  return process.platform === "linux" && process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");
}

function aptGet(...words) {
  spawnSync("apt-get", ["-o", "Acquire::Retries=3", ...words], {
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    stdio: ["ignore", 2, 2],
  });
}
