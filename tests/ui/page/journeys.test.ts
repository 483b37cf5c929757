import { expect, test } from "vitest";
import type { LinePage } from "./line-page.js";
import { PHONE, type SketchPage, visitSketch } from "./sketch-page.js";

/** A line begun with nothing, on a phone: a barrel, and six hens at four nipples. */
async function begun({ line, page }: SketchPage): Promise<void> {
  const tap = (name: string) => page.getByRole("button", { name, exact: true }).tap();
  await tap("Draw a line of your own");
  await tap("Rain barrel, 50 US gal");
  await tap("Table");
  await page.getByRole("combobox", { name: "Add a run from" }).selectOption("barrel");
  await tap("Add a run");
  await line.type("Length of run 1", "4 m");
  await page.getByRole("combobox", { name: "Add drinkers to" }).selectOption("run 1");
  await tap("Add drinkers");
  await line.type("How many, drinkers run 1", "4");
  await line.enter("Birds");
  await tap("Add a pen of birds");
  await page.locator("headfall-birds .answer").waitFor();
}

test("from an empty plan on a phone the rain's answer comes into sight when a record is chosen", async () => {
  await visitSketch(async (sketch) => {
    const { page, line } = sketch;
    await begun(sketch);
    await line.enter("Rain");
    await page.getByLabel("Area, seen from above").fill("6 m2");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Seattle, 2012 to 2015" }).tap();
    const days = page.locator("headfall-rain .answer .large").first();
    await days.waitFor({ timeout: 30_000 });
    await expect.poll(() => sketch.isSeen(days)).toBe(true);
  }, PHONE);
});

test("chicks that come in some days are reckoned for their day in every room, and going away for the day one goes", async () => {
  await visitSketch(async (sketch) => {
    const { page, line } = sketch;
    await begun(sketch);
    const day = await inDays(line, 3);
    await page.getByRole("combobox", { name: "Birds" }).selectOption("pullet");
    await page.getByRole("combobox", { name: "How old" }).selectOption("hatched");
    await page.getByLabel("Hatched on").fill(day);
    await page.getByRole("button", { name: `Reckon for ${day}` }).tap();
    await expect.poll(async () => (await sketch.plan()).day).toBe(day);
    await line.enter("Time");
    await expect.poll(() => page.getByLabel("The day you go").inputValue()).toBe(day);
    await page.locator("headfall-time .answer", { hasText: "No heat is counted in" }).waitFor();
    await line.enter("Year");
    const needed = page.locator("headfall-year summary", { hasText: "Drinkers needed" });
    await needed.tap();
    await page
      .locator("headfall-year td", { hasText: /\d nipples/ })
      .first()
      .waitFor();
  }, PHONE);
});

/** A day to come, as the page reckons today. */
const inDays = ({ page }: LinePage, days: number): Promise<string> =>
  page.evaluate((later) => {
    const now = new Date();
    const then = now.getTime() - now.getTimezoneOffset() * 60_000 + later * 86_400_000;
    return new Date(then).toISOString().slice(0, 10);
  }, days);
