import type { Line } from "../../model/line.js";
import type { HeightMark } from "./build-sheet.js";

/** Heights to mark before anything is put up: stands, outlets, ends and surveyed places of runs, drinkers. */
export function marksOf(line: Line): HeightMark[] {
  const { points, drinkers } = line;
  const seen = new Set<number>(line.sources.map(({ point }) => point));
  const marks: HeightMark[] = line.sources.flatMap(({ id, point, base, ground, stand }): HeightMark[] => [
    ...(stand > 0 ? [mark("standTop", id, { height: base, ground })] : []),
    mark("outlet", id, { height: points.height[point], ground }),
  ]);
  for (const run of line.runs) {
    run.points.forEach((point, k) => {
      if (points.measured[point] === 0 || seen.has(point)) return;
      seen.add(point);
      const isEnd = k === 0 || k === run.points.length - 1;
      marks.push({
        ...mark(isEnd ? "end" : "survey", points.id[point], {
          height: points.height[point],
          ground: points.ground[point],
        }),
        run: run.id,
        along: run.along[k],
      });
    });
  }
  for (let d = 0; d < drinkers.count; d += 1)
    marks.push({
      ...mark("drinker", drinkers.id[d], {
        height: drinkers.height[d],
        ground: points.ground[drinkers.point[d]],
      }),
      run: line.runs[drinkers.run[d]].id,
      along: drinkers.along[d],
    });
  return marks;
}

const mark = (
  kind: HeightMark["kind"],
  name: string,
  { height, ground }: { readonly height: number; readonly ground: number },
): HeightMark => ({ kind, name, run: undefined, along: undefined, height, aboveGround: height - ground });
