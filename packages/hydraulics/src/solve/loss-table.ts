import type { Line } from "../model/line.js";
import { GRAVITY } from "../physics/constants.js";
import { churchillCurve, reynoldsNumber, velocityInBore } from "../physics/darcy-weisbach.js";
import { headLossHazenWilliams } from "../physics/hazen-williams.js";
import type { FrictionLaw } from "./solution.js";

/**
 * What each segment loses, by the published formulas of physics/ and not by the solver's kernels: for checking a
 * solution, and for showing what a run loses. Constants are taken once per line.
 */
export interface LossTable {
  readonly friction: FrictionLaw;
  /** Hazen-Williams: loss at 1 m3/s [m]. Darcy-Weisbach: length over bore [-]. */
  readonly perUnit: Float64Array;
  /** Velocity and Reynolds number per flow [1/m2], [s/m3]. */
  readonly velocityPerFlow: Float64Array;
  readonly reynoldsPerFlow: Float64Array;
}

export function buildLossTable(line: Line, friction: FrictionLaw): LossTable {
  const { segments, water } = line;
  const table: LossTable = {
    friction,
    perUnit: new Float64Array(segments.count),
    velocityPerFlow: new Float64Array(segments.count),
    reynoldsPerFlow: new Float64Array(segments.count),
  };
  for (let s = 0; s < segments.count; s += 1) {
    const bore = segments.bore[s];
    const length = segments.length[s];
    table.velocityPerFlow[s] = velocityInBore(bore, 1);
    table.reynoldsPerFlow[s] = reynoldsNumber({ bore, viscosity: water.viscosity }, 1);
    table.perUnit[s] =
      friction === "darcyWeisbach"
        ? length / bore
        : headLossHazenWilliams({ length, bore, coefficient: segments.hazenWilliams[s] }, 1);
  }
  return table;
}

/** Friction and fittings of one segment, signed like its flow [m]. */
export function lossByTable(line: Line, table: LossTable, s: number, flow: number): number {
  if (flow === 0) return 0;
  const { segments } = line;
  const size = Math.abs(flow);
  const velocity = table.velocityPerFlow[s] * size;
  const reynolds = table.reynoldsPerFlow[s] * size;
  const velocityHead = (velocity * velocity) / (2 * GRAVITY);
  const fittings = (segments.k1[s] / reynolds + segments.kInfinity[s]) * velocityHead;
  const friction =
    table.friction === "hazenWilliams"
      ? table.perUnit[s] * size ** 1.852
      : churchillCurve(reynolds, segments.roughness[s] / segments.bore[s]) * table.perUnit[s] * velocityHead;
  return flow < 0 ? -(friction + fittings) : friction + fittings;
}
