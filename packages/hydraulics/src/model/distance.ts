import { createHeap } from "../numerics/heap.js";
import type { Line } from "./line.js";

interface Reached {
  readonly point: number;
  /** Along open pipe from the nearest source [m]. */
  readonly distance: number;
}

/**
 * Distance of each point from the nearest source along open pipe [m]; infinite where none leads (Dijkstra 1959).
 */
export function distanceFromSources(line: Line): Float64Array {
  const { points, segments } = line;
  const meeting: number[][] = Array.from({ length: points.count }, () => []);
  for (let s = 0; s < segments.count; s += 1) {
    if (segments.shut[s] === 1) continue;
    meeting[segments.from[s]].push(s);
    meeting[segments.to[s]].push(s);
  }
  const distance = new Float64Array(points.count).fill(Number.POSITIVE_INFINITY);
  const heap = createHeap<Reached>((a, b) => a.distance < b.distance);
  for (const source of line.sources) {
    distance[source.point] = 0;
    heap.push({ point: source.point, distance: 0 });
  }
  for (let next = heap.pop(); next !== undefined; next = heap.pop()) {
    if (next.distance > distance[next.point]) continue;
    for (const s of meeting[next.point]) {
      const other = segments.from[s] === next.point ? segments.to[s] : segments.from[s];
      const there = next.distance + segments.length[s];
      if (there >= distance[other]) continue;
      distance[other] = there;
      heap.push({ point: other, distance: there });
    }
  }
  return distance;
}
