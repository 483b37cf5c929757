import type { Network } from "./network.js";

/**
 * Every buffer a solve needs, made once per network and used again: nothing is allocated inside the loop. What is
 * left in `flow`, `drinkerFlow` and `head` by one solve is where the next one starts.
 */
export interface Workspace {
  /** Edges: flow now and at the end of the step, loss and slope at `flow`. */
  flow: Float64Array;
  trialFlow: Float64Array;
  loss: Float64Array;
  slope: Float64Array;
  trialLoss: Float64Array;
  trialSlope: Float64Array;
  /** Drinkers: likewise; `conductance` is the flow a drinker answers with per metre of head in this step. */
  drinkerFlow: Float64Array;
  trialDrinkerFlow: Float64Array;
  drinkerLoss: Float64Array;
  drinkerSlope: Float64Array;
  trialDrinkerLoss: Float64Array;
  trialDrinkerSlope: Float64Array;
  readonly conductance: Float64Array;
  /** Nodes: head by the last linear step; a subtree's draw as `nodeConductance` * head + `nodeDraw`. */
  readonly head: Float64Array;
  readonly nodeConductance: Float64Array;
  readonly nodeDraw: Float64Array;
  /** Share of a subtree's answer that its pipe lets through: 1 / (1 + conductance * slope). */
  readonly through: Float64Array;
  /** `nodeConductance` without the roots: the diagonal of the equations of a looped network. */
  readonly unknownDiagonal: Float64Array;
  /** Off-diagonal entries of the equations of a looped network. */
  readonly offDiagonal: Float64Array;
  readonly rightSide: Float64Array;
  /** What nodes pass on through the chords, where the tree of a looped network is solved on its own. */
  readonly chordDraw: Float64Array;
  /** Whether `flow` and `head` hold a state worth starting from. */
  warm: boolean;
}

export function createWorkspace(network: Network): Workspace {
  const { topology, drinkers } = network;
  const edges = () => new Float64Array(topology.segment.length);
  const nodes = () => new Float64Array(topology.nodeCount);
  const outlets = () => new Float64Array(drinkers.count);
  const unknowns = topology.nodeCount - topology.rootCount;
  const nodeConductance = nodes();
  return {
    flow: edges(),
    trialFlow: edges(),
    loss: edges(),
    slope: edges(),
    trialLoss: edges(),
    trialSlope: edges(),
    drinkerFlow: outlets(),
    trialDrinkerFlow: outlets(),
    drinkerLoss: outlets(),
    drinkerSlope: outlets(),
    trialDrinkerLoss: outlets(),
    trialDrinkerSlope: outlets(),
    conductance: outlets(),
    head: nodes(),
    nodeConductance,
    unknownDiagonal: nodeConductance.subarray(topology.rootCount),
    nodeDraw: nodes(),
    through: nodes(),
    offDiagonal: new Float64Array(topology.pattern === undefined ? 0 : topology.pattern.pairCount),
    rightSide: new Float64Array(topology.pattern === undefined ? 0 : unknowns),
    chordDraw: new Float64Array(topology.pattern === undefined ? 0 : topology.nodeCount),
    warm: false,
  };
}

/** A state to start from again and again. */
export type KeptState = Readonly<Pick<Workspace, "flow" | "drinkerFlow" | "head" | "warm">>;

/** A copy of the state that a solve has left. */
export const keepState = ({ flow, drinkerFlow, head, warm }: Workspace): KeptState => ({
  flow: flow.slice(),
  drinkerFlow: drinkerFlow.slice(),
  head: head.slice(),
  warm,
});

/** Lets the next solve start from a state kept of the same network. */
export function startFrom(work: Workspace, { flow, drinkerFlow, head, warm }: KeptState): void {
  work.flow.set(flow);
  work.drinkerFlow.set(drinkerFlow);
  work.head.set(head);
  work.warm = warm;
}

/** Makes the trial state the present one. */
export function acceptTrial(work: Workspace): void {
  [work.flow, work.trialFlow] = [work.trialFlow, work.flow];
  [work.loss, work.trialLoss] = [work.trialLoss, work.loss];
  [work.slope, work.trialSlope] = [work.trialSlope, work.slope];
  [work.drinkerFlow, work.trialDrinkerFlow] = [work.trialDrinkerFlow, work.drinkerFlow];
  [work.drinkerLoss, work.trialDrinkerLoss] = [work.trialDrinkerLoss, work.drinkerLoss];
  [work.drinkerSlope, work.trialDrinkerSlope] = [work.trialDrinkerSlope, work.drinkerSlope];
}
