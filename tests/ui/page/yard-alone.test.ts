import { expect, test } from "vitest";
import { ROOMS } from "../../../packages/ui/src/app/room-list.js";
import { LinePage } from "./line-page.js";
import { visitRested } from "./rested-visit.js";

/** Two pens of founts, no line at all. */
const YARD = JSON.stringify({
  headfall: 1,
  name: "Founts alone",
  day: "2026-07-01",
  sources: [],
  runs: [],
  weather: { high: "28 degC", low: "17 degC" },
  pens: [
    {
      id: "brooder",
      slope: "2 %",
      birds: { kind: "pullet", count: 25, age: "10 days" },
      waterers: [{ kind: "fount-1gal", count: 2 }],
    },
    { id: "old hens", birds: { kind: "layer", count: 10 }, waterers: [{ kind: "fount-1gal" }] },
  ],
});

const ABOUT_A_LINE = ["day", "time", "rain", "cure", "trouble"];

test("a yard without a line is at home in every room, on a phone: each tells of it, or says where to go", async () => {
  await visitRested(
    async ({ page }) => {
      const line = new LinePage(page);
      await line.settled();
      await line.open("yard.json", YARD);
      await page.locator("headfall-line", { hasText: "This plan has no line" }).waitFor();
      for (const { label, tag, name } of ROOMS) {
        await line.enter(label);
        const room = page.locator(tag);
        await room.locator("h2").first().waitFor();
        if (ABOUT_A_LINE.includes(name)) await room.getByText("This plan has no line").waitFor();
        else await room.getByText("brooder").first().waitFor({ state: "attached" });
        await expect.poll(() => room.getByText(/Working it out/).count()).toBe(0);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
        const said = (await room.evaluate((view) => view.shadowRoot!.textContent)) ?? "";
        expect(said.match(/Infinity|NaN|undefined/)).toBeNull();
      }
      await line.enter("Birds");
      const now = page.locator("headfall-birds .answer", { hasText: "A day now, every bird" });
      // 25 pullets of 10 days at 71.4 mL, and 10 hens.
      expect(Number(/([\d.]+) L to size on/.exec((await now.textContent()) ?? "")?.[1])).toBeGreaterThan(3);
      await line.enter("Time");
      await page.getByRole("button", { name: "Go to the yard" }).click();
      await page.locator("headfall-yard .answer").waitFor();
    },
    { viewport: { width: 360, height: 740 } },
  );
});

test("from the first page a keeper of founts alone comes to how far off level one may stand, and what to shim, with a thumb", async () => {
  await visitRested(
    async ({ page }) => {
      await page.getByRole("button", { name: "Draw a line of your own" }).tap();
      await page.getByRole("button", { name: "No line: founts and pans alone" }).tap();
      const yard = page.locator("headfall-yard");
      await yard
        .getByText(/drains from 6\.3 % .* with its hole uphill/)
        .first()
        .waitFor({ state: "attached" });
      await yard.locator(".ground-and-weeks > summary").first().tap();
      const slope = yard.getByLabel(/^Slope of the ground/).first();
      await slope.fill("7 %");
      await slope.press("Enter");
      await yard
        .getByText(/First:.*on 7 % .* it runs out.*shim the lower edge by 8\.8 mm at least/)
        .first()
        .waitFor();
      expect(new URL(page.url()).hash).toBe("#yard");
    },
    { viewport: { width: 360, height: 740 }, hasTouch: true },
  );
});
