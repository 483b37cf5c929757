import { describe, expect, it } from "vitest";
import { createBorrower, piecesOf } from "../../../../packages/hydraulics/src/numerics/lending/borrower.js";
import { costOfWay } from "../../../../packages/hydraulics/src/numerics/lending/improve.js";
import { leastShort } from "../../../../packages/hydraulics/src/numerics/lending/least-short.js";
import { leastToAdd } from "../../../../packages/hydraulics/src/numerics/lending/least-to-add.js";
import { lendPieces } from "../../../../packages/hydraulics/src/numerics/lending/lend-pieces.js";
import {
  type Ask,
  compareLending,
  costOfLending,
  enoughAlone,
  type Lending,
  mayHave,
  shortOf,
} from "../../../../packages/hydraulics/src/numerics/lending/lending.js";
import { createSearch, weighted } from "../../../../packages/hydraulics/src/numerics/lending/searched.js";

const ask = (weight: number, met: number, ...shares: number[]): Ask => ({ weight, met, shares });
const THIRD = 1 / 3;

describe("shortOf", () => {
  it.each([
    // A share that is missing counts itself, and what is missing beyond a half three times more.
    ["with nothing", ask(10, 0, 0.5), [0], 10 * 7 * 2500],
    ["with half", ask(10, 0, 0.5), [1], 10 * 7 * 500],
    ["with all", ask(10, 0, 0.5), [2], 0],
    ["with more than all", ask(10, 0, 0.5), [3], 0],
    ["with three thirds, though they add up to a hair less", ask(10, 0, THIRD), [3], 0],
    ["with a fifth met, and two quarters", ask(10, 0.2, 0.25), [2], 10 * 7 * 300],
    ["with pieces of two kinds", ask(10, 0, 0.5, 0.2), [1, 2], 10 * 7 * 100],
    ["asking nothing", ask(0, 0, 0.5), [0], 0],
    ["rounded up to a whole number", ask(1, 0.0003, 0.5), [1], 3498],
  ])("counts thousandths of the weight left, for as long as it lasts: %s", (_, asked, has, short) => {
    expect(shortOf(asked, 7, has)).toBe(short);
  });
});

describe("enoughAlone and mayHave", () => {
  it("counts the pieces of a kind that meet an ask alone", () => {
    expect(enoughAlone(ask(1, 0, 0.4), 0)).toBe(3);
    expect(enoughAlone(ask(1, 0.2, 0.4), 0)).toBe(2);
    expect(enoughAlone(ask(1, 0, THIRD), 0)).toBe(3);
    expect(enoughAlone(ask(1, 0, 0), 0)).toBe(Number.POSITIVE_INFINITY);
    expect([enoughAlone(ask(0, 0, 0.4), 0), enoughAlone(ask(1, 1, 0), 0)]).toEqual([0, 0]);
  });

  it("lets a piece be where it serves, and anything where nothing is asked", () => {
    expect([mayHave(ask(1, 0, 0.1), 0), mayHave(ask(1, 0, 0), 0), mayHave(ask(0, 0, 0), 0)]).toEqual([
      true,
      false,
      true,
    ]);
  });
});

/** Two kinds, two borrowers, three periods; the second borrower rests in the middle one. */
const lending: Lending = {
  stock: [2, 1],
  lasts: [3, 5, 7],
  upkeep: [1, 10],
  asks: [
    [ask(10, 0, 0.5, 1), ask(10, 0, 0.5, 1), ask(10, 0.5, 0.5, 1)],
    [ask(4, 0, 0.5, 0), ask(0, 0, 0.5, 0), ask(4, 0, 0.5, 0)],
  ],
};

describe("costOfLending", () => {
  it("adds up what is short, what is handed out anew, and upkeep while something is asked", () => {
    const cost = costOfLending(lending, [
      [
        [0, 1],
        [1, 0],
        [1, 0],
      ],
      [
        [1, 0],
        [1, 0],
        [0, 0],
      ],
    ]);
    expect(cost).toEqual({
      // Second period of the first: half of 10 for 5. Of the other: half of 4 for 3, then all of 4 for 7.
      short: 25_000 + 6000 + 4 * 7 * 2500,
      handed: 1 + 1 + 1,
      // 10 for 3, 1 for 5, 1 for 7; and 1 for 3, nothing while nothing is asked.
      upkeep: 30 + 5 + 7 + 3,
    });
  });

  it("is compared by what is short, then by what is handed out, then by upkeep", () => {
    const cost = { short: 5, handed: 5, upkeep: 5 };
    expect(compareLending({ short: 4, handed: 9, upkeep: 9 }, cost)).toBeLessThan(0);
    expect(compareLending({ short: 5, handed: 4, upkeep: 9 }, cost)).toBeLessThan(0);
    expect(compareLending({ short: 5, handed: 5, upkeep: 6 }, cost)).toBeGreaterThan(0);
    expect(compareLending(cost, { ...cost })).toBe(0);
  });
});

describe("createBorrower", () => {
  it("lists what it may have, with what is short, upkeep, and the state with one piece fewer", () => {
    const borrower = createBorrower(lending, 0);
    const states = Array.from({ length: borrower.states }, (_, state) => piecesOf(borrower, state, 2));
    expect(borrower.kinds).toEqual([0, 1]);
    expect([...states].sort()).toEqual([
      [0, 0],
      [0, 1],
      [1, 0],
      [1, 1],
      [2, 0],
      [2, 1],
    ]);
    expect([borrower.most, borrower.isHeldDown]).toEqual([[2, 1], false]);
    for (const [state, [a, b]] of states.entries()) {
      const at = (x: number, y: number) => states.findIndex(([p, q]) => p === x && q === y);
      expect(borrower.below.map((down) => down[state])).toEqual([at(a! - 1, b!), at(a!, b! - 1)]);
      expect(borrower.short[1]![state]).toBe(shortOf(lending.asks[0]![1]!, 5, [a!, b!]));
      expect(borrower.upkeep[1]![state]).toBe(5 * (a! + 10 * b!));
    }
  });

  it("leaves out a kind that never serves, and forbids a piece where it may not be", () => {
    const other = createBorrower(lending, 1);
    expect([other.kinds, other.states]).toEqual([[0], 3]);
    expect(piecesOf(other, 2, 2)).toEqual([2, 0]);
    expect([...other.upkeep[1]!]).toEqual([0, 0, 0]);
    expect([...other.short[1]!]).toEqual([0, 0, 0]);
    const asks = [[ask(1, 0, 0.5, 0), ask(1, 0, 0, 0.5)]];
    const changing = createBorrower({ ...lending, lasts: [1, 1], asks }, 0);
    const allowed = (t: number) =>
      [...changing.short[t]!].flatMap((one, s) =>
        one < Number.POSITIVE_INFINITY ? [piecesOf(changing, s, 2)] : [],
      );
    expect(allowed(0).every(([, second]) => second === 0)).toBe(true);
    expect(allowed(1).every(([first]) => first === 0)).toBe(true);
  });
});

describe("leastShort", () => {
  it("deals the stock of a period so that least is short, and says how", () => {
    const borrowers = [0, 1].map((b) => createBorrower(lending, b));
    const { short, bound, states } = leastShort(borrowers, lending.stock, 0);
    // The one piece that meets all goes to the first, the two halves to the other: nothing is short.
    expect([short, bound]).toEqual([0, 0]);
    expect(borrowers.map((borrower, b) => piecesOf(borrower, states[b]!, 2))).toEqual([
      [0, 1],
      [2, 0],
    ]);
    // Without that piece each has half: rather that than one with all and one with nothing.
    expect(leastShort(borrowers, [2, 0], 0).short).toBe(10 * 3 * 500 + 4 * 3 * 500);
    expect(leastShort(borrowers, [1, 0], 0).short).toBe(10 * 3 * 500 + 4 * 3 * 2500);
    expect(leastShort(borrowers, [0, 0], 1).short).toBe(10 * 5 * 2500);
  });
});

describe("costOfWay and weighted", () => {
  it("weigh a piece handed out more than all upkeep there can be, and tell the two apart again", () => {
    const borrowers = [0, 1].map((b) => createBorrower(lending, b));
    const search = createSearch(
      lending,
      borrowers,
      [0, 1, 2].map((t) => leastShort(borrowers, lending.stock, t)),
    );
    expect(search.handed).toBe(1 + 15 * (2 * 1 + 1 * 10));
    expect([...search.short]).toEqual([0, 0, 0]);
    const stateOf = (b: number, pieces: readonly number[]) =>
      Array.from({ length: borrowers[b]!.states }, (_, s) => s).find(
        (s) => piecesOf(borrowers[b]!, s, 2).join() === pieces.join(),
      )!;
    const way = [
      [stateOf(0, [0, 1]), stateOf(0, [0, 1]), stateOf(0, [1, 0])],
      [stateOf(1, [2, 0]), stateOf(1, [1, 0]), stateOf(1, [1, 0])],
    ];
    const value = costOfWay(search, way);
    expect(weighted(search, value)).toEqual({ handed: 1 + 1 + 2, upkeep: 30 + 50 + 7 + 6 + 0 + 7 });
  });
});

describe("lendPieces", () => {
  it("hands out no piece twice that can stay where it is, and proves it", () => {
    const answer = lendPieces(lending);
    expect(answer).toMatchObject({ isProven: true, isHeldDown: false, leastShort: [0, 0, 0] });
    expect(answer.cost).toEqual(costOfLending(lending, answer.lent));
    expect(answer.bound).toEqual(answer.cost);
    expect(answer.cost).toMatchObject({ short: 0, handed: 3 });
  });

  it("stopped, says what is not proven, and its bound still holds", () => {
    const hard: Lending = {
      stock: [2, 2, 1],
      lasts: [2, 3, 1, 4],
      upkeep: [3, 1, 4],
      asks: [0, 1, 2].map((b) =>
        [0, 1, 2, 3].map((t) =>
          ask(1 + ((b + t) % 3), 0, 0.5, (b + t) % 2 === 0 ? 0.4 : 0, t === b ? 0.9 : 0.3),
        ),
      ),
    };
    const whole = lendPieces(hard, { mostParts: 5000 });
    const told: number[] = [];
    const stopped = lendPieces(hard, {
      mayGoOn: (done) => {
        told.push(done);
        return false;
      },
    });
    expect(compareLending(stopped.bound, whole.cost)).toBeLessThanOrEqual(0);
    expect(compareLending(stopped.cost, whole.cost)).toBeGreaterThanOrEqual(0);
    expect(stopped.parts).toBeLessThanOrEqual(whole.parts);
    expect(told.every((done) => done > 0 && done < 1)).toBe(true);
  });
});

describe("leastToAdd", () => {
  const one = (asks: Ask[][], stock: number[]): Lending => ({
    ...{ stock, asks },
    lasts: asks[0]!.map(() => 7),
    upkeep: stock.map(() => 0),
  });

  it.each<[string, Ask[][], stock: number[], costs: number[], pieces: number[]]>([
    ["the cheaper of two kinds that serve alike", [[ask(5, 0, 0.5, 0.5)]], [0, 0], [3, 2], [0, 2]],
    ["the first of two that serve and cost alike", [[ask(5, 0, 0.5, 0.5)]], [0, 0], [2, 2], [2, 0]],
    ["the better of two that cost alike", [[ask(5, 0, 0.4, 0.5)]], [0, 0], [2, 2], [0, 2]],
    ["a dearer piece of which one is enough", [[ask(5, 0, 0.3, 1)]], [0, 0], [2, 7], [0, 1]],
    ["many cheap ones where they cost less", [[ask(5, 0, 0.3, 1)]], [0, 0], [2, 9], [4, 0]],
    ["nothing that cannot be had", [[ask(5, 0, 0.5, 1)]], [0, 0], [3, Number.POSITIVE_INFINITY], [2, 0]],
    ["what is missing beside what is there", [[ask(5, 0, 0.5, 0.5)]], [1, 0], [3, 2], [0, 1]],
    ["for the period that asks most", [[ask(5, 0, 0.5), ask(5, 0, 0.25)]], [0], [1], [4]],
    ["for two at a time, what both need then", [[ask(5, 0, 0.5)], [ask(1, 0, 0.5)]], [1], [1], [3]],
    ["nothing for who asks nothing", [[ask(0, 0, 0.5)]], [0], [1], [0]],
    ["nothing for what no piece helps", [[ask(5, 0, 0)]], [0], [1], [0]],
    ["what is short by the least that is counted", [[ask(1e-5, 0, 0.5)]], [0], [1], [2]],
    ["each kind where it alone serves", [[ask(5, 0, 0.5, 0), ask(5, 0, 0, 1)]], [0, 0], [1, 1], [2, 1]],
  ])("adds %s", (_, asks, stock, costs, pieces) => {
    const found = leastToAdd(one(asks, stock), costs);
    const cost = pieces.reduce((sum, count, k) => sum + (count === 0 ? 0 : count * costs[k]!), 0);
    expect(found).toMatchObject({ pieces, cost, bound: cost });
  });

  it("says what stays short whatever is added", () => {
    const found = leastToAdd(one([[ask(5, 0.2, 0), ask(5, 0, 0.5)]], [0]), [1]);
    expect(found?.pieces).toEqual([2]);
    // 0.8 of 5 for 7, three tenths of it beyond a half: 0.8 + 3 x 0.3.
    expect([...found!.never[0]!]).toEqual([5 * 7 * 1700, 0]);
  });

  it("counts on no kind that cannot be had", () => {
    const found = leastToAdd(one([[ask(5, 0, 0, 1)]], [0, 0]), [1, Number.POSITIVE_INFINITY]);
    expect(found).toMatchObject({ pieces: [0, 0], cost: 0 });
    // All of 5 for 7, a half of it beyond a half: 1 + 3 x 0.5.
    expect([...found!.never[0]!]).toEqual([5 * 7 * 2500]);
  });
});
