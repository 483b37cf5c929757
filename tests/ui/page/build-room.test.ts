import { readFileSync } from "node:fs";
import type { Page } from "playwright";
import { expect, test } from "vitest";
import { drawn } from "./harness.js";
import { LinePage } from "./line-page.js";
import { visitRested } from "./rested-visit.js";

const PLAN = readFileSync("docs/examples/alder-bank-to-build.json", "utf8");
const POINTS_PER_MM = 72 / 25.4;

/** The page with the plan to build on it, in the room where it is built. */
async function building(page: Page): Promise<LinePage> {
  const line = new LinePage(page);
  await line.settled();
  await line.open("to-build.json", PLAN);
  await page.getByText("long line").first().waitFor();
  await line.enter("Build");
  await page.locator("headfall-build #coop").waitFor({ timeout: 30_000 });
  return line;
}

/** Width and height of each page of a PDF [mm]. */
const sizesOf = (pdf: Buffer): number[][] =>
  [...pdf.toString("latin1").matchAll(/\/MediaBox\s*\[\s*([\d.]+) ([\d.]+) ([\d.]+) ([\d.]+)/g)].map(
    ([, left, bottom, right, top]) => [
      (Number(right) - Number(left)) / POINTS_PER_MM,
      (Number(top) - Number(bottom)) / POINTS_PER_MM,
    ],
  );

test("on a phone the room Build has all of it under a thumb; what is typed changes the cuts; both sheets fit A4 and Letter", async () => {
  await visitRested(
    async ({ page }) => {
      const line = await building(page);
      const room = page.locator("headfall-build");
      expect(await room.locator(".hurts li").first().textContent()).toMatch(/^Full, drum weighs 217 kg/);
      await room.evaluate((view) => {
        for (const details of view.shadowRoot!.querySelectorAll("details")) details.open = true;
      });
      await drawn(page);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
      const small = await room
        .locator("button, select, summary, input:not([type=checkbox])")
        .evaluateAll((all) =>
          all.filter((each) => each.getBoundingClientRect().height < 44).map((each) => each.outerHTML),
        );
      expect(small).toEqual([]);
      expect(await line.accessibilityFaults()).toEqual([]);

      // One more length on the shelf of the plan: the sticks are other ones.
      await room.getByLabel("Lengths sold").first().fill("4 m");
      await room.getByLabel("Lengths sold").first().press("Enter");
      await room.locator(".bars li", { hasText: "New stick, 4.000 m" }).first().waitFor({ timeout: 15_000 });

      await page.evaluate(() => {
        window.print = () => undefined;
      });
      for (const [paper, width, height] of [
        ["a4", 210, 297],
        ["letter", 215.9, 279.4],
      ] as const) {
        await room.getByLabel("Paper").selectOption(paper);
        await page.getByRole("button", { name: "Print both sheets" }).click();
        const pages = sizesOf(await page.pdf({ preferCSSPageSize: true }));
        expect(pages.length).toBeLessThanOrEqual(5);
        for (const [wide, high] of pages) {
          expect(wide).toBeCloseTo(width, 0);
          expect(high).toBeCloseTo(height, 0);
        }
        await page.evaluate(() => dispatchEvent(new Event("afterprint")));
      }
    },
    { viewport: { width: 360, height: 740 }, hasTouch: true },
  );
});
