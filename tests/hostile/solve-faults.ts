import type { Plan } from "../../packages/hydraulics/src/document/plan-schema.js";
import { manLine } from "../../packages/hydraulics/src/judge/birds/man-line.js";
import { buildFlock } from "../../packages/hydraulics/src/model/build-flock.js";
import { flockAtLine } from "../../packages/hydraulics/src/model/flock-at-line.js";
import type { Line } from "../../packages/hydraulics/src/model/line.js";
import { buildMoments, MOMENTS } from "../../packages/hydraulics/src/model/moment.js";
import { CONTINUITY_BAR, ENERGY_BAR } from "../../packages/hydraulics/src/solve/check-solution.js";
import { prepareBoth } from "../../packages/hydraulics/src/solve/prepare-line.js";
import { FRICTION_LAWS, type LineSolution } from "../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../packages/hydraulics/src/solve/solve-line.js";
import { faultsOfProblems, faultsOfSolution, notFinite } from "./plan-faults.js";

/** What goes wrong when a line with its birds at it is solved for its four moments by both friction laws. */
export function faultsOfSolving(plan: Plan, line: Line): string[] {
  const manning = manned(plan, line);
  if (!manning.ok) return ["its birds have no place", ...faultsOfProblems(manning.problems)];
  const prepared = prepareBoth(manning.line);
  const moments = buildMoments(manning.line).named;
  return FRICTION_LAWS.flatMap((law) =>
    MOMENTS.flatMap((moment) => {
      const solution = solveLine(prepared[law], moments[moment]);
      return [
        ...notFinite(solution).map((path) => `${moment} by ${law}: ${path} is not finite`),
        ...faultsOfSolution(solution, moment),
        ...faultsOfWhole(solution, moments[moment].sourceHead).map(
          (fault) => `${moment} by ${law}: ${fault}`,
        ),
      ];
    }),
  );
}

function manned(plan: Plan, line: Line) {
  const flocking = buildFlock(plan, line);
  if (!flocking.ok || flocking.flock.pens.length === 0)
    return flocking.ok ? { ok: true as const, line } : flocking;
  return { ok: true as const, line: manLine(plan, line, flockAtLine(plan, flocking.flock)).line };
}

/** The laws told of the whole line: what sources give is what is drawn, and no water stands above all sources. */
function faultsOfWhole(solution: LineSolution, sourceHead: Float64Array): string[] {
  const { sourceFlow, drinkerFlow, feedFlow, flow, head, reached } = solution;
  const given = total(sourceFlow);
  const drawn = total(drinkerFlow) + total(feedFlow);
  const largest = flow.reduce((most, q) => Math.max(most, Math.abs(q)), 0);
  const isLost = Math.abs(given - drawn) > CONTINUITY_BAR * head.length * largest + 1e-15;
  const highest = Math.max(...sourceHead) + ENERGY_BAR;
  const isRaised = head.some((h, p) => reached[p] === 1 && h > highest);
  return [
    ...(isLost ? [`${given} is given and ${drawn} drawn`] : []),
    ...(isRaised ? [`water stands above every source, which are at ${highest}`] : []),
    ...(drinkerFlow.some((q) => q < 0) ? ["a drinker gives water back"] : []),
  ];
}

const total = (flows: Float64Array): number => flows.reduce((sum, q) => sum + q, 0);
