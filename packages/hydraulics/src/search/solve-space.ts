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
    likely: (most) => likelyPlans(lines, requirement, compare, most),
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

/**
 * Head that a plan has to spare beyond what its bound asks [m]: none, then a little more each time, because one more
 * bird comes to a line that flows a little faster than it must.
 */
const SPARED = [0, 2e-4, 1e-3, 5e-3];

/** Plans that work in the last scene if head to spare makes up for what the bound leaves out, cheap if not the cheapest. */
function* likelyPlans(
  lines: CureLines,
  requirement: Requirement,
  compare: CompareCosts,
  most: Cost | undefined,
): Generator<Picks> {
  const forest = buildDemandForest(lines, requirement, requirement.scenes[requirement.scenes.length - 1]);
  if (forest === undefined) return;
  const bound = boundByDemand(forest, lines, compare, GUESSING);
  for (const spare of SPARED) {
    const found = bound(wholeOf(lines.space), most, spare);
    if (found === undefined) return;
    yield found.picks;
  }
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
