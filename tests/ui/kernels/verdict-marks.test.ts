import { VERDICTS } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { isWorse, VERDICT_MARKS, writeCounts } from "../../../packages/ui/src/kernels/verdict-marks.js";

test("each verdict has a mark of its own shape and its own word", () => {
  expect(new Set(VERDICTS.map((verdict) => VERDICT_MARKS[verdict].path)).size).toBe(VERDICTS.length);
  expect(new Set(VERDICTS.map((verdict) => VERDICT_MARKS[verdict].word)).size).toBe(VERDICTS.length);
});

test("isWorse follows the library's order of verdicts, worst last", () => {
  for (let i = 1; i < VERDICTS.length; i++) expect(isWorse(VERDICTS[i]!, VERDICTS[i - 1]!)).toBe(true);
  expect(isWorse("good", "good")).toBe(false);
});

test("writeCounts names the worst first, and leaves out what there is none of", () => {
  expect(writeCounts({ good: 17, drips: 4, starves: 1, dry: 0 })).toBe("1 starves, 4 drip, 17 good");
  expect(writeCounts({ good: 24, drips: 0, starves: 0, dry: 0 })).toBe("24 good");
});
