import { type HeadBar, headBars } from "../../kernels/side/head-bars.js";
import type { PlacedHandle } from "../../kernels/side/place-handles.js";
import { type RunLabel, runLabels } from "../../kernels/side/run-labels.js";
import type { DrawnLine } from "./hands-host.js";

/** Drawings narrower than this are small [px]. */
const SMALL = 480;

/**
 * Labels of the runs, clear of grips and of the bars of the band. A small drawing has no room for them beside the band.
 *
 * @param before  while something is held: the labels so far, whose rows stay
 */
export function labelRuns(
  { layout, request, system }: DrawnLine,
  shows: "moment" | "band",
  placed: readonly PlacedHandle[],
  before: readonly RunLabel[] | undefined,
): readonly RunLabel[] {
  const isBand = shows === "band";
  if (isBand && layout.width < SMALL) return [];
  const ends = ({ x, lowest, highest }: HeadBar) => [
    { x, y: lowest },
    { x, y: highest },
  ];
  const bars = isBand ? headBars(request.checked, layout).map(ends) : undefined;
  const grips = placed.map(({ grip }) => grip);
  const kept = before && new Map(before.map(({ run, y }) => [run, y]));
  return runLabels({ layout, request, system, grips, bars, kept });
}
