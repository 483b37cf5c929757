import type { Line, Run } from "../model/line.js";
import { regimeAt, reynoldsNumber, velocityInBore } from "../physics/darcy-weisbach.js";
import { isHazenWilliamsInRange } from "../physics/hazen-williams.js";
import { buildLossTable, type LossTable, lossByTable } from "../solve/loss-table.js";
import { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "../solve/solution.js";
import type { RunReading, RunReport } from "./check-result.js";

/** How each run fares when the vessel is full and the birds are busiest: velocity, regime, loss by either law. */
export function reportRuns(
  line: Line,
  busiest: Readonly<Record<FrictionLaw, LineSolution>>,
  shown: FrictionLaw,
): RunReport[] {
  const losses = {
    hazenWilliams: buildLossTable(line, "hazenWilliams"),
    darcyWeisbach: buildLossTable(line, "darcyWeisbach"),
  };
  return line.runs.map((run) => ({
    run: run.id,
    index: run.index,
    pipe: run.pipeName,
    length: run.length,
    bore: run.bore,
    volume: (run.length * Math.PI * run.bore ** 2) / 4,
    busiest: readRun(line, run, busiest, shown, losses),
  }));
}

function readRun(
  line: Line,
  run: Run,
  busiest: Readonly<Record<FrictionLaw, LineSolution>>,
  shown: FrictionLaw,
  losses: Readonly<Record<FrictionLaw, LossTable>>,
): RunReading {
  const flow = largestFlow(run, busiest[shown]);
  const velocity = velocityInBore(run.bore, flow);
  const reynolds = Math.abs(reynoldsNumber({ bore: run.bore, viscosity: line.water.viscosity }, flow));
  const loss = Object.fromEntries(
    FRICTION_LAWS.map((law) => [law, lossAlong(line, run, busiest[law], losses[law])]),
  ) as Record<FrictionLaw, number>;
  return {
    flow,
    velocity,
    reynolds,
    regime: regimeAt(reynolds),
    loss,
    hazenWilliamsInRange: isHazenWilliamsInRange({
      bore: run.bore,
      velocity,
      reynolds,
      temperatureC: line.water.temperatureC,
    }),
  };
}

function largestFlow(run: Run, solution: LineSolution): number {
  let largest = 0;
  for (let s = run.firstSegment; s < run.firstSegment + run.segmentCount; s += 1) {
    if (Math.abs(solution.flow[s]) > Math.abs(largest)) largest = solution.flow[s];
  }
  return largest;
}

function lossAlong(line: Line, run: Run, solution: LineSolution, losses: LossTable): number {
  let loss = 0;
  for (let s = run.firstSegment; s < run.firstSegment + run.segmentCount; s += 1) {
    loss += Math.abs(lossByTable(line, losses, s, solution.flow[s]));
  }
  return loss;
}
