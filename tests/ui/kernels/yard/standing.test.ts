import type { PenYard, YardFinding } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import {
  findingsOfPen,
  findingsOfWaterer,
  STANDING_MARKS,
  standingOf,
} from "../../../../packages/ui/src/kernels/yard/standing.js";
import { wholeQuantities } from "../../../../packages/ui/src/styles/whole-quantities.js";

const high = { code: "hangsHigh", waterer: "bell", height: 0.3, low: 0.1, best: 0.12, high: 0.15 } as const;
const often = { code: "oftenEmpty", waterer: "bell", refills: 2.5, hotRefills: 4 } as const;
const none = { code: "noWater", pen: "hens", birds: 12 } as const;
const empty = {
  code: "emptyBetween",
  waterer: "pan",
  every: 86_400,
  lasts: 80_000,
  hotLasts: 40_000,
} as const;

test("standingOf tells the gravest first, wherever it stands among the others, and how many more there are", () => {
  expect(standingOf([], "good")).toEqual({ standing: "good", words: "good" });
  expect(standingOf([often], "good")).toEqual({ standing: "mind", words: "filled often" });
  expect(standingOf([high, empty, often], "good")).toEqual({
    standing: "first",
    words: "empty before it is filled, and 2 more",
  });
});

test("findingsOfPen and findingsOfWaterer share out what was found, and leave nothing", () => {
  const findings: readonly YardFinding[] = [none, high, often, empty];
  const pen = { findings } as PenYard;
  expect(findingsOfPen(pen)).toEqual([none]);
  expect(findingsOfWaterer(pen, "bell")).toEqual([high, often]);
  expect(findingsOfWaterer(pen, "pan")).toEqual([empty]);
});

test("STANDING_MARKS are told apart by outline alone", () => {
  expect(new Set(Object.values(STANDING_MARKS).map(({ path }) => path)).size).toBe(3);
});

test.each([
  ["45.7 cm to 61 cm", "45.7_cm to 61_cm"],
  ["2 ft 1 in to 3 ft", "2_ft 1_in to 3_ft"],
  ["under 1 mm", "under 1_mm"],
  ["4 to 6 cm", "4 to 6_cm"],
])("wholeQuantities(%s) may break at a blank that stands after no number", (words, whole) => {
  expect(wholeQuantities(words)).toBe(whole.replaceAll("_", "\u00a0"));
});
