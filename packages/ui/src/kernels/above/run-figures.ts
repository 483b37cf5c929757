import type { Checked, MomentName, Run } from "@headfall/hydraulics";
import type { AboveRun } from "./lay-above.js";

/** What a check says of one run at one moment. */
export interface RunFigures {
  readonly pipeName: string;
  /** Inside diameter [m]. */
  readonly bore: number;
  /** How much lower its end is than its start [m]. */
  readonly fall: number;
  /** At its busiest place, positive from start to end [m3/s]; not finite when the line could not be solved. */
  readonly flow: number;
  /** At a distance from its start along the pipe [m]: after the last drinker at work there is none. */
  readonly flowAt: (along: number) => number;
}

/** Slower than this nothing flows that anybody would see [m3/s]: a drop in ten minutes. */
const STILL = 1e-10;

/**
 * What is known of a run, or undefined while the check is of a plan that had no such run. A run is known again by
 * its name and its place in the plan.
 */
export function figuresOf(
  run: AboveRun,
  checked: Checked | undefined,
  moment: MomentName,
): RunFigures | undefined {
  const laid = checked?.line.runs[run.index];
  if (checked === undefined || laid === undefined || laid.id !== run.name) return undefined;
  const { height } = checked.line.points;
  const { flow } = checked.solutions[moment][checked.friction];
  const [start, end] = [laid.points[0]!, laid.points[laid.points.length - 1]!];
  return {
    pipeName: laid.pipeName,
    bore: laid.bore,
    fall: height[start]! - height[end]!,
    flow: largestFlow(flow, laid),
    flowAt: (along) => unlessStill(flow[segmentAt(laid, along)]!),
  };
}

/** The piece of pipe at a distance from the start; devices, which have no length, come before all pieces. */
function segmentAt({ firstSegment, segmentCount, along: stations }: Run, along: number): number {
  const pieces = stations.length - 1;
  let piece = 0;
  while (piece < pieces - 1 && stations[piece + 1]! <= along) piece += 1;
  return firstSegment + segmentCount - pieces + piece;
}

function largestFlow(flow: Float64Array, { firstSegment, segmentCount }: Run): number {
  let largest = 0;
  for (let s = firstSegment; s < firstSegment + segmentCount; s++) {
    const here = flow[s]!;
    if (!Number.isFinite(here)) return Number.NaN;
    if (Math.abs(here) > Math.abs(largest)) largest = here;
  }
  return unlessStill(largest);
}

const unlessStill = (flow: number): number => (Math.abs(flow) < STILL ? 0 : flow);

/** Width of a pipe on the drawing [px]: thicker for a wider bore, never so thin or thick that it misleads. */
export const strokeOfBore = (bore: number): number => Math.min(9, Math.max(2.5, 1.5 + bore * 150));
