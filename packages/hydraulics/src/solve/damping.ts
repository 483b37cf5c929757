import { evaluateDrinkers } from "./laws/drinker-laws.js";
import { addOneWayLosses } from "./laws/one-way.js";
import type { Demand, Network } from "./network.js";
import type { Workspace } from "./workspace.js";

/** Evaluates every law at the trial flows. */
export function evaluateTrial(network: Network, demand: Demand, work: Workspace): void {
  network.pipes.kernel(network.pipes, work.trialFlow.length, work.trialFlow, work.trialLoss, work.trialSlope);
  addOneWayLosses(network.oneWays, work.trialLoss);
  evaluateDrinkers(
    network.drinkers,
    demand.working,
    work.trialDrinkerFlow,
    work.trialDrinkerLoss,
    work.trialDrinkerSlope,
  );
}

/**
 * Slope of the content function along the step from the present flows to the trial flows, at either end.
 *
 * The content is C = sum of the integrals of every loss over its flow, less what the sources give; it is strictly
 * convex and the line's flows are its minimiser, so along a step its slope rises. Where it is still negative (or
 * nearly zero) at the far end, the whole step went downhill.
 */
export function contentSlope(
  network: Network,
  demand: Demand,
  work: Workspace,
  end: "start" | "trial",
): number {
  const { topology, drinkers } = network;
  const { flow, trialFlow, drinkerFlow, trialDrinkerFlow } = work;
  const loss = end === "start" ? work.loss : work.trialLoss;
  const drinkerLoss = end === "start" ? work.drinkerLoss : work.trialDrinkerLoss;
  let slope = 0;
  for (let r = 0; r < topology.rootCount; r += 1) slope -= demand.rootHead[r] * (trialFlow[r] - flow[r]);
  for (let e = topology.rootCount; e < flow.length; e += 1) slope += loss[e] * (trialFlow[e] - flow[e]);
  for (let w = 0; w < demand.working.length; w += 1) {
    const d = demand.working[w];
    slope += (drinkers.start[d] + drinkerLoss[d]) * (trialDrinkerFlow[d] - drinkerFlow[d]);
  }
  return slope;
}

/** A step is taken whole when it still goes downhill at its end, or rises there by less than this share. */
const OVERSHOOT = 0.5;
const MOST_CUTS = 40;

/** Whether the whole step, evaluated, ends well past the minimum along it. */
export function overshoots(network: Network, demand: Demand, work: Workspace): boolean {
  const atStart = contentSlope(network, demand, work, "start");
  return atStart < 0 && contentSlope(network, demand, work, "trial") > -OVERSHOOT * atStart;
}

/**
 * Shortens the trial step until it no longer overshoots the minimum along it: regula falsi on the content's slope.
 * The trial state must be evaluated; it is evaluated again at each cut.
 *
 * @returns cuts made
 */
export function dampStep(network: Network, demand: Demand, work: Workspace): number {
  const atStart = contentSlope(network, demand, work, "start");
  let share = 1;
  for (let cut = 0; cut < MOST_CUTS; cut += 1) {
    const atTrial = contentSlope(network, demand, work, "trial") / share;
    if (!(atTrial > -OVERSHOOT * atStart) || atStart >= 0) return cut;
    const factor = Math.min(0.7, Math.max(0.1, atStart / (atStart - atTrial)));
    shortenTrial(work, factor);
    share *= factor;
    evaluateTrial(network, demand, work);
  }
  return MOST_CUTS;
}

function shortenTrial(work: Workspace, factor: number): void {
  const { flow, trialFlow, drinkerFlow, trialDrinkerFlow } = work;
  for (let e = 0; e < flow.length; e += 1) trialFlow[e] = flow[e] + factor * (trialFlow[e] - flow[e]);
  for (let d = 0; d < drinkerFlow.length; d += 1) {
    trialDrinkerFlow[d] = drinkerFlow[d] + factor * (trialDrinkerFlow[d] - drinkerFlow[d]);
  }
}
