import type { Ways } from "./lowest-ways.js";

/**
 * Where the pipe stands on its way from a source, by node of the ways: going down from a crest, or up from a sag.
 * Columns, since a line is filled for every sample of a tolerance.
 */
export interface Courses {
  /** 1 where it goes up. */
  readonly goesUp: Uint8Array;
  /** Height of the crest it comes from, or has reached [m above datum], and the point there. */
  readonly crest: Float64Array;
  readonly crestPoint: Int32Array;
  /** 1 where air can leave at the crest. */
  readonly crestIsOpen: Uint8Array;
  /** Lowest place since the crest [m above datum]. */
  readonly low: Float64Array;
  /** Lowest place before the climb it is on, or was last on [m above datum]. */
  readonly sag: Float64Array;
  /** Height of the air columns that stay in the legs before [m]. */
  readonly air: Float64Array;
  /** Crest of the last of these; -1 where there is none. */
  readonly hump: Int32Array;
}

/** Courses to be followed: room that may be used again. */
export const emptyCourses = ({ nodeCount }: Ways): Courses => ({
  goesUp: new Uint8Array(nodeCount),
  crest: new Float64Array(nodeCount),
  crestPoint: new Int32Array(nodeCount),
  crestIsOpen: new Uint8Array(nodeCount),
  low: new Float64Array(nodeCount),
  sag: new Float64Array(nodeCount),
  air: new Float64Array(nodeCount),
  hump: new Int32Array(nodeCount),
});

/** A course begins at a source, where air can leave. */
export function beginCourse(courses: Courses, i: number, point: number, height: number): void {
  courses.goesUp[i] = 0;
  courses.crest[i] = height;
  courses.crestPoint[i] = point;
  courses.crestIsOpen[i] = 1;
  courses.low[i] = height;
  courses.sag[i] = height;
  courses.air[i] = 0;
  courses.hump[i] = -1;
}

/** The next place of a course; `isOpen` where air can leave. */
interface Place {
  readonly point: number;
  readonly height: number;
  readonly bore: number;
  readonly isOpen: boolean;
}

/** The course of node `i`: that of its parent after one more place. Moves smaller than the bore do not turn it. */
export function advanceCourse(courses: Courses, i: number, parent: number, place: Place): void {
  const { goesUp, crest, crestPoint, crestIsOpen, low } = courses;
  const { point, height, bore, isOpen } = place;
  takeOver(courses, i, parent);
  const isLevelCrest = isOpen && crest[i] - height < bore;
  if (goesUp[i] === 0) {
    if (height <= low[i]) low[i] = height;
    else if (height >= low[i] + bore) passSag(courses, i, place);
    else if (isLevelCrest) crestIsOpen[i] = 1;
  } else if (height >= crest[i]) {
    const staysOpen = height === crest[i] && crestIsOpen[i] === 1;
    crest[i] = height;
    crestPoint[i] = point;
    crestIsOpen[i] = isOpen || staysOpen ? 1 : 0;
    low[i] = height;
  } else if (isLevelCrest) crestIsOpen[i] = 1;
  else if (height <= crest[i] - bore) {
    goesUp[i] = 0;
    low[i] = height;
  }
}

function takeOver(courses: Courses, i: number, parent: number): void {
  courses.goesUp[i] = courses.goesUp[parent];
  courses.crest[i] = courses.crest[parent];
  courses.crestPoint[i] = courses.crestPoint[parent];
  courses.crestIsOpen[i] = courses.crestIsOpen[parent];
  courses.low[i] = courses.low[parent];
  courses.sag[i] = courses.sag[parent];
  courses.air[i] = courses.air[parent];
  courses.hump[i] = courses.hump[parent];
}

/** What the leg before a sag holds stays there. */
function passSag(courses: Courses, i: number, { point, height, bore, isOpen }: Place): void {
  const pocket = pocketOf(courses, i, bore);
  courses.air[i] += pocket;
  if (pocket > 0) courses.hump[i] = courses.crestPoint[i];
  courses.goesUp[i] = 1;
  courses.crest[i] = height;
  courses.crestPoint[i] = point;
  courses.crestIsOpen[i] = isOpen ? 1 : 0;
  courses.sag[i] = courses.low[i];
  courses.low[i] = height;
}

/** Height of the air column in the leg the course is going down [m]. */
export function pocketOf({ goesUp, crest, crestIsOpen, low }: Courses, i: number, bore: number): number {
  if (goesUp[i] === 1 || crestIsOpen[i] === 1) return 0;
  const column = crest[i] - low[i];
  return column >= bore ? column : 0;
}
