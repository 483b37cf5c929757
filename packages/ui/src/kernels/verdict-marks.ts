import type { VerdictName } from "@headfall/hydraulics";

/** A mark as an SVG path in a box from -1 to 1, filled or only outlined, and the word that goes with it. */
export interface VerdictMark {
  readonly path: string;
  readonly isFilled: boolean;
  readonly word: string;
}

/**
 * One shape for each verdict, told apart by outline alone (no two share a silhouette):
 *   good     a full disc, as a full cup seen from above
 *   drips    a drop
 *   starves  a cup with almost nothing in it: open at the top, a thin layer at the bottom
 *   dry      an empty square crossed out
 */
export const VERDICT_MARKS: Readonly<Record<VerdictName, VerdictMark>> = {
  good: { path: "M-0.9 0A0.9 0.9 0 1 1 0.9 0A0.9 0.9 0 1 1 -0.9 0Z", isFilled: true, word: "good" },
  drips: {
    path: "M0 -1C0.35 -0.45 0.75 -0.1 0.75 0.3A0.75 0.7 0 1 1 -0.75 0.3C-0.75 -0.1 -0.35 -0.45 0 -1Z",
    isFilled: true,
    word: "drips",
  },
  starves: {
    path: "M-0.95 -0.8L-0.55 0.85L0.55 0.85L0.95 -0.8M-0.65 0.5L0.65 0.5",
    isFilled: false,
    word: "starves",
  },
  dry: {
    path: "M-0.8 -0.8L0.8 -0.8L0.8 0.8L-0.8 0.8ZM-0.8 -0.8L0.8 0.8M0.8 -0.8L-0.8 0.8",
    isFilled: false,
    word: "dry",
  },
};

/** From harmless to worst; a place where several drinkers share one mark shows the worst of them. */
const SEVERITY: Readonly<Record<VerdictName, number>> = { good: 0, drips: 1, starves: 2, dry: 3 };

/** Whether the first verdict is worse than the second. */
export function isWorse(first: VerdictName, second: VerdictName): boolean {
  return SEVERITY[first] > SEVERITY[second];
}

/** How many drinkers do what, as said in a heading: "17 good, 4 drip, 3 starve". */
export function writeCounts(counts: Readonly<Record<VerdictName, number>>): string {
  const said = [
    counts.dry > 0 ? `${counts.dry} dry` : "",
    counts.starves > 0 ? `${counts.starves} ${counts.starves === 1 ? "starves" : "starve"}` : "",
    counts.drips > 0 ? `${counts.drips} ${counts.drips === 1 ? "drips" : "drip"}` : "",
    counts.good > 0 ? `${counts.good} good` : "",
  ];
  return said.filter((part) => part !== "").join(", ") || "no drinkers";
}
