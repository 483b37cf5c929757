import { type Line, SEGMENT_KIND } from "./line.js";

/**
 * The line with some of its runs hung higher: their points, and the drinkers on them, lifted; runs that meet them
 * bend with their ends, as a straight pipe does. Outlets of vessels stay where they are. Shares every array it does
 * not change.
 *
 * @param raise  by run, in the order of `line.runs`: how far it is lifted [m]; 0 for those that stay
 */
export function raiseLine(line: Line, raise: readonly number[]): Line {
  if (raise.every((by) => by === 0)) return line;
  const shift = shiftOfPoints(line, raise);
  const { points, drinkers } = line;
  return {
    ...line,
    points: { ...points, height: points.height.map((height, p) => height + shift[p]) },
    drinkers: { ...drinkers, height: drinkers.height.map((height, d) => height + shift[drinkers.point[d]]) },
  };
}

/** Where two hung runs meet, the joint goes with the one lifted farther. */
function shiftOfPoints(line: Line, raise: readonly number[]): Float64Array {
  const shift = new Float64Array(line.points.count);
  const isSource = new Uint8Array(line.points.count);
  const isLifted = new Uint8Array(line.points.count);
  for (const source of line.sources) isSource[source.point] = 1;
  line.runs.forEach(({ points }, r) => {
    if (raise[r] === 0) return;
    for (const p of points) {
      if (isSource[p] === 1) continue;
      if (isLifted[p] === 0 || Math.abs(raise[r]) > Math.abs(shift[p])) shift[p] = raise[r];
      isLifted[p] = 1;
    }
  });
  bendNeighbours(line, raise, shift);
  liftDevices(line, shift);
  return shift;
}

/**
 * Runs that stay but end at a lifted joint: from there to the nearest surveyed place, or to the other end, the pipe
 * goes up by its share of the way.
 */
function bendNeighbours(line: Line, raise: readonly number[], shift: Float64Array): void {
  const { measured } = line.points;
  line.runs.forEach(({ points, along }, r) => {
    const last = points.length - 1;
    if (raise[r] !== 0 || (shift[points[0]] === 0 && shift[points[last]] === 0)) return;
    const inner = Array.from(points.keys()).filter((k) => k > 0 && k < last && measured[points[k]] === 1);
    const [first, final] = [inner[0] ?? last, inner[inner.length - 1] ?? 0];
    const bent = (k: number) => {
      const fromStart = k < first ? shift[points[0]] * (1 - shareOfWay(along, k, { from: 0, to: first })) : 0;
      const fromEnd = k > final ? shift[points[last]] * shareOfWay(along, k, { from: final, to: last }) : 0;
      return fromStart + fromEnd;
    };
    for (let k = 1; k < last; k += 1) shift[points[k]] = bent(k);
  });
}

const shareOfWay = (
  along: Float64Array,
  k: number,
  { from, to }: { readonly from: number; readonly to: number },
) => (along[to] > along[from] ? (along[k] - along[from]) / (along[to] - along[from]) : 1);

/** A device sits where its run begins. */
function liftDevices({ segments }: Line, shift: Float64Array): void {
  for (let s = 0; s < segments.count; s += 1) {
    if (segments.kind[s] !== SEGMENT_KIND.pipe) shift[segments.to[s]] = shift[segments.from[s]];
  }
}
