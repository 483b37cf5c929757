import { chromium } from "playwright";
import type { TestProject } from "vitest/node";
import { BROWSER_SWITCHES, findBrowser, SHORT_LIFE } from "../../browser/find-browser.mjs";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the browser of all tests of the page listens. */
    browserAddress: string;
  }
}

/** Starts one browser for all tests of the page: each visit has a context of its own in it, with nothing kept from others. */
export default async function sharedBrowser(project: TestProject): Promise<() => Promise<void>> {
  const executablePath = await findBrowser();
  const server = await chromium.launchServer({
    ...(executablePath && { executablePath }),
    args: [...BROWSER_SWITCHES, ...SHORT_LIFE],
  });
  project.provide("browserAddress", server.wsEndpoint());
  return () => server.close();
}
