import type { Line } from "../../model/line.js";
import { GRAVITY } from "../../physics/constants.js";
import type { Topology } from "../topology.js";
import { emptyPipeLaws, fillFittings, type PipeKernel, type PipeLaws } from "./pipe-laws.js";

/**
 * Below this Reynolds number Churchill's formula is 64/Re to the last bit, and costs nothing: at 800 its turbulent
 * part is 8e-17 of its laminar one, and enters by a twelfth.
 */
const PURELY_LAMINAR = 800;
const LOG_OF_SEVEN = Math.log(7);

/**
 * h = c f Q|Q| with Churchill's f for all regimes, and the fittings; see physics/darcy-weisbach.ts.
 *
 * @param into  laws of a line with the same topology, to be filled anew
 */
export function buildDarcyWeisbachLaws(
  line: Line,
  topology: Topology,
  into = emptyPipeLaws(topology, evaluateDarcyWeisbach, false),
): PipeLaws {
  fillFittings(into, line, topology);
  const { segments, water } = line;
  // Powers are what costs here, and most pieces of pipe are like the one before.
  let bore = Number.NaN;
  let [fourth, fifth] = [1, 1];
  for (let e = 0; e < topology.segment.length; e += 1) {
    const s = topology.segment[e];
    if (s < 0) continue;
    const length = segments.length[s];
    if (segments.bore[s] !== bore) {
      bore = segments.bore[s];
      [fourth, fifth] = [bore ** 4, bore ** 5];
    }
    into.resistance[e] = (8 * length) / (Math.PI ** 2 * GRAVITY * fifth);
    into.laminar[e] = (128 * water.viscosity * length) / (Math.PI * GRAVITY * fourth);
    into.reynoldsPerFlow[e] = 4 / (Math.PI * bore * water.viscosity);
    into.relativeRoughness[e] = segments.roughness[s] / bore;
  }
  return into;
}

const evaluateDarcyWeisbach: PipeKernel = (laws, count, flow, loss, slope) => {
  const { resistance, linear, quadratic, reynoldsPerFlow, laminar, relativeRoughness, slopeFloor } = laws;
  for (let e = 0; e < count; e += 1) {
    const q = flow[e];
    const size = q < 0 ? -q : q;
    const reynolds = reynoldsPerFlow[e] * size;
    const fittings = quadratic[e] * size;
    if (reynolds < PURELY_LAMINAR) {
      const drag = laminar[e] + linear[e];
      loss[e] = q * (drag + fittings);
      slope[e] = drag + 2 * fittings + slopeFloor[e];
      continue;
    }
    // Churchill (1977): f = 8 ((8/Re)^12 + (A + B)^-1.5)^(1/12), and d ln f / d ln Re beside it.
    const power = Math.exp(0.9 * (LOG_OF_SEVEN - Math.log(reynolds)));
    const inside = power + 0.27 * relativeRoughness[e];
    const logarithm = -Math.log(inside);
    const a2 = (2.457 * logarithm) ** 2;
    const a4 = a2 * a2;
    const a = a4 * a4 * a4 * a4;
    const b1 = 37530 / reynolds;
    const b2 = b1 * b1;
    const b4 = b2 * b2;
    const b8 = b4 * b4;
    const b = b8 * b8;
    const l1 = 8 / reynolds;
    const l4 = l1 * l1 * l1 * l1;
    const l12 = l4 * l4 * l4;
    const sum = a + b;
    const turbulent = 1 / (sum * Math.sqrt(sum));
    const both = l12 + turbulent;
    const factor = 8 * Math.cbrt(Math.sqrt(Math.sqrt(both)));
    const sumGrowth = 16 * ((0.9 * a * power) / (inside * logarithm) - b);
    const factorGrowth = (-l12 - (0.125 * turbulent * sumGrowth) / sum) / both;
    const friction = resistance[e] * factor * size;
    loss[e] = q * (friction + fittings + linear[e]);
    slope[e] = friction * (2 + factorGrowth) + 2 * fittings + linear[e] + slopeFloor[e];
  }
};
