import type { Page } from "playwright";

/** How many marks of verdicts are drawn from the side: all of one verdict are one path, each begins with a move. */
export const countMarks = (page: Page): Promise<number> =>
  page
    .locator("headfall-profile figure > svg .mark")
    .evaluateAll((paths) => paths.flatMap((path) => path.getAttribute("d")!.match(/M/g) ?? []).length);
