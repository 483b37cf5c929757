import { expect, test } from "vitest";
import { cutStock } from "../../../../packages/hydraulics/src/numerics/cutting/cut-stock.js";

const one = (length: number, count = 1) => ({ length, count });

test("cutStock: the cut beside a piece counts, the last one of a bar used up does not", () => {
  const asked = { sold: [3], leftovers: [], kerf: 0.002 };
  expect(cutStock({ ...asked, pieces: [one(1, 3)] }).bars.length).toBe(2);
  expect(cutStock({ ...asked, pieces: [one(0.9986, 3)] })).toMatchObject({ bought: 3, isProven: true });
});

test("cutStock: what lies there is cut before any is bought, and the smallest piece that does is taken", () => {
  const cutting = cutStock({ pieces: [one(1)], sold: [3], leftovers: [2, 1.2, 5], kerf: 0 });
  expect(cutting).toMatchObject({ bought: 0, leftoverUsed: 1.2, isProven: true, isLeastLeftover: true });
});

test("cutStock: of two lengths sold the cheaper sum is bought, not the fewer bars", () => {
  const { bars, bought } = cutStock({ pieces: [one(2, 2)], sold: [2.1, 6], leftovers: [], kerf: 0 });
  expect(bought).toBeCloseTo(4.2, 9);
  expect(bars.length).toBe(2);
});

test("cutStock: what nothing is long enough for is told, and the rest is cut", () => {
  expect(cutStock({ pieces: [one(4), one(1)], sold: [3], leftovers: [], kerf: 0 })).toMatchObject({
    uncut: [4],
    bought: 3,
  });
  expect(cutStock({ pieces: [one(1)], sold: [], leftovers: [], kerf: 0 }).uncut).toEqual([1]);
  expect(cutStock({ pieces: [], sold: [3], leftovers: [], kerf: 0 })).toMatchObject({
    bars: [],
    bought: 0,
    bound: 0,
  });
});

test("cutStock: stopped early it says what is not proven, and the bound still holds", () => {
  const lengths = [1.51, 1.49, 1.37, 1.23, 1.11, 0.97, 0.83, 0.71, 0.59, 0.47, 0.33, 0.29];
  const asked = {
    pieces: lengths.map((length) => one(length, 2)),
    sold: [3.05],
    leftovers: [2.2, 1.9],
    kerf: 0.002,
  };
  const [short, long] = [cutStock({ ...asked, most: 1 }), cutStock(asked)];
  expect(short.states).toBeLessThanOrEqual(1);
  expect(short.bought).toBeGreaterThanOrEqual(long.bought - 1e-9);
  expect(long.bound).toBeLessThanOrEqual(long.bought + 1e-9);
});

test("cutStock: what buys no more than the bound is proven, though not all was looked at", () => {
  const asked = { pieces: [one(1)], sold: [3], leftovers: [2, 1.2, 5], kerf: 0 };
  expect(cutStock({ ...asked, most: 0 })).toMatchObject({
    bought: 0,
    isProven: true,
    isLeastLeftover: false,
  });
});

test("cutStock: lengths alike are one, however often they are written", () => {
  const asked = { pieces: [one(1), one(1, 2), one(0.5, 0)], sold: [1, 1], leftovers: [1.1, 1.1], kerf: 0 };
  const { bars, worth, leftoverUsed } = cutStock(asked);
  expect(worth).toHaveLength(1);
  // Two on hand, and one bought for the third.
  expect(bars.map(({ from, pieces }) => [from, pieces.length])).toEqual([
    ["leftover", 1],
    ["leftover", 1],
    ["sold", 1],
  ]);
  expect(leftoverUsed).toBeCloseTo(2.2, 9);
});

test("cutStock refuses lengths that are none", () => {
  expect(() => cutStock({ pieces: [one(0)], sold: [3], leftovers: [], kerf: 0 })).toThrow(
    new RangeError("cutStock: a length is 0; it must be finite and above 0"),
  );
  expect(() => cutStock({ pieces: [], sold: [3], leftovers: [], kerf: -1 })).toThrow(RangeError);
});

test("cutStock: tells what nothing is long enough for from long to short, however it was asked", () => {
  const asked = { pieces: [one(4), one(7), one(5), one(1)], sold: [3], leftovers: [], kerf: 0 };
  expect(cutStock(asked).uncut).toEqual([7, 5, 4]);
});

test("cutStock: where nothing is on hand, nothing less of it could be cut, though the search was stopped", () => {
  const asked = { pieces: [one(1.2, 3), one(1.6, 3), one(1.3)], sold: [3, 2.5], leftovers: [], kerf: 0 };
  const { isProven, isLeastLeftover } = cutStock({ ...asked, most: 0 });
  expect([isProven, isLeastLeftover]).toEqual([false, true]);
});
