/** What rings cost: a network with many of them against the tree of that size. */
import { prepareLine } from "../../packages/hydraulics/dist/solve/prepare-line.js";
import { reachState } from "../../packages/hydraulics/dist/solve/solve-line.js";
import { FRICTIONS } from "./laws.mjs";
import { buildRings } from "./networks.mjs";
import { ratio } from "./time.mjs";

const POINTS = 10_000;
const RINGS = 500;

/** @param bench  where rows and measured bars go (book.mjs) */
export function measureRings({ row, measured }) {
  for (const friction of FRICTIONS) {
    const [ringed, tree] = [RINGS, 0].map((rings) => coldSolve(buildRings(POINTS, rings), friction));
    const { ratio: times, low, high, ms } = ratio(ringed, tree, 15);
    row(`${friction}, ringed against tree`, {
      ratio: times,
      low,
      high,
      ms,
      steps: ringed().effort.steps,
      "steps of the tree": tree().effort.steps,
    });
    measured(`rings ${friction}`, times);
  }
}

function coldSolve({ line, moment }, friction) {
  const prepared = prepareLine(line, friction);
  return () => {
    prepared.current.work.warm = false;
    return reachState(prepared, moment);
  };
}
