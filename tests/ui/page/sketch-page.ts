import type { Plan } from "@headfall/hydraulics";
import type { BrowserContextOptions, Locator, Page } from "playwright";
import { expect } from "vitest";
import { Fingers, middleOf, type Spot } from "./fingers.js";
import { LinePage } from "./line-page.js";
import { PlansPage } from "./plans-page.js";
import { visitRested } from "./rested-visit.js";

export const PHONE: BrowserContextOptions = {
  viewport: { width: 360, height: 740 },
  hasTouch: true,
  isMobile: true,
};
export const DESKTOP: BrowserContextOptions = { viewport: { width: 1280, height: 900 } };

/** The page with a plan to be sketched on it, by what a keeper does and sees. */
export class SketchPage {
  readonly line: LinePage;
  readonly plans: PlansPage;

  private constructor(
    readonly page: Page,
    readonly fingers: Fingers,
  ) {
    this.line = new LinePage(page);
    this.plans = new PlansPage(page);
  }

  static async of(page: Page): Promise<SketchPage> {
    return new SketchPage(page, await Fingers.on(page));
  }

  /** Opens a plan as a file and waits until it is worked out. */
  async open(plan: object, name = "yard.json"): Promise<void> {
    await this.line.open(name, JSON.stringify(plan));
    const { name: wanted } = plan as Plan;
    await expect.poll(() => this.plans.name()).toBe(wanted);
    await this.line.settled();
  }

  /** The plan as it would be saved now. */
  async saved(): Promise<Plan> {
    return JSON.parse((await this.line.save()).text);
  }

  /** The plan in hand, without a file. */
  plan(): Promise<Plan> {
    return this.page
      .locator("headfall-line")
      .evaluate((line: HTMLElementTagNameMap["headfall-line"]) => line.plan!);
  }

  button(name: string | RegExp): Locator {
    return this.page.getByRole("button", { name, exact: typeof name === "string" });
  }

  /** Turns to a view, where there is room for one only. */
  async turnTo(view: "Above" | "Side" | "Table"): Promise<void> {
    await this.button(view).tap();
  }

  /** A part on the drawing from above, by how its spoken name begins: up to the first comma. */
  part(name: string): Locator {
    return this.page.locator("headfall-above").getByRole("button", { name: new RegExp(`^(${name})(,|$)`) });
  }

  /** A handle on the drawing from the side, by its spoken name. */
  handle(name: string): Locator {
    return this.page.locator("headfall-profile-hands").getByRole("slider", { name, exact: true });
  }

  /** Where a handle is taken hold of. */
  gripOf(name: string): Promise<Spot> {
    return middleOf(this.handle(name).locator(".hit"));
  }

  /** A place on the drawing from above, from its upper left corner in shares of its width and height. */
  async placeAbove(across: number, down: number): Promise<Spot> {
    const { x, y, width, height } = (await this.page.locator("headfall-above svg.drawing").boundingBox())!;
    return { x: x + width * across, y: y + height * down };
  }

  /** The panel of the chosen part. */
  get panel(): Locator {
    return this.page.locator("headfall-part");
  }

  /** How a number was got. */
  get how(): Locator {
    return this.page.locator("headfall-how [part=panel]");
  }

  /** Does something, and proves that undo gives back the plan as it was before, and redo as it was after. */
  async there(act: () => Promise<void>, undo = () => this.undo(), redo = () => this.redo()): Promise<Plan> {
    const before = await this.plan();
    await act();
    await expect.poll(() => this.plan()).not.toEqual(before);
    const after = await this.saved();
    await undo();
    await expect.poll(() => this.plan()).toEqual(before);
    expect(await this.saved()).toEqual(before);
    await redo();
    await expect.poll(() => this.plan()).toEqual(after);
    return after;
  }

  async undo(): Promise<void> {
    await this.button(/^Undo/).click();
  }

  async redo(): Promise<void> {
    await this.button(/^Redo/).click();
  }

  /** Whether all of it stands in the window, under nothing else. */
  isSeen(locator: Locator): Promise<boolean> {
    return locator.evaluate((element) => {
      const { left, right, top, bottom } = element.getBoundingClientRect();
      const root = element.getRootNode() as ShadowRoot;
      const over = root.elementFromPoint((left + right) / 2, (top + bottom) / 2);
      const isInside = left >= 0 && right <= innerWidth && top >= 0 && bottom <= innerHeight;
      return isInside && over !== null && (element.contains(over) || over.contains(element));
    });
  }

  /** Whether anything reaches beyond the right edge of the window. */
  scrollsSideways(): Promise<boolean> {
    return this.page.evaluate(
      () => document.documentElement.scrollWidth > document.documentElement.clientWidth,
    );
  }
}

/** Opens the page whole, and lets `visit` sketch on it; errors and breaches of the policy are faults. */
export async function visitSketch(
  visit: (sketch: SketchPage) => Promise<void>,
  options: BrowserContextOptions = DESKTOP,
): Promise<void> {
  await visitRested(async ({ page, faults }) => {
    const sketch = await SketchPage.of(page);
    await sketch.plans.ready();
    await visit(sketch);
    expect(faults).toEqual([]);
  }, options);
}
