import { SEGMENT_KIND } from "../model/line.js";
import type { PreparedLine, Zoning } from "./prepare-line.js";

/**
 * Points that water from a source comes to without running back through a valve or regulator. A point that is joined
 * to others by the outlet of a valve alone is not among them: nothing ever fills what lies before that valve.
 *
 * @param prepared  the line
 * @param zoning    which of its devices are shut
 * @returns by point of the line: 1 where water comes
 * @example pointsFed(prepared, prepared.current)[0]   // 1
 */
export function pointsFed({ line, adjacency }: PreparedLine, { set }: Zoning): Uint8Array {
  const { from, to, kind, shut } = line.segments;
  const isCut = Uint8Array.from(shut);
  for (const { segment, setting } of set) if (setting === "shut") isCut[segment] = 1;
  const fed = new Uint8Array(line.points.count);
  const next = line.sources.map(({ point }) => point);
  for (let p = next.pop(); p !== undefined; p = next.pop()) {
    if (fed[p] === 1) continue;
    fed[p] = 1;
    for (let k = adjacency.start[p]; k < adjacency.start[p + 1]; k += 1) {
      const s = adjacency.segment[k];
      if (isCut[s] === 1 || (kind[s] !== SEGMENT_KIND.pipe && to[s] === p)) continue;
      next.push(from[s] === p ? to[s] : from[s]);
    }
  }
  return fed;
}
