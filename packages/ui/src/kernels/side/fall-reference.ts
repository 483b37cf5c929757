import type { Line, Run } from "@headfall/hydraulics";

/** What the falls surveyed along a run are counted from. */
export interface FallReference {
  /** [m above datum] */
  readonly height: number;
  readonly words: string;
  /** Whether it is the ground, and so stays where it is when the pipe is moved. */
  readonly isFirm: boolean;
}

/** The start of the run, or the ground under the source it starts at. */
export function fallReferenceOf(line: Line, run: Run): FallReference {
  const start = run.points[0]!;
  const source = line.sources.find(({ point }) => point === start);
  if (source === undefined)
    return { height: line.points.height[start]!, words: `the start of ${run.id}`, isFirm: false };
  return { height: source.ground, words: `the ground under ${source.id}`, isFirm: true };
}
