import type { BrowserContextOptions } from "playwright";
import { beginVisit, browserOfTests, type VisitedPage, visitPage } from "./harness.js";

type Options = BrowserContextOptions & { readonly path?: string };

/** Tabs that visits have left, by how these began, the longest unused first; files hand them on to each other. */
const rested = new Map<string, VisitedPage>();
const MOST_RESTED = 6;

/**
 * Like visitPage, in a tab that an earlier visit of this kind has left, if there is one: nothing that it kept is there, but
 * the scripts that the browser fetched and compiled, which take a third of the time of a visit. For visits that change
 * nothing in the browser beside what a page keeps: no scripts put before the page's own, no time of their own.
 *
 * @param visit    what the test does; the page is loaded when it is called
 * @param options  of the visit, as for visitPage
 * @throws Error listing every fault seen when the visit itself went well
 */
export async function visitRested(
  visit: (visited: VisitedPage) => Promise<void>,
  options: Options = {},
): Promise<void> {
  if (options.serviceWorkers === "allow") return visitPage(visit, options);
  const { path = "", ...kind } = options;
  const key = JSON.stringify(kind);
  const visited = (await takeRested(key, path)) ?? (await beginVisit(await browserOfTests(), options));
  const { page, faults } = visited;
  try {
    await visit(visited);
    if (faults.length > 0) throw new Error(`The page had faults:\n  ${faults.join("\n  ")}`);
    await forgetVisit(visited, kind);
    await restTab(key, visited);
  } catch (error) {
    await page.context().close();
    throw error;
  }
}

/** Keeps a tab for the next visit of its kind, and closes the one that was unused for longest where they are too many. */
async function restTab(key: string, visited: VisitedPage): Promise<void> {
  rested.set(key, visited);
  const [longest] = rested.keys();
  if (rested.size <= MOST_RESTED || longest === undefined) return;
  const closed = rested.get(longest);
  rested.delete(longest);
  await closed?.page.context().close();
}

async function takeRested(key: string, path: string): Promise<VisitedPage | undefined> {
  const left = rested.get(key);
  rested.delete(key);
  if (left === undefined || left.page.isClosed()) return undefined;
  await left.page.goto(`./${path}`, { waitUntil: "load" });
  return left;
}

/** Leaves the page, and takes away all that it kept and how it was looked at. */
async function forgetVisit({ page, faults }: VisitedPage, kind: BrowserContextOptions): Promise<void> {
  const { origin } = new URL(page.url());
  for (const other of page.context().pages()) if (other !== page) await other.close();
  await page.evaluate(() => sessionStorage.clear());
  await page.goto("about:blank");
  await page.mouse.move(0, 0);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send("Storage.clearDataForOrigin", { origin, storageTypes: "all" });
  await devtools.detach();
  const { colorScheme = "light", reducedMotion = "no-preference", forcedColors = "none", viewport } = kind;
  await page.emulateMedia({ media: null, colorScheme, reducedMotion, forcedColors });
  if (viewport) await page.setViewportSize(viewport);
  faults.length = 0;
}
