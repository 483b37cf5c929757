import type { BrowserContextOptions, Locator, Page } from "playwright";
import { textOf } from "./harness.js";
import { LinePage } from "./line-page.js";
import { visitRested } from "./rested-visit.js";

const DESKTOP = { width: 1280, height: 900 };
const AROUND_THE_LINE = { except: ["headfall-line"] };

/** Opens the page with its list of plans in a fresh browser, all of it there. */
export async function visitPlans(
  visit: (plans: PlansPage) => Promise<void>,
  options: BrowserContextOptions & { path?: string } = {},
): Promise<void> {
  await visitRested(
    async ({ page }) => {
      const plans = new PlansPage(page);
      await plans.ready();
      await visit(plans);
    },
    { viewport: DESKTOP, ...options },
  );
}

/** The page with its list of plans, by what a keeper does and sees. */
export class PlansPage {
  readonly line: LinePage;

  constructor(readonly page: Page) {
    this.line = new LinePage(page);
  }

  /** Waits until the first verdict stands and all that follows it is there. */
  async ready(): Promise<void> {
    await this.page.locator("headfall-line").waitFor();
    await this.page
      .locator("headfall-line")
      .evaluate((line: HTMLElementTagNameMap["headfall-line"]) => line.whole);
  }

  async reload(): Promise<void> {
    await this.page.reload();
    await this.ready();
  }

  get dialog(): Locator {
    return this.page.getByRole("dialog");
  }

  button(name: string | RegExp): Locator {
    return this.page.getByRole("button", { name, exact: typeof name === "string" });
  }

  /** Name of the plan in hand, as the heading shows it. */
  async name(): Promise<string> {
    const words = (await this.page.locator("h1 button").textContent()) ?? "";
    return words.replace("Plans, now open: ", "");
  }

  /** How the first source stands in the plan in hand, as typed. */
  stand(): Promise<string | undefined> {
    return this.page
      .locator("headfall-line")
      .evaluate((line: HTMLElementTagNameMap["headfall-line"]) => line.plan?.sources[0]?.stand);
  }

  length(): Promise<string | undefined> {
    return this.page
      .locator("headfall-line")
      .evaluate((line: HTMLElementTagNameMap["headfall-line"]) => line.plan?.runs[0]?.length);
  }

  /** Types the stand of the first source anew, by the event that every view fires for it. */
  raiseStand(typed: string, at?: number): Promise<void> {
    return this.#edit(["sources", 0, "stand"], typed, at);
  }

  lengthen(typed: string, at?: number): Promise<void> {
    return this.#edit(["runs", 0, "length"], typed, at);
  }

  /** @param at  when to do so, by the clock [ms]; tabs given one time do so at once, however busy the machine is */
  async #edit(path: (string | number)[], value: string, at = 0): Promise<void> {
    await this.ready();
    await this.page.locator("headfall-line").evaluate(
      async (line, { at, ...change }) => {
        if (at > 0) await new Promise((resolve) => setTimeout(resolve, at - Date.now()));
        const event = new Event("edit-wanted", { bubbles: true, composed: true });
        line.dispatchEvent(Object.assign(event, { change: { kind: "set", what: "typed", ...change } }));
      },
      { path, value, at },
    );
  }

  /** What axe finds wrong around the line; the line has tests of its own. */
  ownFaults(): Promise<string[]> {
    return this.line.accessibilityFaults(AROUND_THE_LINE);
  }

  /** The same by light and by dark. */
  ownFaultsInBothLights(): Promise<string[]> {
    return this.line.faultsInBothLights(AROUND_THE_LINE);
  }

  /** Waits until the page says that all is saved. */
  saved(): Promise<void> {
    return this.page.locator(".kept", { hasText: /^Saved$/ }).waitFor();
  }

  async openList(): Promise<void> {
    await this.page.locator("h1 button").click();
    await this.dialog.waitFor();
  }

  async closeDialog(): Promise<void> {
    await this.dialog.getByRole("button", { name: "Close" }).click();
    await this.dialog.waitFor({ state: "detached" });
  }

  /** Names in the list, from the top, as they read. */
  async listed(): Promise<string[]> {
    const rows = this.dialog.getByRole("list", { name: "Your plans" }).locator(".plan, .shut strong");
    const texts = await rows.evaluateAll((nodes) =>
      nodes.map(({ firstChild, textContent }) => {
        const own = [...(firstChild?.parentNode?.childNodes ?? [])].filter(
          ({ nodeType }) => nodeType === Node.TEXT_NODE,
        );
        return own.map((node) => node.textContent ?? "").join("") || (textContent ?? "");
      }),
    );
    return texts.map((text) => text.trim());
  }

  /** The names in the list once they are so many. */
  async listedOnce(count: number): Promise<string[]> {
    await this.dialog
      .getByRole("list", { name: "Your plans" })
      .locator("> li")
      .nth(count - 1)
      .waitFor();
    return this.listed();
  }

  /** Presses a button of the dialog, such as "Rename My line". */
  async press(name: string): Promise<void> {
    await this.dialog.getByRole("button", { name, exact: true }).click();
  }

  /** Opens a plan of the list, or an example, by its name. */
  async choose(name: string): Promise<void> {
    await this.openList();
    await this.dialog.locator(".plan", { hasText: name }).first().click();
    await this.dialog.waitFor({ state: "detached" });
  }

  /** Hands files to "Open a plan". */
  async open(...files: { name: string; text: string }[]): Promise<void> {
    await this.page
      .getByLabel("Open a plan")
      .setInputFiles(
        files.map(({ name, text }) => ({ name, mimeType: "application/json", buffer: Buffer.from(text) })),
      );
  }

  /** Does what hands out a file, and gives back its name and text. */
  async fileFrom(act: () => Promise<void>): Promise<{ name: string; text: string }> {
    const [download] = await Promise.all([this.page.waitForEvent("download"), act()]);
    return { name: download.suggestedFilename(), text: await textOf(download) };
  }

  /** The notice that holds these words. */
  notice(words: string | RegExp): Locator {
    return this.page.locator(".notice", { hasText: words });
  }

  /** Puts a record among the kept plans, as another program would. */
  async putRecord(record: object): Promise<void> {
    await this.page.evaluate(async (value) => {
      await new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("headfall");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const transaction = opening.result.transaction("plans", "readwrite");
          transaction.objectStore("plans").put(value);
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      });
    }, record);
  }

  /** Every record as it stands in the browser's storage. */
  records(): Promise<Record<string, unknown>[]> {
    return this.page.evaluate(
      () =>
        new Promise<Record<string, unknown>[]>((resolve, reject) => {
          const opening = indexedDB.open("headfall");
          opening.onerror = () => reject(opening.error);
          opening.onsuccess = () => {
            const asking = opening.result.transaction("plans").objectStore("plans").getAll();
            asking.onsuccess = () => {
              opening.result.close();
              resolve(asking.result);
            };
          };
        }),
    );
  }
}
