import { lusolve } from "mathjs";
import { randomFrom } from "../../../packages/hydraulics/src/numerics/random.js";
import { sumFlows } from "../../../packages/hydraulics/src/solve/direction.js";
import { evaluateDrinkers } from "../../../packages/hydraulics/src/solve/laws/drinker-laws.js";
import type { Demand, Network } from "../../../packages/hydraulics/src/solve/network.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import type { FrictionLaw } from "../../../packages/hydraulics/src/solve/solution.js";
import { createWorkspace, type Workspace } from "../../../packages/hydraulics/src/solve/workspace.js";
import { type DrawnLine, lineOf } from "../../laws/drawn-lines.js";

export interface LinearStep {
  readonly network: Network;
  readonly demand: Demand;
  readonly work: Workspace;
}

/** A line in the middle of a solve: flows in balance in every pipe and drinker, each law linearised there. */
export function halfWay(drawn: DrawnLine, friction: FrictionLaw, seed: number): LinearStep {
  const { network } = prepareLine(lineOf(drawn), friction).current;
  const { topology, drinkers } = network;
  const random = randomFrom(seed);
  const work = createWorkspace(network);
  const working = Int32Array.from({ length: drinkers.count }, (_, d) => d).filter(
    (d) => drawn.atWork[topology.drinker[d]!],
  );
  work.flow.forEach((_, e) => {
    work.flow[e] = 1e-5 * random.normal();
  });
  for (const d of working) work.drinkerFlow[d] = 1e-6 * (0.2 + random.uniform());
  const draw = new Float64Array(topology.nodeCount).map((_, i) =>
    i >= topology.rootCount && random.uniform() < 0.2 ? 1e-6 : 0,
  );
  const demand = { rootHead: Float64Array.from(drawn.sourceHead), working, draw };
  // Chords carry what was drawn; the tree between them carries what balances that.
  work.trialFlow.set(work.flow);
  work.trialDrinkerFlow.set(work.drinkerFlow);
  sumFlows(network, demand, work);
  work.flow.set(work.trialFlow);
  network.pipes.kernel(network.pipes, work.flow.length, work.flow, work.loss, work.slope);
  evaluateDrinkers(drinkers, working, work.drinkerFlow, work.drinkerLoss, work.drinkerSlope);
  for (const d of working) work.conductance[d] = 1 / work.drinkerSlope[d]!;
  work.head.forEach((_, i) => {
    work.head[i] = random.normal();
  });
  return { network, demand, work };
}

/**
 * Heads of the same linear step from a full matrix: water balance at every node that is no root, each edge and each
 * drinker replaced by its tangent. Written from the definition, solved by mathjs.
 */
export function headsByDenseSolve({ network, demand, work }: LinearStep): number[] {
  const { topology, drinkers } = network;
  const { nodeCount, rootCount, parent, chordCount, chordFrom, chordTo } = topology;
  const matrix = Array.from({ length: nodeCount }, () => new Array<number>(nodeCount).fill(0));
  const right = new Array<number>(nodeCount).fill(0);
  for (let r = 0; r < rootCount; r += 1) {
    matrix[r]![r] = 1;
    right[r] = demand.rootHead[r]!;
  }
  /** Flow out of `node` along an edge: constant + g (H_node - H_other). */
  const leaves = (node: number, other: number, g: number, constant: number) => {
    if (node < rootCount) return;
    matrix[node]![node]! += g;
    matrix[node]![other]! -= g;
    right[node]! -= constant;
  };
  const edge = (e: number, from: number, to: number) => {
    const g = 1 / work.slope[e]!;
    const atNoDrop = work.flow[e]! - g * work.loss[e]!;
    leaves(from, to, g, atNoDrop);
    leaves(to, from, g, -atNoDrop);
  };
  for (let i = rootCount; i < nodeCount; i += 1) edge(i, parent[i]!, i);
  for (let c = 0; c < chordCount; c += 1) edge(nodeCount + c, chordFrom[c]!, chordTo[c]!);
  for (const d of demand.working) {
    const node = drinkers.node[d]!;
    if (node < rootCount) continue;
    const g = work.conductance[d]!;
    matrix[node]![node]! += g;
    right[node]! -= work.drinkerFlow[d]! - g * (drinkers.start[d]! + work.drinkerLoss[d]!);
  }
  for (let i = rootCount; i < nodeCount; i += 1) right[i]! -= demand.draw?.[i] ?? 0;
  return (lusolve(matrix, right) as number[][]).map((row) => row[0]!);
}
