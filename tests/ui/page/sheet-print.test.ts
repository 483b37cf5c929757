import { inflateSync } from "node:zlib";
import type { Page } from "playwright";
import { expect, test } from "vitest";
import { ELBOW } from "../kernels/sheet/alder-bank.js";
import { visitSheet } from "./sheet-page.js";

const PIXELS_PER_MM = 96 / 25.4;
const POINTS_PER_MM = 72 / 25.4;

/** Opens the print of the elbow and makes its choices. */
async function openPrint(page: Page, choose: (page: Page) => Promise<void>): Promise<void> {
  await page.evaluate(
    (text) => (window as unknown as { showSave(text: string): Promise<void> }).showSave(text),
    JSON.stringify(ELBOW),
  );
  await page.getByRole("button", { name: "Print to scale" }).click();
  await choose(page);
}

/** Width and height of each page of a PDF [mm]. */
function sizesOf(pdf: Buffer): number[][] {
  const boxes = [...pdf.toString("latin1").matchAll(/\/MediaBox\s*\[([^\]]+)\]/g)];
  return boxes.map(([, numbers]) => {
    const [left, bottom, right, top] = numbers!.trim().split(/\s+/).map(Number) as [
      number,
      number,
      number,
      number,
    ];
    return [(right - left) / POINTS_PER_MM, (top - bottom) / POINTS_PER_MM];
  });
}

/** What the pages of a PDF are drawn by, as text. */
function drawnBy(pdf: Buffer): string {
  const raw = pdf.toString("latin1");
  return [...raw.matchAll(/\/FlateDecode[^>]*>>\s*stream\r?\n/g)]
    .map(({ index, 0: head }) => {
      const from = index + head.length;
      const packed = pdf.subarray(from, raw.indexOf("endstream", from));
      try {
        return inflateSync(packed).toString("latin1");
      } catch {
        return "";
      }
    })
    .join("\n");
}

/** Lengths on paper of all straight lines of a PDF [mm]: their numbers, times every scale in force at that place. */
function lengthsIn(drawn: string): number[] {
  const lengths: number[] = [];
  const outer: number[] = [];
  let scale = 1;
  let start = [0, 0];
  const steps = /(?<=^|\s)(?:(q)|(Q)|((?:-?[\d.]+\s){6})cm|((?:-?[\d.]+\s){2})([ml]))(?=\s)/g;
  for (const [, opens, closes, matrix, spot, operator] of drawn.matchAll(steps)) {
    if (opens) outer.push(scale);
    else if (closes) scale = outer.pop() ?? 1;
    else if (matrix) {
      const [across, down] = matrix.split(/\s/).map(Number) as [number, number];
      scale *= Math.hypot(across, down);
    } else {
      const [x, y] = spot!.split(/\s/).map(Number) as [number, number];
      if (operator === "l") lengths.push((scale * Math.hypot(x - start[0]!, y - start[1]!)) / POINTS_PER_MM);
      start = [x, y];
    }
  }
  return lengths;
}

test.each([
  ["A4", "Upright", 210, 297],
  ["A4", "Lying", 297, 210],
  ["Letter", "Upright", 215.9, 279.4],
  ["Letter", "Lying", 279.4, 215.9],
] as const)(
  "printed on %s, %s, every page has that size and nothing but the sheet is on it",
  async (paper, lie, width, height) => {
    await visitSheet(async (page) => {
      await openPrint(page, async () => {
        await page.getByRole("radio", { name: paper }).check();
        await page.getByRole("radio", { name: lie }).check();
        await page.getByLabel("Scale", { exact: true }).selectOption("20");
      });
      const pages = await page.locator("headfall-sheet svg.page").count();
      const pdf = await page.pdf({ preferCSSPageSize: true });
      const sizes = sizesOf(pdf);
      expect(sizes).toHaveLength(pages);
      for (const [wide, high] of sizes) {
        // The printer's own unit is a point of 0.35 mm, and the browser rounds to pixels.
        expect(Math.abs(wide! - width)).toBeLessThan(0.4);
        expect(Math.abs(high! - height)).toBeLessThan(0.4);
      }
      // Afterwards the document is as it was.
      expect(await page.locator(".headfall-printed").count()).toBe(0);
    });
  },
  60_000,
);

test("in the printed file 6 m at 1:25 are 240 mm, and the bar to check with is 100 mm", async () => {
  await visitSheet(async (page) => {
    await openPrint(page, async () => {
      await page.getByRole("radio", { name: "Lying" }).check();
      await page.getByLabel("Scale", { exact: true }).selectOption("25");
    });
    const lengths = lengthsIn(drawnBy(await page.pdf({ preferCSSPageSize: true })));
    const nearest = (wanted: number) => Math.min(...lengths.map((length) => Math.abs(length - wanted)));
    expect(nearest(240)).toBeLessThan(0.05);
    expect(nearest(100)).toBeLessThan(0.05);
    // That it is not just any length that is found.
    expect(nearest(247)).toBeGreaterThan(1);
  });
}, 60_000);

test("as the printer sees it the page is the sheet alone, its bar 100 mm long and black on white", async () => {
  await visitSheet(async (page) => {
    await openPrint(page, async () => {
      await page.getByRole("radio", { name: "Black and white" }).check();
    });
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
    expect(await page.getByText("Not to be printed").isVisible()).toBe(false);
    expect(await page.locator("headfall-sheet").isVisible()).toBe(false);
    const printed = page.locator(".headfall-printed svg.page").first();
    const box = await printed.boundingBox();
    expect(box!.width / PIXELS_PER_MM).toBeCloseTo(210, 1);
    expect(box!.height / PIXELS_PER_MM).toBeCloseTo(297, 1);
    expect([box!.x, box!.y]).toEqual([0, 0]);
    const bars = await page
      .locator(".headfall-printed path.check")
      .evaluateAll((paths) => paths.map((path) => path.getBoundingClientRect().width));
    expect(Math.max(...bars) / PIXELS_PER_MM).toBeCloseTo(100, 1);
    expect(await printed.locator(".paper").evaluate((paper) => getComputedStyle(paper).fill)).toBe(
      "rgb(255, 255, 255)",
    );
  });
}, 60_000);
