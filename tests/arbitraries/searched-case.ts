import { type CompareCosts, compareBy } from "../../packages/hydraulics/src/search/cost.js";
import { buildCureLines, type CureLines } from "../../packages/hydraulics/src/search/cure-lines.js";
import { buildCureSpace } from "../../packages/hydraulics/src/search/cure-space.js";
import { buildRequirement, type Requirement } from "../../packages/hydraulics/src/search/requirement.js";
import { cureCase } from "./cure-plans.js";

/** A case ready to be searched; undefined where its plan contradicts itself. */
export interface SearchedCase {
  readonly lines: CureLines;
  readonly requirement: Requirement;
  readonly compare: CompareCosts;
}

export function searchedCase(seed: number, weeks = 0): SearchedCase | undefined {
  const { plan, options } = cureCase(seed);
  const building = buildCureLines(buildCureSpace(plan, options, { pipes: true, stands: true }));
  if (!building.ok) return undefined;
  const { lines } = building;
  const required = buildRequirement(plan, lines.present, { ...options, weeks });
  if (!required.ok) return undefined;
  return { lines, requirement: required.requirement, compare: compareBy(options.by) };
}

/** What no search stops at. */
export const unbounded = () => ({
  judged: 0,
  most: Number.POSITIVE_INFINITY,
  isStopped: () => false,
  progress: () => undefined,
});
