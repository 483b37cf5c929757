import type { Plan } from "../document/plan-schema.js";
import type { Line } from "../model/line.js";
import type { CompareCosts } from "./cost.js";
import type { Relaxation } from "./cure-answer.js";
import { buildCureLines, type CureLines } from "./cure-lines.js";
import { type CureOptions, STAND_MOST } from "./cure-options.js";
import { outcomeOf } from "./cure-outcome.js";
import { buildCureSpace, type CureSpace, type Picks, planOf } from "./cure-space.js";
import { judgeScene, lineInScene, type Requirement, type Scene } from "./requirement.js";
import { type Effort, solveSpace } from "./solve-space.js";

/** What relaxing is done with. */
export interface Relaxing {
  readonly plan: Plan;
  readonly requirement: Requirement;
  readonly options: CureOptions;
  readonly compare: CompareCosts;
  readonly effort: Effort;
}

/**
 * What would have to give where no size and no stand does: a higher stand than was allowed, less to spare than was
 * asked for, or drinkers that cannot be had. Each by itself, the others kept.
 */
export function relaxationsOf(relaxing: Relaxing): Relaxation[] {
  const { options, requirement } = relaxing;
  const allowed = options.standMost ?? STAND_MOST;
  const higher = giveStand(relaxing, allowed);
  const less = requirement.margin > 0 ? giveMargin(relaxing) : undefined;
  const lost = giveDrinkers(relaxing);
  return [higher, less, lost].filter((one) => one !== undefined);
}

/** Stands are thought of up to this many times what was allowed. */
const HIGHER = 3;

function giveStand(relaxing: Relaxing, allowed: number): Relaxation | undefined {
  const { plan, requirement, options, compare, effort } = relaxing;
  const lines = linesOf(plan, { ...options, standMost: HIGHER * allowed });
  const found = lines && solveSpace(lines, requirement, { compare, effort }).found;
  if (lines === undefined || found === undefined) return undefined;
  const { space } = lines;
  const needed = Math.max(
    ...space.sources.map(({ options: stands }, s) => stands[found.picks[space.runs.length + s]].height),
  );
  return { give: "standMost", needed, allowed, cost: found.cost, plan: planOf(space, found.picks) };
}

/** Halvings of the margin asked for. */
const HALVINGS = 5;

function giveMargin({ plan, requirement, options, compare, effort }: Relaxing): Relaxation | undefined {
  const lines = linesOf(plan, options);
  if (lines === undefined) return undefined;
  const at = (margin: number) => solveSpace(lines, { ...requirement, margin }, { compare, effort }).found;
  let best = at(0);
  if (best === undefined) return undefined;
  let [low, high] = [0, requirement.margin];
  for (let k = 0; k < HALVINGS; k += 1) {
    const middle = (low + high) / 2;
    const found = at(middle);
    if (found === undefined) high = middle;
    else [best, low] = [found, middle];
  }
  const asked = requirement.margin;
  return { give: "margin", best: low, asked, cost: best.cost, plan: planOf(lines.space, best.picks) };
}

/** A plan, and the scene in which most of its drinkers are not good: so many, with so little to spare [m]. */
interface Lost {
  readonly picks: Picks;
  readonly line: Line;
  readonly scene: Scene;
  readonly lost: number;
  readonly spare: number;
}

/** The plan with fewest drinkers that are not good, of those with the widest pipe and with the present one at any stand. */
function giveDrinkers({ plan, requirement, options, effort }: Relaxing): Relaxation | undefined {
  const lines = linesOf(plan, options);
  if (lines === undefined) return undefined;
  const { space } = lines;
  const widest = space.runs.map(({ options: sizes }) => sizes.length - 1);
  const pipes = [space.runs.map(() => 0), widest];
  const stands = space.sources[0].options.map((_, k) => space.sources.map((__, s) => (s === 0 ? k : 0)));
  let best: Lost | undefined;
  for (const picks of pipes.flatMap((sizes) => stands.map((stand) => [...sizes, ...stand]))) {
    if (effort.isStopped()) break;
    const line = lines.lineOf(picks);
    if (line === undefined) continue;
    effort.judged += requirement.scenes.length;
    effort.progress(effort.judged);
    const one = { picks, line, ...lostOf(requirement, line) };
    if (best === undefined || one.lost < best.lost || (one.lost === best.lost && one.spare > best.spare))
      best = one;
  }
  return best === undefined || best.lost === 0 ? undefined : drinkersLost(space, requirement, best);
}

function lostOf(requirement: Requirement, line: Line): Pick<Lost, "scene" | "lost" | "spare"> {
  const reports = requirement.scenes.map((scene) => {
    const { counts, spare } = judgeScene(requirement, line, scene);
    return { scene, lost: line.drinkers.count - counts.good, spare: spare?.head ?? 0 };
  });
  const most = reports.reduce((worst, report) => (report.lost > worst.lost ? report : worst));
  return { ...most, spare: Math.min(...reports.map(({ spare }) => spare)) };
}

function drinkersLost(
  space: CureSpace,
  requirement: Requirement,
  { picks, line, scene, lost }: Lost,
): Relaxation {
  const { drinkers } = outcomeOf({ ...requirement, scenes: [scene] }, line);
  const bad = drinkers.map((outcome, d) => ({ ...outcome, d })).filter(({ verdict }) => verdict !== "good");
  const flowOf = ({ moments: { lowestBusiest } }: (typeof bad)[number]) =>
    Math.min(lowestBusiest.hazenWilliams.flow, lowestBusiest.darcyWeisbach.flow);
  const [worst] = bad.filter(({ verdict }) => verdict !== "drips").sort((a, b) => flowOf(a) - flowOf(b));
  const { need } = lineInScene(requirement, line, scene).drinkers;
  return {
    give: "drinkers",
    lost,
    of: line.drinkers.count,
    names: bad.map(({ drinker }) => drinker),
    flow: worst === undefined ? undefined : flowOf(worst),
    need: worst === undefined ? undefined : need[worst.d],
    plan: planOf(space, picks),
  };
}

function linesOf(plan: Plan, options: CureOptions): CureLines | undefined {
  const building = buildCureLines(buildCureSpace(plan, options, { pipes: true, stands: true }));
  return building.ok ? building.lines : undefined;
}
