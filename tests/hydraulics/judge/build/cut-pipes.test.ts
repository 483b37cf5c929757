import { expect, test } from "vitest";
import { cutPipes, piecesOf } from "../../../../packages/hydraulics/src/judge/build/cut-pipes.js";
import { buildLine } from "../../../../packages/hydraulics/src/model/build-line.js";
import type { Line, Run } from "../../../../packages/hydraulics/src/model/line.js";
import { planOf } from "../trouble/ask.js";

/** Pieces of a run with drinkers at these places. */
function lengthsOf(
  length: number,
  longest: number,
  drinkers: readonly number[] = [],
  elsewhere: number[] = [],
) {
  const along = Float64Array.of(...drinkers, ...elsewhere);
  const run = Int32Array.from(along, (_, d) => (d < drinkers.length ? 1 : 0));
  const line = { drinkers: { along, run } } as unknown as Line;
  const pieces = piecesOf(line, { id: "lane", index: 1, length } as Run, longest);
  pieces.forEach((piece, k) => {
    expect(piece).toMatchObject({ run: "lane", part: k + 1, parts: pieces.length });
  });
  expect(pieces.reduce((sum, piece) => sum + piece.length, 0)).toBeCloseTo(length, 6);
  return pieces.map((piece) => piece.length);
}

test("piecesOf cuts a run into what is sold, and leaves one that is no longer than that whole", () => {
  expect(lengthsOf(8, 3)).toEqual([3, 3, 2]);
  expect(lengthsOf(3, 3)).toEqual([3]);
  expect(lengthsOf(6, 3)).toEqual([3, 3]);
  // Nobody says how long it is sold.
  expect(lengthsOf(8, 0)).toEqual([8]);
});

test("piecesOf keeps a joint five centimetres from a drinker, by going back from it", () => {
  expect(lengthsOf(8, 3, [3.02])).toEqual([2.97, 3, 2.03]);
  expect(lengthsOf(8, 3, [2.98])).toEqual([2.93, 3, 2.07]);
  // Past the first there is another, 6 cm before it.
  expect(lengthsOf(8, 3, [2.98, 2.92])).toEqual([2.87, 3, 2.13]);
  expect(lengthsOf(8, 3, [2.95, 3.05])).toEqual([3, 3, 2]);
  expect(lengthsOf(8, 3, [], [3])).toEqual([3, 3, 2]);
});

test("piecesOf cuts at what is sold where drinkers stand too close for a joint in the far half of it", () => {
  const close = Array.from({ length: 24 }, (_, k) => 0.07 * (k + 21));
  expect(lengthsOf(4, 3, close)).toEqual([3, 1]);
  // From 1.75 m on they stand so close: there is room just before.
  const fewer = close.slice(4);
  expect(lengthsOf(4, 3, fewer)).toEqual([1.7, 2.3]);
});

test("piecesOf leaves no stump under ten centimetres, but for what is itself sold that short", () => {
  expect(lengthsOf(6.05, 3)).toEqual([3, 2.95, 0.1]);
  expect(lengthsOf(6.1, 3)).toEqual([3, 3, 0.1]);
  expect(lengthsOf(0.45, 0.2)).toEqual([0.2, 0.2, 0.05]);
});

function pipesOf(more: Record<string, unknown>, kerf = 0) {
  const plan = planOf({
    headfall: 1,
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm" }],
    points: [{ id: "tee", ground: "0 cm", above: "30 cm" }],
    runs: [
      { id: "hose", to: "tee", length: "5 m", pipe: "pvc-sch40-3/4" },
      { id: "left", from: "tee", length: "4 m", pipe: "pvc-sch40-3/4" },
      {
        ...{ id: "right", from: "tee", length: "2 m", pipe: { bore: "9 mm" } },
        drinkers: { kind: "nipple-side-action", count: 1 },
      },
    ],
    ...more,
  });
  const built = buildLine(plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  return cutPipes(plan, built.line, kerf);
}

test("cutPipes takes what is on hand first, buys the rest, and counts on nothing that is on hand in unknown pieces", () => {
  const [main, own] = pipesOf({
    shelf: [
      { pipe: "pvc-sch40-3/4", sold: ["3 m", "6 m"], price: 12, per: "6 m" },
      { pipe: "pvc-sch40-3/4", onHand: "7 m", pieces: ["4 m"] },
    ],
  });
  expect(main).toMatchObject({ needed: 9, sold: [3, 6], soldFrom: "plan", untold: 3, uncut: [] });
  // The lane out of the piece of 4 m, the hose out of a stick of 6: at 2 a metre.
  expect(main!.bars.map(({ from, length, pieces }) => [from, length, pieces.map(({ run }) => run)])).toEqual(
    expect.arrayContaining([
      ["leftover", 4, ["left"]],
      ["sold", 6, ["hose"]],
    ]),
  );
  expect(main!.rests).toBeCloseTo(1, 9);
  expect(main!.price).toBeCloseTo(12, 9);
  expect(own).toMatchObject({ needed: 2, sold: [], soldFrom: undefined, untold: 0, price: undefined });
});

test("cutPipes turns every cut into chips: what is taken is what is cut, left over and sawn away", () => {
  const [main] = pipesOf({ shelf: [{ pipe: "pvc-sch40-3/4", sold: "10 m" }] }, 0.004);
  const { bars, needed, chips, rests, cutting } = main!;
  expect(bars).toHaveLength(1);
  // Two pieces out of one stick, and a rest: two cuts of 4 mm.
  expect(chips).toBeCloseTo(0.008, 6);
  expect(cutting.bought + cutting.leftoverUsed).toBeCloseTo(needed + chips + rests, 6);
});

test("cutPipes goes by what is usual where the plan does not say, and leaves uncut what nothing is long enough for", () => {
  const [main] = pipesOf({});
  expect(main).toMatchObject({ soldFrom: "usual", form: "stick" });
  expect(main!.sold).toHaveLength(1);
  const [, own] = pipesOf({});
  expect(own!.uncut).toEqual([{ run: "right", part: 1, parts: 1, length: 2 }]);
});

test("piecesOf moves a joint for a stump where what is sold is more than two of the least pieces long", () => {
  expect(lengthsOf(0.55, 0.25)).toEqual([0.25, 0.2, 0.1]);
});
