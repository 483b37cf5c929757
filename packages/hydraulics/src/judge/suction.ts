import type { Line } from "../model/line.js";
import { siphonCrestLimit } from "../physics/vent.js";
import type { LineSolution } from "../solve/solution.js";
import type { FillingFinding } from "./check-result.js";

/** The point where the running line is most under suction, its grade line below the pipe; none where it is nowhere. */
export function findSuction(
  line: Line,
  solution: LineSolution,
  moment: "fullBusiest" | "lowestBusiest",
): FillingFinding[] {
  const { points } = line;
  const limit = siphonCrestLimit(line.water);
  let worst: FillingFinding | undefined;
  for (let p = 0; p < points.count; p += 1) {
    if (solution.reached[p] === 0) continue;
    const head = solution.head[p] - points.height[p];
    const isFlowing = head < -0.001 && pointIsFlowing(line, solution, p);
    if (!isFlowing || (worst?.code === "suction" && head >= worst.head)) continue;
    worst = { code: "suction", point: points.id[p], pointIndex: p, head, moment, breaks: -head >= limit };
  }
  return worst === undefined ? [] : [worst];
}

function pointIsFlowing(line: Line, solution: LineSolution, p: number): boolean {
  const { segments } = line;
  for (let s = 0; s < segments.count; s += 1) {
    if ((segments.from[s] === p || segments.to[s] === p) && Math.abs(solution.flow[s]) > 1e-12) return true;
  }
  return false;
}
