import { expect, test } from "vitest";
import { cutStock } from "../../packages/hydraulics/src/numerics/cutting/cut-stock.js";
import type { Cutting, CuttingAsked } from "../../packages/hydraulics/src/numerics/cutting/cutting.js";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { chooserOf } from "../arbitraries/typed.js";
import { cases } from "../runner/cases.js";

const piecesOf = (asked: CuttingAsked): number[] =>
  asked.pieces.flatMap(({ length, count }) => new Array<number>(count).fill(length));

/** Least that must be bought, and least cut on hand with it: every way to share the pieces out, without any cleverness. */
function tryEverything(asked: CuttingAsked): { bought: number; onHand: number } | undefined {
  const pieces = piecesOf(asked);
  const bars: { length: number; sold: boolean; used: number; count: number }[] = [];
  const free = [...asked.leftovers];
  let best: { bought: number; onHand: number } | undefined;
  const visit = (k: number, bought: number, onHand: number): void => {
    if (
      best !== undefined &&
      (bought > best.bought + 1e-9 || (bought > best.bought - 1e-9 && onHand >= best.onHand - 1e-9))
    )
      return;
    if (k === pieces.length) {
      best = { bought, onHand };
      return;
    }
    const piece = pieces[k]!;
    for (const bar of bars) {
      const more = piece + (bar.count > 0 ? asked.kerf : 0);
      if (bar.used + more > bar.length + 1e-9) continue;
      bar.used += more;
      bar.count += 1;
      visit(k + 1, bought, onHand);
      bar.used -= more;
      bar.count -= 1;
    }
    const open = (length: number, sold: boolean) => {
      if (piece > length + 1e-9) return;
      bars.push({ length, sold, used: piece, count: 1 });
      visit(k + 1, bought + (sold ? length : 0), onHand + (sold ? 0 : length));
      bars.pop();
    };
    for (const length of asked.sold) open(length, true);
    free.forEach((length, i) => {
      if (length === 0) return;
      free[i] = 0;
      open(length, false);
      free[i] = length;
    });
  };
  visit(0, 0, 0);
  return best;
}

function randomCutting(seed: number): CuttingAsked {
  const choose = chooserOf(randomFrom(seed));
  const round = (length: number) => Math.round(length * 100) / 100;
  const sold = choose.chance(0.1)
    ? []
    : Array.from({ length: choose.whole(1, 3) }, () => round(choose.uniform(1, 4)));
  return {
    pieces: Array.from({ length: choose.whole(1, 4) }, () => ({
      length: round(choose.uniform(0.2, sold.length === 0 ? 1 : Math.max(...sold))),
      count: choose.whole(1, 2),
    })),
    sold,
    leftovers: Array.from({ length: choose.whole(0, 3) }, () => round(choose.uniform(0.2, 3))),
    kerf: choose.oneOf([0, 0.003, 0.01]),
  };
}

/** That every piece is cut once, and no bar gives more than it has. */
function requireCut(asked: CuttingAsked, cutting: Cutting): void {
  const cut = [...cutting.bars.flatMap(({ pieces }) => pieces), ...cutting.uncut];
  const sorted = (lengths: readonly number[]) => [...lengths].map((each) => each.toFixed(6)).sort();
  expect(sorted(cut)).toEqual(sorted(piecesOf(asked)));
  const onHand = [...asked.leftovers];
  for (const { from, length, pieces, rest } of cutting.bars) {
    const used = pieces.reduce((sum, piece) => sum + piece, 0) + asked.kerf * (pieces.length - 1);
    expect(used).toBeLessThanOrEqual(length + 1e-5);
    expect(rest).toBeLessThanOrEqual(length - used + 1e-5);
    const at = (from === "sold" ? asked.sold : onHand).findIndex((each) => Math.abs(each - length) < 1e-6);
    expect(at).toBeGreaterThanOrEqual(0);
    if (from === "leftover") onHand.splice(at, 1);
  }
}

test("cutStock buys as little, and cuts into as little on hand, as trying everything", () => {
  for (let seed = 0; seed < cases(150).numRuns; seed += 1) {
    const asked = randomCutting(seed);
    const cutting = cutStock(asked);
    requireCut(asked, cutting);
    const best = tryEverything(asked);
    if (best === undefined) {
      expect([seed, cutting.uncut.length]).not.toEqual([seed, 0]);
      continue;
    }
    expect([seed, cutting.bought.toFixed(5)]).toEqual([seed, best.bought.toFixed(5)]);
    expect([seed, cutting.isProven, cutting.isLeastLeftover]).toEqual([seed, true, true]);
    expect([seed, cutting.leftoverUsed.toFixed(5)]).toEqual([seed, best.onHand.toFixed(5)]);
    expect(cutting.bound).toBeLessThanOrEqual(best.bought + 1e-5);
  }
});

/** Most that a bar can yield, by counting every number of every piece. */
function mostWorth(worth: Cutting["worth"], asked: CuttingAsked, capacity: number): number {
  const visit = (k: number, room: number): number => {
    const piece = worth[k];
    if (piece === undefined) return 0;
    let best = 0;
    const wanted = asked.pieces.find(({ length }) => Math.abs(length - piece.length) < 1e-6)?.count ?? 0;
    for (let count = 0; count <= wanted && count * (piece.length + asked.kerf) <= room + 1e-9; count += 1)
      best = Math.max(best, count * piece.worth + visit(k + 1, room - count * (piece.length + asked.kerf)));
    return best;
  };
  return visit(0, capacity + asked.kerf);
}

test("the worth of pieces that cutStock gives is a proof: no length sold yields more than itself", () => {
  for (let seed = 1000; seed < 1000 + cases(40).numRuns; seed += 1) {
    const asked = randomCutting(seed);
    const pieces = asked.pieces.filter(
      (one, i) => asked.pieces.findIndex(({ length }) => length === one.length) === i,
    );
    const cutting = cutStock({ ...asked, pieces });
    for (const length of asked.sold)
      expect(mostWorth(cutting.worth, { ...asked, pieces }, length)).toBeLessThanOrEqual(length + 1e-4);
  }
});

/** Gilmore and Gomory's kind of example in a textbook: raws of 100, 453 of them the least (chvatal-1983, from memory). */
test("cutStock solves the published example with 453 raws of 100, and proves it", () => {
  const pieces = [
    [45, 97],
    [36, 610],
    [31, 395],
    [14, 211],
  ].map(([length, count]) => ({ length: length!, count: count! }));
  const cutting = cutStock({ pieces, sold: [100], leftovers: [], kerf: 0 });
  expect(cutting.bars.length).toBe(453);
  expect(cutting).toMatchObject({ isProven: true, bought: 45300, bound: 45300, uncut: [] });
});

/** A paper mill's orders, rolls of 5600 mm: 73 the least (paper-mill-example, from memory). */
test("cutStock solves the published example of a paper mill with 73 rolls, and proves it", () => {
  const orders = [
    1380, 22, 1520, 25, 1560, 12, 1710, 14, 1820, 18, 1880, 18, 1930, 20, 2000, 10, 2050, 12, 2100, 14,
  ];
  orders.push(2140, 16, 2150, 18, 2200, 20);
  const pieces = orders.flatMap((length, i) =>
    i % 2 === 0 ? [{ length: length / 1000, count: orders[i + 1]! }] : [],
  );
  const cutting = cutStock({ pieces, sold: [5.6], leftovers: [], kerf: 0 });
  expect(cutting.bars.length).toBe(73);
  expect(cutting.isProven).toBe(true);
  requireCut({ pieces, sold: [5.6], leftovers: [], kerf: 0 }, cutting);
});
