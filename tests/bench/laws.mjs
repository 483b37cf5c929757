/** One solve against the bare cost of its own laws, and how both grow with the size of the line. */
import { evaluateDrinkers } from "../../packages/hydraulics/dist/solve/laws/drinker-laws.js";
import { prepareLine } from "../../packages/hydraulics/dist/solve/prepare-line.js";
import { reachState, solveLine } from "../../packages/hydraulics/dist/solve/solve-line.js";
import { buildYard } from "./networks.mjs";
import { growthOf, ratio } from "./time.mjs";

export const FRICTIONS = ["hazenWilliams", "darcyWeisbach"];
export const SIZES = [60, 1000, 10_000, 100_000];

/** @param bench  where rows and measured bars go (book.mjs) */
export function measureLaws({ row, measured }) {
  for (const friction of FRICTIONS) {
    const costs = SIZES.map((count) => {
      const found = againstBareLaws(friction, count);
      row(`${friction}, ${count} drinkers`, found);
      measured(`laws ${friction} ${count}`, found.ratio, {
        ms: found.ms,
        "with check and result": found["with check and result"],
      });
      return [count, found.ms];
    });
    const growth = growthOf(costs);
    row(`${friction}, cost as a power of the drinkers`, { power: growth });
    measured(`growth ${friction}`, growth);
  }
}

/** Cold solves, so that each does all its steps. */
function againstBareLaws(friction, count) {
  const { line, moment } = buildYard(count);
  const prepared = prepareLine(line, friction);
  const { work } = prepared.current;
  const cold = (solve) => () => {
    work.warm = false;
    return solve(prepared, moment);
  };
  const { effort } = cold(reachState)();
  const bare = bareLaws(prepared.current, moment, effort.evaluations);
  const pairs = count >= 100_000 ? 15 : count >= 10_000 ? 40 : 100;
  const batch = Math.max(1, Math.round(12_000 / count));
  const loop = ratio(cold(reachState), bare, pairs, batch);
  const checked = ratio(cold(solveLine), bare, pairs, batch);
  return {
    ratio: loop.ratio,
    low: loop.low,
    high: loop.high,
    "with check and result": checked.ratio,
    ms: loop.ms,
    evaluations: effort.evaluations,
  };
}

/** All laws of the line at the flows of its solution, as often as asked. */
function bareLaws({ network, work }, moment, evaluations) {
  const flow = work.flow.slice();
  const drinkerFlow = work.drinkerFlow.slice();
  const working = Int32Array.from(network.topology.drinker.keys()).filter(
    (d) => moment.atWork[network.topology.drinker[d]] === 1,
  );
  const { trialLoss, trialSlope, trialDrinkerLoss, trialDrinkerSlope } = work;
  return () => {
    for (let k = 0; k < evaluations; k += 1) {
      network.pipes.kernel(network.pipes, flow.length, flow, trialLoss, trialSlope);
      evaluateDrinkers(network.drinkers, working, drinkerFlow, trialDrinkerLoss, trialDrinkerSlope);
    }
  };
}
