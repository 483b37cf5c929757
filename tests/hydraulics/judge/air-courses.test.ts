import { expect, test } from "vitest";
import { type Courses, pocketOf } from "../../../packages/hydraulics/src/judge/air-courses.js";

const courseOf = (crest: number, low: number, more: { goesUp?: number; open?: number } = {}): Courses =>
  ({
    goesUp: Uint8Array.of(more.goesUp ?? 0),
    crest: Float64Array.of(crest),
    crestIsOpen: Uint8Array.of(more.open ?? 0),
    low: Float64Array.of(low),
  }) as unknown as Courses;

test("pocketOf a leg that goes down is its height from the crest, from the bore on", () => {
  expect(pocketOf(courseOf(1.2, 1), 0, 0.02)).toBeCloseTo(0.2, 12);
  expect(pocketOf(courseOf(1.2, 1.19), 0, 0.02)).toBe(0);
  expect(pocketOf(courseOf(-0.1, -0.3), 0, 0.02)).toBeCloseTo(0.2, 12);
});

test("pocketOf a leg that goes up, or from a crest that is open, is none", () => {
  expect(pocketOf(courseOf(1.2, 1, { goesUp: 1 }), 0, 0.02)).toBe(0);
  expect(pocketOf(courseOf(1.2, 1, { open: 1 }), 0, 0.02)).toBe(0);
});
