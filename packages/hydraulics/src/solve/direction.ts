import { drinkerFlowAt, LEAST_REACH } from "./laws/drinker-laws.js";
import type { Demand, Network } from "./network.js";
import type { Workspace } from "./workspace.js";

/**
 * How strongly each drinker answers to head in this step.
 *
 * A drinker that flows is linearised where it stands (the global gradient method's own step) unless that tangent
 * would more than treble its flow: then the chord to the flow it would have at the present head is taken, because
 * the tangent of a root law near zero flow is nearly flat and overshoots without bound. A shut drinker whose node has
 * head to spare opens along the same chord; without head it stays shut. No tangent is steeper than the law is over its
 * first hair of head. Chords and bounds only shape the step: they vanish as
 * the flows settle, and the solution is the law's own.
 */
export function linearizeDrinkers(network: Network, demand: Demand, work: Workspace): void {
  const { drinkers } = network;
  const { conductance, drinkerFlow, drinkerLoss, drinkerSlope, head } = work;
  const { greatestConductance } = drinkers;
  const { working } = demand;
  for (let w = 0; w < working.length; w += 1) {
    const d = working[w];
    const q = drinkerFlow[d];
    const spare = head[drinkers.node[d]] - drinkers.start[d];
    const gap = spare - drinkerLoss[d];
    if (q > 0 && gap < 3 * q * drinkerSlope[d]) {
      conductance[d] = Math.min(1 / drinkerSlope[d], greatestConductance[d]);
      continue;
    }
    const reach = Math.max(gap, LEAST_REACH);
    const target = drinkerFlowAt(drinkers, d, drinkerLoss[d] + reach);
    conductance[d] = target > q && gap > 0 ? (target - q) / reach : 0;
  }
}

/**
 * Flows of the drinkers after the step, from the heads of the linear solve; a drinker never runs backwards.
 */
export function stepDrinkers(network: Network, demand: Demand, work: Workspace): void {
  const { drinkers } = network;
  const { working } = demand;
  const { conductance, drinkerFlow, trialDrinkerFlow, drinkerLoss, head } = work;
  for (let w = 0; w < working.length; w += 1) {
    const d = working[w];
    const q = drinkerFlow[d] + conductance[d] * (head[drinkers.node[d]] - drinkers.start[d] - drinkerLoss[d]);
    trialDrinkerFlow[d] = Math.max(0, q);
  }
}

/** Flow of every tree edge as the sum of all that is drawn beyond it: continuity holds to the last bit of the sum. */
export function sumFlows(network: Network, demand: Demand, work: Workspace): void {
  const { topology, drinkers } = network;
  const { nodeCount, rootCount, parent, chordCount, chordFrom, chordTo } = topology;
  const { working } = demand;
  const { trialFlow, trialDrinkerFlow } = work;
  if (demand.draw === undefined) trialFlow.fill(0, 0, nodeCount);
  else trialFlow.set(demand.draw);
  for (let w = 0; w < working.length; w += 1)
    trialFlow[drinkers.node[working[w]]] += trialDrinkerFlow[working[w]];
  for (let c = 0; c < chordCount; c += 1) {
    const q = trialFlow[nodeCount + c];
    trialFlow[chordFrom[c]] += q;
    trialFlow[chordTo[c]] -= q;
  }
  // Carried along as in `solveTreeHeads`.
  let beyond = trialFlow[nodeCount - 1];
  for (let i = nodeCount - 1; i >= rootCount; i -= 1) {
    const p = parent[i];
    const above = trialFlow[p] + beyond;
    trialFlow[p] = above;
    beyond = p === i - 1 ? above : trialFlow[i - 1];
  }
}
