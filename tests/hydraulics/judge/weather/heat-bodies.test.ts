import { expect, test } from "vitest";
import { lateness } from "../../../../packages/hydraulics/src/judge/weather/heat-bodies.js";

test("lateness of a pipe is its water's heat over what goes through its wall; in the ground it is none", () => {
  const bare = { outside: 0.0267, lagging: 0, bore: 0.0209, buried: 0 } as Parameters<typeof lateness>[0];
  // 4.19e6 J/(m3 K) of water in a metre, 10 W/(m2 K) over the outside of it.
  const water = 4.19e6 * (Math.PI / 4) * 0.0209 ** 2;
  expect(lateness(bare, 10) / (water / (10 * Math.PI * 0.0267))).toBeCloseTo(1, 2);
  expect(lateness({ ...bare, buried: 0.3 }, 10)).toBe(0);
});
