import { isGrave, type PenYard, writeYardFindingBriefly, type YardFinding } from "@headfall/hydraulics";
import { VERDICT_MARKS, type VerdictMark } from "../verdict-marks.js";

/** How a waterer or a pen stands: birds go without; something to mind; neither. */
export type Standing = "first" | "mind" | "good";

/** Told apart by outline, as the verdicts are; a triangle says neither good nor dry. */
export const STANDING_MARKS: Readonly<Record<Standing, Omit<VerdictMark, "word">>> = {
  first: VERDICT_MARKS.dry,
  mind: { path: "M0 -0.9L0.95 0.8L-0.95 0.8Z", isFilled: true },
  good: VERDICT_MARKS.good,
};

/**
 * How it stands, and the gravest thing of it in a few words.
 *
 * @param findings  of one waterer, or of one pen
 * @param good      what is said where there is none
 */
export function standingOf(
  findings: readonly YardFinding[],
  good: string,
): { readonly standing: Standing; readonly words: string } {
  const worst = findings.find(isGrave) ?? findings[0];
  if (worst === undefined) return { standing: "good", words: good };
  const more = findings.length - 1;
  return {
    standing: isGrave(worst) ? "first" : "mind",
    words: `${writeYardFindingBriefly(worst)}${more === 0 ? "" : `, and ${more} more`}`,
  };
}

/** What was found of one waterer of a pen. */
export const findingsOfWaterer = ({ findings }: PenYard, id: string): readonly YardFinding[] =>
  findings.filter((finding) => "waterer" in finding && finding.waterer === id);

/** What was found of the pen itself, none of its waterers alone. */
export const findingsOfPen = ({ findings }: PenYard): readonly YardFinding[] =>
  findings.filter((finding) => "pen" in finding);
