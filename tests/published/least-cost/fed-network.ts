import { headLossHazenWilliams } from "../../../packages/hydraulics/src/physics/hazen-williams.js";
import { costOfPipe, NO_COST } from "../../../packages/hydraulics/src/search/cost.js";
import type { CureSpace, Picks } from "../../../packages/hydraulics/src/search/cure-space.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import { solveNetwork } from "../../../packages/hydraulics/src/solve/solve-network.js";
import { makeLine } from "../../arbitraries/make-line.js";

/** A pipe whose size is looked for. */
export interface OpenPipe {
  readonly from: number;
  readonly to: number;
  /** [m] */
  readonly length: number;
  /** Hazen-Williams C [-]. */
  readonly coefficient: number;
}

/** A size that may be laid: bore [m], price per metre. */
export interface Size {
  readonly bore: number;
  readonly price: number;
}

/**
 * A network fed from point 0 alone, with fixed draws: which sizes cost least, so that every point keeps its least
 * head? Pipes stand in an order in which each starts at a point that an earlier one has reached.
 */
export interface FedNetwork {
  /** By point [m above datum]; that of point 0 is the head of the source. */
  readonly leastHead: readonly number[];
  /** By point [m³/s]. */
  readonly draw: readonly number[];
  readonly pipes: readonly OpenPipe[];
  readonly sizes: readonly Size[];
}

/** What a pipe of the network loses in one of the sizes [m], with the sign of the flow. */
export function lossIn({ pipes, sizes }: FedNetwork, pipe: number, size: number, flow: number): number {
  const { length, coefficient } = pipes[pipe]!;
  return headLossHazenWilliams({ length, coefficient, bore: sizes[size]!.bore }, flow);
}

/**
 * All ways to size a network, as the search for cures sees the ways to change a plan. There is no plan behind it:
 * neither the search nor what a choice costs asks for one.
 */
export function spaceOf({ pipes, sizes }: FedNetwork): CureSpace {
  const shelf = sizes.map(({ price }, k) => ({ pipe: `size ${k}`, price, onHand: 0 }));
  return {
    plan: { headfall: 1, sources: [], points: [], runs: [] } as unknown as CureSpace["plan"],
    spent: NO_COST,
    sources: [],
    runs: pipes.map(({ length }, run) => ({
      run,
      id: `pipe ${run + 1}`,
      length,
      options: shelf.map((size) => ({ pipe: size.pipe, shelf: size, cost: costOfPipe(size, [length]) })),
    })),
  };
}

/** Heads by point with the sizes picked [m above datum], by the library's own solver of rings. */
export function headsWith({ leastHead, draw, pipes, sizes }: FedNetwork, picks: Picks): number[] {
  const laid = pipes.map(({ coefficient, ...pipe }, k) => ({
    ...pipe,
    hazenWilliams: coefficient,
    bore: sizes[picks[k]!]!.bore,
  }));
  const line = makeLine({ heights: leastHead.map(() => 0), pipes: laid, drinkers: [], sources: [0] });
  const { network, work } = prepareLine(line, "hazenWilliams").current;
  const { point } = network.topology;
  const demand = {
    rootHead: Float64Array.of(leastHead[0]!),
    working: new Int32Array(0),
    draw: Float64Array.from(point, (p) => draw[p]!),
  };
  if (!solveNetwork(network, demand, work).solved) throw new Error(`not solved with sizes ${picks.join()}`);
  const heads = leastHead.map(() => Number.NaN);
  point.forEach((p, node) => {
    heads[p] = work.head[node]!;
  });
  return heads;
}

/** Whether every point keeps its least head with the sizes picked. */
export const keepsHeads =
  (network: FedNetwork) =>
  (picks: Picks): boolean =>
    headsWith(network, picks).every((head, p) => head >= network.leastHead[p]!);
