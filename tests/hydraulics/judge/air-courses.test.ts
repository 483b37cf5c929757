import { describe, expect, it, test } from "vitest";
import {
  advanceCourse,
  beginCourse,
  type Courses,
  emptyCourses,
  pocketOf,
} from "../../../packages/hydraulics/src/judge/air-courses.js";

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

/** A pipe of 2 cm bore from a source through places of given heights, "o" where air can leave: the course of the last. */
function courseThrough(...places: readonly (number | readonly [number, "o"])[]) {
  const courses = emptyCourses({ nodeCount: places.length } as Parameters<typeof emptyCourses>[0]);
  places.forEach((place, i) => {
    const [height, isOpen] = typeof place === "number" ? [place, false] : [place[0], true];
    if (i === 0) beginCourse(courses, i, 10, height);
    else advanceCourse(courses, i, i - 1, { point: 10 + i, height, bore: 0.02, isOpen });
  });
  const last = places.length - 1;
  const at = (key: keyof Courses) => courses[key][last]!;
  return {
    air: at("air"),
    hump: at("hump"),
    pocket: pocketOf(courses, last, 0.02),
    crestPoint: at("crestPoint"),
    at,
  };
}

describe("a course followed from a source", () => {
  it("keeps no air in its first leg, however deep: it leaves at the source", () => {
    expect(courseThrough(1, 0.5, 0.2)).toMatchObject({ air: 0, hump: -1, pocket: 0 });
    expect(courseThrough(1, 0.2, 0.6)).toMatchObject({ air: 0, hump: -1, pocket: 0 });
  });

  it("keeps the column of the leg behind a hump, from its crest to the sag; known once it goes up again", () => {
    expect(courseThrough(1, 0.2, 0.6, 0.1)).toMatchObject({ air: 0, pocket: expect.closeTo(0.5, 12) });
    expect(courseThrough(1, 0.2, 0.6, 0.1, 0.3)).toMatchObject({
      air: expect.closeTo(0.5, 12),
      // The hump is the place at 0.6, the third.
      ...{ hump: 12, pocket: 0, crestPoint: 14 },
    });
  });

  it("adds up the columns of two humps, and names the last that holds any", () => {
    const { air, hump } = courseThrough(1, 0.2, 0.6, 0.1, 0.5, 0.3, 0.4);
    expect(air).toBeCloseTo(0.5 + 0.2, 12);
    expect(hump).toBe(14);
  });

  it("keeps nothing behind a crest at which air can leave, also where its bleed sits less than a bore lower", () => {
    expect(courseThrough(1, 0.2, [0.6, "o"], 0.1, 0.3)).toMatchObject({ air: 0, hump: -1 });
    expect(courseThrough(1, 0.2, 0.6, [0.59, "o"], 0.1, 0.3)).toMatchObject({ air: 0, hump: -1 });
    expect(courseThrough(1, 0.2, [0.6, "o"], 0.6, 0.1, 0.3).air).toBe(0);
    expect(courseThrough(1, 0.2, 0.6, [0.55, "o"], 0.1, 0.3).air).toBeCloseTo(0.5, 12);
    // A bleed lower down is passed on the way up to a crest that has none.
    expect(courseThrough(1, 0.2, [0.5, "o"], 0.6, 0.1, 0.3).air).toBeCloseTo(0.5, 12);
  });

  it("lets air out at a bleed less than a bore under its crest, on the way down too", () => {
    expect(courseThrough(1, 0.2, 0.6, 0.58, [0.59, "o"], 0.1, 0.3).air).toBe(0);
    expect(courseThrough(1, 0.2, 0.6, 0.57, [0.575, "o"], 0.1, 0.3).air).toBeCloseTo(0.5, 12);
  });

  it("keeps what a level crest without a bleed holds back", () => {
    expect(courseThrough(1, 0.2, 0.6, 0.6, 0.1, 0.3).air).toBeCloseTo(0.5, 12);
  });

  it("does not turn for moves smaller than the bore", () => {
    expect(courseThrough(1, 0.2, 0.215, 0.1).air).toBe(0);
    expect(courseThrough(1, 0.2, 0.6, 0.585, 0.6)).toMatchObject({ air: 0, crestPoint: 14 });
    expect(courseThrough(1, 0.2, 0.225, 0.2, 0.225).air).toBeCloseTo(0.025, 12);
  });

  it("goes on up to a higher crest, and keeps the column from that", () => {
    const { air, hump, at } = courseThrough(1, 0.2, 0.4, 0.7, 0.3, 0.35);
    expect([air, hump]).toEqual([expect.closeTo(0.4, 12), 13]);
    expect([at("sag"), at("low"), at("crest")]).toEqual([0.3, 0.35, 0.35]);
  });
});
