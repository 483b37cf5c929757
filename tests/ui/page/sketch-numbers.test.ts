import type { Locator } from "playwright";
import { expect, test } from "vitest";
import { middleOf } from "./fingers.js";
import { DESKTOP, PHONE, type SketchPage, visitSketch } from "./sketch-page.js";
import { YARD } from "./sketch-yard.js";

/** The panel tells formula with figures, source, range and second opinion; Escape closes it and gives back the focus. */
async function expectTold(sketch: SketchPage, opener: Locator, told: readonly RegExp[]): Promise<void> {
  await sketch.how.waitFor();
  const words = (await sketch.how.textContent()) ?? "";
  for (const each of told) expect(words).toMatch(each);
  await sketch.page.keyboard.press("Escape");
  await sketch.how.waitFor({ state: "detached" });
  await expect.poll(() => opener.evaluate((button) => button.matches(":focus"))).toBe(true);
}

const SOURCE = /Source: .*\[[a-z0-9-]+\]/;
const FORMULA = /[a-zA-Zα-ω] = /;
const FIGURES = /= [-(]?\d[\d.,]* /;

/** What must be told of a loss. */
const LOSS = [FORMULA, FIGURES, SOURCE, /Second opinion/, /made for|valid|Re /i];

test("a drinker's mark touched tells how its verdict was got, by formula and figures", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    await sketch.turnTo("Above");
    const mark = await middleOf(sketch.part("row drinkers"));
    await sketch.fingers.tap(mark);
    await expectTold(sketch, sketch.part("row drinkers"), [FORMULA, FIGURES, /row [34]/]);
  }, PHONE);
});

test("a number of the table of runs, pressed by Enter, tells formula, figures, range, second opinion and source", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    const number = sketch.page
      .locator("headfall-line [aria-describedby~='runs-column-7'][data-how*=runLoss]")
      .first();
    await number.focus();
    await sketch.page.keyboard.press("Enter");
    await expectTold(sketch, number, LOSS);
  }, DESKTOP);
});

test("every figure of the chosen source, run and joint tells its formula with this plan's figures", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    const figures = sketch.page.getByRole("group", { name: "Figures of the chosen part" });
    for (const part of ["source barrel", "run row", "joint bend"]) {
      await sketch.part(part).focus();
      await sketch.page.keyboard.press("Enter");
      const buttons = figures.getByRole("button");
      await expect.poll(() => buttons.count()).toBeGreaterThan(1);
      for (const button of await buttons.all()) {
        await button.click();
        await expectTold(sketch, button, [/\d/]);
      }
    }
    await sketch.part("run row").focus();
    await sketch.page.keyboard.press("Enter");
    const loss = figures.locator("[data-how*=runLoss]").first();
    await loss.click();
    await expectTold(sketch, loss, LOSS);
  }, DESKTOP);
});

test("a survey pasted as pairs and a height typed in feet are kept as typed while units change and change back", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    const { page, panel } = sketch;
    const choose = async (part: string) => {
      await sketch.part(part).focus();
      await page.keyboard.press("Enter");
    };
    await choose("run row");
    await panel.getByText("Survey", { exact: true }).click();
    await panel.getByLabel("Or many at once").fill("1 m\t4 cm\n2.5 m\t6 in\n5 m\t15 cm");
    await panel.getByRole("button", { name: "Take these readings" }).click();
    await choose("source barrel");
    await sketch.line.type("Stand", "2 ft 6 in");
    await sketch.line.settled();
    const typed = await sketch.saved();
    expect(typed.sources[0]!.stand).toBe("2 ft 6 in");
    expect(typed.runs[1]!.survey).toEqual([
      { along: "1 m", fall: "4 cm" },
      { along: "2.5 m", fall: "6 in" },
      { along: "5 m", fall: "15 cm" },
    ]);
    const units = page.getByRole("combobox", { name: "Units" });
    const length = () => page.getByRole("textbox", { name: "Length of row" }).inputValue();
    await units.selectOption("us");
    await expect.poll(length).toMatch(/ft|in/);
    expect(await page.locator("headfall-above svg.drawing").textContent()).toMatch(/\d (ft|in)\b/);
    expect(await sketch.saved()).toEqual(typed);
    // Typed while US units are shown: that alone is in them, and stays.
    await page.getByRole("textbox", { name: "Length of feed" }).fill("20");
    await page.keyboard.press("Enter");
    await expect.poll(async () => (await sketch.plan()).runs[0]!.length).toBe("20 ft");
    await units.selectOption("metric");
    await expect.poll(length).toBe("5 m");
    expect((await sketch.saved()).runs[1]).toEqual(typed.runs[1]);
    expect((await sketch.saved()).runs[0]!.length).toBe("20 ft");
  }, DESKTOP);
});
