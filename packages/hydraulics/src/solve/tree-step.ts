import type { Demand, Network } from "./network.js";
import type { Workspace } from "./workspace.js";

/**
 * Heads of the linearised network when it is a tree: two sweeps, O(n), no matrix.
 *
 * Upwards each subtree is reduced to its draw as a linear function of the head at its top, Q = G H + S; downwards the
 * heads follow. It is Gaussian elimination of the nodal equations of Todini and Pilati (1988) in the order in which a
 * tree has no fill.
 *
 * @param draw  what is taken out at each node besides the drinkers [m3/s]; that of the demand if left out
 */
// biome-ignore lint/complexity/noExcessiveLinesPerFunction: a kernel; two sweeps that hand numbers from node to node
export function solveTreeHeads(
  network: Network,
  demand: Demand,
  work: Workspace,
  draw: Float64Array | undefined = demand.draw,
): void {
  const { topology, drinkers } = network;
  const { nodeCount, rootCount, parent } = topology;
  const {
    flow,
    loss,
    slope,
    conductance,
    drinkerFlow,
    drinkerLoss,
    head,
    nodeConductance,
    nodeDraw,
    through,
  } = work;
  const { working } = demand;

  // What is drawn at each node itself.
  nodeConductance.fill(0);
  if (draw === undefined) nodeDraw.fill(0);
  else nodeDraw.set(draw);
  for (let w = 0; w < working.length; w += 1) {
    const d = working[w];
    const g = conductance[d];
    const node = drinkers.node[d];
    nodeConductance[node] += g;
    nodeDraw[node] += drinkerFlow[d] - g * (drinkers.start[d] + drinkerLoss[d]);
  }

  // Upwards: the edge's own loss in series, H_parent - H = loss + slope (Q - flow). What was just written for the node
  // that comes next is carried along: on a long line each node waits for the one before, and memory is slow to give back.
  let g = nodeConductance[nodeCount - 1];
  let drawn = nodeDraw[nodeCount - 1];
  for (let i = nodeCount - 1; i >= rootCount; i -= 1) {
    const t = 1 / (1 + g * slope[i]);
    const p = parent[i];
    through[i] = t;
    const conductanceAbove = nodeConductance[p] + g * t;
    const drawAbove = nodeDraw[p] + (drawn - g * (loss[i] - slope[i] * flow[i])) * t;
    nodeConductance[p] = conductanceAbove;
    nodeDraw[p] = drawAbove;
    g = p === i - 1 ? conductanceAbove : nodeConductance[i - 1];
    drawn = p === i - 1 ? drawAbove : nodeDraw[i - 1];
  }

  // Downwards.
  for (let r = 0; r < rootCount; r += 1) head[r] = demand.rootHead[r];
  let last = head[rootCount - 1];
  for (let i = rootCount; i < nodeCount; i += 1) {
    const above = parent[i] === i - 1 ? last : head[parent[i]];
    last = (above - loss[i] + slope[i] * (flow[i] - nodeDraw[i])) * through[i];
    head[i] = last;
  }
}

/**
 * Gives each drinker its share of what the pipes before it deliver, instead of what its own law answers to the head at
 * its node. The two agree but for rounding, which matters where wide drinkers hang beyond a pipe so fine that the last
 * bit of a head is worth more than it can carry. What a node is given too much or too little is passed on to its
 * drinkers and branches by how strongly they answer. After `solveTreeHeads` and `stepDrinkers`.
 *
 * @param draw  as given to `solveTreeHeads`
 */
export function matchDrinkersToPipes(
  network: Network,
  demand: Demand,
  work: Workspace,
  draw: Float64Array | undefined = demand.draw,
): void {
  const { topology, drinkers } = network;
  const { nodeCount, rootCount, parent } = topology;
  const { working } = demand;
  const { flow, loss, slope, conductance, head, nodeConductance, nodeDraw, through } = work;
  const { trialFlow, trialDrinkerFlow } = work;

  // What each edge carries by its own law, and what each node's drinkers and branches take by theirs.
  for (let i = rootCount; i < nodeCount; i += 1) {
    const above = head[parent[i]] - loss[i] + slope[i] * flow[i];
    trialFlow[i] = (nodeConductance[i] * above + nodeDraw[i]) * through[i];
  }
  if (draw === undefined) nodeDraw.fill(0);
  else nodeDraw.set(draw);
  for (let i = nodeCount - 1; i >= rootCount; i -= 1) nodeDraw[parent[i]] += trialFlow[i];
  for (let w = 0; w < working.length; w += 1)
    nodeDraw[drinkers.node[working[w]]] += trialDrinkerFlow[working[w]];

  // Downwards, the difference becomes a change of head at the node, and that a change of what it gives.
  for (let r = 0; r < rootCount; r += 1) nodeDraw[r] = 0;
  for (let i = rootCount; i < nodeCount; i += 1) {
    const delivered = trialFlow[i] + nodeDraw[parent[i]] * nodeConductance[i] * through[i];
    nodeDraw[i] = nodeConductance[i] === 0 ? 0 : (delivered - nodeDraw[i]) / nodeConductance[i];
  }
  for (let w = 0; w < working.length; w += 1) {
    const d = working[w];
    trialDrinkerFlow[d] = Math.max(0, trialDrinkerFlow[d] + nodeDraw[drinkers.node[d]] * conductance[d]);
  }
}
