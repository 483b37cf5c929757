import { findBrowser, NO_BROWSER } from "./find-browser.mjs";

/** Ends the run with one line that says what to do, before a test would fail on it in its own words. */
export default async function requireBrowser(): Promise<void> {
  if ((await findBrowser()) === undefined) throw new Error(NO_BROWSER);
}
