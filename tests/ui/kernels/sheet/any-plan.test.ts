import { checkDocument, checkPlan } from "@headfall/hydraulics";
import fc from "fast-check";
import { expect, test } from "vitest";
import { laySheet, type Sheet } from "../../../../packages/ui/src/kernels/sheet/lay-sheet.js";
import { plans } from "../../../arbitraries/plans.js";
import { isText, shapesOn } from "./alder-bank.js";

/** What is wrong with a sheet, whatever it shows; empty when nothing is. */
function faultsOf(sheet: Sheet): string[] {
  return sheet.pages.flatMap((page) => [
    ...shapesOn(page).flatMap((shape) => {
      const spots = shape.kind === "path" ? shape.spots : [shape];
      return spots.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))
        ? []
        : [`${page.name}: ${shape.kind} lies nowhere`];
    }),
    ...page.shapes.filter(isText).flatMap(({ text, y }) => {
      if (/NaN|Infinity|undefined/.test(text)) return [`${page.name}: says "${text}"`];
      return y > 0 && y < sheet.paper.height ? [] : [`${page.name}: "${text}" lies off the paper`];
    }),
  ]);
}

test("laySheet(any valid plan) has finite places and whole words, from above and from the side, on both papers", () => {
  let drawn = 0;
  fc.assert(
    fc.property(plans(), fc.boolean(), fc.boolean(), fc.boolean(), (data, isSide, isLetter, isLying) => {
      const reading = checkDocument(data);
      if (!reading.ok) throw new Error("not a valid plan");
      const checking = checkPlan(reading.plan, { samples: 0 });
      const sheet = laySheet({
        plan: reading.plan,
        checked: checking.ok ? checking.checked : undefined,
        system: isLetter ? "us" : "metric",
        drawing: isSide ? "side" : "above",
        paper: isLetter ? "letter" : "a4",
        isLying,
        ...{ scale: undefined, heightScale: undefined, run: undefined, date: "" },
      });
      if (sheet === undefined) return;
      drawn += 1;
      expect(faultsOf(sheet)).toEqual([]);
      expect(sheet.tooMany).toBe(0);
    }),
    { numRuns: 150 },
  );
  expect(drawn).toBeGreaterThan(75);
});
