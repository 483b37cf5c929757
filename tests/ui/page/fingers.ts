import type { CDPSession, Locator, Page } from "playwright";

/** A place in the window [px]. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Steps a finger takes from one place to the next. */
const STEPS = 12;

/** Fingers on the glass: touches as the browser gets them from a screen, with several at once. */
export class Fingers {
  readonly #session: CDPSession;
  #at: readonly Spot[] = [];

  private constructor(session: CDPSession) {
    this.#session = session;
  }

  static async on(page: Page): Promise<Fingers> {
    return new Fingers(await page.context().newCDPSession(page));
  }

  async down(...spots: Spot[]): Promise<void> {
    this.#at = spots;
    await this.#send("touchStart", spots);
  }

  /** Moves all fingers that are down, in small steps. */
  async move(...spots: Spot[]): Promise<void> {
    const from = this.#at;
    for (let step = 1; step <= STEPS; step++) {
      const between = spots.map(({ x, y }, i) => ({
        x: from[i]!.x + ((x - from[i]!.x) * step) / STEPS,
        y: from[i]!.y + ((y - from[i]!.y) * step) / STEPS,
      }));
      await this.#send("touchMove", between);
    }
    this.#at = spots;
  }

  async up(): Promise<void> {
    await this.#send("touchEnd", []);
  }

  async drag(from: Spot, ...through: Spot[]): Promise<void> {
    await this.down(from);
    for (const spot of through) await this.move(spot);
    await this.up();
  }

  /** Holds still until that means more than a press, then draws. */
  async holdAndDrag(from: Spot, to: Spot): Promise<void> {
    await this.down(from);
    await new Promise((held) => setTimeout(held, 700));
    await this.move(to);
    await this.up();
  }

  async tap(spot: Spot): Promise<void> {
    await this.down(spot);
    await this.up();
  }

  async #send(type: "touchStart" | "touchMove" | "touchEnd", spots: readonly Spot[]): Promise<void> {
    const touchPoints = spots.map(({ x, y }, id) => ({ x, y, id }));
    await this.#session.send("Input.dispatchTouchEvent", { type, touchPoints });
  }
}

/** The middle of what is seen of an element. */
export async function middleOf(locator: Locator): Promise<Spot> {
  const { x, y, width, height } = (await locator.boundingBox())!;
  return { x: x + width / 2, y: y + height / 2 };
}
