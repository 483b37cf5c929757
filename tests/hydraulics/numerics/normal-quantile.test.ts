import { describe, expect, it } from "vitest";
import { normalQuantile } from "../../../packages/hydraulics/src/numerics/normal-quantile.js";

/** As scipy.stats.norm.ppf 1.17.1 gives them: one or more in each of the three ranges, and at their edges. */
const SCIPY: readonly (readonly [chance: number, z: number])[] = [
  [1e-300, -37.0470962993612],
  [1e-20, -9.262340089798409],
  [1e-5, -4.264890793922825],
  [0.01, -2.3263478740408408],
  [0.02425, -1.972961051311885],
  [0.075, -1.4395314709384563],
  [0.1, -1.2815515655446004],
  [0.3, -0.5244005127080409],
  [0.5, 0],
  [0.77, 0.7388468491852137],
  [0.925, 1.4395314709384563],
  [0.999, 3.090232306167813],
  [0.9999999999, 6.361340889697422],
];

describe("normalQuantile", () => {
  it.each(SCIPY)("of %d is what another implementation gives", (chance, z) => {
    expect(Math.abs(normalQuantile(chance) - z)).toBeLessThanOrEqual(4e-15 * Math.max(1, Math.abs(z)));
  });

  it("is odd about a half, and rises", () => {
    for (let k = 1; k < 512; k += 1) {
      expect(normalQuantile(k / 1024)).toBeCloseTo(-normalQuantile(1 - k / 1024), 13);
      expect(normalQuantile((k + 1) / 1024)).toBeGreaterThan(normalQuantile(k / 1024));
    }
  });

  it.each([0, 1, -0.1, Number.NaN])("refuses a chance of %d", (chance) => {
    expect(() => normalQuantile(chance)).toThrow(
      `normalQuantile: chance is ${chance}; it must be above 0 and below 1`,
    );
  });
});
