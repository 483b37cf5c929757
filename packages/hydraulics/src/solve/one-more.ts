import type { PreparedLine } from "./prepare-line.js";

/**
 * How much the head falls at each point if one more drinker there drew `flow`, all others keeping theirs [m].
 *
 * The extra flow is sent down the tree of least resistance, where every loss rises with its flow; in a line without
 * rings this is exact, and as the others would in truth draw a little less, the fall is never understated. One
 * evaluation of the pipe law serves all points. To be asked right after `solveLine`.
 *
 * @param flow  what the one more draws [m3/s], > 0
 */
export function headTakenByOneMore(prepared: PreparedLine, flow: number): Float64Array {
  const { network, work } = prepared.current;
  const { topology, pipes } = network;
  const { nodeCount, rootCount, parent, point } = topology;
  // Room that the next solve fills anew before it reads it.
  const { trialFlow: more, trialLoss: loss, trialSlope: slope, nodeDraw: lossThen } = work;
  for (let i = 0; i < nodeCount; i += 1) more[i] = i < rootCount ? 0 : work.flow[i] + flow;
  pipes.kernel(pipes, nodeCount, more, loss, slope);
  lossThen.set(loss.subarray(0, nodeCount));
  // The solve has left what is lost now; but devices are in that too, and regulators change flows after it.
  const lossNow = prepared.devices.length === 0 ? work.loss : loss;
  if (lossNow === loss) pipes.kernel(pipes, nodeCount, work.flow, loss, slope);
  const byPoint = new Float64Array(prepared.line.points.count);
  for (let i = rootCount; i < nodeCount; i += 1) {
    byPoint[point[i]] = byPoint[point[parent[i]]] + lossThen[i] - lossNow[i];
  }
  return byPoint;
}
