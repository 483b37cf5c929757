import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { ElementContext } from "axe-core";
import type { Page } from "playwright";
import { textOf } from "./harness.js";

/** The page with a line on it, by what a keeper does and sees. */
export class LinePage {
  constructor(readonly page: Page) {}

  /** Waits until the line has been worked out, close calls included; it may be hidden behind another room. */
  async settled(): Promise<void> {
    await this.page.waitForFunction(
      () => document.querySelector<HTMLElementTagNameMap["headfall-line"]>("headfall-line")?.isSettled,
    );
    await this.page.locator("headfall-line .counts").waitFor({ state: "attached" });
  }

  /** "7 drip 17 good" as it stands at the head of the drawing. */
  async counts(): Promise<string> {
    return ((await this.page.locator("headfall-line .counts").textContent()) ?? "")
      .replace(/\s+/g, " ")
      .trim();
  }

  /** The button of a room in the bar; on a phone it can be pressed once the list is open. */
  room(name: string) {
    return this.page
      .getByRole("navigation", { name: "Rooms of this plan" })
      .locator("#room-list")
      .getByRole("button", { name: new RegExp(`^${name}\\b`), includeHidden: true });
  }

  /** Goes to a room as a keeper would: on a phone by the list. */
  async enter(name: string): Promise<void> {
    const which = this.page.locator(".rooms .which");
    if (await which.isVisible()) await which.click();
    await this.room(name).click();
  }

  slider(name: string) {
    return this.page.getByRole("slider", { name: `${name}, slider` });
  }

  field(name: string) {
    return this.page.getByRole("textbox", { name, exact: true });
  }

  /** Drags a slider's thumb to a share of its length, in small steps, as a finger would, and lets go. */
  async drag(name: string, share: number): Promise<void> {
    await this.startDrag(name, share);
    await this.page.mouse.up();
  }

  /** The same, with the finger still down. */
  async startDrag(name: string, share: number): Promise<void> {
    const slider = this.slider(name);
    await slider.scrollIntoViewIfNeeded();
    const { min, max, value } = await slider.evaluate((input: HTMLInputElement) => ({
      min: Number(input.min),
      max: Number(input.max),
      value: Number(input.value),
    }));
    const box = (await slider.boundingBox())!;
    const at = (part: number) => box.x + 8 + (box.width - 16) * part;
    await this.page.mouse.move(at((value - min) / (max - min)), box.y + box.height / 2);
    await this.page.mouse.down();
    await this.page.mouse.move(at(share), box.y + box.height / 2, { steps: 20 });
  }

  async type(name: string, words: string): Promise<void> {
    await this.field(name).fill(words);
    await this.field(name).press("Enter");
  }

  async open(fileName: string, text: string): Promise<void> {
    await this.page
      .getByLabel("Open a plan")
      .setInputFiles({ name: fileName, mimeType: "application/json", buffer: Buffer.from(text) });
  }

  async drop(fileName: string, text: string): Promise<void> {
    await this.page.evaluate(
      ([name, content]) => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([content!], name!, { type: "application/json" }));
        document.body.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
      },
      [fileName, text],
    );
  }

  /** Saves the plan and gives back the file's name and text. */
  async save(): Promise<{ name: string; text: string }> {
    const tools = this.page.locator("#tools");
    // On a phone they are folded away.
    if (!(await tools.isVisible())) await this.page.locator("header button.more").click();
    const [download] = await Promise.all([
      this.page.waitForEvent("download"),
      tools.getByRole("button", { name: "Save the plan" }).click(),
    ]);
    return { name: download.suggestedFilename(), text: await textOf(download) };
  }

  /** Colours of all four verdicts as this page shows them, against the sheet and against the paper. */
  verdictColours(): Promise<{ colour: string; paper: string }[]> {
    return this.page.locator("headfall-line").evaluate((line) => {
      const box = document.createElement("div");
      line.shadowRoot!.append(box);
      const seen = (property: "color" | "backgroundColor", value: string) => {
        box.style[property] = value;
        return getComputedStyle(box)[property];
      };
      const pairs = ["good", "drips", "starves", "dry"].flatMap((verdict) =>
        ["paper", "sheet"].map((back) => ({
          colour: seen("color", `var(--_${verdict})`),
          paper: seen("backgroundColor", `var(--_${back})`),
        })),
      );
      box.remove();
      return pairs;
    });
  }

  /** What axe finds wrong with the page, or with what is wished of it, one line each. */
  async accessibilityFaults({ rules = WCAG, except = [], within }: AxeWish = {}): Promise<string[]> {
    // Put into a document once: it is as large as half of the page.
    if (!(await this.page.evaluate(() => "axe" in window))) await this.page.evaluate(axeSource);
    const context: ElementContext = {
      include: within === undefined ? [":root"] : [{ fromShadowDom: [...within] }],
      exclude: [...except],
    };
    return this.page.evaluate(
      async ({ runOnly, context }) => {
        // What is still appearing has not got its colours yet.
        await Promise.allSettled(document.getAnimations().map(({ finished }) => finished));
        const { axe } = window as unknown as { axe: typeof import("axe-core") };
        const { violations } = await axe.run(context as ElementContext, {
          runOnly,
          resultTypes: ["violations"],
        });
        return violations.flatMap(({ id, nodes }) =>
          nodes.map(({ target, failureSummary }) => `${id}: ${target.join(" ")} ${failureSummary}`),
        );
      },
      { runOnly: [...rules], context },
    );
  }

  /** The same by light, and again by dark, where only colours are others. */
  async faultsInBothLights({ except = [] }: AxeWish = {}): Promise<string[]> {
    const found: string[] = [];
    for (const [colorScheme, rules] of [
      ["dark", ["color-contrast"]],
      ["light", WCAG],
    ] as const) {
      await this.page.emulateMedia({ colorScheme });
      for (const fault of await this.accessibilityFaults({ rules, except }))
        found.push(`${colorScheme}: ${fault}`);
    }
    return found;
  }
}

/** What axe is asked, where not all of its rules of the whole page. */
export interface AxeWish {
  /** Its rules, or groups of them. */
  readonly rules?: readonly string[];
  /** Names of elements it passes over. */
  readonly except?: readonly string[];
  /** The only element it looks at, after the one whose shadow it stands in. */
  readonly within?: readonly [string, string];
}

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
