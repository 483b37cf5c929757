import { expect, test } from "vitest";
import { PHONE, visitSketch } from "./sketch-page.js";
import { YARD } from "./sketch-yard.js";

/** Names as nobody means them, each of another kind. */
const MARKUP = '<img src=x onerror="document.title=1"><b>';
const BACKWARDS = "חבית مزرعة";
/** A sign that is not seen, and turns round what stands beside it. */
const OVERRIDE = "\u202ebarrel";
const SMILING = "🐔🐓💧👨‍👩‍👧‍👦";
const LONG = "W".repeat(80);
const HOSTILE = [MARKUP, BACKWARDS, SMILING, LONG] as const;
const VIEWS = ["Table", "Side", "Above"] as const;

test("hostile names typed into every field stay text everywhere, and nothing overflows a phone", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    const { page, panel } = sketch;
    await sketch.turnTo("Table");
    const type = async (field: string, words: string) => {
      await page.getByRole("textbox", { name: field, exact: true }).fill(words);
      await page.keyboard.press("Enter");
      // The field is called by the new name once the name is taken.
      await page.getByRole("textbox", { name: field, exact: true }).waitFor({ state: "detached" });
    };
    for (const [round, hostile] of HOSTILE.entries()) {
      const { sources, points, runs } = await sketch.plan();
      const nameOf = (mark: string) => `${hostile.slice(0, 79)}${mark}`;
      const names = { source: sources[0]!.id!, point: points![0]!.id, run: runs[1]!.id! };
      await type(`Name of the source ${names.source}`, nameOf(""));
      await type(`Name of the point ${names.point}`, nameOf("p"));
      await type(`Name of the run ${names.run}`, nameOf("r"));
      await panel.getByRole("button", { name: "All parts" }).tap();
      await panel.getByLabel("Name of the plan").fill(hostile);
      await page.keyboard.press("Enter");
      if (!(await panel.getByLabel("Note").isVisible())) await panel.getByText("More about the plan").tap();
      await panel.getByLabel("Note").fill(`${hostile} ${hostile}`);
      await panel.getByLabel("Note").blur();
      await sketch.line.settled();
      const after = await sketch.saved();
      expect(after.name).toBe(hostile);
      expect(after.note).toBe(`${hostile} ${hostile}`);
      expect(after.runs[1]!.id).toBe(nameOf("r"));
      for (const view of VIEWS) {
        await sketch.turnTo(view);
        expect(await sketch.scrollsSideways(), `${view} ${round}`).toBe(false);
        expect(await page.locator("img, h1 b, headfall-line b").count()).toBe(0);
        // Each name in one view, the long one in all.
        if (hostile === LONG || view === VIEWS[round])
          expect(await sketch.line.accessibilityFaults(), `${view} ${round}`).toEqual([]);
      }
      expect(await page.locator("h1").textContent()).toContain(hostile);
      expect(await page.locator("headfall-above svg.drawing").textContent()).toContain(
        round === 3 ? "WWW" : hostile.slice(0, 4),
      );
      await sketch.turnTo("Table");
    }
    await panel.getByLabel("Name of the plan").fill(OVERRIDE);
    await page.keyboard.press("Enter");
    await expect
      .poll(() => panel.getByRole("alert").allTextContents())
      .toEqual([expect.stringContaining("U+202E")]);
    expect((await sketch.plan()).name).toBe(LONG);
    await sketch.plans.openList();
    expect(await sketch.scrollsSideways()).toBe(false);
    expect(await sketch.plans.dialog.textContent()).toContain(LONG);
  }, PHONE);
});
