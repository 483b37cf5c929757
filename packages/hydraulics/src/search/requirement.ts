import { batchesOf } from "../document/plan-lists.js";
import type { Plan } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { raisesOf } from "../judge/birds/hung-runs.js";
import { manLine } from "../judge/birds/man-line.js";
import type { VerdictName } from "../judge/check-result.js";
import { countVerdicts, type JudgedLine, judgeLine, worstOf } from "../judge/judge-line.js";
import { buildFlock } from "../model/build-flock.js";
import type { Flock } from "../model/flock.js";
import { flockAtLine } from "../model/flock-at-line.js";
import { flockInDays, flockInHeat } from "../model/flock-on.js";
import type { Line } from "../model/line.js";
import { raiseLine } from "../model/raise-line.js";
import { type CureOptions, WEEKS_AHEAD } from "./cure-options.js";

/** One state of affairs in which a cure must hold: the plan's own day, or a day of a coming week. */
export interface Scene {
  /** 0: the plan's own day. */
  readonly week: number;
  /** Whether it is a day of the plan's hot spell. */
  readonly hot: boolean;
  readonly flock: Flock;
}

/** What a plan must do to count as one that works. */
export interface Requirement {
  readonly plan: Plan;
  /** Head to spare that every drinker must have [m]. */
  readonly margin: number;
  readonly now: Flock;
  readonly scenes: readonly Scene[];
  /** The day asked about, where the plan names none. */
  readonly day: string | undefined;
}

export type RequirementBuilding =
  | { readonly ok: true; readonly requirement: Requirement }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** No drinker starves, drips or is dry, on the plan's day and in each coming week that is asked for. */
export function buildRequirement(
  plan: Plan,
  line: Line,
  options: Pick<CureOptions, "margin" | "weeks" | "day">,
): RequirementBuilding {
  const building = buildFlock(plan, line, options.day);
  if (!building.ok) return building;
  const flock = flockAtLine(plan, building.flock);
  const ahead = options.weeks ?? (birdsGrow(plan) ? WEEKS_AHEAD : 0);
  const airs =
    flock.pens.length > 0 && flock.weather.hotSpell !== undefined && ahead > 0 ? [false, true] : [false];
  const weeks = Array.from({ length: flock.pens.length > 0 ? ahead + 1 : 1 }, (_, week) => week);
  const scenes = weeks.flatMap((week) =>
    airs.map((hot): Scene => {
      const older = flockInDays(flock, 7 * week);
      return { week, hot, flock: hot ? flockInHeat(older) : older };
    }),
  );
  const { margin = 0, day } = options;
  return { ok: true, requirement: { plan, margin, now: flock, scenes, day } };
}

/** The same of a plan that has been changed: the same scenes, its own numbers, its own drinkers in reach of each pen. */
export function requirementFor(requirement: Requirement, plan: Plan, line: Line): Requirement {
  const building = buildFlock(plan, line, requirement.day);
  if (!building.ok) return { ...requirement, plan };
  const reached = building.flock.pens.map(({ drinkers }) => drinkers);
  const inReach = (flock: Flock): Flock => ({
    ...flock,
    pens: flock.pens.map((pen) => ({ ...pen, drinkers: reached[pen.index] ?? pen.drinkers })),
  });
  return {
    ...requirement,
    plan,
    now: inReach(requirement.now),
    scenes: requirement.scenes.map((scene) => ({ ...scene, flock: inReach(scene.flock) })),
  };
}

/** Whether a plan tells ages, so that its weeks differ. */
const birdsGrow = (plan: Plan): boolean =>
  (plan.pens ?? []).some((pen) =>
    batchesOf(pen).some(({ age, hatched }) => age !== undefined || hatched !== undefined),
  );

/** How the drinkers of a line fare in one scene. */
export interface SceneReport {
  readonly week: number;
  readonly hot: boolean;
  readonly verdict: VerdictName;
  readonly counts: Readonly<Record<VerdictName, number>>;
  /** Least head to spare of any drinker against starving, and against dripping [m]; undefined without drinkers. */
  readonly spare: Spare | undefined;
  /** Whether every drinker is good with the margin asked for. */
  readonly meets: boolean;
}

/** The least head to spare, and which drinker has it, by index. */
export interface Spare {
  readonly head: number;
  readonly drinker: number;
  /** What it would be short of first. */
  readonly against: "starving" | "dripping" | "notSealing";
}

/** The line as it hangs in a scene: hung runs raised. */
export function hangInScene({ plan, now }: Requirement, line: Line, { flock }: Scene): Line {
  if (flock.pens.length === 0) return line;
  const raised = raisesOf(plan, line, now, flock);
  return raiseLine(
    line,
    line.runs.map(({ index }) => raised.find((run) => run.index === index)?.raise ?? 0),
  );
}

/** The line as it is in a scene: hung runs raised, birds at the drinkers. */
export function lineInScene(requirement: Requirement, line: Line, scene: Scene): Line {
  if (scene.flock.pens.length === 0) return line;
  return manLine(requirement.plan, hangInScene(requirement, line, scene), scene.flock).line;
}

/** @param judged  the line in that scene, if it has been judged already */
export function judgeScene(
  requirement: Requirement,
  line: Line,
  scene: Scene,
  judged: JudgedLine = judgeLine(lineInScene(requirement, line, scene)),
): SceneReport {
  const counts = countVerdicts(judged.drinkers);
  const spare = leastSpare(judged);
  const verdict = worstOf(judged.drinkers);
  return {
    week: scene.week,
    hot: scene.hot,
    verdict,
    counts,
    spare,
    meets: verdict === "good" && (spare === undefined || spare.head >= requirement.margin),
  };
}

/** The least head to spare of all drinkers of a judged line [m]. */
function leastSpare(judged: JudgedLine): Spare | undefined {
  let least: Spare | undefined;
  judged.drinkers.forEach((_, d) => {
    const spare = spareOf(judged, d);
    if (least === undefined || spare.head < least.head) least = spare;
  });
  return least;
}

/** Head one drinker has to spare, taken where it has least [m]. */
export function spareOf({ line, drinkers, solved, filling }: JudgedLine, d: number): Spare {
  const verdict = drinkers[d];
  const supply = [verdict, ...verdict.also].find(({ verdict: name }) => name !== "drips");
  const { holdsUpTo, sealsFrom } = line.drinkers.groups[line.drinkers.group[d]];
  const point = line.drinkers.point[d];
  const idle = (moment: "fullIdle" | "lowestBusiest") =>
    solved.hazenWilliams[moment].idle.head[point] - line.drinkers.height[d];
  const found: Spare[] = [{ head: holdsUpTo - idle("fullIdle"), drinker: d, against: "dripping" }];
  if (supply !== undefined) found.push({ head: supply.margin, drinker: d, against: "starving" });
  const onSeal = idle("lowestBusiest") - filling.airHead[point];
  if (sealsFrom > 0 && onSeal > 0)
    found.push({ head: onSeal - sealsFrom, drinker: d, against: "notSealing" });
  return found.reduce((a, b) => (b.head < a.head ? b : a));
}
