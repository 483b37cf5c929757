import type { Line } from "../model/line.js";
import { flowThatClearsAir } from "../physics/air.js";
import { siphonCrestLimit } from "../physics/vent.js";
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
  const { points, segments } = line;
  const airHead = new Float64Array(points.count);
  const hump = new Int32Array(points.count).fill(-1);
  const above = new Float64Array(points.count).fill(Number.NEGATIVE_INFINITY);
  const findings: FillingFinding[] = [];
  const found = new Map<number, FillingFinding>();
  for (let i = 0; i < ways.nodeCount; i += 1) {
    const p = ways.point[i];
    if (i < ways.rootCount) {
      beginCourse(courses, i, p, points.height[p]);
      continue;
    }
    const parent = ways.parent[i];
    const s = ways.segment[i];
    const bore = segments.bore[s];
    advanceCourse(courses, i, parent, {
      point: p,
      height: points.height[p],
      bore,
      isOpen: points.bleed[p] === 1,
    });
    const pocket = pocketOf(courses, i, bore);
    const swept = pocket > 0 && Math.abs(busy.flow[s]) >= clearingFlow(bore, line, s);
    const here = swept ? 0 : pocket;
    airHead[p] = courses.air[i] + here;
    hump[p] = here > 0 ? courses.crestPoint[i] : courses.hump[i];
    const parentPoint = ways.point[parent];
    const over = points.height[p] - low.head[p];
    const short = over > SAME_LEVEL ? over : Math.min(over, 0);
    above[p] = Math.max(above[parentPoint], short);
    if (short > 0 && short >= above[parentPoint] && !found.has(p) && above[parentPoint] <= 0) {
      found.set(p, { code: "humpAboveWater", point: points.id[p], pointIndex: p, above: short });
    }
    if (here > 0) noteHump(line, found, courses, i, here, s, busy, low);
  }
  findings.push(...found.values());
  const meeting = countMeeting(line);
  for (let i = ways.rootCount; i < ways.nodeCount; i += 1) {
    const finding =
      meeting[ways.point[i]] === 1
        ? endFinding(line, ways.point[i], courses, i, segments.bore[ways.segment[i]])
        : undefined;
    if (finding !== undefined) findings.push(finding);
  }
  return { findings, airHead, hump, above };
}

function clearingFlow(bore: number, line: Line, segment: number): number {
  const { segments, points } = line;
  const fall = Math.abs(points.height[segments.from[segment]] - points.height[segments.to[segment]]);
  return flowThatClearsAir({
    bore,
    slopeAngle: Math.asin(Math.min(1, fall / Math.max(segments.length[segment], fall, 1e-9))),
  });
}

/** Keeps, for each hump, the tallest column of air found in the leg beyond it. */
function noteHump(
  line: Line,
  found: Map<number, FillingFinding>,
  courses: Courses,
  i: number,
  airHead: number,
  segment: number,
  busy: LineSolution,
  low: Pick<LineSolution, "head">,
): void {
  const p = courses.crestPoint[i];
  const before = found.get(p);
  if (before?.code === "humpAboveWater" || (before?.code === "humpTrapsAir" && before.airHead >= airHead))
    return;
  found.set(p, {
    code: "humpTrapsAir",
    point: line.points.id[p],
    pointIndex: p,
    airHead,
    flowToClear: clearingFlow(line.segments.bore[segment], line, segment),
    flowThere: Math.abs(busy.flow[segment]),
    locks: low.head[p] - line.points.height[p] <= courses.air[i],
  });
}

/** A dead end that is the highest place since the last sag keeps air until it is let out. */
function endFinding(
  line: Line,
  p: number,
  { goesUp, crestIsOpen, crest, sag }: Courses,
  i: number,
  bore: number,
): FillingFinding | undefined {
  const { points } = line;
  if (goesUp[i] === 0 || crestIsOpen[i] === 1 || crest[i] - points.height[p] >= bore) return undefined;
  return { code: "endHoldsAir", point: points.id[p], pointIndex: p, rise: crest[i] - sag[i] };
}

/** How many pieces of pipe meet at each point: one at a dead end. */
function countMeeting(line: Line): Int32Array {
  const meeting = new Int32Array(line.points.count);
  for (const ends of [line.segments.from, line.segments.to]) for (const p of ends) meeting[p] += 1;
  return meeting;
}

/** Points where the running line would be under suction: water stands below the pipe. */
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
