import { type FrictionLaw, type MomentName, reynoldsNumber, velocityInBore } from "@headfall/hydraulics";
import type { HowRequest } from "./request.js";
import type { FlowState } from "./validity.js";

/** How the water moves at the busiest end of a run. */
export interface RunState extends FlowState {
  /** Signed from the run's start to its end [m3/s]. */
  readonly flow: number;
  /** Index into `line.segments`. */
  readonly segment: number;
}

/** State of the water where a run carries the most, at a moment; undefined where the line could not be solved. */
export function busiestState(
  { checked: { line, solutions, friction } }: HowRequest,
  run: number,
  moment: MomentName,
  law: FrictionLaw = friction,
): RunState | undefined {
  const { firstSegment, segmentCount, bore } = line.runs[run]!;
  const flows = solutions[moment][law].flow;
  let segment = firstSegment;
  for (let s = firstSegment; s < firstSegment + segmentCount; s++) {
    if (Math.abs(flows[s]!) > Math.abs(flows[segment]!)) segment = s;
  }
  const flow = flows[segment]!;
  if (!Number.isFinite(flow)) return undefined;
  return {
    flow,
    segment,
    bore,
    velocity: velocityInBore(bore, flow),
    reynolds: reynoldsNumber({ bore, viscosity: line.water.viscosity }, flow),
    temperatureC: line.water.temperatureC,
    roughness: line.segments.roughness[segment]!,
  };
}
