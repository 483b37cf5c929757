import { readFileSync } from "node:fs";
import type { BrowserContextOptions, Page } from "playwright";
import { LinePage } from "./line-page.js";
import { visitRested } from "./rested-visit.js";

/** An example, opened in one of the page's rooms. */
export interface RoomVisit {
  /** Of docs/examples, without its ending. */
  readonly example: string;
  /** Words of the line's room that tell that it is open. */
  readonly sign: string;
  /** As its button calls it. */
  readonly room: string;
  /** What the room shows once it has its answer. */
  readonly ready: string;
}

/** Visits the built page with an example open in one of its rooms. */
export const visitRoom = (
  { example, sign, room, ready }: RoomVisit,
  visit: (page: Page, line: LinePage) => Promise<void>,
  options: BrowserContextOptions = {},
) =>
  visitRested(async ({ page }) => {
    const line = new LinePage(page);
    await line.settled();
    await line.open(`${example}.json`, readFileSync(`docs/examples/${example}.json`, "utf8"));
    await page.getByText(sign).first().waitFor();
    await line.enter(room);
    await page.locator(`headfall-${room.toLowerCase()} ${ready}`).waitFor({ timeout: 30_000 });
    await visit(page, line);
  }, options);
