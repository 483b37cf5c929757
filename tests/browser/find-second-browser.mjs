/**
 * Finds a browser of a second engine for the tests in tests/ui/page/second-engine.test.ts: Firefox. It counts only
 * when it answers --version. It is never installed from here; .ci/run does that on a Debian machine of its own.
 */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const NAMES = process.platform === "win32" ? ["firefox.exe"] : ["firefox-esr", "firefox"];

const USUAL_PLACES = {
  darwin: ["/Applications/Firefox.app/Contents/MacOS/firefox"],
  win32: [process.env.PROGRAMFILES, process.env["PROGRAMFILES(X86)"]]
    .filter((folder) => folder !== undefined)
    .map((folder) => join(folder, "Mozilla Firefox", "firefox.exe")),
  linux: ["/usr/bin", "/usr/local/bin", "/opt/firefox", "/snap/bin"].flatMap((folder) =>
    NAMES.map((name) => join(folder, name)),
  ),
};

/** What to do when it is not found, in one line. */
export const NO_SECOND_BROWSER =
  'No second browser to test with: install Firefox (Debian: "apt-get install firefox-esr") or set FIREFOX_PATH to one.';

/**
 * Path of a Firefox on this computer, or undefined when there is none.
 *
 * @throws Error when FIREFOX_PATH names one that does not run, and when CI is "true" and there is none
 */
export function findSecondBrowser(environment = process.env) {
  const chosen = environment.FIREFOX_PATH;
  if (chosen) {
    if (answersVersion(chosen)) return chosen;
    throw new Error(`FIREFOX_PATH is "${chosen}", which does not answer --version: correct it or unset it.`);
  }
  const onPath = (environment.PATH ?? "")
    .split(delimiter)
    .flatMap((folder) => NAMES.map((name) => join(folder, name)));
  const places = [...onPath, ...(USUAL_PLACES[process.platform] ?? [])];
  const found = places.find((path) => existsSync(path) && answersVersion(path));
  if (found === undefined && environment.CI === "true") throw new Error(NO_SECOND_BROWSER);
  return found;
}

function answersVersion(path) {
  if (process.platform === "win32") return existsSync(path); // there, --version opens a window
  return spawnSync(path, ["--version"], { stdio: "ignore", timeout: 20_000 }).status === 0;
}
