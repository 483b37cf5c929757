import { FRICTION_LAWS } from "../solve/solution.js";
import { type Searched, searchSpace, wholeOf } from "./branch-and-bound.js";
import type { CompareCosts, Cost } from "./cost.js";
import type { CureLines } from "./cure-lines.js";
import type { Picks } from "./cure-space.js";
import { buildDemandTree } from "./demand-tree.js";
import { type BoundFinder, boundByCost, boundByDemand } from "./relaxed.js";
import { judgeScene, type Requirement, type Scene } from "./requirement.js";

/** What one search may use. */
export interface Effort {
  /** Lines judged so far, by all searches that share it. */
  judged: number;
  /** How many may be judged before the search at hand ends. */
  most: number;
  readonly isStopped: () => boolean;
  readonly progress: (judged: number) => void;
}

/** The cheapest plan of a space that meets a requirement in all its scenes. */
export function solveSpace(
  lines: CureLines,
  requirement: Requirement,
  {
    compare,
    effort,
    below,
  }: { readonly compare: CompareCosts; readonly effort: Effort; readonly below?: Cost | undefined },
): Searched {
  return searchSpace({
    space: lines.space,
    compare,
    below,
    bound: tightestBound(lines, requirement, compare),
    works: judgeOf(lines, requirement, effort),
    mayGoOn: () => effort.judged < effort.most && !effort.isStopped(),
  });
}

/** Whether one plan of a space works; the scene that failed last is asked first, as it often fails again. */
export function judgeOf(
  lines: CureLines,
  requirement: Requirement,
  effort: Pick<Effort, "judged" | "progress">,
) {
  const scenes: Scene[] = [...requirement.scenes];
  return (picks: Picks): boolean => {
    const line = lines.lineOf(picks);
    if (line === undefined) return false;
    return scenes.every((scene, k) => {
      effort.judged += 1;
      effort.progress(effort.judged);
      if (judgeScene(requirement, line, scene).meets) return true;
      scenes.splice(k, 1);
      scenes.unshift(scene);
      return false;
    });
  };
}

/** Of the bounds by either friction law, the one that is dearer for the whole space: either is a bound. */
function tightestBound(lines: CureLines, requirement: Requirement, compare: CompareCosts): BoundFinder {
  const [today] = requirement.scenes;
  const tree = buildDemandTree(lines, requirement, today);
  if (tree === undefined) return boundByCost(lines.space, compare);
  const whole = wholeOf(lines.space);
  const bounds = FRICTION_LAWS.map((law) => boundByDemand(tree, lines, law, compare));
  const costs = bounds.map((bound) => bound(whole)?.cost);
  const [first, second] = costs;
  if (first === undefined) return bounds[0];
  return second === undefined || compare(second, first) >= 0 ? bounds[1] : bounds[0];
}
