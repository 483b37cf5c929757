import { factorSymmetric, solveSymmetric } from "../numerics/symmetric-solve.js";
import type { Demand, Network } from "./network.js";
import type { Workspace } from "./workspace.js";

/**
 * Hazen-Williams is flat at no flow, and a tangent there overshoots without bound. Where the tangent would more than
 * treble a flow, the slope of the chord to the flow that the gap would drive is taken: with h = r Q^m and Q small that
 * is slope/m (gap / (Q slope/m))^((m-1)/m). It shapes the step only; near the solution tangents are taken again.
 *
 * @param reach  by how many times the tangent would raise the flow: gap / (Q slope)
 */
function liftOutOfCorner(slope: number, reach: number): number {
  return reach <= 3 ? slope : (slope / 1.852) * (1.852 * reach) ** 0.46;
}

/**
 * Heads of the linearised network when it has rings: the nodal equations of Todini and Pilati (1988),
 * (A' D A) dH = A' D (loss - drop), with D the conductances 1/slope; symmetric and positive definite, factored by
 * L D L'. They are solved for the change of the heads, so that what rounding does to short wide pipes (conductances
 * a million times those of their neighbours) shrinks with the change. Chord flows of the step are left in `trialFlow`.
 *
 * @returns false when the equations could not be factored
 */
export function solveLoopHeads(network: Network, demand: Demand, work: Workspace): boolean {
  const { topology, drinkers } = network;
  const { nodeCount, rootCount, parent, chordCount, chordFrom, chordTo, pattern } = topology;
  const { flow, loss, slope, conductance, drinkerLoss, head, offDiagonal, rightSide, trialFlow } = work;
  const { hasCorner, floorFlow } = network.pipes;
  const diagonal = work.nodeConductance;
  const inflow = work.nodeDraw;
  if (pattern === undefined) return false;
  for (let r = 0; r < rootCount; r += 1) head[r] = demand.rootHead[r];

  // Drinkers answer to the head they do not yet use up.
  diagonal.fill(0);
  inflow.fill(0);
  for (let w = 0; w < demand.working.length; w += 1) {
    const d = demand.working[w];
    const node = drinkers.node[d];
    diagonal[node] += conductance[d];
    inflow[node] -= conductance[d] * (head[node] - drinkers.start[d] - drinkerLoss[d]);
  }

  // Each edge changes its flow by (drop - loss + change of the drop) / slope.
  let entry = 0;
  for (let e = rootCount; e < flow.length; e += 1) {
    const from = e < nodeCount ? parent[e] : chordFrom[e - nodeCount];
    const to = e < nodeCount ? e : chordTo[e - nodeCount];
    const gap = head[from] - head[to] - loss[e];
    if (hasCorner) {
      const size = Math.max(Math.abs(flow[e]), floorFlow[e]);
      slope[e] = liftOutOfCorner(slope[e], Math.abs(gap) / (size * slope[e]));
    }
    const g = 1 / slope[e];
    const more = g * gap;
    diagonal[from] += g;
    diagonal[to] += g;
    inflow[from] -= more;
    inflow[to] += more;
    if (from < rootCount || to < rootCount) continue;
    offDiagonal[entry] = -g;
    entry += 1;
  }

  for (let i = rootCount; i < nodeCount; i += 1) rightSide[i - rootCount] = inflow[i];
  if (!factorSymmetric(pattern, work.unknownDiagonal, offDiagonal).ok) return false;
  solveSymmetric(pattern, rightSide);
  for (let i = rootCount; i < nodeCount; i += 1) head[i] += rightSide[i - rootCount];

  for (let c = 0; c < chordCount; c += 1) {
    const e = nodeCount + c;
    trialFlow[e] = flow[e] + (head[chordFrom[c]] - head[chordTo[c]] - loss[e]) / slope[e];
  }
  return true;
}
