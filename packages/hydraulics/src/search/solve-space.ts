import { searchSpace, wholeOf } from "./branch-and-bound.js";
import type { CompareCosts, Cost } from "./cost.js";
import type { CureLines } from "./cure-lines.js";
import type { Picks } from "./cure-space.js";
import { buildDemandForest } from "./demand-forest.js";
import { GUESSING } from "./fronts.js";
import { standsThatLevelsAllow } from "./levels.js";
import { type BoundFinder, boundByCost, boundByDemand } from "./relaxed.js";
import { judgeScene, type Requirement, type Scene } from "./requirement.js";
import type { Searched } from "./searching.js";

/** What one search may use. */
export interface Effort {
  /** Lines judged so far, by all searches that share it. */
  judged: number;
  /** How many may be judged before the search at hand ends. */
  most: number;
  readonly isStopped: () => boolean;
  readonly progress: (judged: number) => void;
}

/** Parts that may be bounded for each plan that may be judged: a bound costs about as much as a judgement. */
const PARTS_FOR_ONE = 2;

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
    likely: (most) => likelyBound(lines, requirement, compare)?.(wholeOf(lines.space), most)?.picks,
    works: judgeOf(lines, requirement, effort),
    mostParts: PARTS_FOR_ONE * (effort.most - effort.judged),
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

/** The dearer of two bounds, each of which is one: for the plan's own day and the last week asked for. */
function tightestBound(lines: CureLines, requirement: Requirement, compare: CompareCosts): BoundFinder {
  const { scenes } = requirement;
  const last = scenes[scenes.length - 1].week;
  const bounds = scenes
    .filter((scene, k) => k === 0 || (scene.week === last && last > 0))
    .map((scene) => boundOfScene(lines, requirement, scene, compare));
  return (domains, below) => {
    let dearest = bounds[0](domains, below);
    for (const bound of bounds.slice(1)) {
      const other = dearest === undefined ? undefined : bound(domains, below);
      if (other === undefined || dearest === undefined) return undefined;
      if (compare(other.cost, dearest.cost) > 0) dearest = other;
    }
    return dearest;
  };
}

/** Points at a plan that works in the last scene, cheap if not the cheapest. */
function likelyBound(
  lines: CureLines,
  requirement: Requirement,
  compare: CompareCosts,
): BoundFinder | undefined {
  const forest = buildDemandForest(lines, requirement, requirement.scenes[requirement.scenes.length - 1]);
  return forest && boundByDemand(forest, lines, compare, GUESSING);
}

function boundOfScene(
  lines: CureLines,
  requirement: Requirement,
  scene: Scene,
  compare: CompareCosts,
): BoundFinder {
  const forest = buildDemandForest(lines, requirement, scene);
  if (forest === undefined)
    return boundByCost(lines.space, compare, standsThatLevelsAllow(lines, requirement, scene));
  return boundByDemand(forest, lines, compare);
}
