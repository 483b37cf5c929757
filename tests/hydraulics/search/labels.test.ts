import { describe, expect, it } from "vitest";
import { randomFrom } from "../../../packages/hydraulics/src/numerics/random.js";
import { asksNoMore } from "../../../packages/hydraulics/src/search/asked.js";
import { compareBy, NO_COST } from "../../../packages/hydraulics/src/search/cost.js";
import {
  bothOf,
  frontOf,
  type Hoped,
  joinNeighbours,
  keepLikely,
  labelOf,
  readTaken,
} from "../../../packages/hydraulics/src/search/labels.js";

const compare = compareBy("money");
const cost = (money: number) => ({ ...NO_COST, money });

/** A label that costs so much and asks so much head, by both laws alike; and what its plan costs at least. */
function hoped(money: number, head: number, least = money, flow = 1): Hoped {
  return {
    label: labelOf([head, head - 1, flow, head, head - 1, flow], cost(money), undefined),
    least: cost(least),
  };
}

const figures = (front: readonly Hoped[]) => front.map(({ label }) => [label.cost.money, label.head]);

describe("frontOf", () => {
  it("keeps in order of cost those that no other beats, and no others", () => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const random = randomFrom(seed);
      const upTo = (most: number) => random.integerBelow(most);
      const all = Array.from({ length: 30 }, () => hoped(upTo(20), upTo(20), 0, upTo(4)));
      const front = frontOf(all, compare);
      const money = front.map(({ label }) => label.cost.money);
      expect(money).toEqual([...money].sort((a, b) => a - b));
      const beats = (a: Hoped, b: Hoped) =>
        a.label.cost.money <= b.label.cost.money && asksNoMore(a.label.asked, b.label.asked);
      // Of two alike in cost and head both may stay, whatever flow they ask.
      const isAlike = (a: Hoped, b: Hoped) =>
        a.label.cost.money === b.label.cost.money && a.label.head === b.label.head;
      for (const one of front)
        expect(front.filter((other) => !isAlike(other, one) && beats(other, one))).toHaveLength(0);
      for (const one of all) expect(front.some((kept) => beats(kept, one))).toBe(true);
    }
  });
});

describe("joinNeighbours", () => {
  const front = [hoped(1, 10), hoped(2, 9.9), hoped(3, 5), hoped(4, 4.9), hoped(5, 1)];

  it("keeps apart those between which most head lies, the cheapest, and the one that asks least", () => {
    // 0.1 m lies before the second and the fourth: each joins the one before, at its cost and with the lesser head.
    expect(figures(joinNeighbours(front, 3, compare))).toEqual([
      [1, 9.9],
      [3, 4.9],
      [5, 1],
    ]);
    expect(joinNeighbours(front, 5, compare)).toBe(front);
  });

  it("leaves no more than wanted, and for each of the others one that costs and asks no more", () => {
    for (const most of [2, 3, 4]) {
      const steps = Array.from({ length: 12 }, (_, k) => hoped(k, 20 - k - (k % 3) / 4, k + 5));
      const thinned = joinNeighbours(steps, most, compare);
      expect(thinned).toHaveLength(most);
      for (const { label } of steps)
        expect(
          thinned.some(
            (kept) => kept.label.cost.money <= label.cost.money && asksNoMore(kept.label.asked, label.asked),
          ),
        ).toBe(true);
    }
  });
});

describe("keepLikely", () => {
  it("keeps those that promise the cheapest plans, of two alike the one that asks less, in order of cost", () => {
    const front = [hoped(1, 10, 9), hoped(2, 9, 7), hoped(3, 8, 7), hoped(4, 7, 6), hoped(5, 6, 8)];
    expect(figures(keepLikely(front, 2, compare))).toEqual([
      [3, 8],
      [4, 7],
    ]);
    expect(keepLikely(front, 5, compare)).toBe(front);
  });
});

describe("bothOf and readTaken", () => {
  it("put two parts on one node: the greater heads, both flows and costs, and what was taken in either", () => {
    const taken = (run: number, option: number) => ({ run, option, below: undefined, beside: undefined });
    const a = labelOf([5, 4, 1, 6, 3, 2], cost(10), { ...taken(0, 3), below: taken(1, 2) });
    const b = labelOf([4, 4.5, 2, 7, 2, 3], cost(5), taken(2, 1));
    const both = bothOf(a, b);
    expect(both.asked).toEqual([5, 4.5, 3, 7, 3, 5]);
    expect([both.head, both.cost.money]).toEqual([7, 15]);
    const picks = [0, 0, 0, 9];
    readTaken(both.taken, picks);
    expect(picks).toEqual([3, 2, 1, 9]);
    expect(bothOf(a, labelOf([0, 0, 0, 0, 0, 0], NO_COST, undefined)).taken).toBe(a.taken);
  });
});
