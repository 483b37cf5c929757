import { expect, it } from "vitest";
import {
  askedByBoth,
  asksNoMore,
  headAsked,
  NOTHING_ASKED,
  serve,
} from "../../../packages/hydraulics/src/search/asked.js";
import type { Asks } from "../../../packages/hydraulics/src/search/demand-forest.js";
import { makeLine } from "../../arbitraries/make-line.js";

/** By each of two laws: head for those at work, head for one more bird, flow. */
const [A, B] = [
  [5, 4, 1, 6, 3, 2],
  [4, 4.5, 2, 7, 2, 3],
];

it("askedByBoth asks the greater head of two parts and the flow of both, by each law", () => {
  expect(askedByBoth(A, B)).toEqual([5, 4.5, 3, 7, 3, 5]);
  expect(askedByBoth(A, NOTHING_ASKED)).toEqual(A);
});

it("headAsked is the greatest head by any law, for those at work or one bird more", () => {
  expect([headAsked(A), headAsked(B), headAsked([1, 9, 50, 2, 3, 50])]).toEqual([6, 7, 9]);
  expect(headAsked(NOTHING_ASKED)).toBe(Number.NEGATIVE_INFINITY);
});

it("asksNoMore where no figure of either law is greater", () => {
  expect([asksNoMore(A, A), asksNoMore(A, B), asksNoMore(NOTHING_ASKED, A)]).toEqual([true, false, true]);
  A.forEach((_, k) => {
    const less = A.map((figure, j) => (j === k ? figure - 1 : figure));
    expect([asksNoMore(less, A), asksNoMore(A, less)]).toEqual([true, false]);
  });
});

it("serve adds the drinkers of a node: the head that serves all of them, and what those at work draw at it", () => {
  const { drinkers } = makeLine({
    heights: [0, 0],
    pipes: [{ from: 0, to: 1, length: 1 }],
    drinkers: [0, 1].map(() => ({ point: 1, coefficient: 1e-5, drop: -0.2 })),
    sources: [0],
  });
  const asks = (atWork: Asks["atWork"][0], idle: Asks["idle"][0]): Asks => ({
    ...{ atWork: [atWork], idle: [idle], held: [Number.POSITIVE_INFINITY] },
    ...{ oneMore: 1e-6, stand: 0, most: 9 },
  });
  const working = { drinker: 0, height: 0.2, head: 0.49 };
  const idle = { drinker: 1, height: 0.2, head: 0.81 };
  const served = (of: Asks) => {
    const asked = [...NOTHING_ASKED];
    serve(drinkers, of, 0, asked);
    return asked.slice(0, 3);
  };
  const [need, probe, flow] = served(asks([working], []));
  expect([need, probe]).toEqual([0.69, Number.NEGATIVE_INFINITY]);
  expect(flow! / 7e-6).toBeCloseTo(1, 12);
  // For a bird at the other 1.01 m must stand there, and the one at work draws as much as that drives.
  const both = served(asks([working], [idle]));
  expect(both.slice(0, 2)).toEqual([1.01, 1.01]);
  expect(both[2]! / 9e-6).toBeCloseTo(1, 12);
  expect(served(asks([], []))).toEqual(NOTHING_ASKED.slice(0, 3));
});
