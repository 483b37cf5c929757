import { expect, test } from "vitest";
import { LinePage } from "./line-page.js";
import { visitRested } from "./rested-visit.js";

/** A pipe that passes over a root that stands hardly lower than the water at its lowest. */
const hedge = JSON.stringify({
  headfall: 1,
  name: "Alder Bank, the lane under the hedge",
  sources: [
    {
      id: "drum",
      vessel: "drum-55gal-plastic",
      stand: "20 cm",
      level: { full: "70 cm", lowest: "10 cm" },
    },
  ],
  runs: [
    {
      id: "lane",
      length: "14 m",
      fall: "25 cm",
      pipe: "pe-metric-sdr11-20",
      survey: [
        { along: "3 m", fall: "5 cm" },
        { along: "6 m", fall: "-28.5 cm", bleed: true },
      ],
      drinkers: { kind: "cup-trigger", count: 6, first: "9 m", every: "1 m", busiest: 3 },
    },
  ],
});

test("a close call tells what to measure within what; typed as its doubt, every verdict is sure", async () => {
  await visitRested(
    async ({ page }) => {
      const line = new LinePage(page);
      await line.settled();
      await line.open("hedge.json", hedge);
      const again = page.locator("headfall-measure");
      await again.getByRole("heading", { name: "What to measure again" }).waitFor();
      await again.getByText("Measure the water level of drum within 10 mm (now 20 mm)").first().waitFor();
      const told = ((await again.locator("section").textContent()) ?? "").replace(/\s+/g, " ");
      expect(told).toMatch(/lane \d is a close call: 8\d % of the plans agree \(else mostly dry\)\./);
      // Nothing scrolls sideways.
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
      await again.getByRole("button", { name: /^8\d %$/ }).click();
      await page.getByText(/How sure the verdict on .* is/).waitFor();
      await page.keyboard.press("Escape");
      await page.locator("headfall-part summary", { hasText: "More" }).click();
      await line.type("Its water levels may be off by", "8 mm");
      await expect.poll(() => again.locator("section").count(), { timeout: 20_000 }).toBe(0);
      await line.settled();
      await expect
        .poll(() => page.locator("headfall-line .sureness").textContent(), { timeout: 20_000 })
        .toBe("Sure.");
    },
    { viewport: { width: 360, height: 740 } },
  );
});
