import { needOfFlow } from "../../birds/flow-need.js";
import type { BirdKind } from "../../tables/bird-types.js";

/** Least flow a worked drinker should give one bird [m3/s]; 0 for birds that have not come. */
export const needAtAge = (kind: BirdKind, ageDays: number): number =>
  ageDays < 0 ? 0 : needOfFlow(kind.flowNeed, ageDays);
