import { createHeap } from "../../../packages/hydraulics/src/numerics/heap.js";
import { type CureSpace, costOf, type Picks } from "../../../packages/hydraulics/src/search/cure-space.js";
import type { Domains } from "../../../packages/hydraulics/src/search/fronts.js";
import type { BoundFinder } from "../../../packages/hydraulics/src/search/relaxed.js";
import { type FedNetwork, lossIn } from "./fed-network.js";
import {
  type FlowBox,
  flowsIn,
  halve,
  type RingFlows,
  ringFlowsOf,
  wholeBox,
  widthOf,
} from "./ring-flows.js";

/** Rounding of heads [m]: a plan that misses by so little is not left out. */
const SLACK = 1e-6;
/** A box is divided until it is this share of all that is drawn. */
const SMALL = 1 / 250;

/** By pipe and size: what is lost at the least and at the greatest flow of a box [m]. */
interface BoxLosses {
  readonly least: readonly (readonly number[])[];
  readonly most: readonly (readonly number[])[];
}

interface Sizing {
  readonly network: FedNetwork;
  readonly losses: BoxLosses;
  /** By pipe and size. */
  readonly money: readonly (readonly number[])[];
}

/**
 * A lower bound on what a network with rings and fixed draws must cost, whatever way water goes in it.
 *
 * The flows of any plan are fixed by those in the pipes that close rings, and lie in one box of a division of all
 * there can be. In a box every pipe's flow lies between two figures, and so does its loss in each size, since losses
 * rise with flow. A plan whose flows lie in the box has heads that fit these, so the cheapest sizes for which heads
 * can be found that fit, and that are nowhere under the least, cost no more than it does. The least over all boxes
 * bounds all plans. The box with the least is divided, until it is small; with no rings there is but one.
 *
 * @param small  half the width of a small box, as a share of all that is drawn: with any share it is a bound, with a
 *               lesser one a better bound
 */
export function boundByFlowBoxes(network: FedNetwork, space: CureSpace, small = SMALL): BoundFinder {
  const flows = ringFlowsOf(network);
  const money = space.runs.map(({ options }) => options.map(({ cost }) => cost.money));
  return (domains, below) => {
    const byMoney = domains.map((domain, k) => [...domain].sort((a, b) => money[k]![a]! - money[k]![b]!));
    const queue = createHeap<{ box: FlowBox; money: number; picks: Picks }>((a, b) => a.money < b.money);
    const enter = (box: FlowBox) => {
      const sizing = { network, money, losses: lossesIn(network, flows, box) };
      const least = cheapestSizes(sizing, byMoney, below?.money ?? Number.POSITIVE_INFINITY);
      if (least !== undefined) queue.push({ box, ...least });
    };
    enter(wholeBox(flows));
    for (let one = queue.pop(); one !== undefined; one = queue.pop()) {
      if (widthOf(one.box) <= small * flows.most) return { cost: costOf(space, one.picks), picks: one.picks };
      for (const half of halve(one.box)) enter(half);
    }
    return undefined;
  };
}

function lossesIn(network: FedNetwork, flows: RingFlows, box: FlowBox): BoxLosses {
  const between = flowsIn(flows, box);
  const at = (end: 0 | 1) =>
    between.map((ends, k) => network.sizes.map((_, size) => lossIn(network, k, size, ends[end])));
  return { least: at(0), most: at(1) };
}

/**
 * The cheapest sizes, dearer ones than `below` left out, for which a head between two figures is left at every point:
 * each pipe in turn hands on what it may lose at most and least, and where two ways meet both must be met.
 */
function cheapestSizes(
  sizing: Sizing,
  whole: Domains,
  below: number,
): { readonly money: number; readonly picks: Picks } | undefined {
  const { network, losses, money } = sizing;
  const { leastHead, pipes } = network;
  const domains = withoutHopeless(sizing, whole);
  if (domains.some((domain) => domain.length === 0)) return undefined;
  // The cheapest that this pipe and all after it can cost.
  const rest = [...pipes.map(() => 0), 0];
  for (let k = pipes.length - 1; k >= 0; k -= 1) rest[k] = rest[k + 1]! + money[k]![domains[k]![0]!]!;
  const low = [...leastHead];
  const high = leastHead.map((head, p) => (p === 0 ? head : Number.POSITIVE_INFINITY));
  const now: number[] = [];
  let best: { money: number; picks: Picks } | undefined;
  const choose = (k: number, spent: number): void => {
    if (k === pipes.length) {
      best = { money: spent, picks: [...now] };
      return;
    }
    const { from, to } = pipes[k]!;
    const [lowBefore, highBefore] = [low[to]!, high[to]!];
    for (const size of domains[k]!) {
      const sum = spent + money[k]![size]!;
      if (sum + rest[k + 1]! >= (best?.money ?? below)) break;
      low[to] = Math.max(lowBefore, low[from]! - losses.most[k]![size]!);
      high[to] = Math.min(highBefore, high[from]! - losses.least[k]![size]!);
      if (low[to] > high[to] + SLACK) continue;
      now[k] = size;
      choose(k + 1, sum);
    }
    [low[to], high[to]] = [lowBefore, highBefore];
  };
  choose(0, 0);
  return best;
}

/** Passes over the pipes in which highest heads are lowered; a second one catches what rings pass back. */
const PASSES = 2;

/** The domains without sizes that lose too much, at the highest head their first end can have; it only saves time. */
function withoutHopeless({ network, losses }: Sizing, whole: Domains): Domains {
  const { leastHead, pipes } = network;
  const top = leastHead.map((head, p) => (p === 0 ? head : Number.POSITIVE_INFINITY));
  const domains = [...whole];
  for (let pass = 0; pass < PASSES; pass += 1) {
    for (const [k, { from, to }] of pipes.entries()) {
      const [least, most] = [losses.least[k]!, losses.most[k]!];
      domains[k] = domains[k]!.filter(
        (size) =>
          top[from]! - least[size]! >= leastHead[to]! - SLACK &&
          leastHead[from]! - most[size]! <= top[to]! + SLACK,
      );
      top[to] = Math.min(top[to]!, top[from]! - Math.min(...domains[k]!.map((size) => least[size]!)));
      top[from] = Math.min(top[from]!, top[to]! + Math.max(...domains[k]!.map((size) => most[size]!)));
    }
  }
  return domains;
}
