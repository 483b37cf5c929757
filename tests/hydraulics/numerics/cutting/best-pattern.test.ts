import { expect, it } from "vitest";
import { bestPattern } from "../../../../packages/hydraulics/src/numerics/cutting/best-pattern.js";
import { randomFrom } from "../../../../packages/hydraulics/src/numerics/random.js";

/** The most that a bar can be worth, every number of every size tried. */
function mostByForce(
  size: readonly number[],
  worth: readonly number[],
  wanted: readonly number[],
  room: number,
  at = 0,
): number {
  if (at === size.length) return 0;
  let best = 0;
  for (let count = 0; count <= wanted[at]! && count * size[at]! <= room; count += 1)
    best = Math.max(
      best,
      count * worth[at]! + mostByForce(size, worth, wanted, room - count * size[at]!, at + 1),
    );
  return best;
}

it("bestPattern is worth what trying every pattern is, and fits what there is and what is wanted", () => {
  for (let seed = 1; seed <= 300; seed += 1) {
    const random = randomFrom(seed);
    const kinds = 1 + random.integerBelow(4);
    const whole = (most: number) => Array.from({ length: kinds }, () => random.integerBelow(most));
    const size = whole(30).map((one) => one + 5);
    const worth = whole(20);
    const wanted = whole(4);
    const capacity = 20 + random.integerBelow(80);
    const found = bestPattern(size, worth, wanted, capacity);
    expect([seed, found.worth]).toEqual([seed, mostByForce(size, worth, wanted, capacity)]);
    const sum = (of: readonly number[]) => found.pattern.reduce((all, count, i) => all + count * of[i]!, 0);
    expect(sum(worth)).toBe(found.worth);
    expect(sum(size)).toBeLessThanOrEqual(capacity);
    expect(found.pattern.every((count, i) => count <= wanted[i]! && (count === 0 || worth[i]! > 0))).toBe(
      true,
    );
  }
});

it("bestPattern takes a piece that is just as long as the bar", () => {
  expect(bestPattern([7, 3], [7, 3], [1, 1], 7)).toEqual({ pattern: [1, 0], worth: 7 });
});
