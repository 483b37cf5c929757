import type { Line } from "../../model/line.js";
import type { Topology } from "../topology.js";
import { fittingLaws, floorFlowOf, type PipeKernel, type PipeLaws } from "./pipe-laws.js";

const FLOW_EXPONENT = 1.852;

/** h = r Q |Q|^0.852 + quadratic Q|Q| + linear Q, with r = 10.67 L / (C^1.852 d^4.8704); see physics/hazen-williams.ts. */
export function buildHazenWilliamsLaws(line: Line, topology: Topology): PipeLaws {
  const laws = fittingLaws(line, topology);
  const { segments } = line;
  for (let e = 0; e < topology.segment.length; e += 1) {
    const s = topology.segment[e];
    if (s < 0) continue;
    const r =
      (10.67 * segments.length[s]) /
      (segments.hazenWilliams[s] ** FLOW_EXPONENT * segments.bore[s] ** 4.8704);
    laws.resistance[e] = r;
    laws.floorFlow[e] = floorFlowOf(r, FLOW_EXPONENT);
    laws.slopeFloor[e] += FLOW_EXPONENT * r * laws.floorFlow[e] ** 0.852;
  }
  return { ...laws, hasCorner: true, kernel: evaluateHazenWilliams };
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
