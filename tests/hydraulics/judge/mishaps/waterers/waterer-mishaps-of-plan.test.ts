import { describe, expect, it } from "vitest";
import type { WatererMishapResult } from "../../../../../packages/hydraulics/src/judge/mishaps/waterers/waterer-mishap-result.js";
import { compareWaterers } from "../../../../../packages/hydraulics/src/judge/mishaps/waterers/waterer-mishaps-of-plan.js";

const HOUR = 3600;

describe("compareWaterers", () => {
  const loose = (birdHours: number, harmAfter: number | undefined, lost: number) =>
    ({ birdHours, harmAfter, lost }) as unknown as WatererMishapResult;

  it("puts most bird-hours first, then the soonest, then most water lost", () => {
    const ranked = [
      loose(9, 2 * HOUR, 0),
      loose(8, HOUR, 0.9),
      loose(8, 2 * HOUR, 0.2),
      loose(8, 2 * HOUR, 0.1),
      loose(8, undefined, 0.9),
      loose(0, undefined, 0.9),
    ];
    expect([...ranked].reverse().sort(compareWaterers)).toEqual(ranked);
    expect(compareWaterers(ranked[0]!, ranked[0]!)).toBe(0);
  });
});
