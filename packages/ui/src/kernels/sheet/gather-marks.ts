import type { VerdictName } from "@headfall/hydraulics";
import { isWorse } from "../verdict-marks.js";

/** Radius of a mark, and the least distance between the middles of two [mm]. */
export const MARK_RADIUS = 1.5;
export const MARK_ROOM = 3.6;

/** A mark along a line of drinkers; it shows the worst of those it stands for. */
export interface PrintedMark {
  readonly at: number;
  readonly verdict: VerdictName;
}

/** Gathers drinkers that are closer than their marks are wide. `drinkers` are in order along the line. */
export function gatherMarks(drinkers: readonly PrintedMark[]): readonly PrintedMark[] {
  const marks: { at: number; verdict: VerdictName }[] = [];
  for (const { at, verdict } of drinkers) {
    const last = marks[marks.length - 1];
    if (last === undefined || at - last.at >= MARK_ROOM) marks.push({ at, verdict });
    else if (isWorse(verdict, last.verdict)) last.verdict = verdict;
  }
  return marks;
}
