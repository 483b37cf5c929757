import type { Demand, Network } from "./network.js";
import type { Workspace } from "./workspace.js";

/** Energy may be off by this much when the loop stops [m]; the bar for the returned solution is a hundred times wider. */
export const ENERGY_TOLERANCE = 1e-9;
/**
 * Energy good enough when it no longer falls [m]. In a ring of short wide pipe a change of flow hardly changes any
 * head, and the last digits of the flows wander; a quarter of the bar.
 */
const SETTLED_TOLERANCE = 2.5e-8;
/** Steps after which the loop gives up and says so. */
export const MOST_STEPS = 200;

/**
 * Largest energy left over at the trial flows [m]: heads of the linear step against the laws at the flows it led to,
 * over every edge and every drinker at work. A shut drinker counts only as far as its node has head to open it.
 */
export function energyLeft(network: Network, demand: Demand, work: Workspace): number {
  const { topology, drinkers } = network;
  const { nodeCount, rootCount, parent, chordCount, chordFrom, chordTo } = topology;
  const { head, trialLoss, trialDrinkerLoss, trialDrinkerFlow } = work;
  let worst = 0;
  for (let i = rootCount; i < nodeCount; i += 1) {
    const left = Math.abs(head[parent[i]] - head[i] - trialLoss[i]);
    worst = Math.max(worst, left);
  }
  for (let c = 0; c < chordCount; c += 1) {
    const left = Math.abs(head[chordFrom[c]] - head[chordTo[c]] - trialLoss[nodeCount + c]);
    worst = Math.max(worst, left);
  }
  const { working } = demand;
  for (let w = 0; w < working.length; w += 1) {
    const d = working[w];
    const gap = head[drinkers.node[d]] - drinkers.start[d] - trialDrinkerLoss[d];
    const left = trialDrinkerFlow[d] > 0 ? Math.abs(gap) : Math.max(0, gap);
    worst = Math.max(worst, left);
  }
  return worst;
}

/** Whether the loop may stop: the energy is right, or right enough and no longer getting better. */
export function hasSettled(left: number, leftBefore: number): boolean {
  return left <= ENERGY_TOLERANCE || (left <= SETTLED_TOLERANCE && left > 0.3 * leftBefore);
}
