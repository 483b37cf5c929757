import { dampStep, evaluateTrial, overshoots } from "./damping.js";
import { linearizeDrinkers, stepDrinkers, sumFlows } from "./direction.js";
import { drinkerFlowAt } from "./laws/drinker-laws.js";
import { solveLoopHeads } from "./loop-step.js";
import type { Demand, Network } from "./network.js";
import { ENERGY_TOLERANCE, energyLeft, hasSettled, MOST_STEPS } from "./stopping.js";
import { matchDrinkersToPipes, solveTreeHeads } from "./tree-step.js";
import { acceptTrial, type Workspace } from "./workspace.js";

/** Steps after which an energy that no longer falls is put down to rounding in a stiff pair of laws. */
const STIFF_AFTER = 8;
/** Energy left [m] above which the heads are not nearly right yet, so that rounding cannot be what holds it up. */
const STIFF_ENERGY = 10;
/** How often drinkers that run dry may be shut at one stroke. */
const MOST_SHUTTINGS = 20;

export interface Effort {
  readonly solved: boolean;
  readonly steps: number;
  readonly evaluations: number;
  /** Energy left over at the last step [m]. */
  readonly left: number;
}

/**
 * Flows and heads of one network, by the global gradient method (Todini and Pilati 1988) on the convex content of its
 * laws, with drinkers as laws of head. Flows satisfy continuity at every step; each step is a Newton step on the
 * energy, taken whole where it goes downhill and shortened where it would overshoot. Starts from the state the
 * workspace holds when it is warm.
 *
 * The answer is left in `work.flow`, `work.drinkerFlow` and `work.head`.
 */
export function solveNetwork(network: Network, demand: Demand, work: Workspace): Effort {
  // Phase 0: a state to start from, its flows in balance.
  if (!work.warm) startCold(network, demand, work);
  else startWarm(demand, work);
  sumFlows(network, demand, work);
  evaluateTrial(network, demand, work);
  acceptTrial(work);
  let evaluations = 1;
  let left = Number.POSITIVE_INFINITY;
  let isStiff = false;
  let shuttings = 0;

  for (let step = 1; step <= MOST_STEPS; step += 1) {
    // Phase 1: direction. Linearise every law at the present flows; solve for heads; flows follow.
    if (!takeDirection(network, demand, work, isStiff)) {
      work.warm = false;
      return { solved: false, steps: step, evaluations, left };
    }
    evaluations += 1;

    // Phase 2: stop when the laws at the new flows agree with the heads that led to them.
    const leftBefore = left;
    left = energyLeft(network, demand, work);
    if (hasSettled(left, leftBefore)) {
      acceptTrial(work);
      work.warm = true;
      return { solved: true, steps: step, evaluations, left };
    }
    isStiff = step > STIFF_AFTER && left < STIFF_ENERGY && (isStiff || left > 0.3 * leftBefore);

    // Phase 3: damping. A step that more than halves what was left is taken whole; any other is held against the
    // content function, and as much of it is taken as goes downhill.
    if (!(left < 0.5 * leftBefore)) {
      if (overshoots(network, demand, work) && shuttings < MOST_SHUTTINGS && shutDrying(demand, work)) {
        shuttings += 1;
        sumFlows(network, demand, work);
        evaluateTrial(network, demand, work);
        evaluations += 1;
        acceptTrial(work);
        continue;
      }
      const cuts = dampStep(network, demand, work);
      evaluations += cuts;
      if (cuts > 0 && energyLeft(network, demand, work) <= ENERGY_TOLERANCE) {
        acceptTrial(work);
        work.warm = true;
        return { solved: true, steps: step, evaluations, left: ENERGY_TOLERANCE };
      }
    }
    acceptTrial(work);
  }
  work.warm = false;
  return { solved: false, steps: MOST_STEPS, evaluations, left };
}

/** The whole step, left as the trial; false where the heads of a network with rings cannot be solved. */
function takeDirection(network: Network, demand: Demand, work: Workspace, isStiff: boolean): boolean {
  linearizeDrinkers(network, demand, work);
  if (network.topology.pattern === undefined) solveTreeHeads(network, demand, work);
  else if (!solveLoopHeads(network, demand, work)) return false;
  stepDrinkers(network, demand, work);
  if (isStiff) matchStiff(network, demand, work);
  sumFlows(network, demand, work);
  evaluateTrial(network, demand, work);
  return true;
}

/**
 * Shuts at one stroke the drinkers that the step would run backwards, all others keeping their flow: cut short with
 * the whole step, they would creep towards nothing and hold everything up. One shut too soon opens again.
 *
 * @returns whether there were any
 */
function shutDrying({ working }: Demand, work: Workspace): boolean {
  const { drinkerFlow, trialDrinkerFlow } = work;
  let areAny = false;
  for (let w = 0; w < working.length; w += 1) {
    const d = working[w];
    if (trialDrinkerFlow[d] === 0 && drinkerFlow[d] > 0) areAny = true;
  }
  if (!areAny) return false;
  for (let w = 0; w < working.length; w += 1) {
    const d = working[w];
    if (trialDrinkerFlow[d] > 0) trialDrinkerFlow[d] = drinkerFlow[d];
  }
  work.trialFlow.set(work.flow);
  return true;
}

/**
 * Flows as the pipes deliver them, where heads are too coarse to tell. In a network with rings the chords keep the
 * flows of the step, and the tree between them is solved once more on its own.
 */
function matchStiff(network: Network, demand: Demand, work: Workspace): void {
  const { nodeCount, chordCount, chordFrom, chordTo } = network.topology;
  if (chordCount === 0) {
    matchDrinkersToPipes(network, demand, work);
    return;
  }
  const draw = work.chordDraw;
  if (demand.draw === undefined) draw.fill(0);
  else draw.set(demand.draw);
  for (let c = 0; c < chordCount; c += 1) {
    draw[chordFrom[c]] += work.trialFlow[nodeCount + c];
    draw[chordTo[c]] -= work.trialFlow[nodeCount + c];
  }
  solveTreeHeads(network, demand, work, draw);
  stepDrinkers(network, demand, work);
  matchDrinkersToPipes(network, demand, work, draw);
}

/** Every drinker at work passes what it would with no friction at all: the most it ever can. */
function startCold(network: Network, demand: Demand, work: Workspace): void {
  const { topology, drinkers } = network;
  let highest = Number.NEGATIVE_INFINITY;
  for (let r = 0; r < topology.rootCount; r += 1) highest = Math.max(highest, demand.rootHead[r]);
  work.head.fill(highest);
  work.trialDrinkerFlow.fill(0);
  for (let w = 0; w < demand.working.length; w += 1) {
    const d = demand.working[w];
    work.trialDrinkerFlow[d] = drinkerFlowAt(drinkers, d, highest - drinkers.start[d]);
  }
  work.drinkerFlow.set(work.trialDrinkerFlow);
  work.trialFlow.fill(0);
}

/** The last solution, with the drinkers that no longer work shut. */
function startWarm(demand: Demand, work: Workspace): void {
  const { drinkerFlow, trialDrinkerFlow } = work;
  trialDrinkerFlow.fill(0);
  for (let w = 0; w < demand.working.length; w += 1)
    trialDrinkerFlow[demand.working[w]] = drinkerFlow[demand.working[w]];
  drinkerFlow.set(trialDrinkerFlow);
  work.trialFlow.set(work.flow);
}
