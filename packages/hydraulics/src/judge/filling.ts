import type { Line } from "../model/line.js";
import { flowThatClearsAir } from "../physics/air.js";
import type { LineSolution } from "../solve/solution.js";
import { advanceCourse, beginCourse, type Courses, emptyCourses, pocketOf } from "./air-courses.js";
import type { FillingFinding } from "./check-result.js";
import type { Ways } from "./lowest-ways.js";

/** What filling from empty leaves behind at each point of the line. */
export interface Filling {
  readonly findings: readonly FillingFinding[];
  /** Height of air columns between the source and each point, which the head must lift as well [m]. */
  readonly airHead: Float64Array;
  /** Point of the hump that holds the air back, or that stands above the water; -1 where there is none. */
  readonly hump: Int32Array;
  /** How far the highest hump on the way stands above the water that feeds it [m]; 0 or less where none does. */
  readonly above: Float64Array;
}

/** A hump this little above the water is level with it [m]. */
const SAME_LEVEL = 1e-6;

/**
 * Follows the lowest way to every point from a source outwards and finds the humps that keep their air when the line is filled from
 * empty. Air stays in the leg that goes down from a crest; each such column takes its own height from the head beyond
 * it (Jordan 1984). A hump or sag lower than the bore seals nothing and is passed over; a bleed at the crest lets the
 * air out; so does a flow that clears it, which a drinker line hardly ever reaches (Wisner et al. 1975).
 *
 * @param low   the line idle at its lowest level: heads that must carry water over every crest
 * @param busy  the line at its greatest flow, for what might sweep air along
 * @param courses  room for the courses of these ways, used again where many lines are filled one after the other
 * @source jordan-1984, pp. 52-53 (standing columns), from memory
 */
export function judgeFilling(
  line: Line,
  ways: Ways,
  low: Pick<LineSolution, "head">,
  busy: LineSolution,
  courses = emptyCourses(ways),
): Filling {
  const { points } = line;
  const following: Following = {
    line,
    ways,
    low,
    busy,
    courses,
    airHead: new Float64Array(points.count),
    hump: new Int32Array(points.count).fill(-1),
    above: new Float64Array(points.count).fill(Number.NEGATIVE_INFINITY),
    found: new Map(),
  };
  const { rootCount, nodeCount, point } = ways;
  for (let i = 0; i < rootCount; i += 1) beginCourse(courses, i, point[i], points.height[point[i]]);
  for (let i = rootCount; i < nodeCount; i += 1) {
    advanceTo(following, i);
    findHumpAbove(following, i);
    findTrappedAir(following, i);
  }
  const { airHead, hump, above, found } = following;
  return { findings: [...found.values(), ...findDeadEnds(following)], airHead, hump, above };
}

/** The ways as far as they were followed: what is known of each point, and the humps found. */
interface Following extends Omit<Filling, "findings"> {
  readonly line: Line;
  readonly ways: Ways;
  readonly low: Pick<LineSolution, "head">;
  readonly busy: LineSolution;
  readonly courses: Courses;
  /** By point. */
  readonly found: Map<number, FillingFinding>;
}

/** Takes the course on from the node before. */
function advanceTo({ line, ways, courses }: Following, i: number): void {
  const { points, segments } = line;
  const p = ways.point[i];
  advanceCourse(courses, i, ways.parent[i], {
    point: p,
    height: points.height[p],
    bore: segments.bore[ways.segment[i]],
    isOpen: points.bleed[p] === 1,
  });
}

/** A hump that stands above the water which feeds it, unless one before it does already. */
function findHumpAbove({ line, ways, low, above, found }: Following, i: number): void {
  const { points } = line;
  const p = ways.point[i];
  const before = above[ways.point[ways.parent[i]]];
  const over = points.height[p] - low.head[p];
  const short = over > SAME_LEVEL ? over : Math.min(over, 0);
  above[p] = Math.max(before, short);
  if (short > 0 && short >= before && !found.has(p) && before <= 0)
    found.set(p, { code: "humpAboveWater", point: points.id[p], pointIndex: p, above: short });
}

/** The column of air that the last crest on the way keeps in its leg down to here. */
function findTrappedAir(
  { line, ways, low, busy, courses, airHead, hump, found }: Following,
  i: number,
): void {
  const { points, segments } = line;
  const p = ways.point[i];
  const s = ways.segment[i];
  const pocket = pocketOf(courses, i, segments.bore[s]);
  const swept = pocket > 0 && Math.abs(busy.flow[s]) >= clearingFlow(line, s);
  const here = swept ? 0 : pocket;
  const crest = courses.crestPoint[i];
  airHead[p] = courses.air[i] + here;
  hump[p] = here > 0 ? crest : courses.hump[i];
  if (here <= 0) return;
  noteHump(found, {
    code: "humpTrapsAir",
    point: points.id[crest],
    pointIndex: crest,
    airHead: here,
    flowToClear: clearingFlow(line, s),
    flowThere: Math.abs(busy.flow[s]),
    locks: low.head[crest] - points.height[crest] <= courses.air[i],
  });
}

/** Dead ends that keep air, in the order of the ways. */
function findDeadEnds({ line, ways, courses }: Following): FillingFinding[] {
  const meeting = countMeeting(line);
  const findings: FillingFinding[] = [];
  for (let i = ways.rootCount; i < ways.nodeCount; i += 1) {
    const point = ways.point[i];
    if (meeting[point] !== 1) continue;
    const finding = endFinding(line, courses, { i, point, bore: line.segments.bore[ways.segment[i]] });
    if (finding !== undefined) findings.push(finding);
  }
  return findings;
}

/** The flow that would sweep the air out of a piece of pipe [m³/s]. */
function clearingFlow({ segments, points }: Line, segment: number): number {
  const fall = Math.abs(points.height[segments.from[segment]] - points.height[segments.to[segment]]);
  return flowThatClearsAir({
    bore: segments.bore[segment],
    slopeAngle: Math.asin(Math.min(1, fall / Math.max(segments.length[segment], fall, 1e-9))),
  });
}

/** Keeps, for each hump, the tallest column of air found in the leg beyond it. */
function noteHump(found: Map<number, FillingFinding>, hump: HumpWithAir): void {
  const before = found.get(hump.pointIndex);
  if (before?.code === "humpAboveWater") return;
  if (before?.code === "humpTrapsAir" && before.airHead >= hump.airHead) return;
  found.set(hump.pointIndex, hump);
}

type HumpWithAir = Extract<FillingFinding, { code: "humpTrapsAir" }>;

/** A dead end that is the highest place since the last sag keeps air until it is let out. */
function endFinding(
  { points }: Line,
  { goesUp, crestIsOpen, crest, sag }: Courses,
  { i, point, bore }: { readonly i: number; readonly point: number; readonly bore: number },
): FillingFinding | undefined {
  if (goesUp[i] === 0 || crestIsOpen[i] === 1 || crest[i] - points.height[point] >= bore) return undefined;
  return { code: "endHoldsAir", point: points.id[point], pointIndex: point, rise: crest[i] - sag[i] };
}

/** How many pieces of pipe meet at each point: one at a dead end. */
function countMeeting(line: Line): Int32Array {
  const meeting = new Int32Array(line.points.count);
  for (const ends of [line.segments.from, line.segments.to]) for (const p of ends) meeting[p] += 1;
  return meeting;
}
