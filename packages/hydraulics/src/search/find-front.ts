import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { buildLine } from "../model/build-line.js";
import { type CompareCosts, type Cost, type CostMeasure, compareBy, NO_COST } from "./cost.js";
import type { Change } from "./cure-answer.js";
import { changesOf } from "./cure-changes.js";
import { buildCureLines, type CureLines } from "./cure-lines.js";
import { type CureOptions, MOST_JUDGED } from "./cure-options.js";
import { buildCureSpace, type CureSpace, hasPrices, planOf } from "./cure-space.js";
import { buildRequirement, judgeScene, type Requirement } from "./requirement.js";
import { type Effort, solveSpace } from "./solve-space.js";

/** One plan of a trade-off: none is cheaper with as much of the other, none has more of it for as little. */
export interface FrontPoint {
  readonly cost: Cost;
  /** Head to spare where it is least [m]. */
  readonly margin: number;
  /** Height of the first source's stand [m]. */
  readonly stand: number;
  readonly changes: readonly Change[];
  readonly plan: Plan;
}

/** Cost against margin, and height against size of pipe. */
export interface FrontAnswer {
  readonly by: CostMeasure;
  readonly money: string | undefined;
  /** From cheap to dear, each with more head to spare. */
  readonly costAgainstMargin: readonly FrontPoint[];
  /** From low to high, each with less to pay for pipe; what the stand itself costs is left out. */
  readonly heightAgainstSize: readonly FrontPoint[];
  /** Whether every point is the cheapest of its margin, or of its height. */
  readonly proven: boolean;
}

/** What more margin costs and more height saves, or what in the plan contradicts itself. */
export type FindingFront =
  | { readonly ok: true; readonly front: FrontAnswer }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Margins of neighbours on the front lie at least this far apart [m]. */
export const MARGIN_STEP = 0.005;
/** A point is searched with this part of all that may be judged. */
const SHARE_OF_POINT = 6;
/** At most so many points of each. */
const MOST_POINTS = 24;

/**
 * What more pipe, or a higher stand, buys: sizes and stands that work, of which none is beaten in both figures. Each
 * point is a search of its own with the other figure held (the epsilon-constraint method of Haimes et al. 1971), as
 * exact as `findCures`; margins are told apart by 5 mm.
 *
 * @param plan     from `readPlan` or `checkDocument`
 * @param options  as for `findCures`; `margin` is where the first front begins
 * @example findFront(small, { weeks: 0, standMost: 0.5, standStep: 0.1 }).front.proven   // true
 */
export function findFront(plan: Plan, options: CureOptions = {}): FindingFront {
  const built = buildLine(plan);
  if (!built.ok) return built;
  const building = buildRequirement(plan, built.line, options);
  if (!building.ok) return building;
  const by = options.by ?? (hasPrices(plan) ? "money" : "parts");
  const most = options.mostJudged ?? MOST_JUDGED;
  const effort: Effort = {
    judged: 0,
    most: 0,
    isStopped: options.isStopped ?? (() => false),
    progress: (judged) => options.progress?.(judged, "front"),
  };
  const space = buildCureSpace(plan, options, { pipes: true, stands: true });
  const search: FrontSearch = {
    requirement: building.requirement,
    compare: compareBy(by),
    effort,
    most,
    proven: true,
  };
  const costAgainstMargin = marginFront(space, search);
  const heightAgainstSize = heightFront(space, search);
  return {
    ok: true,
    front: { by, money: plan.money, costAgainstMargin, heightAgainstSize, proven: search.proven },
  };
}

interface FrontSearch {
  readonly requirement: Requirement;
  readonly compare: CompareCosts;
  readonly effort: Effort;
  readonly most: number;
  proven: boolean;
}

/** The cheapest plan of a space with a margin; notes where that is not proven. */
function cheapestWith(
  space: CureSpace,
  margin: number,
  search: FrontSearch,
  below?: Cost,
): FrontPoint | undefined {
  const building = buildCureLines(space);
  if (!building.ok) return undefined;
  const { compare, effort } = search;
  effort.most = effort.judged + search.most / SHARE_OF_POINT;
  const requirement = { ...search.requirement, margin };
  const searched = solveSpace(building.lines, requirement, { compare, effort, below });
  if (!searched.proven) search.proven = false;
  if (searched.found === undefined) return undefined;
  return pointOf(building.lines, searched.found.picks, searched.found.cost, requirement);
}

function pointOf(
  lines: CureLines,
  picks: readonly number[],
  cost: Cost,
  requirement: Requirement,
): FrontPoint | undefined {
  const line = lines.lineOf(picks);
  if (line === undefined) return undefined;
  const margin = requirement.scenes.reduce(
    (least, scene) => Math.min(least, judgeScene(requirement, line, scene).spare?.head ?? least),
    Number.POSITIVE_INFINITY,
  );
  const { space } = lines;
  const stand = space.sources[0].options[picks[space.runs.length]].height;
  return { cost, margin, stand, changes: changesOf(lines, picks), plan: planOf(space, picks) };
}

function marginFront(space: CureSpace, search: FrontSearch): FrontPoint[] {
  const points: FrontPoint[] = [];
  let margin = search.requirement.margin;
  while (points.length < MOST_POINTS) {
    const point = cheapestWith(space, margin, search);
    if (point === undefined) break;
    const last = points.at(-1);
    if (last !== undefined && search.compare(point.cost, last.cost) <= 0) points.pop();
    points.push(point);
    if (!Number.isFinite(point.margin)) break;
    margin = point.margin + MARGIN_STEP;
  }
  return points;
}

/** Each height of the first source's stand by itself, from the lowest on; only what saves pipe is kept. */
function heightFront(space: CureSpace, search: FrontSearch): FrontPoint[] {
  const points: FrontPoint[] = [];
  const [first, ...others] = space.sources;
  const heights = [...first.options].sort((a, b) => a.height - b.height);
  for (const option of heights) {
    const fixed = { ...first, options: [{ ...option, cost: NO_COST }] };
    const point = cheapestWith(
      { ...space, sources: [fixed, ...others] },
      search.requirement.margin,
      search,
      points.at(-1)?.cost,
    );
    if (point !== undefined) points.push(point);
    if (points.length >= MOST_POINTS) break;
  }
  return points;
}
