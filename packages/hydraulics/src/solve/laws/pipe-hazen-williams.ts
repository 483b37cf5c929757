import type { Line } from "../../model/line.js";
import type { Topology } from "../topology.js";
import { emptyPipeLaws, fillFittings, type PipeKernel, type PipeLaws } from "./pipe-laws.js";

const FLOW_EXPONENT = 1.852;

/**
 * The most that a floor flow is [m3/s], and that it loses [m]. Where less were left out of the slope than counts, steps
 * would be too short, and heads settle by the same small share each time: in a pipe as fine as a hair 1e-10 m3/s loses a
 * metre.
 */
const FLOOR = { flow: 1e-10, loss: 1e-9 } as const;
/** Up to this resistance the floor flow is the most it can be, and its power is known. */
const FLOOR_UP_TO = FLOOR.loss / FLOOR.flow ** FLOW_EXPONENT;
const POWER_OF_FLOOR = FLOOR.flow ** 0.852;

/**
 * h = r Q |Q|^0.852 + quadratic Q|Q| + linear Q, with r = 10.67 L / (C^1.852 d^4.8704); see physics/hazen-williams.ts.
 *
 * @param into  laws of a line with the same topology, to be filled anew
 */
export function buildHazenWilliamsLaws(
  line: Line,
  topology: Topology,
  into = emptyPipeLaws(topology, evaluateHazenWilliams, true),
): PipeLaws {
  fillFittings(into, line, topology);
  const { length, bore, hazenWilliams } = line.segments;
  // Powers are what costs here, and most pieces of pipe are like the one before.
  let before = -1;
  let divisor = 1;
  for (let e = 0; e < topology.segment.length; e += 1) {
    const s = topology.segment[e];
    if (s < 0) continue;
    if (before < 0 || bore[s] !== bore[before] || hazenWilliams[s] !== hazenWilliams[before])
      divisor = hazenWilliams[s] ** FLOW_EXPONENT * bore[s] ** 4.8704;
    before = s;
    const r = (10.67 * length[s]) / divisor;
    const isCoarse = r <= FLOOR_UP_TO;
    const floorFlow = isCoarse ? FLOOR.flow : (FLOOR.loss / r) ** (1 / FLOW_EXPONENT);
    into.resistance[e] = r;
    into.floorFlow[e] = floorFlow;
    into.slopeFloor[e] += FLOW_EXPONENT * r * (isCoarse ? POWER_OF_FLOOR : floorFlow ** 0.852);
  }
  return into;
}

const evaluateHazenWilliams: PipeKernel = (laws, count, flow, loss, slope) => {
  const { resistance, linear, quadratic, slopeFloor } = laws;
  for (let e = 0; e < count; e += 1) {
    const q = flow[e];
    const size = q < 0 ? -q : q;
    const r = resistance[e];
    const friction = r === 0 || size === 0 ? 0 : r * size ** 0.852;
    const fittings = quadratic[e] * size;
    loss[e] = q * (friction + fittings + linear[e]);
    slope[e] = FLOW_EXPONENT * friction + 2 * fittings + linear[e] + slopeFloor[e];
  }
};
