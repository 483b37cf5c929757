import { expect, it } from "vitest";
import { randomFrom } from "../../../packages/hydraulics/src/numerics/random.js";
import { searchSpace } from "../../../packages/hydraulics/src/search/branch-and-bound.js";
import { searchByForce } from "../../../packages/hydraulics/src/search/brute-force.js";
import { compareBy } from "../../../packages/hydraulics/src/search/cost.js";
import { loadCaseFiles } from "../case-file.js";
import { Givens } from "../figures.js";
import { networkOf } from "../questions/least-cost.js";
import { type FedNetwork, headsWith, keepsHeads, lossIn, spaceOf } from "./fed-network.js";
import { boundByFlowBoxes } from "./flow-boxes.js";
import { flowsIn, ringFlowsOf } from "./ring-flows.js";

/** Two rings of eight pipes; without the last, or the last two, one ring and a tree. */
const PIPES = [
  [0, 1],
  [1, 2],
  [1, 3],
  [3, 4],
  [3, 5],
  [5, 6],
  [2, 4],
  [6, 4],
] as const;
/** More of them: `HEADFALL_CASES=500 npx vitest run --config tests/vitest.config.ts --project node tests/published/least-cost`. */
const CASES = Number(process.env["HEADFALL_CASES"] ?? 12);
/** All flows in one box: so wide that the bound points at choices that do not work, and the search must divide. */
const COARSE = 1;
const compare = compareBy("money");

/** A network with two or three sizes whose prices mostly rise with the bore. */
function drawNetwork(seed: number): FedNetwork {
  const random = randomFrom(seed);
  const between = (least: number, most: number) => least + (most - least) * random.uniform();
  const rings = seed % 3;
  const count = seed % 4 === 0 && rings === 0 ? 3 : 2;
  return {
    leastHead: [100, ...Array.from({ length: 6 }, () => between(60, 85))],
    draw: [0, ...Array.from({ length: 6 }, () => between(0, 0.05))],
    pipes: PIPES.slice(0, 6 + rings).map(([from, to]) => ({
      from,
      to,
      length: between(200, 1000),
      coefficient: 130,
    })),
    sizes: Array.from({ length: count }, () => {
      const bore = between(0.12, 0.35);
      return { bore, price: bore ** 1.5 * between(250, 350) };
    }),
  };
}

it("the search with the bound by boxes of flows finds what judging every choice of sizes finds", () => {
  const tally = { works: 0, none: 0, plans: 0, judged: 0 };
  for (let seed = 1; seed <= CASES; seed += 1) {
    const network = drawNetwork(seed);
    const space = spaceOf(network);
    const works = keepsHeads(network);
    const bound = boundByFlowBoxes(network, space, seed % 2 === 0 ? undefined : COARSE);
    const searched = searchSpace({ space, bound, compare, works, mayGoOn: () => true, mostParts: 1e4 });
    const forced = searchByForce({ space, compare, works });
    expect([seed, searched.proven, searched.found?.cost.money]).toEqual([
      seed,
      true,
      forced.found && expect.closeTo(forced.found.cost.money, 6),
    ]);
    tally[forced.found === undefined ? "none" : "works"] += 1;
    tally.plans += forced.plans;
    tally.judged += searched.judged;
  }
  // Both outcomes are met, the search has to divide, and most choices are never judged.
  expect(tally.works).toBeGreaterThan(2);
  expect(tally.none).toBeGreaterThan(2);
  expect(tally.judged).toBeGreaterThan(tally.works);
  expect(tally.judged).toBeLessThan(tally.plans / 10);
});

it("the tree that is left of the published network without its closing pipes gets what its branches need, found one by one", () => {
  const { cases } = loadCaseFiles().find(({ file }) => file.source === "alperovits-shamir-1977")!.file;
  const whole = networkOf(new Givens(cases.find(({ question }) => question === "leastCost")!.given));
  const network = { ...whole, pipes: whole.pipes.filter((_, k) => !CLOSING.has(k)) };
  const space = spaceOf(network);
  const searched = searchSpace({
    space,
    bound: boundByFlowBoxes(network, space),
    compare,
    works: keepsHeads(network),
    mayGoOn: () => true,
    mostParts: 1e3,
  });
  expect(searched.proven).toBe(true);
  expect(searched.found?.cost.money).toBeCloseTo(cheapestBelow(network, 0, network.leastHead[0]!), 6);
});

/** Pipes 4-5 and 7-5, which carry least: point 5 is then fed by way of point 3 alone. */
const CLOSING = new Set([3, 7]);

/**
 * Least cost of all pipes beyond a point of a tree at a given head there: what is drawn fixes every flow, so that
 * branches that part ways ask nothing of one another. Every size of every pipe is tried.
 */
function cheapestBelow(network: FedNetwork, point: number, head: number): number {
  const drawnFrom = (p: number): number =>
    network.pipes.reduce((sum, { from, to }) => (from === p ? sum + drawnFrom(to) : sum), network.draw[p]!);
  return network.pipes.reduce((sum, { from, to, length }, k) => {
    if (from !== point) return sum;
    const costs = network.sizes.map(({ price }, size) => {
      const beyond = head - lossIn(network, k, size, drawnFrom(to));
      return beyond < network.leastHead[to]!
        ? Number.POSITIVE_INFINITY
        : price * length + cheapestBelow(network, to, beyond);
    });
    return sum + Math.min(...costs);
  }, 0);
}

it("heads of the solver agree with losses at flows that meet at every point", () => {
  for (let seed = 1; seed <= CASES; seed += 1) {
    const network = drawNetwork(seed);
    const heads = headsWith(
      network,
      network.pipes.map((_, k) => k % 2),
    );
    const flows = ringFlowsOf(network);
    const closing = network.pipes.slice(6).map((_, ring) => flowThrough(network, heads, 6 + ring));
    const states = flowsIn(flows, { middle: closing, half: closing.map(() => 0) });
    for (const [k, { from, to }] of network.pipes.entries())
      expect(lossIn(network, k, k % 2, states[k]![0])).toBeCloseTo(heads[from]! - heads[to]!, 5);
  }
});

/** Flow of a pipe by the heads at its ends, by halving. */
function flowThrough(network: FedNetwork, heads: readonly number[], pipe: number): number {
  const { from, to } = network.pipes[pipe]!;
  const lost = heads[from]! - heads[to]!;
  let [low, high] = [-1, 1];
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (lossIn(network, pipe, pipe % 2, middle) < lost) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
