import type { Line } from "../../model/line.js";

/** How water comes to a run: from which source, and by which run just before it (-1: straight from the source). */
export interface WayToRun {
  readonly run: number;
  readonly source: number;
  readonly before: number;
}

/**
 * The way to each run that some source feeds, with fewest runs on it; a run comes after the one before it.
 *
 * @param line  from `buildLine`
 */
export function waysToRuns(line: Line): WayToRun[] {
  const runsAt: number[][] = Array.from({ length: line.points.count }, () => []);
  line.runs.forEach(({ points }, run) => {
    for (const point of points) runsAt[point].push(run);
  });
  const queue: { readonly point: number; readonly source: number; readonly before: number }[] = [];
  const reached = new Uint8Array(line.points.count);
  const isLaid = new Uint8Array(line.runs.length);
  const ways: WayToRun[] = [];
  line.sources.forEach(({ point }, source) => {
    reached[point] = 1;
    queue.push({ point, source, before: -1 });
  });
  for (const { point, source, before } of queue) {
    for (const run of runsAt[point]) {
      if (isLaid[run] === 1) continue;
      isLaid[run] = 1;
      ways.push({ run, source, before });
      for (const other of line.runs[run].points) {
        if (reached[other] === 1) continue;
        reached[other] = 1;
        queue.push({ point: other, source, before: run });
      }
    }
  }
  return ways;
}
