import { SEGMENT_KIND } from "../model/line.js";
import type { Moment } from "../model/moment.js";
import { checkSolution } from "./check-solution.js";
import { demandAt } from "./demand-at.js";
import { devicesToSet, mostRounds, nextSettings, withoutUnfed } from "./device-settings.js";
import { sumFlows } from "./direction.js";
import type { Demand } from "./network.js";
import { lossesOf, type PreparedLine, type SetDevice, useZoning, type Zoning } from "./prepare-line.js";
import type { LineSolution } from "./solution.js";
import { type Effort, solveNetwork } from "./solve-network.js";
import { holdingRegulators, writeState } from "./write-state.js";

/**
 * Heads and flows of a line at one moment. The answer is checked from scratch before it is returned; one that cannot
 * be reached, or fails its check, is the outcome "stalled" with the best state seen.
 *
 * Regulators and one-way valves are found by trial: all start open; a regulator whose outlet would stand above its
 * setting begins to hold, a valve or regulator that water would run back through, or that nothing feeds, shuts. With
 * all other states kept, each such change is one way only, so a few rounds settle it.
 *
 * @example solveLine(prepareLine(line, "darcyWeisbach"), buildMoments(line).named.ordinary).outcome   // "solved"
 */
export function solveLine(prepared: PreparedLine, moment: Moment): LineSolution {
  const state = reachState(prepared, moment);
  const { continuity, energy, passed } = checkSolution(prepared.line, moment, state, lossesOf(prepared));
  return {
    ...state,
    outcome: state.outcome === "solved" && passed ? "solved" : "stalled",
    checks: { continuity, energy },
  };
}

/** The state the loop reaches, tested by its own stopping rule alone: for samples, which are counted and not shown. */
export function reachState(prepared: PreparedLine, moment: Moment): LineSolution {
  const effort = { steps: 0, evaluations: 0 };
  let zoning = prepared.devices.length === 0 ? prepared.current : withoutUnfed(prepared);
  let demand = demandAt(prepared, zoning, moment, undefined);
  let solved = false;
  const rounds = mostRounds(prepared.devices);
  for (let round = 0; round < rounds; round += 1) {
    const found: Effort = solveNetwork(zoning.network, demand, zoning.work);
    effort.steps += found.steps;
    effort.evaluations += found.evaluations;
    solved = found.solved;
    if (!solved || prepared.devices.length === 0) break;
    // What holding regulators draw from upstream has to agree with what their zones take, before anything is judged.
    const through = flowsThroughDevices(prepared, zoning);
    const draw = drawOf(prepared, zoning, through);
    if (sameDraw(draw, demand.draw, zoning)) {
      const wanted = devicesToSet(prepared, zoning, through);
      if (sameSet(wanted, zoning.set)) {
        carryDraws(prepared, zoning, demand);
        break;
      }
      const set = nextSettings(prepared.devices, { from: zoning.set, to: wanted, round });
      zoning = useZoning(prepared, set);
      demand = demandAt(prepared, zoning, moment, drawOf(prepared, zoning, through));
    } else demand = demandAt(prepared, zoning, moment, draw);
    solved = false;
  }
  return writeState(prepared, zoning, solved, effort);
}

/** Flow of every device by its segment: through a holding regulator, what its zone takes. */
function flowsThroughDevices(prepared: PreparedLine, zoning: Zoning): Map<number, number> {
  const { segments } = prepared.line;
  const { topology } = zoning.network;
  const through = new Map<number, number>();
  for (let e = topology.rootCount; e < topology.segment.length; e += 1) {
    const s = topology.segment[e];
    if (segments.kind[s] !== SEGMENT_KIND.pipe) through.set(s, topology.sign[e] * zoning.work.flow[e]);
  }
  for (const s of holdingRegulators(zoning)) {
    through.set(s, zoning.work.flow[topology.point.indexOf(segments.to[s])]);
  }
  return through;
}

/** What the holding regulators of a zoning draw from the points before them, by node. */
function drawOf(
  prepared: PreparedLine,
  zoning: Zoning,
  through: ReadonlyMap<number, number>,
): Float64Array | undefined {
  const holding = holdingRegulators(zoning);
  if (holding.length === 0) return undefined;
  const { point, nodeCount } = zoning.network.topology;
  const draw = new Float64Array(nodeCount);
  for (const s of holding) {
    const from = point.indexOf(prepared.line.segments.from[s]);
    if (from >= 0) draw[from] += through.get(s) ?? 0;
  }
  return draw;
}

const sameSet = (a: readonly SetDevice[], b: readonly SetDevice[]) =>
  a.length === b.length &&
  a.every(({ segment, setting }, i) => segment === b[i].segment && setting === b[i].setting);

/** Draws agree nearly enough for heads not to change; what is still apart is carried by `carryDraws`. */
function sameDraw(a: Float64Array | undefined, b: Float64Array | undefined, zoning: Zoning): boolean {
  if (a === undefined || b === undefined) return a === b;
  const { flow } = zoning.work;
  let largest = a.reduce((most, q) => Math.max(most, Math.abs(q)), 0);
  for (let e = zoning.network.topology.rootCount; e < flow.length; e += 1) {
    largest = Math.max(largest, Math.abs(flow[e]));
  }
  return a.every((q, i) => Math.abs(q - b[i]) <= 1e-20 + 1e-8 * largest);
}

/**
 * Brings the flows upstream of holding regulators to the last digit of what their zones take: from zone to zone, as
 * often as there are regulators one behind another.
 */
function carryDraws(prepared: PreparedLine, zoning: Zoning, demand: Demand): void {
  const { network, work } = zoning;
  const holding = holdingRegulators(zoning).length;
  for (let round = 0; round < holding; round += 1) {
    const draw = drawOf(prepared, zoning, flowsThroughDevices(prepared, zoning));
    work.trialDrinkerFlow.set(work.drinkerFlow);
    work.trialFlow.set(work.flow);
    sumFlows(network, { ...demand, draw }, work);
    work.flow.set(work.trialFlow);
  }
}
