import type { Plan } from "../../document/plan-schema.js";
import { runEnds } from "../../document/run-ends.js";
import { type JudgedLine, judgeLine } from "../../judge/judge-line.js";
import type { Line } from "../../model/line.js";
import { type Cost, NO_COST } from "../cost.js";
import type { Change, CureKind } from "../cure-answer.js";
import { typedLength } from "../cure-space.js";
import { judgeScene, lineInScene, type Requirement, type Scene } from "../requirement.js";

/** A change of a plan that is neither a size nor a stand: what is then searched are the sizes and stands with it. */
export interface Remedy {
  readonly kind: CureKind;
  readonly plan: Plan;
  readonly changes: readonly Change[];
  readonly spent: Cost;
  /** A run it lays, by index: its pipe is bought, and of all runs only its size is free. */
  readonly fresh?: number;
}

/** What a remedy is made from. */
export interface Ailing {
  readonly plan: Plan;
  readonly line: Line;
  /** The line as it is judged in that scene. */
  readonly judged: JudgedLine;
  readonly system: "metric" | "us";
  /** Head to spare that is asked for [m]. */
  readonly margin: number;
  readonly requirement: Requirement;
  /** The first state of affairs in which anything fails: the line is judged in it. */
  readonly scene: Scene;
}

/** What ails a plan, looked for in the first state of affairs in which anything does; undefined where nothing does. */
export function ailingIn(
  requirement: Requirement,
  line: Line,
  system: Ailing["system"] = "metric",
): Ailing | undefined {
  const { plan, margin } = requirement;
  for (const scene of requirement.scenes) {
    const judged = judgeLine(lineInScene(requirement, line, scene));
    if (judgeScene(requirement, line, scene, judged).meets) continue;
    return { plan, line: judged.line, judged, system, margin, requirement, scene };
  }
  return undefined;
}

/** So many things bought, at this price each, if it is known. */
export const bought = (count: number, price: number | undefined): Cost => ({
  ...NO_COST,
  parts: count,
  money: count * (price ?? 0),
  unpriced: price === undefined ? count : 0,
});

/** The plan with one of its runs changed. */
export const withRun = (plan: Plan, index: number, change: Partial<Plan["runs"][number]>): Plan => ({
  ...plan,
  runs: plan.runs.map((run, r) => (r === index ? { ...run, ...change } : run)),
});

/**
 * The plan with the height of one joint told outright, so that no fall counted from elsewhere decides it any more.
 *
 * @param height  of the pipe there [m above datum]
 * @param ground  below it [m above datum]
 */
export function withJointAt(
  plan: Plan,
  joint: { readonly name: string; readonly height: number; readonly ground: number },
  system: "metric" | "us",
): Plan {
  const told = {
    ground: typedLength(joint.ground, system),
    above: typedLength(joint.height - joint.ground, system),
  };
  const points = plan.points ?? [];
  const isKnown = points.some(({ id }) => id === joint.name);
  return {
    ...plan,
    points: isKnown
      ? points.map((point) => (point.id === joint.name ? { ...point, ...told } : point))
      : [...points, { id: joint.name, ...told }],
  };
}

/** A name that nothing in the plan has yet. */
export function freshName(plan: Plan, wish: string): string {
  const taken = new Set<string>([
    ...plan.sources.flatMap(({ id }) => id ?? []),
    ...(plan.points ?? []).map(({ id }) => id),
    ...plan.runs.flatMap(({ id }) => id ?? []),
    ...runEnds(plan).flatMap(({ from, to }) => [from, to]),
  ]);
  if (!taken.has(wish)) return wish;
  let number = 2;
  while (taken.has(`${wish} ${number}`)) number += 1;
  return `${wish} ${number}`;
}

/** Runs that lead from a source to each run, itself last; where runs form a ring, the first way found. */
export function waysToRuns(plan: Plan): readonly (readonly number[])[] {
  const ends = runEnds(plan);
  const sources = new Set(plan.sources.map(({ id }, s) => id ?? (s === 0 ? "barrel" : `barrel ${s + 1}`)));
  const ways: (number[] | undefined)[] = plan.runs.map(() => undefined);
  const reached = new Map<string, number[]>([...sources].map((name) => [name, []]));
  for (let round = 0; round < plan.runs.length; round += 1) {
    ends.forEach(({ from, to }, r) => {
      if (ways[r] !== undefined) return;
      const before = reached.get(from) ?? reached.get(to);
      if (before === undefined) return;
      ways[r] = [...before, r];
      for (const end of [from, to]) if (!reached.has(end)) reached.set(end, ways[r]);
    });
  }
  return ways.map((way) => way ?? []);
}
