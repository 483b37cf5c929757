import {
  type Browser,
  type BrowserContextOptions,
  chromium,
  type Download,
  type Page,
  type Request,
} from "playwright";
import { afterAll, inject } from "vitest";

/** How a visit begins, besides the size of the screen, the scheme of colours and so on. */
export interface VisitOptions extends BrowserContextOptions {
  /** Put after the page's address. */
  readonly path?: string;
  /** Run in the page before its own scripts, at each of its loads. */
  readonly before?: () => void;
}

/** A page under test, and what went wrong in it so far. */
export interface VisitedPage {
  readonly page: Page;
  /** One sentence for each fault: an error thrown or logged, a request to elsewhere, an own file missing. */
  readonly faults: string[];
}

let reached: Promise<Browser> | undefined;

/** The browser that all tests of the page share: files keep what they import, so it is reached once for all of them. */
export function browserOfTests(): Promise<Browser> {
  reached ??= chromium.connect(inject("browserAddress"));
  return reached;
}

/** The text of a file that the page hands out. */
export async function textOf(download: Download): Promise<string> {
  const pieces: Buffer[] = [];
  for await (const piece of await download.createReadStream()) pieces.push(piece as Buffer);
  return Buffer.concat(pieces).toString("utf8");
}

/**
 * Opens the built page as on a first visit, with nothing kept from other visits, lets `visit` use it,
 * and closes it.
 *
 * @param visit    what the test does; the page is loaded when it is called
 * @param options  how it begins
 * @throws Error listing every fault seen when the visit itself went well
 */
export async function visitPage(
  visit: (visited: VisitedPage) => Promise<void>,
  options: VisitOptions = {},
): Promise<void> {
  await visitIn(await browserOfTests(), visit, options);
}

/** The same in a browser that runs already, of whatever engine, with nothing kept from other visits. */
export async function visitIn(
  browser: Browser,
  visit: (visited: VisitedPage) => Promise<void>,
  options: VisitOptions = {},
): Promise<void> {
  const visited = await beginVisit(browser, options);
  try {
    await useOnce(visited, visit);
  } finally {
    await visited.page.context().close();
  }
}

/**
 * One visit that several tests use, for beginning one takes longer than most of what they do: each of them leaves the page
 * so that the others can go on. After a test that failed the next one gets a visit of its own.
 *
 * @param begin  opens the page; asked when the first test needs it
 * @returns what lets a test use the page, and fails as visitPage does
 */
export function sharedVisit(
  begin: () => Promise<VisitedPage>,
): (visit: (visited: VisitedPage) => Promise<void>) => Promise<void> {
  let open: VisitedPage | undefined;
  const leave = async () => {
    const left = open;
    open = undefined;
    await left?.page.context().close();
  };
  afterAll(leave);
  return async (visit) => {
    open ??= await begin();
    try {
      await useOnce(open, visit);
    } catch (error) {
      await leave();
      throw error;
    }
  };
}

async function useOnce(visited: VisitedPage, visit: (visited: VisitedPage) => Promise<void>): Promise<void> {
  await visit(visited);
  const { faults } = visited;
  if (faults.length > 0) throw new Error(`The page had faults:\n  ${faults.join("\n  ")}`);
}

/** Opens the built page in a context of its own, which whoever asks closes. */
export async function beginVisit(
  browser: Browser,
  { path = "", before, ...options }: VisitOptions = {},
): Promise<VisitedPage> {
  if (inject("pageProblem") !== "") throw new Error(inject("pageProblem"));
  const context = await browser.newContext({
    baseURL: inject("pageAddress"),
    // Keeping the whole page for later without a network takes longer than most visits: only where it is asked for.
    serviceWorkers: "block",
    ...options,
  });
  // On a machine that is busy with other things everything comes, but later.
  context.setDefaultTimeout(60_000);
  try {
    const page = await context.newPage();
    const faults = watchForFaults(page);
    if (before !== undefined) await page.addInitScript(before);
    await page.goto(`./${path}`, { waitUntil: "load" });
    return { page, faults };
  } catch (error) {
    await context.close();
    throw error;
  }
}

/** Waits until what was changed a moment ago is drawn: two frames from now. */
export async function drawn(page: Page): Promise<void> {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}

/** Notes from now on what goes wrong in a page that is served from `home`. */
export function watchForFaults(page: Page, home = inject("pageAddress")): string[] {
  const faults: string[] = [];
  page.on("pageerror", (error) => faults.push(`error thrown: ${error.message}`));
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(`error logged: ${message.text()}`);
  });
  page.context().on("request", (request) => {
    if (!isAtHome(request, home)) faults.push(`request to elsewhere: ${request.url()}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) faults.push(`answer ${response.status()}: ${response.url()}`);
  });
  return faults;
}

function isAtHome(request: Request, home: string): boolean {
  const url = request.url();
  return url.startsWith(home) || url.startsWith("data:") || url.startsWith("blob:");
}
